package org.lagwright.ifc.extract.join;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.lagwright.ifc.extract.graph.PointGrid;
import org.lagwright.ifc.extract.graph.ReadEnds;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * Finds fittings and valves whose middle lies in another one that is alike, as where a later export
 * moved all of them by some millimetres, and those without a body that are placed at one point
 * under one name. Flanges and nipples that stand behind each other lie a whole length apart.
 */
final class OverlaidFittings {

  private final List<MepElement> fittings;
  private final List<Point> middles;
  private final Joining joining;

  private OverlaidFittings(List<MepElement> elements, Joining joining) {
    this.fittings = elements.stream().filter(OverlaidFittings::isOne).toList();
    this.middles =
        fittings.stream().map(e -> Objects.requireNonNull(e.place().positionM())).toList();
    this.joining = joining;
  }

  /**
   * Those among some elements that lie in another one, each with the one that is read first.
   *
   * @param joining knows between which files places can be compared
   */
  static Map<ElementKey, ElementKey> within(List<MepElement> elements, Joining joining) {
    OverlaidFittings overlaid = new OverlaidFittings(elements, joining);
    Map<ElementKey, ElementKey> within = new HashMap<>();
    PointGrid grid = new PointGrid(overlaid.middles, Overlaps.FARTHEST_OFF_M);
    for (int i = 0; i < overlaid.fittings.size(); i++) {
      MepElement fitting = overlaid.fittings.get(i);
      grid.near(
          overlaid.middles.get(i),
          near -> {
            MepElement other = overlaid.fittings.get(near);
            if (overlaid.isWithin(fitting, other)) {
              within.putIfAbsent(fitting.key(), other.key());
            }
          });
    }
    return within;
  }

  /** Straight pieces are looked for along their axes. */
  private static boolean isOne(MepElement element) {
    return element.kind().isLagged()
        && !(element.kind().isSegment() && element.form() == Form.STRAIGHT)
        && element.section() != null
        && element.place().positionM() != null;
  }

  private boolean isWithin(MepElement fitting, MepElement other) {
    return other.key().compareTo(fitting.key()) < 0
        && Bodies.apartM(fitting, other) <= farthestM(fitting)
        && Bodies.areAlike(fitting, other)
        && (Bodies.isMeasured(fitting) || fitting.name().equals(other.name()))
        && !Bodies.areCrossing(fitting, other)
        && joining.haveOneOrigin(fitting.key().model(), other.key().model());
  }

  /** As far as pipes may lie off their axis, and less than half of what is as short as a flange. */
  private static double farthestM(MepElement fitting) {
    Measured<Section> section = fitting.section();
    double offM = section == null ? 0 : Overlaps.offM(section.value());
    return Math.max(Bodies.SAME_PLACE_M, Math.min(offM, spanM(fitting) / 2));
  }

  /** Between the ends that lie farthest apart. */
  private static double spanM(MepElement fitting) {
    double spanM = 0;
    List<OpenEnd> ends = ReadEnds.of(fitting);
    for (OpenEnd end : ends) {
      for (OpenEnd other : ends) {
        spanM = Math.max(spanM, end.positionM().distanceM(other.positionM()));
      }
    }
    return spanM;
  }
}
