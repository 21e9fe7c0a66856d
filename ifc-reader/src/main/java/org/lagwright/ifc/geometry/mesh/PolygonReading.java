package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.profile.Outline;

/**
 * Which circle a polygon of n corners stands for: the one through its corners (the usual one), the
 * one inside it ({@code cos(pi / n)} of that), or the one of equal area ({@code sqrt(n sin(2 pi /
 * n) / (2 pi))}).
 */
public final class PolygonReading {

  /** Relative difference up to which a reading is a diameter that is known. */
  private static final double SAME = 0.003;

  /** With more corners all readings are within 0.2 %. */
  private static final int MOST_CORNERS = 50;

  private PolygonReading() {}

  /**
   * The factor on the diameter through the corners; 1 unless another reading, and it alone, is a
   * known diameter.
   */
  public static double factor(int corners, double throughCornersM, List<Double> knownM) {
    if (corners > MOST_CORNERS || corners < 3 || isKnown(throughCornersM, knownM)) {
      return 1;
    }
    double turn = 2 * Math.PI / corners;
    double inside = Math.cos(turn / 2);
    double equalArea = Math.sqrt(Math.sin(turn) / turn);
    for (double factor : new double[] {inside, equalArea}) {
      if (isKnown(throughCornersM * factor, knownM)) {
        return factor;
      }
    }
    return 1;
  }

  /** Round ends with the diameter that their polygon stands for. */
  static List<Found> asCircles(List<Found> ends, List<Double> knownM) {
    List<Found> circles = new ArrayList<>(ends.size());
    for (Found end : ends) {
      circles.add(asCircle(end, knownM));
    }
    return circles;
  }

  private static Found asCircle(Found end, List<Double> knownM) {
    Outline outline = end.outline();
    if (outline.kind() != Outline.Kind.ROUND || end.loop().size() > MOST_CORNERS) {
      return end;
    }
    double factor = factor(end.loop().size(), 2 * outline.radiusM(), knownM);
    Outline read =
        new Outline(
            outline.kind(), outline.centre(), outline.u().times(factor), outline.v().times(factor));
    return factor == 1 ? end : new Found(read, end.outward(), end.loop(), end.isMouth());
  }

  private static boolean isKnown(double diameterM, List<Double> knownM) {
    for (double known : knownM) {
      if (Math.abs(known - diameterM) < SAME * diameterM) {
        return true;
      }
    }
    return false;
  }
}
