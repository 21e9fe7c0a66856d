package org.lagwright.ifc.geometry;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;

/** A vector or a position; metres unless it is a direction. */
record Vec(double x, double y, double z) {

  static final Vec ZERO = new Vec(0, 0, 0);
  static final Vec X = new Vec(1, 0, 0);
  static final Vec Y = new Vec(0, 1, 0);
  static final Vec Z = new Vec(0, 0, 1);

  /** Shorter than this (metres, or the sine of an angle) a vector has no usable direction. */
  static final double TINY = 1e-12;

  /** Corners closer than this are one: a hundredth of a millimetre. */
  static final double WELD_M = 1e-5;

  static Vec of(Point p) {
    return new Vec(p.x(), p.y(), p.z());
  }

  Point point() {
    return new Point(x, y, z);
  }

  Vec plus(Vec o) {
    return new Vec(x + o.x, y + o.y, z + o.z);
  }

  Vec minus(Vec o) {
    return new Vec(x - o.x, y - o.y, z - o.z);
  }

  Vec times(double f) {
    return new Vec(x * f, y * f, z * f);
  }

  double dot(Vec o) {
    return x * o.x + y * o.y + z * o.z;
  }

  Vec cross(Vec o) {
    return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  double norm() {
    return Math.sqrt(dot(this));
  }

  double distanceTo(Vec o) {
    double dx = x - o.x;
    double dy = y - o.y;
    double dz = z - o.z;
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  boolean isTiny() {
    return !(norm() > TINY);
  }

  /** Length one; the zero vector stays zero. */
  Vec unit() {
    double n = norm();
    return n > TINY ? times(1 / n) : ZERO;
  }

  /** This without its share along a unit vector. */
  Vec across(Vec unit) {
    double along = dot(unit);
    return new Vec(x - unit.x * along, y - unit.y * along, z - unit.z * along);
  }

  /** Some unit vector at right angles to this one. */
  Vec anyNormal() {
    Vec seed = Math.abs(x) < 0.9 * norm() ? X : Y;
    return cross(seed).unit();
  }

  /** Angle to another vector in radians, 0 to pi; exact also for small angles. */
  double angleTo(Vec o) {
    return Math.atan2(cross(o).norm(), dot(o));
  }

  /** Turned about a unit vector; Rodrigues' formula. */
  Vec turned(Vec axis, double angleRad) {
    double cos = Math.cos(angleRad);
    return times(cos)
        .plus(axis.cross(this).times(Math.sin(angleRad)))
        .plus(axis.times(axis.dot(this) * (1 - cos)));
  }

  boolean isFinite() {
    return Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z);
  }

  static Vec mean(Iterable<Vec> points) {
    Vec sum = ZERO;
    int count = 0;
    for (Vec p : points) {
      sum = sum.plus(p);
      count++;
    }
    return count == 0 ? ZERO : sum.times(1.0 / count);
  }

  /** Spelled out: the compiler's own is put together when first asked, which takes long. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Vec o
        && Double.compare(x, o.x) == 0
        && Double.compare(y, o.y) == 0
        && Double.compare(z, o.z) == 0;
  }

  @Override
  public int hashCode() {
    return (Double.hashCode(x) * 31 + Double.hashCode(y)) * 31 + Double.hashCode(z);
  }
}
