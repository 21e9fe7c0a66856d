package org.lagwright.ifc.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * An outer cross-section in space: its centre and its two half axes, so that any frame can be
 * applied to it. Metres.
 *
 * @param u half axis: radius, half of a side, half of the length of an oval
 * @param v the other half axis, at right angles to u
 */
public record Outline(Kind kind, Vec centre, Vec u, Vec v) {

  /** Relative difference of the half axes up to which an outline is a circle. */
  private static final double ROUND = 2e-3;

  /** Difference in the sines of the slopes up to which two sides are equally level: 3 degrees. */
  private static final double EQUALLY_LEVEL = 0.05;

  /** The walls of a duct are of one thickness but for this share and rounding. */
  private static final double WALL = 0.1;

  private static final double WALL_M = 1e-3;

  /** Corners of the polygon that stands for a circle or an oval. */
  private static final int CURVE_POINTS = 48;

  /** What an outline is. */
  public enum Kind {
    ROUND,
    RECTANGULAR,
    OVAL
  }

  /** A circle; centre and radius in metres. */
  public static Outline circle(Vec centre, Vec normal, double radius) {
    Vec u = normal.anyNormal();
    return new Outline(Kind.ROUND, centre, u.times(radius), normal.cross(u).times(radius));
  }

  /** In its own plane; sizes that are not above zero make it unusable. */
  static Outline inPlane(Kind kind, double halfU, double halfV) {
    boolean possible = halfU > 0 && halfV > 0;
    return new Outline(
        kind,
        possible ? Vec.ZERO : Vec.X.times(Double.NaN),
        Vec.X.times(halfU),
        Vec.Y.times(halfV));
  }

  /** The same outline, of a frame, in the surrounding one. */
  public Outline in(Frame frame) {
    return new Outline(kind, frame.point(centre), frame.vector(u), frame.vector(v));
  }

  /** The same outline elsewhere. */
  public Outline at(Vec newCentre) {
    return new Outline(kind, newCentre, u, v);
  }

  /** Half axes turned as one direction turns into another; the centre stays. */
  public Outline turned(Vec from, Vec to) {
    Vec hinge = from.cross(to);
    if (hinge.isTiny()) {
      return this;
    }
    double angle = from.angleTo(to);
    return new Outline(kind, centre, u.turned(hinge.unit(), angle), v.turned(hinge.unit(), angle));
  }

  /** What a plane at right angles to a unit vector sees of it. */
  public Outline across(Vec axis) {
    return new Outline(kind, centre, u.across(axis), v.across(axis));
  }

  /** Unit vector across its plane. */
  public Vec normal() {
    return u.cross(v).unit();
  }

  /** True if it can be the section of something. */
  public boolean isUsable() {
    boolean finite = Double.isFinite(u.norm()) && Double.isFinite(v.norm());
    return centre.isFinite() && finite && !u.isTiny() && !v.isTiny();
  }

  /** True if the section is a circle although the outline may have been a squeezed one. */
  public boolean isRound() {
    double a = u.norm();
    double b = v.norm();
    return kind != Kind.RECTANGULAR && Math.abs(a - b) <= ROUND * Math.max(a, b);
  }

  /**
   * True for a rectangle within this one that leaves a wall as thick at the sides as above and
   * below: the bore of a duct, not a hole in a side of it.
   */
  public boolean isBoredBy(Outline bore) {
    if (kind != Kind.RECTANGULAR || bore.kind != Kind.RECTANGULAR || !bore.isUsable()) {
      return false;
    }
    double atU = u.norm() - bore.reachM(u.unit());
    double atV = v.norm() - bore.reachM(v.unit());
    double slackM = WALL_M + WALL * Math.max(atU, atV);
    return Math.min(atU, atV) > 0
        && Math.abs(atU - atV) < slackM
        && centre.distanceTo(bore.centre) < slackM;
  }

  /** True for a bore of the same shape that leaves one wall all around. */
  public boolean isHollowedBy(Outline bore) {
    if (!isRound() || !bore.isRound()) {
      return isBoredBy(bore);
    }
    double wallM = radiusM() - bore.radiusM();
    return bore.isUsable() && wallM > 0 && centre.distanceTo(bore.centre) < WALL_M + WALL * wallM;
  }

  private double reachM(Vec direction) {
    return Math.abs(u.dot(direction)) + Math.abs(v.dot(direction));
  }

  /** Radius of a circle in metres. */
  public double radiusM() {
    return (u.norm() + v.norm()) / 2;
  }

  /** Half of its larger side in metres. */
  public double largestHalfM() {
    return Math.max(u.norm(), v.norm());
  }

  /**
   * The section; of rectangles and ovals the side that lies more level is the width. In a riser
   * both lie level, and the longer one is.
   */
  public Section section() {
    if (isRound()) {
      return new Section.Round(2 * radiusM());
    }
    boolean uIsWidth = uIsWidth();
    double width = 2 * (uIsWidth ? u : v).norm();
    double height = 2 * (uIsWidth ? v : u).norm();
    return kind == Kind.RECTANGULAR
        ? new Section.Rectangular(width, height)
        : new Section.Oval(width, height);
  }

  private boolean uIsWidth() {
    double tilt = Math.abs(u.unit().z()) - Math.abs(v.unit().z());
    return Math.abs(tilt) < EQUALLY_LEVEL ? u.norm() >= v.norm() : tilt < 0;
  }

  /** Points on it in order: the corners of a rectangle, enough points of a curve. */
  public List<Vec> corners() {
    int count = kind == Kind.RECTANGULAR ? 4 : CURVE_POINTS;
    double reach = kind == Kind.RECTANGULAR ? Math.sqrt(2) : 1;
    List<Vec> corners = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / count;
      Vec alongU = u.times(reach * Math.cos(angle));
      corners.add(centre.plus(alongU).plus(v.times(reach * Math.sin(angle))));
    }
    return corners;
  }

  /** An end with this outline, null if the outline is degenerate. */
  public @Nullable ShapeEnd end(Vec outward) {
    if (!isUsable()) {
      return null;
    }
    Point width = isRound() ? null : (uIsWidth() ? u : v).unit().point();
    return new ShapeEnd(centre.point(), outward.unit().point(), section(), width);
  }

  /** Spelled out: the compiler's own is put together when first asked, which takes long. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Outline o
        && kind == o.kind
        && centre.equals(o.centre)
        && u.equals(o.u)
        && v.equals(o.v);
  }

  @Override
  public int hashCode() {
    return ((kind.hashCode() * 31 + centre.hashCode()) * 31 + u.hashCode()) * 31 + v.hashCode();
  }
}
