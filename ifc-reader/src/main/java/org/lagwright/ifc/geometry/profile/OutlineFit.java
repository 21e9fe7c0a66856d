package org.lagwright.ifc.geometry.profile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;

/**
 * Recognises circles, rectangles and ovals in closed loops of points. Rectangles are tried first,
 * because the corners of a rectangle lie on a circle.
 */
public final class OutlineFit {

  /** Fewer points than this make no circle. */
  private static final int MIN_CIRCLE_POINTS = 6;

  /** Standard deviation of the radius over the radius; real exports stay below 0.1 %. */
  private static final double CIRCLE_TOLERANCE = 0.02;

  /** Distance from the mean plane over the size. */
  private static final double PLANE_TOLERANCE = 0.01;

  /** Cosine of a corner that still counts as a right angle: 1.1 degrees. */
  private static final double RIGHT_ANGLE = 0.02;

  /** Share of what its longer edge is seen under by which a corner of a circle turns at least. */
  private static final double LEAST_TURN = 0.25;

  /** A loop that fills this much of its bounding rectangle is one with rounded corners. */
  private static final double RECTANGLE_FILL = 0.97;

  /** What two edges may differ by where coordinates are rounded to whole millimetres. */
  private static final double ROUNDED_M = 2e-3;

  /** Relative difference between area found and area of the oval; a 16-gon is 2.6 % short. */
  private static final double OVAL_TOLERANCE = 0.04;

  /**
   * Distance of a corner from the oval over its smaller half axis; the box around a 12-gon may be
   * 3.5 % too small. Inner corners of a cross or a T lie much farther off.
   */
  private static final double ON_OVAL = 0.06;

  /** Nearer to an oval than this lie the corners that stand for it, rounded as they may be. */
  private static final double SURELY_ON_OVAL = 0.01;

  /** Of more points than this, edges at round ends are shorter than flat sides. */
  private static final int COARSEST_POINTS = 64;

  private OutlineFit() {}

  /** The outline of a loop, null if it is none of the three or not plane. */
  public static @Nullable Outline fit(List<Vec> loop) {
    if (loop.size() < 4) {
      return null;
    }
    Vec origin = Vec.mean(loop);
    Vec normal = areaNormal(loop, origin);
    double size = 0;
    for (Vec p : loop) {
      size = Math.max(size, p.distanceTo(origin));
    }
    if (normal.norm() < 1e-6 * size * size || !isPlane(loop, origin, normal.unit(), size)) {
      return null;
    }
    Vec n = normal.unit();
    Outline found = rectangle(corners(loop), n);
    found = found == null ? circle(turning(loop), n) : found;
    found = found == null ? oval(loop, n, normal.norm()) : found;
    return found == null || !found.isUsable() ? null : found;
  }

  /** Newell's sum: at right angles to the loop, as long as its area. */
  public static Vec areaNormal(List<Vec> loop, Vec origin) {
    double x = 0;
    double y = 0;
    double z = 0;
    double ax = loop.get(0).x() - origin.x();
    double ay = loop.get(0).y() - origin.y();
    double az = loop.get(0).z() - origin.z();
    for (int i = 1; i <= loop.size(); i++) {
      Vec next = loop.get(i == loop.size() ? 0 : i);
      double bx = next.x() - origin.x();
      double by = next.y() - origin.y();
      double bz = next.z() - origin.z();
      x += ay * bz - az * by;
      y += az * bx - ax * bz;
      z += ax * by - ay * bx;
      ax = bx;
      ay = by;
      az = bz;
    }
    return new Vec(x, y, z).times(0.5);
  }

  private static boolean isPlane(List<Vec> loop, Vec origin, Vec normal, double size) {
    for (Vec p : loop) {
      if (!(Math.abs(p.minus(origin).dot(normal)) <= PLANE_TOLERANCE * size)) {
        return false;
      }
    }
    return true;
  }

  /** The points where the loop turns. */
  private static List<Vec> corners(List<Vec> loop) {
    List<Vec> corners = new ArrayList<>();
    Vec in = loop.get(0).minus(loop.get(loop.size() - 1)).unit();
    for (int i = 0; i < loop.size(); i++) {
      Vec out = loop.get((i + 1) % loop.size()).minus(loop.get(i)).unit();
      if (in.cross(out).norm() > 1e-3 || in.dot(out) < 0) {
        corners.add(loop.get(i));
      }
      in = out;
    }
    return corners;
  }

