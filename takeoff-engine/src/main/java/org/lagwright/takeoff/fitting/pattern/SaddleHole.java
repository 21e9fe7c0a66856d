package org.lagwright.takeoff.fitting.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The hole a round branch makes in a round main.
 *
 * <p>On the main laid flat: u = a asin((e + b sin phi) / a) round the girth, v = cot(beta) sqrt(a^2
 * - (e + b sin phi)^2) + b cos(phi) / sin(beta) along the axis. Derived from the intersection of
 * two cylinders.
 *
 * @param mainRadiusM outer radius a of the main, metres
 * @param branchRadiusM radius b of the branch, metres
 * @param offsetM distance e of the axes, metres
 * @param angleRad angle beta between the axes
 * @param alongM where along the main the axes pass each other, from its start, metres
 * @param turn where round the main the branch stands, in turns from the heel
 */
public record SaddleHole(
    double mainRadiusM,
    double branchRadiusM,
    double offsetM,
    double angleRad,
    double alongM,
    double turn) {

  public SaddleHole {
    if (!(branchRadiusM > 0)
        || !(branchRadiusM + Math.abs(offsetM) <= mainRadiusM * (1 + 1e-12))
        || !(angleRad > 0 && angleRad <= Math.PI / 2 + 1e-12)) {
      throw new IllegalArgumentException(
          "a branch of radius "
              + branchRadiusM
              + " at offset "
              + offsetM
              + " does not land on a main of radius "
              + mainRadiusM);
    }
  }

  /** Where the edge lies round the girth, from the point under the branch, metres. */
  public double girthM(double phiRad) {
    double share = (offsetM + branchRadiusM * Math.sin(phiRad)) / mainRadiusM;
    return mainRadiusM * Math.asin(Math.max(-1, Math.min(1, share)));
  }

  /** Where the edge lies along the main from the crossing of the axes, metres. */
  public double axialM(double phiRad) {
    double acrossM = offsetM + branchRadiusM * Math.sin(phiRad);
    double heightM = Math.sqrt(Math.max(0, mainRadiusM * mainRadiusM - acrossM * acrossM));
    return heightM / Math.tan(angleRad) + branchRadiusM * Math.cos(phiRad) / Math.sin(angleRad);
  }

  /** Area of the hole on the outer face of the main, square metres. */
  public double areaM2() {
    return areaAtM2(mainRadiusM);
  }

  /**
   * Area of the hole on a cylinder inside the main.
   *
   * @param radiusM radius of that cylinder, metres
   */
  double areaAtM2(double radiusM) {
    double b = branchRadiusM;
    if (b + Math.abs(offsetM) <= radiusM) {
      DoubleUnaryOperator strip =
          phi -> {
            double acrossM = offsetM + b * Math.sin(phi);
            return Math.cos(phi) * Math.cos(phi) / Math.sqrt(radiusM * radiusM - acrossM * acrossM);
          };
      double integral = Quadrature.between(-Math.PI / 2, Math.PI / 2, strip);
      return 2 * radiusM * b * b * integral / Math.sin(angleRad);
    }
    double from = Math.asin(Math.max(-1, (offsetM - b) / radiusM));
    double to = Math.asin(Math.min(1, (offsetM + b) / radiusM));
    DoubleUnaryOperator width =
        psi -> {
          double besideM = radiusM * Math.sin(psi) - offsetM;
          return Math.sqrt(Math.max(0, b * b - besideM * besideM));
        };
    return 2 * radiusM * Quadrature.between(from, to, width) / Math.sin(angleRad);
  }

  /** Volume the hole takes out of a wall below the outer face, cubic metres. */
  double volumeM3(double wallM) {
    return Quadrature.between(mainRadiusM - wallM, mainRadiusM, this::areaAtM2);
  }

  /** Length of its edge, metres. */
  public double edgeM() {
    TubePiece branch =
        new TubePiece(
            new Outline.Circle(branchRadiusM),
            branchRadiusM / 2,
            10 * mainRadiusM / Math.sin(angleRad),
            EndCut.SQUARE,
            new EndCut.Saddle(mainRadiusM, offsetM, angleRad),
            List.of(),
            0);
    return branch.edgeM(branch.end());
  }

  /** The edge laid flat, u to the right and along the main upwards from its start. */
  List<FlatPoint> edge(int points) {
    List<FlatPoint> edge = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      double phi = 2 * Math.PI * i / points;
      edge.add(new FlatPoint(girthM(phi), alongM + axialM(phi)));
    }
    return edge;
  }
}
