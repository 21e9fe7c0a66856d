package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/**
 * Which way the ports of an element face.
 *
 * <p>By the schema the axis of a port points out of the element, except for a sink, where it points
 * in. Some exporters turn none of them and others turn all, so where all ports of an element as
 * written agree, by their places, to face away from each other or towards each other, that is
 * taken; else it is as the schema has it.
 */
final class PortAxes {

  /** Below this cosine, about 84 degrees, an axis lies across the way to the other ports. */
  private static final double LEAST_COSINE = 0.1;

  private PortAxes() {}

  /**
   * The same ports with directions that point away from their element.
   *
   * @param ports ports of one element, with their axes as written
   */
  static List<Port> outward(List<Port> ports) {
    int sign = commonSign(ports);
    List<Port> turned = new ArrayList<>(ports.size());
    for (Port port : ports) {
      boolean inward = sign == 0 ? "SINK".equals(port.flow()) : sign < 0;
      turned.add(inward ? port.reversed() : port);
    }
    return turned;
  }

  /** 1 if all axes lead away from the other ports, -1 if all lead to them, 0 else. */
  private static int commonSign(List<Port> ports) {
    int common = 0;
    for (Port port : ports) {
      Point axis = port.direction();
      Point atM = port.positionM();
      if (axis == null || atM == null) {
        continue;
      }
      int sign = sign(axis, atM, ports);
      if (sign == 0 || common * sign < 0) {
        return 0;
      }
      common = sign;
    }
    return common;
  }

  /** Whether an axis leads away from the middle of the other ports that have a place. */
  private static int sign(Point axis, Point atM, List<Port> ports) {
    Point otherM = middleOfOthersM(atM, ports);
    double alongM = axis.alongM(otherM, atM);
    double awayM = otherM.distanceM(atM);
    return Math.abs(alongM) > LEAST_COSINE * awayM ? (int) Math.signum(alongM) : 0;
  }

  private static Point middleOfOthersM(Point atM, List<Port> ports) {
    double x = 0;
    double y = 0;
    double z = 0;
    int count = 0;
    for (Port port : ports) {
      Point otherM = port.positionM();
      if (otherM != null && !otherM.equals(atM)) {
        x += otherM.x();
        y += otherM.y();
        z += otherM.z();
        count++;
      }
    }
    return count == 0 ? atM : new Point(x / count, y / count, z / count);
  }
}
