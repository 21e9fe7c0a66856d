package org.lagwright.takeoff.body;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.body.Outline.Corner;

/**
 * What a branch takes out of the wall of a run, on the side that it leaves. In the frame of the run
 * u lies across both axes and v points to the first branch.
 *
 * @param halfAcrossM half its width across the run, less than half that of the run
 * @param halfAlongM half its width along the run, if it left at a right angle
 * @param round true if it is an ellipse, false for a rectangle
 * @param lean component of the way of the branch along the run
 * @param above true on the side of v
 */
record BranchHole(
    double halfAcrossM, double halfAlongM, boolean round, double lean, boolean above) {

  /** A hole as wide as the run would halve it. */
  static final double WIDEST = 0.999;

  private static final int HOLE_CORNERS = 8;
  private static final int SIDE_CORNERS = 16;

  /** Sides of rectangular holes lean by this, so that each corner has one place, metres. */
  private static final double STEEP_M = 1e-4;

  private static final BranchHole NONE = new BranchHole(0, 0, true, 0, true);

  private double sine() {
    return Math.sqrt(Math.max(1e-6, 1 - lean * lean));
  }

  /** Half the length of the hole along the run at a distance from its middle. */
  private double halfM(double uM) {
    double across = Math.abs(uM);
    if (halfAcrossM == 0 || across >= halfAcrossM) {
      return 0;
    }
    if (!round) {
      return halfAlongM / sine() * Math.min(1, (halfAcrossM - across) / STEEP_M);
    }
    double share = across / halfAcrossM;
    return halfAlongM / sine() * Math.sqrt(1 - share * share);
  }

  private List<Double> placesM() {
    if (halfAcrossM == 0) {
      return List.of(0.0);
    }
    if (!round) {
      double b = halfAcrossM;
      return List.of(b, b - STEEP_M, STEEP_M - b, -b);
    }
    List<Double> places = new ArrayList<>();
    for (int i = 0; i <= HOLE_CORNERS; i++) {
      places.add(halfAcrossM * Math.cos(Math.PI * i / HOLE_CORNERS));
    }
    return places;
  }

  /**
   * Where half a run begins at a point of its section, from the crossing along it.
   *
   * @param uM in the frame of the run
   * @param sign 1 for the half along the axis of the run, -1 for the other one
   */
  static double fromM(List<BranchHole> holes, double uM, double vM, double sign) {
    double fromM = 0;
    for (BranchHole hole : holes) {
      double outM = hole.above ? vM : -vM;
      if (outM > 0) {
        fromM = sign * outM * hole.lean / hole.sine() + hole.halfM(uM);
      }
    }
    return fromM;
  }

  /** The outline of a run with a corner at each place of the edges of its holes. */
  static Outline outline(Section run, List<BranchHole> holes) {
    List<Double> top = at(holes, true).placesM();
    List<Double> bottom = at(holes, false).placesM();
    List<Corner> corners = new ArrayList<>();
    top.forEach(u -> corners.add(new Corner(u, heightM(run, u))));
    side(run, corners, -1, top.get(top.size() - 1), -bottom.get(0));
    bottom.forEach(u -> corners.add(new Corner(-u, -heightM(run, u))));
    side(run, corners, 1, -bottom.get(bottom.size() - 1), top.get(0));
    return new Outline(corners);
  }

  private static BranchHole at(List<BranchHole> holes, boolean above) {
    return holes.stream().filter(h -> h.above == above).findFirst().orElse(NONE);
  }

  /** Corners from the top to the bottom on the left, or back on the right. */
  private static void side(Section run, List<Corner> into, int sign, double fromUM, double toUM) {
    if (run instanceof Section.Rectangular r) {
      double v = -sign * r.heightM() / 2;
      into.add(new Corner(sign * r.widthM() / 2, v));
      into.add(new Corner(sign * r.widthM() / 2, -v));
      return;
    }
    double radiusM = run.largestSideM() / 2;
    double from = angleRad(fromUM / radiusM, sign);
    double to = angleRad(toUM / radiusM, -sign);
    to += to < from ? 2 * Math.PI : 0;
    for (int i = 1; i < SIDE_CORNERS; i++) {
      double angle = from + (to - from) * i / SIDE_CORNERS;
      into.add(new Corner(radiusM * Math.cos(angle), radiusM * Math.sin(angle)));
    }
  }

  /** Of a point on a circle: on the top half going left, on the bottom half going right. */
  private static double angleRad(double cosine, int sign) {
    double angle = Math.acos(Math.max(-1, Math.min(1, cosine)));
    return sign < 0 ? angle : 2 * Math.PI - angle;
  }

  /** Height of the outer face of a run above its axis. */
  static double heightM(Section run, double uM) {
    if (run instanceof Section.Rectangular r) {
      return r.heightM() / 2;
    }
    double radiusM = run.largestSideM() / 2;
    return Math.sqrt(Math.max(0, radiusM * radiusM - uM * uM));
  }
}
