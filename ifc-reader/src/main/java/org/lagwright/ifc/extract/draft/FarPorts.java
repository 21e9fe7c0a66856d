package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/**
 * Ports that lie far outside the body of their element, as where the piece before it begins. They
 * tell what it is connected to, but not where it ends.
 */
final class FarPorts {

  static final String OUTSIDE = "a port lies outside the body, its place does not count";

  /**
   * Collars and sockets are shorter than this. Where a drain enters a chamber, the port lies up to
   * half a diameter beyond the drawn end in public files; a whole one is far.
   */
  private static final double SOCKET_M = 0.05;

  private FarPorts() {}

  /**
   * The ports, those far outside without their place.
   *
   * @param shape of a straight piece or a fitting
   * @return the same list if none lies far outside
   */
  static List<Port> withoutPlace(List<Port> ports, Shape shape) {
    if (!isWhole(shape)) {
      return ports;
    }
    List<Port> placed = ports;
    for (int i = 0; i < ports.size(); i++) {
      Point atM = ports.get(i).positionM();
      if (atM != null && isFar(atM, shape)) {
        placed = placed == ports ? new ArrayList<>(ports) : placed;
        placed.set(i, ports.get(i).withoutPlace());
      }
    }
    return placed;
  }

  /** True if all ends are drawn, so that nothing of the body reaches far beyond them. */
  private static boolean isWhole(Shape shape) {
    int ways = shape.form().ways();
    return ways == shape.ends().size() && ways > 1;
  }

  /** True if two ports lie as far apart as is stated: they are right, and the body is a symbol. */
  static boolean areApart(List<Port> ports, @Nullable Double statedM) {
    Point aM = ports.size() == 2 ? ports.get(0).positionM() : null;
    Point bM = ports.size() == 2 ? ports.get(1).positionM() : null;
    return statedM != null
        && aM != null
        && bM != null
        && Tolerances.sameLength(aM.distanceM(bM), statedM);
  }

  private static boolean isFar(Point atM, Shape shape) {
    double reachM = SOCKET_M;
    for (ShapeEnd end : shape.ends()) {
      reachM = Math.max(reachM, end.section().largestSideM());
    }
    for (ShapeEnd end : shape.ends()) {
      if (end.centreM().distanceM(atM) <= reachM) {
        return false;
      }
    }
    return shape.endsBox().gapM(new Box(atM, atM)) > reachM;
  }
}
