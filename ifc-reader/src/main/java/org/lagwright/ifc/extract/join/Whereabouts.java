package org.lagwright.ifc.extract.join;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Georeference.MapConversion;
import org.lagwright.ifc.model.Georeference.WorldSystem;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.ReadFinding;

/** Whether files lie where they can belong together: coordinates, their zero, map conversions. */
final class Whereabouts {

  /** Parts of one site lie nearer to each other. */
  private static final double FAR_M = 1000;

  private Whereabouts() {}

  /** Every file is held against the first one that tells. */
  static void compare(Joining joining) {
    List<MepModel> models = joining.read();
    for (int i = 1; i < models.size(); i++) {
      MepModel model = models.get(i);
      noteDistance(joining, models.subList(0, i), model);
      noteWorld(joining, models.get(0), model);
      noteConversion(joining, models.subList(0, i), model);
    }
  }

  private static void noteDistance(Joining joining, List<MepModel> earlier, MepModel model) {
    Optional<Box> own = box(model);
    for (MepModel other : own.isEmpty() ? List.<MepModel>of() : earlier) {
      Optional<Box> box = box(other);
      if (box.isPresent()) {
        double gapM = box.get().gapM(own.get());
        if (gapM > FAR_M) {
          joining.note(
              Finding.ofFile(
                  model.file().index(),
                  ReadFinding.FILES_FAR_APART,
                  Effect.NONE,
                  String.valueOf(Math.round(gapM)),
                  other.file().name()));
        }
        return;
      }
    }
  }

  private static Optional<Box> box(MepModel model) {
    List<Point> places =
        model.elements().stream()
            .filter(e -> e.kind().isLagged())
            .map(e -> e.place().positionM())
            .filter(Objects::nonNull)
            .toList();
    return places.isEmpty() ? Optional.empty() : Optional.of(Box.around(places));
  }

  private static void noteWorld(Joining joining, MepModel first, MepModel model) {
    if (!joining.haveOneWorld(model.file().index(), first.file().index())) {
      joining.note(
          Finding.ofFile(
              model.file().index(),
              ReadFinding.WORLD_SYSTEMS_DIFFER,
              Effect.NONE,
              inWords(model.georeference().world()),
              inWords(first.georeference().world()),
              first.file().name()));
    }
  }

  private static String inWords(WorldSystem world) {
    Point at = world.originM();
    return "%s, %s, %s m, turned by %s degrees"
        .formatted(
            InWords.metres(at.x()),
            InWords.metres(at.y()),
            InWords.metres(at.z()),
            InWords.metres(world.rotationDeg()));
  }

  private static void noteConversion(Joining joining, List<MepModel> earlier, MepModel model) {
    MapConversion own = model.georeference().conversion();
    for (MepModel other : earlier) {
      MapConversion conversion = other.georeference().conversion();
      if (conversion != null && own != null) {
        if (!joining.haveOneConversion(model.file().index(), other.file().index())) {
          joining.note(
              Finding.ofFile(
                  model.file().index(),
                  ReadFinding.MAP_CONVERSIONS_DIFFER,
                  Effect.NONE,
                  inWords(own),
                  inWords(conversion),
                  other.file().name()));
        }
        return;
      }
    }
  }

  /** In metres; as written where the unit of the map is not told. */
  private static String inWords(MapConversion c) {
    double unitM = c.unitTold() ? c.unitM() : 1;
    return "E %s N %s H %s%s, turned by %s degrees"
        .formatted(
            InWords.metres(c.eastings() * unitM),
            InWords.metres(c.northings() * unitM),
            InWords.metres(c.orthogonalHeight() * unitM),
            c.unitTold() ? " m" : " without a unit",
            InWords.metres(c.rotationDeg()));
  }
}
