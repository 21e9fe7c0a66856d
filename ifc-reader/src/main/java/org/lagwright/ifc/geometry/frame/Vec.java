package org.lagwright.ifc.geometry.frame;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;

/** A vector or a position; metres unless it is a direction. */
public record Vec(double x, double y, double z) {

  /** The origin. */
  public static final Vec ZERO = new Vec(0, 0, 0);

  /** Unit vector along x. */
  public static final Vec X = new Vec(1, 0, 0);

  /** Unit vector along y. */
  public static final Vec Y = new Vec(0, 1, 0);

  /** Unit vector along z. */
  public static final Vec Z = new Vec(0, 0, 1);

  /** Shorter than this (metres, or the sine of an angle) a vector has no usable direction. */
  public static final double TINY = 1e-12;

  /** Corners closer than this are one: a hundredth of a millimetre. */
  public static final double WELD_M = 1e-5;

  /** From the origin to a point. */
  public static Vec of(Point p) {
    return new Vec(p.x(), p.y(), p.z());
  }

  /** The point it leads to from the origin. */
  public Point point() {
    return new Point(x, y, z);
  }

  /** The sum. */
  public Vec plus(Vec o) {
    return new Vec(x + o.x, y + o.y, z + o.z);
  }

  /** The difference. */
  public Vec minus(Vec o) {
    return new Vec(x - o.x, y - o.y, z - o.z);
  }

  /** The multiple. */
  public Vec times(double f) {
    return new Vec(x * f, y * f, z * f);
  }

  /** Scalar product. */
  public double dot(Vec o) {
    return x * o.x + y * o.y + z * o.z;
  }

  /** Vector product. */
  public Vec cross(Vec o) {
    return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  /** Length. */
  public double norm() {
    return Math.sqrt(dot(this));
  }

  /** Distance of the points that two vectors lead to. */
  public double distanceTo(Vec o) {
    double dx = x - o.x;
    double dy = y - o.y;
    double dz = z - o.z;
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  /** True if it is too short to have a direction. */
  public boolean isTiny() {
    return !(norm() > TINY);
  }

  /** Length one; the zero vector stays zero. */
  public Vec unit() {
    double n = norm();
    return n > TINY ? times(1 / n) : ZERO;
  }

  /** This without its share along a unit vector. */
  public Vec across(Vec unit) {
    double along = dot(unit);
    return new Vec(x - unit.x * along, y - unit.y * along, z - unit.z * along);
  }

  /** Some unit vector at right angles to this one. */
  public Vec anyNormal() {
    Vec seed = Math.abs(x) < 0.9 * norm() ? X : Y;
    return cross(seed).unit();
  }

  /** Angle to another vector in radians, 0 to pi; exact also for small angles. */
  public double angleTo(Vec o) {
    return Math.atan2(cross(o).norm(), dot(o));
  }

  /** Turned about a unit vector; Rodrigues' formula. */
  public Vec turned(Vec axis, double angleRad) {
    double cos = Math.cos(angleRad);
    return times(cos)
        .plus(axis.cross(this).times(Math.sin(angleRad)))
        .plus(axis.times(axis.dot(this) * (1 - cos)));
  }

  /** False if a coordinate is infinite or none. */
  public boolean isFinite() {
    return Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z);
  }

  /** The mean of some points. */
  public static Vec mean(Iterable<Vec> points) {
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
