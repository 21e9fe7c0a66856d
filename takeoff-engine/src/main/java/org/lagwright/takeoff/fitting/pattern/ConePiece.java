package org.lagwright.takeoff.fitting.pattern;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.Curve.Role;

/**
 * The cover of a round reducer: a cone cut off, straight or oblique.
 *
 * @param largeRadiusM outer radius of the insulation at the large end
 * @param smallRadiusM outer radius at the small end
 * @param heightM distance of both ends along the axis
 * @param offsetM distance of the axes of both ends: 0 concentric, difference of the radii where one
 *     side is flat
 * @param wallM thickness, measured square to the axis
 */
public record ConePiece(
    double largeRadiusM, double smallRadiusM, double heightM, double offsetM, double wallM)
    implements PieceShape {

  public ConePiece {
    if (!(smallRadiusM > 0 && largeRadiusM > smallRadiusM + 1e-7) || !(heightM > 0)) {
      throw new IllegalArgumentException(
          "no cone from radius " + largeRadiusM + " to " + smallRadiusM + " over " + heightM);
    }
    if (!(offsetM >= 0) || !(wallM > 0)) {
      throw new IllegalArgumentException("no cone of offset " + offsetM + " and wall " + wallM);
    }
  }

  /** Share of the large cone that is cut off. */
  private double ratio() {
    return smallRadiusM / largeRadiusM;
  }

  private ConeFan fan() {
    double toApex = 1 / (1 - ratio());
    return new ConeFan(largeRadiusM, heightM * toApex, offsetM * toApex, 0);
  }

  private double turnRad(double to) {
    double step = Math.PI / 4;
    double sum = 0;
    for (double from = 0; from < to; from += step) {
      sum += fan().angleRad(from, Math.min(to, from + step));
    }
    return sum;
  }

  /** Angle of the whole cover laid flat, radians. */
  public double angleRad() {
    return turnRad(2 * Math.PI);
  }

  /**
   * True length of the cover along a generator, metres.
   *
   * @param turnRad from the flat side
   */
  public double slantM(double turnRad) {
    return fan().lengthM(turnRad) * (1 - ratio());
  }

  /** Distance from the point of the cone laid flat to the large edge, metres. */
  public double sectorM(double turnRad) {
    return fan().lengthM(turnRad);
  }

  @Override
  public double areaM2() {
    return fan().areaM2(0, 2 * Math.PI) * (1 - ratio() * ratio());
  }

  @Override
  public double volumeM3() {
    return Math.PI * wallM * (largeRadiusM + smallRadiusM - wallM) * heightM;
  }

  @Override
  public double cutLengthM() {
    return 2 * Math.PI * (largeRadiusM + smallRadiusM);
  }

  @Override
  public double stockLengthM() {
    return 0;
  }

  @Override
  public Pattern pattern() {
    List<Curve> curves = new ArrayList<>();
    curves.add(offsetM == 0 ? sector() : development());
    for (int quarter = 1; quarter < 4; quarter++) {
      curves.add(generator(Role.MARK, quarter * 90 + "°", quarter * Math.PI / 2));
    }
    curves.add(generator(Role.SEAM, "seam", 0));
    return Pattern.of(curves);
  }

  private Curve sector() {
    double sectorM = fan().lengthM(0);
    return Curve.ringSector(sectorM, sectorM * ratio(), angleRad());
  }

  private Curve development() {
    List<FlatPoint> around = new ArrayList<>();
    List<FlatPoint> back = new ArrayList<>();
    int parts = TubeDrawing.STATIONS * 16;
    ConeFan fan = fan();
    double turned = -angleRad() / 2;
    for (int i = 0; i <= parts; i++) {
      double p = 2 * Math.PI * i / parts;
      turned += i == 0 ? 0 : fan.angleRad(2 * Math.PI * (i - 1) / parts, p);
      FlatPoint large = at(fan.lengthM(p), turned);
      around.add(large);
      back.add(0, new FlatPoint(large.xM() * ratio(), large.yM() * ratio()));
    }
    around.addAll(back);
    return Curve.through(Role.CUT, "", true, around);
  }

  /** Angles run clockwise from the +y axis. */
  private static FlatPoint at(double radiusM, double turned) {
    return new FlatPoint(radiusM * Math.sin(turned), radiusM * Math.cos(turned));
  }

  private Curve generator(Role role, String label, double p) {
    FlatPoint large = at(fan().lengthM(p), turnRad(p) - angleRad() / 2);
    FlatPoint small = new FlatPoint(large.xM() * ratio(), large.yM() * ratio());
    return Curve.through(role, label, false, List.of(small, large));
  }
}
