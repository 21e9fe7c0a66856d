package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Spans;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Tool;

/**
 * What a body that cuts another leaves of lines along the outside of that. A cut that shortens a
 * pipe takes something of nearly all lines around it; a hole or a notch does not, and a bore takes
 * none, or all of each.
 *
 * @param from share of the length where what is left begins, as the mean of the lines
 * @param to share of the length where it ends
 * @param shortened lines of which an end was taken
 */
record CutLines(double from, double to, int shortened) {

  /** Lines around the axis, and how many of them must be cut. */
  private static final int LINES = 16;

  private static final int MOST = 12;

  /** Shorter stretches are rounding, as a share of the length. */
  private static final double NOTHING = 1e-9;

  /** True if nothing is taken off the ends. */
  boolean isWhole() {
    return shortened == 0;
  }

  /** True if an end is taken all around. */
  boolean isShortened() {
    return shortened >= MOST && to - from > NOTHING;
  }

  /** A body along which lines are drawn. */
  interface Along {

    /**
     * A point on a line.
     *
     * @param turnRad where around the axis the line lies
     * @param share share of the length
     */
    Vec at(double turnRad, double share);
  }

  /**
   * Cuts lines.
   *
   * @param steps straight pieces in which each line is cut
   * @param keepsInside true if what lies within the other body is kept, not what lies outside
   */
  static CutLines of(Along body, int steps, Tool by, boolean keepsInside) {
    double from = 0;
    double to = 0;
    int shortened = 0;
    for (int i = 0; i < LINES; i++) {
      double low = 1;
      double high = 0;
      List<double[]> left = left(body, 2 * Math.PI * i / LINES, steps, by, keepsInside);
      for (double[] span : left) {
        low = Math.min(low, span[0]);
        high = Math.max(high, span[1]);
      }
      // a bore takes the whole line, and leaves the outside as it is
      boolean bored = left.isEmpty() && !keepsInside;
      low = bored ? 0 : low;
      high = bored ? 1 : high;
      shortened += low > NOTHING || high < 1 - NOTHING ? 1 : 0;
      from += low / LINES;
      to += high / LINES;
    }
    return new CutLines(from, to, shortened);
  }

  private static List<double[]> left(
      Along body, double turnRad, int steps, Tool by, boolean keepsInside) {
    List<double[]> inside = new ArrayList<>();
    Vec start = body.at(turnRad, 0);
    for (int step = 0; step < steps; step++) {
      Vec end = body.at(turnRad, (step + 1.0) / steps);
      for (double[] span : by.spans(start, end)) {
        inside.add(new double[] {(step + span[0]) / steps, (step + span[1]) / steps});
      }
      start = end;
    }
    List<double[]> whole = List.<double[]>of(new double[] {0, 1});
    List<double[]> all = keepsInside ? Spans.and(whole, inside) : Spans.minus(whole, inside);
    List<double[]> left = new ArrayList<>();
    for (double[] span : all) {
      if (span[1] - span[0] > NOTHING) {
        left.add(span);
      }
    }
    return left;
  }
}
