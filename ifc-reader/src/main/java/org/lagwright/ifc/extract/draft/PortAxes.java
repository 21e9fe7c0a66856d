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

  /** A port that lies nearer to the middle of all of them tells nothing, metres. */
  private static final double LEAST_AWAY_M = 0.0001;

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
    Point middleM = middleM(ports);
    int common = 0;
    for (Port port : ports) {
      Point axis = port.direction();
      Point atM = port.positionM();
      if (axis == null || atM == null) {
        continue;
      }
      int sign = sign(axis, middleM, atM);
      if (sign == 0 || common * sign < 0) {
        return 0;
      }
      common = sign;
    }
    return common;
  }

  /** Whether an axis leads away from the middle of all ports, as that is from the other ones. */
  private static int sign(Point axis, Point middleM, Point atM) {
    double alongM = axis.alongM(middleM, atM);
    double awayM = middleM.distanceM(atM);
    boolean tells = awayM > LEAST_AWAY_M && Math.abs(alongM) > LEAST_COSINE * awayM;
    return tells ? (int) Math.signum(alongM) : 0;
  }

  /** The middle of the ports that have a place; NaN if none has. */
  private static Point middleM(List<Port> ports) {
    double x = 0;
    double y = 0;
    double z = 0;
    int count = 0;
    for (Port port : ports) {
      Point atM = port.positionM();
      if (atM != null) {
        x += atM.x();
        y += atM.y();
        z += atM.z();
        count++;
      }
    }
    return new Point(x / count, y / count, z / count);
  }
}
