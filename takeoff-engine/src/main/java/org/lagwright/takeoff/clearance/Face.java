package org.lagwright.takeoff.clearance;

import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.Direction;

/**
 * A flat end of a body: a rectangle whose corners may be round. A disc is a rectangle without sides
 * and with a corner radius, a flat oval one with one side.
 *
 * @param centre world position, metres
 * @param u unit vector along the width
 * @param v unit vector along the height, square to u
 * @param halfWidthM half the straight part of the width, metres
 * @param halfHeightM half the straight part of the height, metres
 * @param cornerM radius of the corners, outside the straight parts, metres
 */
record Face(Point centre, Point u, Point v, double halfWidthM, double halfHeightM, double cornerM) {

  private static final double LEAST_RADIUS = 1e-12;

  /**
   * The outline of insulation round a section; square corners round rectangular ducts, as sheets
   * are butted there.
   *
   * @param u along the width
   * @param v along the height
   * @param thicknessM of the insulation, 0 for the bare section
   */
  static Face around(Section section, double thicknessM, Point centre, Point u, Point v) {
    if (section instanceof Section.Rectangular r) {
      double halfWidthM = r.widthM() / 2 + thicknessM;
      return new Face(centre, u, v, halfWidthM, r.heightM() / 2 + thicknessM, 0);
    }
    if (section instanceof Section.Oval o) {
      double smallM = o.smallestSideM();
      double halfWidthM = (o.widthM() - smallM) / 2;
      double halfHeightM = (o.heightM() - smallM) / 2;
      return new Face(centre, u, v, halfWidthM, halfHeightM, smallM / 2 + thicknessM);
    }
    return new Face(centre, u, v, 0, 0, section.largestSideM() / 2 + thicknessM);
  }

  /** The same elsewhere. */
  Face at(Point place) {
    return new Face(place, u, v, halfWidthM, halfHeightM, cornerM);
  }

  /** True where it has no straight sides. */
  boolean isDisc() {
    return halfWidthM == 0 && halfHeightM == 0;
  }

  /** The point of it that lies farthest in a direction. */
  Point farthest(Point direction) {
    double alongU = Direction.dot(direction, u);
    double alongV = Direction.dot(direction, v);
    double radius = Math.sqrt(alongU * alongU + alongV * alongV);
    double corner = radius < LEAST_RADIUS ? 0 : cornerM / radius;
    double onU = Math.signum(alongU) * halfWidthM + alongU * corner;
    double onV = Math.signum(alongV) * halfHeightM + alongV * corner;
    return Direction.plus(Direction.plus(centre, u, onU), v, onV);
  }
}
