package org.lagwright.ifc.geometry.surface;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.BSpline;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.step.StepArguments;

/** A B-spline surface, rational or not; parameters as its knots have them. */
final class BSplineSurface implements Surface {

  private static final int MAX_DEGREE = 25;

  /** Parameters in each direction that are tried before a point is approached. */
  private static final int TRIALS = 24;

  private static final int ROUNDS = 30;

  /** Edges nearer than this are one, so that the surface is closed. */
  private static final double CLOSED_M = 1e-6;

  private final int degreeU;
  private final int degreeV;
  private final double[] knotsU;
  private final double[] knotsV;
  private final Vec[][] control;
  private final double[][] weights;
  private final double periodU;
  private final double periodV;

  private BSplineSurface(
      int degreeU,
      int degreeV,
      double[] knotsU,
      double[] knotsV,
      Vec[][] control,
      double[][] weights) {
    this.degreeU = degreeU;
    this.degreeV = degreeV;
    this.knotsU = knotsU;
    this.knotsV = knotsV;
    this.control = control;
    this.weights = weights;
    this.periodU = isClosed(true) ? rangeU() : 0;
    this.periodV = isClosed(false) ? rangeV() : 0;
  }

  /** The surface, null if degrees, knots, weights and control points do not fit together. */
  static @Nullable BSplineSurface read(IfcRecord surface, Coordinates coordinates) {
    List<List<IfcRecord>> points = surface.rows("ControlPointsList");
    int rows = points.size();
    int degreeU = (int) surface.number("UDegree");
    int degreeV = (int) surface.number("VDegree");
    int columns = rows == 0 ? 0 : points.get(0).size();
    if (points.stream().anyMatch(row -> row.size() != columns)) {
      return null;
    }
    double[] u = BSpline.knots(surface.numbers("UMultiplicities"), surface.numbers("UKnots"));
    double[] v = BSpline.knots(surface.numbers("VMultiplicities"), surface.numbers("VKnots"));
    boolean fits = fits(degreeU, rows, u) && fits(degreeV, columns, v);
    Vec[][] control = new Vec[rows][columns];
    double[][] weights = new double[rows][columns];
    StepArguments weightRows = surface.list("WeightsData");
    for (int i = 0; i < rows && fits; i++) {
      double[] row = weightRows.size() == rows ? weightRows.numbers(i) : new double[0];
      for (int j = 0; j < columns; j++) {
        Vec point = coordinates.point(points.get(i).get(j));
        weights[i][j] = row.length == columns ? row[j] : 1;
        if (point == null || !(weights[i][j] > 0)) {
          return null;
        }
        control[i][j] = point;
      }
    }
    return fits ? new BSplineSurface(degreeU, degreeV, u, v, control, weights) : null;
  }

  private static boolean fits(int degree, int count, double[] knots) {
    return degree >= 1
        && degree <= MAX_DEGREE
        && count > degree
        && knots.length == count + degree + 1
        && knots[count] > knots[degree];
  }

  private boolean isClosed(boolean inU) {
    double fromU = knotsU[degreeU];
    double fromV = knotsV[degreeV];
    for (int i = 0; i <= 4; i++) {
      double share = i / 4.0;
      Vec a = inU ? at(fromU, fromV + share * rangeV()) : at(fromU + share * rangeU(), fromV);
      Vec b =
          inU
              ? raw(fromU + rangeU(), fromV + share * rangeV())
              : raw(fromU + share * rangeU(), fromV + rangeV());
      if (a.distanceTo(b) > CLOSED_M) {
        return false;
      }
    }
    return true;
  }

  @Override
  public double rangeU() {
    return knotsU[knotsU.length - 1 - degreeU] - knotsU[degreeU];
  }

  @Override
  public double rangeV() {
    return knotsV[knotsV.length - 1 - degreeV] - knotsV[degreeV];
  }

  @Override
  public double periodU() {
    return periodU;
  }

  @Override
  public double periodV() {
    return periodV;
  }

  @Override
  public Vec at(double u, double v) {
    return raw(wrapped(u, knotsU[degreeU], periodU), wrapped(v, knotsV[degreeV], periodV));
  }

