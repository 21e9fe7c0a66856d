package org.lagwright.ifc.geometry.mesh;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.shape.Ends;

/**
 * A meshed bend that turns right round, so that both ends look the same way. How far apart they are
 * tells its radius; how long its legs are, only the outermost corner of its arc does: {@code s =
 * sqrt((R + r)^2 - y^2)} beyond where the arc begins, {@code y} beside the middle.
 */
final class ReturnBend {

  /** Ends that differ by less look the same way; their legs meet nowhere. */
  private static final double SAME_WAY_RAD = Math.toRadians(1);

  /** Sine of 45 degrees: the outermost corners of an arc of three steps lie at 30. */
  private static final double BESIDE = 0.7;

  /** What legs may be short of none, over half the pipe's width: coordinates are rounded. */
  private static final double ROUNDED = 0.05;

  private final Vec middle;
  private final Vec in;
  private final Vec aside;
  private final double radiusM;

  private ReturnBend(ShapeEnd a, ShapeEnd b) {
    this.in = a.out().plus(b.out()).times(-0.5).unit();
    Vec apart = b.centre().minus(a.centre()).across(in);
    this.middle = a.centre().plus(b.centre()).times(0.5);
    this.aside = apart.unit();
    this.radiusM = apart.norm() / 2;
  }

  /** True if two ends are alike and look the same way. */
  static boolean isBetween(ShapeEnd a, ShapeEnd b) {
    return a.out().angleTo(b.out()) < SAME_WAY_RAD && Ends.same(a.section(), b.section());
  }

  /**
   * The bend between two such ends, null if the body does not keep to legs and a half circle.
   *
   * @param corners of the mesh in the same coordinates as the ends
   * @param end the first of them as it was found
   */
  static BendFit.@Nullable Fit of(List<Vec> corners, ShapeEnd a, ShapeEnd b, Found end) {
    ReturnBend bend = new ReturnBend(a, b);
    double halfM = bend.halfM(end);
    double beginsM = bend.beginsM(corners, halfM, end.isRound());
    double legsM = bend.legM(a, beginsM) + bend.legM(b, beginsM);
    boolean told =
        bend.radiusM >= halfM && legsM > -ROUNDED * halfM && bend.holds(corners, beginsM, halfM);
    return told ? new BendFit.Fit(bend.radiusM, legsM + Math.PI * bend.radiusM) : null;
  }

  /** Half the width in the plane of the bend, of a round one as far as its corners reach. */
  private double halfM(Found end) {
    Outline outline = end.outline();
    double halfM =
        end.isRound() ? 0 : Math.abs(outline.u().dot(aside)) + Math.abs(outline.v().dot(aside));
    for (int i = 0; end.isRound() && i < end.loop().size(); i++) {
      halfM = Math.max(halfM, end.loop().get(i).distanceTo(outline.centre()));
    }
    return halfM;
  }

  private double legM(ShapeEnd end, double beginsM) {
    return beginsM - end.centre().minus(middle).dot(in);
  }

  /**
   * Where the arc begins, from the middle between the ends; NaN if it is no arc that reaches so far
   * out.
   */
  private double beginsM(List<Vec> corners, double halfM, boolean round) {
    Vec farthest = corners.get(0);
    for (Vec corner : corners) {
      farthest = corner.minus(farthest).dot(in) > 0 ? corner : farthest;
    }
    Vec off = farthest.minus(middle);
    double aboveM = round ? off.dot(in.cross(aside)) : 0;
    double besideM = off.dot(aside);
    double outerM = radiusM + Math.sqrt(Math.max(0, halfM * halfM - aboveM * aboveM));
    return Math.abs(besideM) < BESIDE * outerM
        ? off.dot(in) - Math.sqrt(outerM * outerM - besideM * besideM)
        : Double.NaN;
  }

  /** True if nearly all corners lie within the width of the centre line. */
  private boolean holds(List<Vec> corners, double beginsM, double halfM) {
    double mostM = halfM * BendFit.OUTSIDE + Vec.WELD_M;
    int outside = 0;
    for (Vec corner : corners) {
      Vec off = corner.minus(middle);
      double beyondM = Math.max(0, off.dot(in) - beginsM);
      boolean within = Math.abs(Math.hypot(beyondM, off.dot(aside)) - radiusM) < mostM;
      outside += within ? 0 : 1;
    }
    return outside <= corners.size() / 20;
  }
}
