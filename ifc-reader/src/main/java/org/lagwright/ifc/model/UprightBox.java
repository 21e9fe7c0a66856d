package org.lagwright.ifc.model;

/**
 * A box that stands upright and may be turned in plan: the smallest of that kind around a body.
 *
 * @param centre world position of its middle, metres
 * @param turnRad from the x axis of the world to the side {@code lengthM}, anticlockwise seen from
 *     above
 * @param lengthM level side
 * @param widthM the other level side
 * @param heightM upright side
 */
public record UprightBox(
    Point centre, double turnRad, double lengthM, double widthM, double heightM) {

  public UprightBox {
    if (!(lengthM >= 0 && widthM >= 0 && heightM >= 0)
        || !Double.isFinite(lengthM + widthM + heightM + turnRad)) {
      throw new IllegalArgumentException("the sides of a box are lengths");
    }
  }
}
