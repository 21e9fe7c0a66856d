package org.lagwright.takeoff.fitting.pattern;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.Curve.Role;

/**
 * One strip of a smooth cover over a bend, as wide as the arc it covers: (R + r cos phi) x angle.
 *
 * <p>A torus cannot be laid flat; the strip has its exact area and edges, and its middle has to
 * stretch by {@link #bulgeM}. Area and volume after Pappus.
 *
 * @param radiusM outer radius r of the insulation
 * @param wallM thickness
 * @param bendRadiusM radius R of the centre line
 * @param angleRad angle that this strip covers
 */
public record TorusGore(double radiusM, double wallM, double bendRadiusM, double angleRad)
    implements PieceShape {

  public TorusGore {
    if (!(wallM > 0 && wallM <= radiusM) || !(angleRad > 0 && angleRad <= Math.PI / 2)) {
      throw new IllegalArgumentException("no strip of angle " + angleRad);
    }
    if (!(bendRadiusM > radiusM)) {
      throw new IllegalArgumentException("the throat of the bend is too tight");
    }
  }

  /** How far the arc at the heel rises above a flat strip, metres. */
  public double bulgeM() {
    return (bendRadiusM + radiusM) * (1 - Math.cos(angleRad / 2));
  }

  @Override
  public double areaM2() {
    return 2 * Math.PI * radiusM * bendRadiusM * angleRad;
  }

  @Override
  public double volumeM3() {
    double boreM = radiusM - wallM;
    return Math.PI * (radiusM * radiusM - boreM * boreM) * bendRadiusM * angleRad;
  }

  @Override
  public double cutLengthM() {
    double steep = radiusM * angleRad / 2;
    return 2
        * Quadrature.over(
            List.of(0.0, Math.PI, 2 * Math.PI), phi -> Math.hypot(radiusM, steep * Math.sin(phi)));
  }

  /** Width at the heel. */
  @Override
  public double stockLengthM() {
    return (bendRadiusM + radiusM) * angleRad;
  }

  private double halfM(double phi) {
    return (bendRadiusM + radiusM * Math.cos(phi)) * angleRad / 2;
  }

  @Override
  public Pattern pattern() {
    List<FlatPoint> around = new ArrayList<>();
    List<FlatPoint> back = new ArrayList<>();
    List<Ordinate> ordinates = new ArrayList<>();
    int fine = 8;
    for (int i = 0; i <= TubeDrawing.STATIONS * fine; i++) {
      double turn = (double) i / (TubeDrawing.STATIONS * fine);
      double phi = Math.PI + 2 * Math.PI * turn;
      double xM = 2 * Math.PI * radiusM * turn;
      around.add(new FlatPoint(xM, -halfM(phi)));
      back.add(0, new FlatPoint(xM, halfM(phi)));
      if (i % fine == 0) {
        double turnDeg = (180 + 360 * turn) % 360;
        ordinates.add(new Ordinate(i / fine, turnDeg, xM, -halfM(phi), halfM(phi)));
      }
    }
    around.addAll(back);
    double girthM = 2 * Math.PI * radiusM;
    return new Pattern(
        List.of(
            Curve.through(Role.CUT, "", true, around),
            line(Role.BASELINE, "base line", 0, 0, girthM, 0),
            mark("90° side", 0.75, girthM),
            mark("0° heel", 0.5, girthM),
            mark("270° side", 0.25, girthM)),
        ordinates,
        Pattern.FINE_M);
  }

  private Curve mark(String label, double turn, double girthM) {
    double phi = Math.PI + 2 * Math.PI * turn;
    double xM = girthM * turn;
    return line(Role.MARK, label, xM, -halfM(phi), xM, halfM(phi));
  }

  private static Curve line(
      Role role, String label, double x1M, double y1M, double x2M, double y2M) {
    return Curve.through(
        role, label, false, List.of(new FlatPoint(x1M, y1M), new FlatPoint(x2M, y2M)));
  }
}
