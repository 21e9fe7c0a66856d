package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.extract.Remeasurer;
import org.lagwright.ifc.extract.measure.SeenValues;
import org.lagwright.ifc.model.MepModel;

/**
 * Reads files anew of which the other files of their exporter show that a property carries a
 * placeholder: few pieces do not show it, and an exporter writes the same into all of its files.
 */
final class CrossPlaceholders {

  private CrossPlaceholders() {}

  /** The same models, some of them read anew. */
  static List<MepModel> without(List<MepModel> models) {
    List<MepModel> read = new ArrayList<>(models.size());
    for (MepModel model : models) {
      read.add(without(model, models));
    }
    return read;
  }

  private static MepModel without(MepModel model, List<MepModel> models) {
    List<SeenValues> others = new ArrayList<>();
    for (MepModel other : models) {
      if (other != model
          && isOfOneExporter(model, other)
          && other.origin() instanceof Remeasurer origin) {
        others.add(origin.placeholders().seen());
      }
    }
    return !others.isEmpty()
            && model.origin() instanceof Remeasurer own
            && own.placeholders().areMoreBy(others)
        ? own.again(others).of(model.file())
        : model;
  }

  private static boolean isOfOneExporter(MepModel one, MepModel other) {
    String exporter = one.file().exporter();
    return !exporter.isEmpty() && exporter.equals(other.file().exporter());
  }
}
