package org.lagwright.takeoff.fitting.pattern;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.Curve.Role;

/**
 * One tube bent by wedges cut out of it, which hinge at the heel.
 *
 * <p>Half the opening of a wedge at a point x of the cross-section is (half width - x) tan(alpha),
 * with alpha = angle / (2 x wedges). What is left has the area and volume of the mitred bend.
 *
 * @param outer outer face
 * @param wallM thickness
 * @param bendRadiusM radius of the centre line
 * @param angleRad angle of the bend
 * @param wedges number of wedges
 * @param legsM straight length at each end beyond the bend
 */
public record NotchedTube(
    Outline outer, double wallM, double bendRadiusM, double angleRad, int wedges, double legsM)
    implements PieceShape {

  public NotchedTube {
    if (!(wallM > 0) || !(angleRad > 0) || wedges < 1 || !(legsM >= 0)) {
      throw new IllegalArgumentException("no bend of " + wedges + " wedges and " + angleRad);
    }
    if (!(bendRadiusM > outer.widthM() / 2)) {
      throw new IllegalArgumentException("wedges meet: the throat of the bend is too tight");
    }
  }

  private double tangent() {
    return Math.tan(angleRad / (2 * wedges));
  }

  private double centreLineM() {
    return 2 * legsM + 2 * wedges * bendRadiusM * tangent();
  }

  /** Opening of one wedge at the throat, metres. */
  public double openingM() {
    return 2 * outer.widthM() * tangent();
  }

  @Override
  public double areaM2() {
    return outer.girthM() * centreLineM();
  }

  @Override
  public double volumeM3() {
    return plain(centreLineM()).volumeM3();
  }

  private TubePiece plain(double lengthM) {
    return TubePiece.straight(outer, wallM, lengthM);
  }

  @Override
  public double cutLengthM() {
    TubePiece tube = plain(centreLineM());
    return 2 * wedges * tube.edgeM(EndCut.mitre(Math.atan(tangent()))) + 2 * outer.girthM();
  }

  /** The heel, which stays whole. */
  @Override
  public double stockLengthM() {
    return 2 * legsM + 2 * wedges * (bendRadiusM + outer.widthM() / 2) * tangent();
  }

  @Override
  public Pattern pattern() {
    Pattern tube = plain(stockLengthM()).pattern();
    List<Curve> curves = new ArrayList<>(tube.curves());
    double spacingM = 2 * (bendRadiusM + outer.widthM() / 2) * tangent();
    for (int i = 0; i < wedges; i++) {
      curves.add(wedge(legsM + (i + 0.5) * spacingM));
    }
    return new Pattern(curves, tube.ordinates(), tube.toleranceM());
  }

  /** Both edges of a wedge from the throat to the hinge and on to the throat. */
  private Curve wedge(double atM) {
    List<FlatPoint> upper = new ArrayList<>();
    List<FlatPoint> lower = new ArrayList<>();
    int parts = TubeDrawing.STATIONS * 8;
    for (int i = 0; i <= parts; i++) {
      double xM = outer.girthM() * i / parts;
      double sM = (xM + outer.girthM() / 2) % outer.girthM();
      double halfM = (outer.widthM() / 2 - outer.at(sM, 0).xM()) * tangent();
      upper.add(new FlatPoint(xM, atM + halfM));
      lower.add(0, new FlatPoint(xM, atM - halfM));
    }
    upper.addAll(lower);
    return Curve.through(Role.CUT, "wedge", true, upper);
  }
}
