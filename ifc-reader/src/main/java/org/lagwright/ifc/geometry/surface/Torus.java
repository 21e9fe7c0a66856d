package org.lagwright.ifc.geometry.surface;

import org.lagwright.ifc.geometry.frame.Vec;

/**
 * A torus: what the wall of a round bend lies on. Metres.
 *
 * @param axis unit vector at right angles to the plane of the bend
 * @param major radius of the centre line
 * @param minor radius of the tube
 */
public record Torus(Vec centre, Vec axis, double major, double minor) {

  /**
   * Distance of a point from the surface, above zero outside the tube. Spelled out, as a fit asks
   * for it by the thousand.
   */
  public double off(Vec point) {
    double x = point.x() - centre.x();
    double y = point.y() - centre.y();
    double z = point.z() - centre.z();
    double along = x * axis.x() + y * axis.y() + z * axis.z();
    x -= axis.x() * along;
    y -= axis.y() * along;
    z -= axis.z() * along;
    double out = Math.sqrt(x * x + y * y + z * z) - major;
    return Math.sqrt(out * out + along * along) - minor;
  }

  /** How far a unit vector at a point leads along the centre line: a cosine. */
  public double along(Vec direction, Vec point) {
    double x = point.x() - centre.x();
    double y = point.y() - centre.y();
    double z = point.z() - centre.z();
    double tx = axis.y() * z - axis.z() * y;
    double ty = axis.z() * x - axis.x() * z;
    double tz = axis.x() * y - axis.y() * x;
    double norm = Math.sqrt(tx * tx + ty * ty + tz * tz);
    double dot = tx * direction.x() + ty * direction.y() + tz * direction.z();
    return norm > Vec.TINY ? dot / norm : 0;
  }

  /** From the centre line to a point in the half plane of both: outwards, and along the axis. */
  public Vec tube(Vec point) {
    Vec q = point.minus(centre);
    return new Vec(q.across(axis).norm() - major, q.dot(axis), 0);
  }

  /** Along the centre line at a point, a unit vector. */
  Vec tangent(Vec point) {
    return axis.cross(point.minus(centre)).unit();
  }
}
