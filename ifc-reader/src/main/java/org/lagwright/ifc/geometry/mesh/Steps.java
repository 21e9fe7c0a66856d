package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;

/**
 * A reducer drawn as cylinders of falling size, one set on the other. Where two of them meet, the
 * smaller one has an end within the body. Of a pipe with flanges or sockets that end is kept,
 * because it tells the size of the pipe in them: flanges are flat, and sockets sit on both ends.
 * The back of a socket faces away from the pipe as the far end does, and tells nothing of that end.
 */
public final class Steps {

  /** Length over diameter of what is flatter than any part of a reducer: flanges. */
  public static final double FLAT = 0.2;

  /** Share of its size by which an end is smaller than what it stands on. */
  private static final double SMALLER = 0.01;

  private Steps() {}

  /**
   * Removes what is no end from the ends that face one way and those that face the other way.
   *
   * @param alone true if the body has no other ends; on a branch a nut looks like a step too
   */
  static void remove(List<Found> one, List<Found> other, boolean alone) {
    boolean facing =
        one.get(0).outward().dot(other.get(0).outward()) < 0
            && CoaxialEnds.onOneAxis(one.get(0), other.get(0));
    if (!facing) {
      return;
    }
    List<Found> steps = alone ? steps(one, other) : List.of();
    List<Found> back = alone ? steps(other, one) : List.of();
    List<Found> ofOther = backs(one, other);
    List<Found> ofOne = backs(other, one);
    if (back.isEmpty()) {
      one.removeAll(steps);
    } else if (steps.isEmpty()) {
      other.removeAll(back);
    }
    one.removeAll(ofOther);
    other.removeAll(ofOne);
  }

  /** Ends nearer to the far end of the body than to where it ends the way they face. */
  private static List<Found> backs(List<Found> ends, List<Found> facing) {
    List<Found> backs = new ArrayList<>();
    Vec out = ends.get(0).outward();
    double outermost = outermost(ends, out);
    double farthest = -outermost(facing, out.times(-1));
    double flangeM = FLAT * 2 * ends.get(0).outline().largestHalfM();
    for (Found end : ends) {
      double behindM = outermost - end.along(out);
      if (behindM > flangeM && behindM > end.along(out) - farthest) {
        backs.add(end);
      }
    }
    return backs;
  }

  private static double outermost(List<Found> ends, Vec out) {
    double outermost = Double.NEGATIVE_INFINITY;
    for (Found end : ends) {
      outermost = Math.max(outermost, end.along(out));
    }
    return outermost;
  }

  private static List<Found> steps(List<Found> ends, List<Found> facing) {
    List<Found> steps = new ArrayList<>();
    Vec out = ends.get(0).outward();
    double outermost = outermost(ends, out);
    for (Found end : ends) {
      for (Found base : facing) {
        if (standsOn(end, base, out)
            && outermost - end.along(out) > FLAT * 2 * base.outline().largestHalfM()) {
          steps.add(end);
          break;
        }
      }
    }
    return steps;
  }

  private static boolean standsOn(Found end, Found base, Vec out) {
    return Math.abs(end.along(out) - base.along(out)) < EndFinder.SAME_PLANE_M
        && end.outline().largestHalfM() < (1 - SMALLER) * base.outline().largestHalfM();
  }
}
