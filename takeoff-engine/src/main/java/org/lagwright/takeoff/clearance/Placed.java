package org.lagwright.takeoff.clearance;

import java.util.List;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.measure.Size;

/**
 * An element with its bodies.
 *
 * @param duct true for what is held against the gaps of ducts
 * @param jacketed true where the settings ask for a jacket on its insulation
 * @param box round the insulated bodies
 */
record Placed(
    TakenElement taken,
    BodyMaker.Made made,
    boolean duct,
    boolean insulated,
    boolean jacketed,
    Box box) {

  static Placed of(TakenElement taken, BodyMaker.Made made, boolean jacketed) {
    boolean insulated = Clearance.thicknessM(taken) > 0;
    return new Placed(
        taken, made, isDuct(taken), insulated, jacketed, Box.around(made.insulated()));
  }

  /** How its bodies are simpler than it, for one side of a pair; empty where they are not. */
  String note(String side) {
    return made.note().isEmpty() ? "" : side + ": " + made.note();
  }

  private static boolean isDuct(TakenElement taken) {
    return switch (taken.element().kind()) {
      case DUCT_SEGMENT, DUCT_FITTING -> true;
      case INLINE ->
          Size.findDecidingSection(taken.element())
              .filter(s -> !(s instanceof Section.Round))
              .isPresent();
      default -> false;
    };
  }

  /** Distance from a point to the bare bodies, metres; something above enough beyond that. */
  double distanceM(Point at, double enoughM) {
    double leastM = Double.POSITIVE_INFINITY;
    List<Solid> solids = made.bare();
    for (Solid solid : solids) {
      leastM = Math.min(leastM, Gap.distanceM(Solid.point(at), solid, enoughM));
    }
    return leastM;
  }
}
