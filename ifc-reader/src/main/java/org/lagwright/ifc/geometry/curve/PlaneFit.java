package org.lagwright.ifc.geometry.curve;

import org.lagwright.ifc.geometry.frame.Vec;

/**
 * The plane that lies nearest to some points, by least squares on their heights above a plane that
 * it leans on but little. Points can be taken away again.
 */
public final class PlaneFit {

  /** Points whose spread across is less than this share of that along lie on a line. */
  private static final double ON_A_LINE = 1e-6;

  private final Vec from;
  private final Vec u;
  private final Vec v;
  private final Vec normal;
  private double count;
  private double sumU;
  private double sumV;
  private double sumH;
  private double sumUu;
  private double sumUv;
  private double sumVv;
  private double sumUh;
  private double sumVh;
  private double sumHh;

  /**
   * @param from a point of the first plane
   * @param normal of the first plane
   */
  public PlaneFit(Vec from, Vec normal) {
    this.from = from;
    this.normal = normal;
    this.u = normal.anyNormal();
    this.v = normal.cross(u);
  }

  /** Takes a point in. */
  public void add(Vec point) {
    add(point, 1);
  }

  /** Takes a point out again. */
  public void remove(Vec point) {
    add(point, -1);
  }

  private void add(Vec point, int times) {
    Vec off = point.minus(from);
    double alongU = off.dot(u);
    double alongV = off.dot(v);
    double heightM = off.dot(normal);
    count += times;
    sumU += times * alongU;
    sumV += times * alongV;
    sumH += times * heightM;
    sumUu += times * alongU * alongU;
    sumUv += times * alongU * alongV;
    sumVv += times * alongV * alongV;
    sumUh += times * alongU * heightM;
    sumVh += times * alongV * heightM;
    sumHh += times * heightM * heightM;
  }

  /**
   * The plane, and how far the points lie off it.
   *
   * @param meanOffM root of the mean square
   */
  public record Fitted(Vec middle, Vec normal, double meanOffM) {
    /** Distance of a point from the plane in metres. */
    public double offM(Vec point) {
      return Math.abs(point.minus(middle).dot(normal));
    }
  }

  /** The plane; infinitely far off if the points lie on a line. */
  public Fitted plane() {
    double uu = sumUu - sumU * sumU / count;
    double uv = sumUv - sumU * sumV / count;
    double vv = sumVv - sumV * sumV / count;
    double uh = sumUh - sumU * sumH / count;
    double vh = sumVh - sumV * sumH / count;
    double det = uu * vv - uv * uv;
    boolean line = !(det > ON_A_LINE * (uu + vv) * (uu + vv));
    double byU = line ? 0 : (uh * vv - vh * uv) / det;
    double byV = line ? 0 : (vh * uu - uh * uv) / det;
    double offM2 = (sumHh - sumH * sumH / count - byU * uh - byV * vh) / count;
    Vec middle = u.times(sumU / count).plus(v.times(sumV / count)).plus(normal.times(sumH / count));
    return new Fitted(
        from.plus(middle),
        normal.minus(u.times(byU)).minus(v.times(byV)).unit(),
        line ? Double.POSITIVE_INFINITY : Math.sqrt(Math.max(0, offM2)));
  }
}
