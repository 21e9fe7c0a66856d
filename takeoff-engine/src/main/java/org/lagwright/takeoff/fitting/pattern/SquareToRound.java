package org.lagwright.takeoff.fitting.pattern;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.Curve.Role;

/**
 * The cover of a duct piece that leads from a rectangle to a circle: four flat triangles on the
 * sides and four quarters of oblique cones at the corners.
 *
 * @param widthM outer side along x
 * @param depthM outer side along y
 * @param radiusM outer radius of the round end
 * @param heightM distance of the two ends
 * @param offsetXM centre of the round end from that of the rectangle
 * @param offsetYM likewise along y
 * @param wallM thickness
 */
public record SquareToRound(
    double widthM,
    double depthM,
    double radiusM,
    double heightM,
    double offsetXM,
    double offsetYM,
    double wallM)
    implements PieceShape {

  private static final int PER_QUARTER = 24;

  public SquareToRound {
    if (!(widthM > 0) || !(depthM > 0) || !(radiusM > 0) || !(heightM > 0) || !(wallM > 0)) {
      throw new IllegalArgumentException(
          "no transition from " + widthM + " x " + depthM + " to radius " + radiusM);
    }
    if (!(Math.abs(offsetXM) <= widthM / 2) || !(Math.abs(offsetYM) <= depthM / 2)) {
      throw new IllegalArgumentException("the round end lies beside the rectangle");
    }
  }

  /** Corner of a quarter in the plane of the rectangle, seen from the centre of the circle. */
  private FlatPoint corner(int quarter) {
    double signX = quarter == 0 || quarter == 3 ? 1 : -1;
    double signY = quarter < 2 ? 1 : -1;
    return new FlatPoint(signX * widthM / 2 - offsetXM, signY * depthM / 2 - offsetYM);
  }

  private ConeFan fan(int quarter) {
    FlatPoint corner = corner(quarter);
    return new ConeFan(radiusM, heightM, corner.xM(), corner.yM());
  }

  @Override
  public double areaM2() {
    double sum = 0;
    for (int quarter = 0; quarter < 4; quarter++) {
      sum += fan(quarter).areaM2(quarter * Math.PI / 2, (quarter + 1) * Math.PI / 2);
      sum += triangleM2(quarter);
    }
    return sum;
  }

  /** The triangle before a quarter: one side of the rectangle and a point of the circle. */
  private double triangleM2(int quarter) {
    boolean alongY = quarter % 2 == 0;
    FlatPoint corner = corner(quarter);
    double outM = Math.abs(alongY ? corner.xM() : corner.yM()) - radiusM;
    return (alongY ? depthM : widthM) * Math.hypot(heightM, outM) / 2;
  }

  /** The outer area times the wall; the thickness is small against the sides. */
  @Override
  public double volumeM3() {
    return areaM2() * wallM;
  }

  @Override
  public double cutLengthM() {
    return 2 * (widthM + depthM) + 2 * Math.PI * radiusM;
  }

  @Override
  public double stockLengthM() {
    return 0;
  }

  /** Laid flat from a seam in the middle of the side at +x. */
  @Override
  public Pattern pattern() {
    Strip strip = new Strip();
    for (int quarter = 0; quarter < 4; quarter++) {
      strip.quarter(quarter);
    }
    strip.lastHalfTriangle();
    return strip.pattern();
  }

  /** Lays one part beside the other. */
  private final class Strip {

    private final List<FlatPoint> square = new ArrayList<>();
    private final List<FlatPoint> round = new ArrayList<>();
    private final List<Curve> folds = new ArrayList<>();

    Strip() {
      double outM = corner(0).xM() - radiusM;
      square.add(new FlatPoint(0, 0));
      round.add(new FlatPoint(0, -Math.hypot(heightM, outM)));
    }

    void quarter(int quarter) {
      double wholeSideM = quarter % 2 == 0 ? depthM : widthM;
      double sideM = quarter == 0 ? Math.abs(corner(0).yM()) : wholeSideM;
      double rayM = fan(quarter).lengthM(quarter * Math.PI / 2);
      FlatPoint next = third(last(round), last(square), rayM, sideM);
      square.add(next);
      folds.add(fold(next, last(round)));
      fanOut(quarter, next);
      folds.add(fold(next, last(round)));
    }

    private void fanOut(int quarter, FlatPoint apex) {
      ConeFan fan = fan(quarter);
      FlatPoint from = last(round);
      double direction = Math.atan2(from.yM() - apex.yM(), from.xM() - apex.xM());
      double start = quarter * Math.PI / 2;
      double step = Math.PI / 2 / PER_QUARTER;
      for (int i = 1; i <= PER_QUARTER; i++) {
        direction += fan.angleRad(start + (i - 1) * step, start + i * step);
        FlatPoint ray = FlatPoint.polar(fan.lengthM(start + i * step), direction);
        round.add(ray.plus(apex.xM(), apex.yM()));
      }
    }

    void lastHalfTriangle() {
      double outM = corner(0).xM() - radiusM;
      double seamM = Math.hypot(heightM, outM);
      double sideM = Math.abs(corner(3).yM());
      square.add(third(last(round), last(square), seamM, sideM));
    }

    Pattern pattern() {
      List<FlatPoint> around = new ArrayList<>(square);
      for (int i = round.size() - 1; i >= 0; i--) {
        around.add(round.get(i));
      }
      List<Curve> curves = new ArrayList<>();
      curves.add(Curve.through(Role.CUT, "", true, around));
      curves.addAll(folds);
      return Pattern.of(curves);
    }
  }

  private static FlatPoint last(List<FlatPoint> points) {
    return points.get(points.size() - 1);
  }

  private static Curve fold(FlatPoint from, FlatPoint to) {
    return Curve.through(Role.FOLD, "", false, List.of(from, to));
  }

  /** The corner of a triangle at these distances from two others, on the left of a to b. */
  private static FlatPoint third(FlatPoint a, FlatPoint b, double fromAM, double fromBM) {
    double base = a.distanceM(b);
    double along = (base * base + fromAM * fromAM - fromBM * fromBM) / (2 * base);
    double beside = Math.sqrt(Math.max(0, fromAM * fromAM - along * along));
    double ux = (b.xM() - a.xM()) / base;
    double uy = (b.yM() - a.yM()) / base;
    return a.plus(along * ux + beside * uy, along * uy - beside * ux);
  }
}