  private static double wrapped(double t, double from, double period) {
    return period == 0 ? t : t - period * Math.floor((t - from) / period);
  }

  /** Beyond its knots the surface runs on as its first or last part does. */
  private Vec raw(double u, double v) {
    int spanU = span(degreeU, knotsU, u);
    int spanV = span(degreeV, knotsV, v);
    double[] byU = basis(degreeU, knotsU, spanU, u);
    double[] byV = basis(degreeV, knotsV, spanV, v);
    Vec sum = Vec.ZERO;
    double weight = 0;
    for (int i = 0; i <= degreeU; i++) {
      for (int j = 0; j <= degreeV; j++) {
        int row = spanU - degreeU + i;
        int column = spanV - degreeV + j;
        double share = byU[i] * byV[j] * weights[row][column];
        sum = sum.plus(control[row][column].times(share));
        weight += share;
      }
    }
    return sum.times(1 / weight);
  }

  private static int span(int degree, double[] knots, double t) {
    int last = knots.length - degree - 2;
    int span = degree;
    while (span < last && t >= knots[span + 1]) {
      span++;
    }
    // back over knots that stand several times
    while (span > degree && knots[span + 1] <= knots[span]) {
      span--;
    }
    return span;
  }

  /**
   * The basis functions that are not zero there, by the recursion of Cox and de Boor; from memory.
   */
  private static double[] basis(int degree, double[] knots, int span, double t) {
    double[] basis = new double[degree + 1];
    double[] left = new double[degree + 1];
    double[] right = new double[degree + 1];
    basis[0] = 1;
    for (int k = 1; k <= degree; k++) {
      left[k] = t - knots[span + 1 - k];
      right[k] = knots[span + k] - t;
      double saved = 0;
      for (int r = 0; r < k; r++) {
        double share = basis[r] / (right[r + 1] + left[k - r]);
        basis[r] = saved + right[r + 1] * share;
        saved = left[k - r] * share;
      }
      basis[k] = saved;
    }
    return basis;
  }

  @Override
  public UV parameters(Vec point, UV near) {
    UV best = new UV(knotsU[degreeU], knotsV[degreeV]);
    double leastM = Double.MAX_VALUE;
    for (int i = 0; i <= TRIALS; i++) {
      for (int j = 0; j <= TRIALS; j++) {
        UV uv =
            new UV(
                knotsU[degreeU] + rangeU() * i / TRIALS, knotsV[degreeV] + rangeV() * j / TRIALS);
        double offM = at(uv.u(), uv.v()).distanceTo(point);
        if (offM < leastM) {
          leastM = offM;
          best = uv;
        }
      }
    }
    UV found = approach(point, best);
    return new UV(
        Surface.near(found.u(), near.u(), periodU), Surface.near(found.v(), near.v(), periodV));
  }

  /** Newton's method in the tangent plane. */
  private UV approach(Vec point, UV start) {
    UV uv = start;
    for (int round = 0; round < ROUNDS; round++) {
      Vec off = point.minus(at(uv.u(), uv.v()));
      Vec du = alongU(uv.u(), uv.v());
      Vec dv = alongV(uv.u(), uv.v());
      double a = du.dot(du);
      double b = du.dot(dv);
      double c = dv.dot(dv);
      double determinant = a * c - b * b;
      if (!(determinant > 0)) {
        return uv;
      }
      double stepU = (c * off.dot(du) - b * off.dot(dv)) / determinant;
      double stepV = (a * off.dot(dv) - b * off.dot(du)) / determinant;
      uv = new UV(inside(uv.u() + stepU, true), inside(uv.v() + stepV, false));
      if (Math.abs(stepU) < 1e-12 * rangeU() && Math.abs(stepV) < 1e-12 * rangeV()) {
        return uv;
      }
    }
    return uv;
  }

  private double inside(double t, boolean inU) {
    double from = inU ? knotsU[degreeU] : knotsV[degreeV];
    double range = inU ? rangeU() : rangeV();
    double period = inU ? periodU : periodV;
    return period > 0 ? t : Math.max(from, Math.min(from + range, t));
  }
}
