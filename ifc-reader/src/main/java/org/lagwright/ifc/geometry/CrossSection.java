package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.OutlineFit;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * The cross-section of a straight pipe or duct, and how bodies lie to it.
 *
 * @param start of the axis
 * @param axis from end to end
 * @param u half the width of a rectangular one
 * @param v half its height
 * @param radiusM of a round one; 0 if it is rectangular
 */
record CrossSection(Vec start, Vec axis, Vec u, Vec v, double radiusM) {

  /** Two surfaces that are drawn as one, and corners of one arc. */
  private static final double TOLERANCE_M = 0.001;

  /** An arc is drawn with three corners at least; a box around it touches a circle with two. */
  private static final int FEWEST_ON_ARC = 3;

  /** What keeps off further is not fixed to it. Common practice, no source. */
  private static final double FURTHEST_M = 0.1;

  /** Null if it is not straight, or its section is neither round nor rectangular. */
  static @Nullable CrossSection of(Shape host) {
    if (!Coaxiality.isStraight(host)) {
      return null;
    }
    ShapeEnd end = host.ends().get(0);
    Vec axis = host.ends().get(1).centre().minus(end.centre());
    Point width = end.width();
    if (end.section() instanceof Section.Round round) {
      return new CrossSection(end.centre(), axis, Vec.ZERO, Vec.ZERO, round.outsideDiameterM() / 2);
    }
    if (end.section() instanceof Section.Rectangular sides && width != null) {
      Vec u = Vec.of(width).unit();
      Vec v = axis.unit().cross(u);
      return new CrossSection(
          end.centre(), axis, u.times(sides.widthM() / 2), v.times(sides.heightM() / 2), 0);
    }
    return null;
  }

  /** True for a point within the surface, or on it. */
  boolean holds(Vec point) {
    Vec off = point.minus(start).across(axis.unit());
    return radiusM > 0
        ? off.norm() <= radiusM + TOLERANCE_M
        : beyond(off, u) <= TOLERANCE_M
            && beyond(off, u.times(-1)) <= TOLERANCE_M
            && beyond(off, v) <= TOLERANCE_M
            && beyond(off, v.times(-1)) <= TOLERANCE_M;
  }

  /** How far a point lies beyond the face that half a side points to. */
  private static double beyond(Vec off, Vec half) {
    return off.dot(half.unit()) - half.norm();
  }

  /** How an item lies beside the axis; null if it lies elsewhere or does not follow the surface. */
  @Nullable Beside beside(List<Vec> item) {
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Vec corner : item) {
      double along = corner.minus(start).dot(axis.unit()) / axis.norm();
      low = Math.min(low, along);
      high = Math.max(high, along);
    }
    Coaxiality.Extent extent = Coaxiality.common(low, high);
    if (extent == null) {
      return null;
    }
    return radiusM > 0 ? shell(item, extent) : board(item, extent);
  }

  /** A part of a ring: all its corners lie on one of two circles, and more than a box has. */
  private @Nullable Beside shell(List<Vec> item, Coaxiality.Extent extent) {
    double wallM = ringWallM(item);
    double least = leastM(item);
    boolean around =
        wallM > 0
            && least > radiusM - TOLERANCE_M
            && least < radiusM + FURTHEST_M
            && onCircle(item, least) >= FEWEST_ON_ARC;
    return around
        ? new Beside(true, least - radiusM, wallM, turn(item) / (2 * Math.PI), 0, extent)
        : null;
  }

  /** Between the two circles about the axis that all corners lie on; 0 if they lie otherwise. */
  double ringWallM(List<Vec> corners) {
    double least = leastM(corners);
    double most = 0;
    for (Vec corner : corners) {
      most = Math.max(most, offM(corner));
    }
    for (Vec corner : corners) {
      if (Math.min(offM(corner) - least, most - offM(corner)) > TOLERANCE_M) {
        return 0;
      }
    }
    boolean ring = radiusM > 0 && least > TOLERANCE_M && most - least > TOLERANCE_M;
    return ring ? most - least : 0;
  }

  private double leastM(List<Vec> corners) {
    double least = Double.MAX_VALUE;
    for (Vec corner : corners) {
      least = Math.min(least, offM(corner));
    }
    return least;
  }

  private double offM(Vec corner) {
    return corner.minus(start).across(axis.unit()).norm();
  }

  /** How many corners lie on a circle about the axis, those behind one another as one. */
  private int onCircle(List<Vec> item, double circleM) {
    List<Vec> found = new ArrayList<>();
    for (Vec corner : item) {
      Vec off = corner.minus(start).across(axis.unit());
      boolean on = Math.abs(off.norm() - circleM) <= TOLERANCE_M;
      for (Vec other : found) {
        on &= off.minus(other).norm() > TOLERANCE_M;
      }
      if (on) {
        found.add(off);
      }
    }
    return found.size();
  }

  /** The angle that corners span about the axis: all but the widest gap between them. */
  private double turn(List<Vec> item) {
    Vec x = axis.unit().anyNormal();
    return 2 * Math.PI - OutlineFit.widestGapRad(item, start, x, axis.unit().cross(x));
  }

  /** A piece on one of the four faces. */
  private @Nullable Beside board(List<Vec> item, Coaxiality.Extent extent) {
    Beside best = null;
    for (Vec face : List.of(u, u.times(-1), v, v.times(-1))) {
      Beside on = onFace(item, face, extent);
      best = on != null && (best == null || on.gapM() < best.gapM()) ? on : best;
    }
    return best;
  }

  private @Nullable Beside onFace(List<Vec> item, Vec face, Coaxiality.Extent extent) {
    Vec side = face.equals(u) || face.equals(u.times(-1)) ? v : u;
    double nearM = Double.MAX_VALUE;
    double farM = -Double.MAX_VALUE;
    double leftM = Double.MAX_VALUE;
    double rightM = -Double.MAX_VALUE;
    for (Vec corner : item) {
      Vec off = corner.minus(start);
      nearM = Math.min(nearM, beyond(off, face));
      farM = Math.max(farM, beyond(off, face));
      leftM = Math.min(leftM, off.dot(side.unit()));
      rightM = Math.max(rightM, off.dot(side.unit()));
    }
    double halfM = side.norm();
    double onM = Math.min(rightM, halfM) - Math.max(leftM, -halfM);
    double overM = Math.max(0, Math.max(rightM, -leftM) - halfM);
    boolean onIt = nearM > -TOLERANCE_M && nearM < FURTHEST_M && farM - nearM > TOLERANCE_M;
    double around = onM / (4 * (u.norm() + v.norm()));
    return around > 0 && onIt
        ? new Beside(false, nearM, farM - nearM, around, overM, extent)
        : null;
  }
}
