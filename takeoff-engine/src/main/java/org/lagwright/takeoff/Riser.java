package org.lagwright.takeoff;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/** Tells risers from level pipes by the places of their ends. */
final class Riser {

  /** Steeper than 60 degrees: between level and upright the nearer one counts, metre by metre. */
  private static final double STEEP = 0.866;

  private Riser() {}

  /** True for a straight piece that stands; false where the model does not tell. */
  static boolean is(MepElement element) {
    if (element.kind() != Kind.PIPE_SEGMENT && element.kind() != Kind.DUCT_SEGMENT) {
      return false;
    }
    List<Point> ends =
        Stream.concat(
                element.ports().stream()
                    .filter(port -> !port.tap())
                    .map(Port::positionM)
                    .filter(Objects::nonNull),
                element.openEnds().stream().map(OpenEnd::positionM))
            .toList();
    for (Point one : ends) {
      for (Point other : ends) {
        double rise = Math.abs(one.z() - other.z());
        double run = Math.hypot(one.x() - other.x(), one.y() - other.y());
        if (rise > 0.01 && rise >= STEEP * Math.hypot(rise, run)) {
          return true;
        }
      }
    }
    return false;
  }
}