  /**
   * The corners of a round loop. What stands in the middle of its edges, because a face beyond
   * begins there, does not lie on the circle: there the loop turns hardly at all, while at a corner
   * on a circle it turns by at least half of what its longer edge is seen under from the centre.
   */
  public static List<Vec> turning(List<Vec> loop) {
    int count = loop.size();
    Vec[] edges = new Vec[count];
    double[] lengthsM = new double[count];
    double aroundM = 0;
    for (int i = 0; i < count; i++) {
      edges[i] = loop.get(i + 1 == count ? 0 : i + 1).minus(loop.get(i));
      lengthsM[i] = edges[i].norm();
      aroundM += lengthsM[i];
    }
    List<Vec> turning = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      int before = i == 0 ? count - 1 : i - 1;
      double longerM = Math.max(lengthsM[before], lengthsM[i]);
      double leastRad = LEAST_TURN * 2 * Math.PI * longerM / aroundM;
      double sine = edges[before].cross(edges[i]).norm() / (lengthsM[before] * lengthsM[i]);
      if (!(sine < leastRad) || edges[before].dot(edges[i]) < 0) {
        turning.add(loop.get(i));
      }
    }
    return turning.size() == count ? loop : turning;
  }

  private static @Nullable Outline rectangle(List<Vec> c, Vec normal) {
    if (c.size() != 4) {
      return null;
    }
    for (int i = 0; i < 4; i++) {
      Vec a = c.get((i + 1) % 4).minus(c.get(i)).unit();
      Vec b = c.get((i + 2) % 4).minus(c.get((i + 1) % 4)).unit();
      if (Math.abs(a.dot(b)) > RIGHT_ANGLE) {
        return null;
      }
    }
    Vec u = c.get(1).minus(c.get(0)).plus(c.get(2).minus(c.get(3))).times(0.25);
    double half = c.get(2).minus(c.get(1)).plus(c.get(3).minus(c.get(0))).norm() / 4;
    return new Outline(
        Outline.Kind.RECTANGULAR, Vec.mean(c), u, normal.cross(u.unit()).times(half));
  }

  /**
   * Least squares on the equation of the circle (Kasa's linear fit): exact where all points lie on
   * a circle, however unevenly they are spread.
   */
  private static @Nullable Outline circle(List<Vec> loop, Vec n) {
    if (loop.size() < MIN_CIRCLE_POINTS) {
      return null;
    }
    Vec origin = Vec.mean(loop);
    Vec u = n.anyNormal();
    Vec v = n.cross(u);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double xr = 0;
    double yr = 0;
    double rr = 0;
    for (Vec p : loop) {
      double x = p.minus(origin).dot(u);
      double y = p.minus(origin).dot(v);
      double r2 = x * x + y * y;
      xx += x * x;
      xy += x * y;
      yy += y * y;
      xr += x * r2;
      yr += y * r2;
      rr += r2;
    }
    double det = xx * yy - xy * xy;
    if (!(det > 1e-9 * xx * yy)) {
      return null;
    }
    double cx = (xr * yy - yr * xy) / det / 2;
    double cy = (yr * xx - xr * xy) / det / 2;
    double radius = Math.sqrt(cx * cx + cy * cy + rr / loop.size());
    Vec centre = origin.plus(u.times(cx)).plus(v.times(cy));
    return isCircle(loop, centre, radius, u, v) ? Outline.circle(centre, n, radius) : null;
  }

  /** Small deviation, and no gap of 100 degrees or more between neighbouring points. */
  private static boolean isCircle(List<Vec> loop, Vec centre, double radius, Vec u, Vec v) {
    double sum = 0;
    for (Vec p : loop) {
      double off = p.distanceTo(centre) - radius;
      sum += off * off;
    }
    return Math.sqrt(sum / loop.size()) < CIRCLE_TOLERANCE * radius
        && widestGapRad(loop, centre, u, v) < Math.toRadians(100);
  }

  /** The widest angle about a centre, in the plane of u and v, in which there is no point. */
  public static double widestGapRad(List<Vec> points, Vec centre, Vec u, Vec v) {
    double[] angles = new double[points.size()];
    for (int i = 0; i < angles.length; i++) {
      Vec off = points.get(i).minus(centre);
      angles[i] = Math.atan2(off.dot(v), off.dot(u));
    }
    Arrays.sort(angles);
    double gap = angles[0] + 2 * Math.PI - angles[angles.length - 1];
    for (int i = 1; i < angles.length; i++) {
      gap = Math.max(gap, angles[i] - angles[i - 1]);
    }
    return gap;
  }

  /**
   * Flat ovals, ellipses and rectangles with rounded corners: bounding rectangle along one of the
   * long edges or, for ellipses, along the widest extent; told apart by how much of it is filled.
   * Of several ovals the one that the corners lie on, as the edges of a coarse round end may be
   * longer than the flat sides.
   */
  private static @Nullable Outline oval(List<Vec> loop, Vec n, double area) {
    Outline best = null;
    double leastOff = ON_OVAL;
    for (Vec direction : directions(loop)) {
      Vec u = direction.across(n).unit();
      Outline box = bounding(loop, u, n.cross(u));
      double a = 2 * box.u().norm();
      double b = 2 * box.v().norm();
      double small = Math.min(a, b);
      double flatOval = Math.abs(a - b) * small + Math.PI / 4 * small * small;
      if (area > RECTANGLE_FILL * a * b && isConvex(loop, n) && !isTapered(loop)) {
        return box;
      }
      double off = near(area, flatOval) ? offFlatOval(loop, box) : Double.MAX_VALUE;
      if (off > SURELY_ON_OVAL && near(area, Math.PI / 4 * a * b)) {
        off = Math.min(off, offEllipse(loop, box));
      }
      if (loop.size() >= MIN_CIRCLE_POINTS && off < leastOff) {
        best = new Outline(Outline.Kind.OVAL, box.centre(), box.u(), box.v());
        leastOff = off;
      }
      if (leastOff < SURELY_ON_OVAL) {
        return best;
      }
    }
    return best;
  }

  /** The longest edge, the widest extent, and other edges that are about as long. */
  private static List<Vec> directions(List<Vec> loop) {
    Vec longest = longestEdge(loop);
    List<Vec> directions = new ArrayList<>(List.of(longest, widestExtent(loop)));
    for (int i = 0; i < loop.size() && loop.size() <= COARSEST_POINTS; i++) {
      Vec edge = loop.get((i + 1) % loop.size()).minus(loop.get(i));
      if (edge.norm() > longest.norm() / 2) {
        directions.add(edge);
      }
    }
    return directions;
  }

  /** True for the side of a transition: it fills its box well, but one edge is shorter. */
  private static boolean isTapered(List<Vec> loop) {
    List<Vec> c = corners(loop);
    return c.size() == 4
        && (areUnlike(c.get(0), c.get(1), c.get(2), c.get(3))
            || areUnlike(c.get(1), c.get(2), c.get(3), c.get(0)));
  }

  private static boolean areUnlike(Vec fromA, Vec toA, Vec fromB, Vec toB) {
    return Math.abs(fromA.distanceTo(toA) - fromB.distanceTo(toB)) > ROUNDED_M;
  }

  /** A T with a broad, short arm fills its box too, but it has inner corners. */
  private static boolean isConvex(List<Vec> loop, Vec n) {
    for (int i = 0; i < loop.size(); i++) {
      Vec in = loop.get((i + 1) % loop.size()).minus(loop.get(i)).unit();
      Vec out = loop.get((i + 2) % loop.size()).minus(loop.get((i + 1) % loop.size())).unit();
      if (in.cross(out).dot(n) < -RIGHT_ANGLE) {
        return false;
      }
    }
    return true;
  }

  /**
   * The largest distance of a corner from the flat oval over its smaller half axis. A cross of two
   * ducts fills its box as an oval does, but its corners lie elsewhere.
   */
  private static double offFlatOval(List<Vec> loop, Outline box) {
    boolean longU = box.u().norm() > box.v().norm();
    Vec along = (longU ? box.u() : box.v()).unit();
    double half = Math.min(box.u().norm(), box.v().norm());
    double straight = box.largestHalfM() - half;
    double most = 0;
    for (Vec p : loop) {
      Vec off = p.minus(box.centre());
      double at = Math.max(-straight, Math.min(straight, off.dot(along)));
      double fromMiddle = off.minus(along.times(at)).across(box.normal()).norm();
      most = Math.max(most, Math.abs(fromMiddle - half) / half);
    }
    return most;
  }

  private static double offEllipse(List<Vec> loop, Outline box) {
    double uu = box.u().dot(box.u());
    double vv = box.v().dot(box.v());
    double most = 0;
    for (Vec p : loop) {
      Vec off = p.minus(box.centre());
      double share = Math.hypot(off.dot(box.u()) / uu, off.dot(box.v()) / vv);
      most = Math.max(most, Math.abs(share - 1));
    }
    return most;
  }

  private static boolean near(double found, double expected) {
    return Math.abs(found - expected) < OVAL_TOLERANCE * expected;
  }

  private static Vec longestEdge(List<Vec> loop) {
    Vec longest = Vec.ZERO;
    for (int i = 0; i < loop.size(); i++) {
      Vec edge = loop.get((i + 1) % loop.size()).minus(loop.get(i));
      longest = edge.norm() > longest.norm() ? edge : longest;
    }
    return longest;
  }

  private static Vec widestExtent(List<Vec> loop) {
    Vec centre = Vec.mean(loop);
    Vec widest = Vec.ZERO;
    for (Vec p : loop) {
      widest = p.distanceTo(centre) > widest.norm() ? p.minus(centre) : widest;
    }
    return widest;
  }

  private static Outline bounding(List<Vec> loop, Vec u, Vec v) {
    double uMin = Double.POSITIVE_INFINITY;
    double uMax = Double.NEGATIVE_INFINITY;
    double vMin = Double.POSITIVE_INFINITY;
    double vMax = Double.NEGATIVE_INFINITY;
    for (Vec p : loop) {
      uMin = Math.min(uMin, p.dot(u));
      uMax = Math.max(uMax, p.dot(u));
      vMin = Math.min(vMin, p.dot(v));
      vMax = Math.max(vMax, p.dot(v));
    }
    Vec n = u.cross(v);
    Vec centre =
        u.times((uMin + uMax) / 2)
            .plus(v.times((vMin + vMax) / 2))
            .plus(n.times(Vec.mean(loop).dot(n)));
    return new Outline(
        Outline.Kind.RECTANGULAR, centre, u.times((uMax - uMin) / 2), v.times((vMax - vMin) / 2));
  }
}
