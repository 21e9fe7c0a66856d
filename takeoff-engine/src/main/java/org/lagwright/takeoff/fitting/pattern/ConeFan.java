package org.lagwright.takeoff.fitting.pattern;

/**
 * Part of an oblique circular cone, unrolled: generators from an apex to a circle.
 *
 * <p>l^2 = H^2 + (r cos p - X)^2 + (r sin p - Y)^2; l' = r (X sin p - Y cos p) / l; the angle laid
 * flat grows by sqrt(r^2 - l'^2) / l dp; the area by r/2 sqrt(H^2 + (r - X cos p - Y sin p)^2) dp.
 * Derived from the first fundamental form of the cone.
 *
 * @param radiusM radius r of the circle
 * @param heightM height H of the apex over its plane
 * @param apexXM X of the apex from the centre of the circle
 * @param apexYM Y of the apex
 */
record ConeFan(double radiusM, double heightM, double apexXM, double apexYM) {

  double lengthM(double p) {
    double dx = radiusM * Math.cos(p) - apexXM;
    double dy = radiusM * Math.sin(p) - apexYM;
    return Math.sqrt(heightM * heightM + dx * dx + dy * dy);
  }

  /** Angle between two generators laid flat, radians. */
  double angleRad(double from, double to) {
    return Quadrature.panel(from, to, this::anglePerRad);
  }

  private double anglePerRad(double p) {
    double length = lengthM(p);
    double along = radiusM * (apexXM * Math.sin(p) - apexYM * Math.cos(p)) / length;
    return Math.sqrt(Math.max(0, radiusM * radiusM - along * along)) / length;
  }

  /** Area between two generators, square metres. */
  double areaM2(double from, double to) {
    return Quadrature.between(
        from,
        to,
        p -> {
          double distance = radiusM - apexXM * Math.cos(p) - apexYM * Math.sin(p);
          return radiusM / 2 * Math.hypot(heightM, distance);
        });
  }
}
