package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.Remeasurer;
import org.lagwright.ifc.extract.graph.ReadEnds;
import org.lagwright.ifc.extract.insulation.LooseCovering;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.extract.place.Footprint;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * The coverings of several files that name nothing they cover, and which of them come near elements
 * of another file: only those are looked at further, as their bodies must be read once more.
 */
final class LooseCoverings {

  /**
   * No end of a fitting whose ends are not known lies further from its middle. Larger ones are
   * rare, and the ends of most are known. No source.
   */
  private static final double FARTHEST_END_M = 2;

  private final Joining joining;
  private final List<LooseCovering> all = new ArrayList<>();
  private final STRtree byPlace = new STRtree();

  /** The files that hold some. */
  private final BitSet models = new BitSet();

  /** Those that come near an element of another file. */
  private final BitSet wanted = new BitSet();

  LooseCoverings(Joining joining, Redrafts drafts) {
    this.joining = joining;
    for (MepModel model : joining.read()) {
      Remeasurer origin = drafts.origin(model.file().index());
      for (LooseCovering each : origin == null ? List.<LooseCovering>of() : origin.loose()) {
        byPlace.insert(Footprint.of(each.reach()), all.size());
        all.add(each);
        models.set(each.key().model());
      }
    }
    for (MepModel model : joining.read()) {
      int own = model.file().index();
      int others = models.cardinality() - (models.get(own) ? 1 : 0);
      if (others > 0) {
        forEachPlaced(model, (element, box) -> mark(own, box));
      }
    }
  }

  private void forEachPlaced(MepModel model, BiConsumer<MepElement, Box> todo) {
    for (MepElement element : model.elements()) {
      MepElement now = joining.now(element);
      Box box = now.kind().isLagged() && now.repeats() == null ? boxOf(now) : null;
      if (box != null) {
        todo.accept(now, box);
      }
    }
  }

  /** Marks what comes near an element of a file. */
  private void mark(int own, Box box) {
    byPlace.query(
        Footprint.of(box),
        index -> {
          LooseCovering covering = all.get((Integer) index);
          int other = covering.key().model();
          if (own != other
              && covering.reach().gapM(box) <= 0
              && joining.haveOneOrigin(own, other)) {
            wanted.set((Integer) index);
          }
        });
  }

  /** Around all of an element that may be known; null if nothing tells where it is. */
  private static @Nullable Box boxOf(MepElement element) {
    List<Point> points = new ArrayList<>(4);
    for (OpenEnd end : ReadEnds.of(element)) {
      points.add(end.positionM());
    }
    double furtherM = points.size() < 2 ? reachM(element) : 0;
    Point middle = element.place().positionM();
    if (middle != null) {
      points.add(middle);
    }
    Measured<Section> section = element.section();
    double aroundM = section == null ? 0 : section.value().largestSideM() / 2;
    return points.isEmpty() ? null : Box.around(points).wider(furtherM + aroundM);
  }

  private static double reachM(MepElement element) {
    Measured<Double> length = element.lengthM();
    return element.kind().isSegment() && length != null ? length.value() : FARTHEST_END_M;
  }

  /** Those that come near an element of another file. */
  List<LooseCovering> wanted() {
    List<LooseCovering> found = new ArrayList<>();
    for (int i = wanted.nextSetBit(0); i >= 0; i = wanted.nextSetBit(i + 1)) {
      found.add(all.get(i));
    }
    return found;
  }

  /** Goes through the elements of all files that are near those. */
  void forEachNear(Consumer<MepElement> todo) {
    for (MepModel model : wanted.isEmpty() ? List.<MepModel>of() : joining.read()) {
      forEachPlaced(
          model,
          (element, box) -> {
            if (isNearWanted(box)) {
              todo.accept(element);
            }
          });
    }
  }

  private boolean isNearWanted(Box box) {
    boolean[] near = new boolean[1];
    byPlace.query(
        Footprint.of(box),
        index -> {
          int at = (Integer) index;
          near[0] |= wanted.get(at) && all.get(at).reach().gapM(box) <= 0;
        });
    return near[0];
  }
}
