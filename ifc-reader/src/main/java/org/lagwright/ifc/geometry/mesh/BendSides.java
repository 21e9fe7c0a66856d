package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.BendLegs;

/**
 * Throat and heel of a bend that is rectangular or oval, seen along the axis that it turns about.
 *
 * @param corners of the body, moved into the plane of the bend
 * @param halvesM how far each would be from the centre line if it lay on throat or heel: of an oval
 *     this depends on its height over the plane
 * @param largestM half the width of the ends in the plane of the bend
 */
record BendSides(BendLegs legs, List<Vec> corners, double[] halvesM, double largestM) {

  /** Share of half the width by which corners may lie outside. */
  private static final double OUTSIDE = 0.02;

  /** Corners on a side for each one outside: hangers and stiffeners have some. */
  private static final int MOST_OUTSIDE = 10;

  /** How near to where an arc begins, over half the width, the corners there must be. */
  private static final double AT_JOINT = 0.02;

  /**
   * The sides, null if the body is not as high in its middle as at its ends, which are flanges
   * then. Of a rectangular duct only the corners of its cheeks count, as a lining lies inside.
   *
   * @param loop corners of the first end
   */
  static @Nullable BendSides of(
      List<Vec> body, BendLegs legs, List<Vec> loop, boolean rectangular) {
    Vec normal = legs.toA().cross(legs.toB()).unit();
    Vec across = normal.cross(legs.toA());
    double[] x = new double[loop.size()];
    double[] height = new double[loop.size()];
    double largestM = 0;
    double highestM = 0;
    for (int i = 0; i < x.length; i++) {
      Vec off = loop.get(i).minus(legs.corner());
      x[i] = Math.abs(off.dot(across));
      height[i] = off.dot(normal);
      largestM = Math.max(largestM, x[i]);
      highestM = Math.max(highestM, Math.abs(height[i]));
    }
    double middleM = highestInMiddleM(body, legs, normal);
    if (middleM > 0 && Math.abs(middleM - highestM) > OUTSIDE * highestM) {
      return null;
    }
    List<Vec> corners = new ArrayList<>(body.size());
    double[] halvesM = new double[body.size()];
    for (Vec corner : body) {
      double aboveM = corner.minus(legs.corner()).dot(normal);
      if (!rectangular || Math.abs(Math.abs(aboveM) - highestM) < OUTSIDE * highestM) {
        halvesM[corners.size()] = halfM(x, height, aboveM);
        corners.add(corner.minus(normal.times(aboveM)));
      }
    }
    return new BendSides(legs, corners, Arrays.copyOf(halvesM, corners.size()), largestM);
  }

  /** Over the plane of the bend, in the third of it that is farthest from its ends; 0 if none. */
  private static double highestInMiddleM(List<Vec> body, BendLegs legs, Vec normal) {
    Vec centre = legs.arcCentre(legs.largestRadiusM());
    Vec middle = legs.corner().minus(centre);
    double highestM = 0;
    for (Vec corner : body) {
      Vec off = corner.minus(centre);
      if (off.across(normal).angleTo(middle) < legs.turn() / 6) {
        highestM = Math.max(highestM, Math.abs(off.dot(normal)));
      }
    }
    return highestM;
  }

  /** Half the width of the end at a height, or at the nearest that it has. */
  private static double halfM(double[] x, double[] height, double aboveM) {
    double nearestM = Double.MAX_VALUE;
    double halfM = 0;
    for (int i = 0; i < x.length; i++) {
      int next = (i + 1) % x.length;
      double low = Math.min(height[i], height[next]);
      double high = Math.max(height[i], height[next]);
      double beyondM = Math.max(0, Math.max(low - aboveM, aboveM - high));
      double share =
          high - low < Vec.WELD_M ? 0 : (aboveM - height[i]) / (height[next] - height[i]);
      double inside = Math.max(0, Math.min(1, share));
      double here = x[i] + inside * (x[next] - x[i]);
      double widest = high - low < Vec.WELD_M ? Math.max(x[i], x[next]) : here;
      if (beyondM < nearestM - Vec.WELD_M) {
        halfM = 0;
      }
      if (beyondM < nearestM + Vec.WELD_M) {
        nearestM = Math.min(nearestM, beyondM);
        halfM = Math.max(halfM, widest);
      }
    }
    return halfM;
  }

  /**
   * True if throat and heel both have corners along the arc, also where it begins and stops, and
   * hardly any beyond it. What lies between them, such as vanes and a lining, does not matter.
   */
  boolean follow(double arcM) {
    Vec centre = legs.arcCentre(arcM);
    double jointM = AT_JOINT * largestM;
    int[] on = new int[2];
    int[] outside = new int[2];
    boolean begins = false;
    boolean stops = false;
    for (int i = 0; i < halvesM.length; i++) {
      double beforeA = beforeM(corners.get(i), legs.toA(), arcM);
      double beforeB = beforeM(corners.get(i), legs.toB(), arcM);
      double fromArcM = corners.get(i).distanceTo(centre) - arcM;
      double offM = Math.abs(fromArcM) - halvesM[i];
      int side = fromArcM > 0 ? 1 : 0;
      if (Math.abs(offM) <= OUTSIDE * largestM && beforeA > -jointM && beforeB > -jointM) {
        on[side]++;
        begins |= beforeA < jointM;
        stops |= beforeB < jointM;
      }
      boolean within = beforeA > jointM && beforeB > jointM;
      outside[side] += within && offM > OUTSIDE * largestM ? 1 : 0;
    }
    return begins && stops && isSide(on[0], outside[0]) && isSide(on[1], outside[1]);
  }

  /** How far a corner lies before the plane where an arc begins on a leg. */
  private double beforeM(Vec corner, Vec leg, double arcM) {
    return legs.tangentM(arcM) - corner.minus(legs.corner()).dot(leg);
  }

  private static boolean isSide(int on, int outside) {
    return on >= 2 && MOST_OUTSIDE * outside <= on;
  }
}
