package org.lagwright.ifc.geometry;

/**
 * A torus: what the wall of a round bend lies on. Metres.
 *
 * @param axis unit vector at right angles to the plane of the bend
 * @param major radius of the centre line
 * @param minor radius of the tube
 */
record Torus(Vec centre, Vec axis, double major, double minor) {

  /** Distance of a point from the surface, above zero outside the tube. */
  double off(Vec point) {
    return tube(point).norm() - minor;
  }

  /** From the centre line to a point in the half plane of both: outwards, and along the axis. */
  Vec tube(Vec point) {
    Vec q = point.minus(centre);
    return new Vec(q.across(axis).norm() - major, q.dot(axis), 0);
  }

  /** Along the centre line at a point, a unit vector. */
  Vec tangent(Vec point) {
    return axis.cross(point.minus(centre)).unit();
  }
}
