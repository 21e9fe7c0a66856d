package org.lagwright.ifc.geometry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;

/** Whether one body lies along the axis of another one, and over which part of it. */
public final class Coaxiality {

  /** Insulation is drawn on the axis of its pipe; exporters round to a few millimetres. */
  private static final double OFF_AXIS_M = 0.005;

  private static final double OFF_AXIS = 0.02;

  /** Sine of one degree. */
  private static final double OFF_PARALLEL = 0.0175;

  /** Part of the shorter body that must lie beside the other one. */
  private static final double OVERLAP = 0.5;

  private Coaxiality() {}

  /** A part of a body along its axis: 0 at its first end, 1 at its last. */
  public record Extent(double from, double to) {

    /** All of it. */
    public static final Extent WHOLE = new Extent(0, 1);

    /** Share of the body, from 0 to 1. */
    public double length() {
      return to - from;
    }

    /** True if more than half of the shorter one lies within the other. */
    public boolean overlaps(Extent other) {
      double common = Math.min(to, other.to) - Math.max(from, other.from);
      return common > OVERLAP * Math.min(length(), other.length());
    }
  }

  /** How far off the axis of a body another one may be drawn, in metres. */
  public static double toleranceM(Shape body) {
    double sideM = body.section() == null ? 0 : body.section().value().largestSideM();
    return Math.max(OFF_AXIS_M, OFF_AXIS * sideM) + Vec.WELD_M;
  }

  /** True if both share their axis over more than half of the shorter one, or all their ends. */
  public static boolean runsAlong(Shape covering, Shape host) {
    return extent(covering, host) != null;
  }

  /**
   * The part of the host that a covering lies along; null if it lies elsewhere, or if one of the
   * two has no ends that tell.
   */
  public static @Nullable Extent extent(Shape covering, Shape host) {
    double toleranceM = toleranceM(covering);
    if (isStraight(covering) && isStraight(host)) {
      return alongAxis(centre(covering, 0), centre(covering, 1), host.ends(), toleranceM);
    }
    if (endsMeet(covering.ends(), host.ends(), toleranceM)) {
      return Extent.WHOLE;
    }
    BentCovering bent = BentCovering.of(covering);
    return bent == null ? null : bent.extent(host, toleranceM);
  }

  private static Vec centre(Shape shape, int end) {
    return shape.ends().get(end).centre();
  }

  /** The upright box around the axis of a body of two ends or more. */
  public static Box box(Shape body) {
    BentCovering bent = BentCovering.of(body);
    return bent == null ? body.endsBox() : Box.around(bent.corners());
  }

  /** Two ends on one line, whatever is between them. */
  public static boolean isStraight(Shape shape) {
    if (shape.ends().size() != 2) {
      return false;
    }
    ShapeEnd first = shape.ends().get(0);
    ShapeEnd last = shape.ends().get(1);
    Vec axis = last.centre().minus(first.centre());
    return !axis.isTiny()
        && last.out().cross(axis.unit()).norm() < OFF_PARALLEL
        && first.out().cross(axis.unit()).norm() < OFF_PARALLEL;
  }

  /** Of a straight host beside a straight covering from end to end. */
  static @Nullable Extent alongAxis(Vec from, Vec to, List<ShapeEnd> host, double toleranceM) {
    Vec start = host.get(0).centre();
    Vec axis = host.get(1).centre().minus(start);
    Vec unit = axis.unit();
    Vec a = from.minus(start);
    Vec b = to.minus(start);
    if (!areParallel(b.minus(a).unit(), unit)
        || a.across(unit).norm() > toleranceM
        || b.across(unit).norm() > toleranceM) {
      return null;
    }
    double lengthM = axis.norm();
    double low = Math.min(a.dot(unit), b.dot(unit)) / lengthM;
    double high = Math.max(a.dot(unit), b.dot(unit)) / lengthM;
    return common(low, high);
  }

  /** True for unit vectors along one line. */
  static boolean areParallel(Vec one, Vec other) {
    return one.cross(other).norm() < OFF_PARALLEL;
  }

  /** The part of a body beside which another one lies, null if that is mostly elsewhere. */
  static @Nullable Extent common(double low, double high) {
    Extent common = new Extent(Math.max(0, low), Math.min(1, high));
    return common.length() > OVERLAP * Math.min(1, high - low) ? common : null;
  }

  private static boolean endsMeet(List<ShapeEnd> covering, List<ShapeEnd> host, double toleranceM) {
    long met =
        covering.stream()
            .filter(end -> host.stream().anyMatch(other -> meets(end, other, toleranceM)))
            .count();
    return met > 1 && met == Math.min(covering.size(), host.size());
  }

  /** Insulation may stop short of the end of a fitting by as much as its own tolerance. */
  private static boolean meets(ShapeEnd end, ShapeEnd other, double toleranceM) {
    Vec apart = other.centre().minus(end.centre());
    return apart.norm() < 2 * toleranceM && end.out().cross(other.out()).norm() < 5 * OFF_PARALLEL;
  }
}
