package org.lagwright.takeoff.fitting.pattern;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * A piece of tube, or of sheet bent round, with any cut at each end and with holes for branches.
 *
 * <p>Length of the wall at a point of the cross-section = axis + reach of both cuts there. Area,
 * volume and edges are integrals of it round the girth and through the wall; parallel layers of the
 * wall shrink by (1 - depth x curvature).
 *
 * @param outer outer face
 * @param wallM thickness
 * @param axisM distance between the reference points of both cuts along the axis
 * @param start cut at the start
 * @param end cut at the end
 * @param holes holes for branches
 * @param seamTurn where the longitudinal joint lies, in turns from the heel: 0.5 is the throat
 */
public record TubePiece(
    Outline outer,
    double wallM,
    double axisM,
    EndCut start,
    EndCut end,
    List<SaddleHole> holes,
    double seamTurn)
    implements PieceShape {

  /** Step for derivatives of reach, metres; error about 1e-10. */
  private static final double STEP_M = 1e-6;

  /** Rounding that still counts as touching, metres. */
  private static final double TOUCH_M = 1e-9;

  public TubePiece {
    holes = List.copyOf(holes);
    if (!(wallM > 0 && wallM <= outer.widthM() / 2) || !Double.isFinite(axisM)) {
      throw new IllegalArgumentException("no tube of wall " + wallM + " and length " + axisM);
    }
    if (!(seamTurn >= 0 && seamTurn < 1)) {
      throw new IllegalArgumentException("the seam lies within one turn, not at " + seamTurn);
    }
    if (shortestM(outer, axisM, start, end) < -TOUCH_M) {
      throw new IllegalArgumentException("the cuts of a tube of length " + axisM + " cross");
    }
  }

  /** A plain tube with square ends and the seam at the throat. */
  public static TubePiece straight(Outline outer, double wallM, double lengthM) {
    return new TubePiece(outer, wallM, lengthM, EndCut.SQUARE, EndCut.SQUARE, List.of(), 0.5);
  }

  private static double shortestM(Outline outer, double axisM, EndCut start, EndCut end) {
    double shortest = Double.POSITIVE_INFINITY;
    int samples = 72;
    for (int i = 0; i < samples; i++) {
      FlatPoint at = outer.at(outer.girthM() * i / samples, 0);
      shortest = Math.min(shortest, axisM + start.reachM(at) + end.reachM(at));
    }
    return shortest;
  }

  /** Length of the wall at a point of the cross-section, metres. */
  private double lengthM(FlatPoint at) {
    return axisM + start.reachM(at) + end.reachM(at);
  }

  /**
   * Length of the outer face along the tube, metres.
   *
   * @param turn from the heel, in turns
   */
  public double lengthAtM(double turn) {
    return lengthM(outer.at(outer.girthM() * (turn - Math.floor(turn)), 0));
  }

  /** Cross-section of the wall, square metres: an outline turns once round, whatever its shape. */
  public double ringM2() {
    return outer.girthM() * wallM - Math.PI * wallM * wallM;
  }

  /** Cuts along single planes give and take equally much. */
  private boolean isCutByPlanes() {
    return isSinglePlane(start) && isSinglePlane(end);
  }

  @Override
  public double areaM2() {
    double whole =
        isCutByPlanes()
            ? outer.girthM() * axisM
            : Quadrature.over(outer.breaksM(), s -> lengthM(outer.at(s, 0)));
    return whole - holes.stream().mapToDouble(SaddleHole::areaM2).sum();
  }

  @Override
  public double volumeM3() {
    double whole =
        isCutByPlanes()
            ? ringM2() * axisM
            : throughWall((s, depthM) -> lengthM(outer.at(s, depthM)));
    return whole - holes.stream().mapToDouble(hole -> hole.volumeM3(wallM)).sum();
  }

  /** Integral over the ring of the cross-section. */
  private double throughWall(DoubleBinaryOperator f) {
    return Quadrature.panel(
        0,
        wallM,
        depthM ->
            Quadrature.over(
                outer.breaksM(),
                s -> f.applyAsDouble(s, depthM) * (1 - depthM * outer.curvaturePerM(s))));
  }

  @Override
  public double cutLengthM() {
    return edgeM(start) + edgeM(end) + holes.stream().mapToDouble(SaddleHole::edgeM).sum();
  }

  /** Length of the edge of a cut on the outer face, metres. */
  public double edgeM(EndCut cut) {
    if (cut.equals(EndCut.SQUARE)) {
      return outer.girthM();
    }
    return Quadrature.over(outer.breaksM(), s -> Math.hypot(1, slope(cut, s, 0)));
  }

  private double slope(EndCut cut, double sM, double depthM) {
    DoubleUnaryOperator reach = at -> cut.reachM(outer.at(inGirth(at), depthM));
    double perOuterM =
        (reach.applyAsDouble(sM + STEP_M) - reach.applyAsDouble(sM - STEP_M)) / (2 * STEP_M);
    return perOuterM / (1 - depthM * outer.curvaturePerM(sM));
  }

  private double inGirth(double sM) {
    double girth = outer.girthM();
    return sM < 0 ? sM + girth : sM >= girth ? sM - girth : sM;
  }

  /** Area of the face of a cut, which gets adhesive, square metres. */
  public double faceM2(EndCut cut) {
    if (cut instanceof EndCut.Planes planes && planes.slopes().size() == 1) {
      return ringM2() * Math.hypot(1, planes.slopes().get(0)); // a plane cut, seen along the tube
    }
    return throughWall(
        (s, depthM) -> {
          double inwards =
              (cut.reachM(outer.at(s, depthM + STEP_M)) - cut.reachM(outer.at(s, depthM - STEP_M)))
                  / (2 * STEP_M);
          return Math.hypot(Math.hypot(1, slope(cut, s, depthM)), inwards);
        });
  }

  /** Tubes whose ends are single planes share their cuts, turned by half a turn. */
  @Override
  public double stockLengthM() {
    return isCutByPlanes() ? axisM : longestM();
  }

  private static boolean isSinglePlane(EndCut cut) {
    return cut instanceof EndCut.Planes planes && planes.slopes().size() == 1;
  }

  /** Longest generator on the outer face, metres. */
  public double longestM() {
    double longest = 0;
    int samples = 720;
    for (int i = 0; i < samples; i++) {
      longest = Math.max(longest, lengthAtM((double) i / samples));
    }
    return longest;
  }

  @Override
  public Pattern pattern() {
    return new TubeDrawing(this).pattern();
  }
}
