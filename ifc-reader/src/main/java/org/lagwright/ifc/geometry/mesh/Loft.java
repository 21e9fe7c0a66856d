package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.Section;

/**
 * A closed mesh between the two ends of a measured body, to see how it meets other bodies. Corners
 * lie on the sections as drawn, so measuring it gives the same ends again.
 */
public final class Loft {

  private static final int ROUND_CORNERS = 24;

  /** Sections as wide and as high as the axes they are drawn along. */
  private record Ring(List<Vec> corners, Vec centre, Vec u, Vec v) {

    /** Where a corner lies across the body, in the axes that both ends share. */
    Vec across(int corner) {
      Vec off = corners.get(corner % corners.size()).minus(centre);
      return new Vec(off.dot(u), off.dot(v), 0);
    }
  }

  private Loft() {}

  /** Adds the walls between two sections to a mesh. */
  public static void add(ShapeEnd from, ShapeEnd to, Mesh.Builder mesh) {
    Vec start = from.out().times(-1);
    Vec finish = to.out();
    Vec hinge = start.cross(finish);
    Vec u = hinge.norm() > 1e-3 ? hinge.unit() : level(start);
    Ring first = ring(from, start, u);
    Ring last = ring(to, finish, u);
    List<Vec> a = first.corners();
    List<Vec> b = last.corners();
    mesh.face(List.of(a), true);
    mesh.face(List.of(b), true);
    int shift = a.size() == b.size() ? nearest(first, last) : 0;
    for (int i = 0; a.size() == b.size() && i < a.size(); i++) {
      int next = (i + 1) % a.size();
      Vec over = b.get((i + shift) % b.size());
      Vec overNext = b.get((next + shift) % b.size());
      mesh.face(List.of(List.of(a.get(i), a.get(next), overNext, over)), true);
    }
  }

  /** How far the corners of one ring must be counted on to lie over those of the other. */
  private static int nearest(Ring first, Ring last) {
    int nearest = 0;
    double least = Double.MAX_VALUE;
    for (int shift = 0; shift < last.corners().size(); shift++) {
      double sum = 0;
      for (int i = 0; i < first.corners().size(); i++) {
        sum += first.across(i).distanceTo(last.across(i + shift));
      }
      // no turn for noise
      if (sum < least - 1e-9) {
        least = sum;
        nearest = shift;
      }
    }
    return nearest;
  }

  /** The level direction across, in which widths are measured; any one for vertical bodies. */
  private static Vec level(Vec along) {
    Vec across = Vec.Z.cross(along);
    return across.norm() > 1e-6 ? across.unit() : along.anyNormal();
  }

  /** The corners of a section, turning about the direction along the body. */
  private static Ring ring(ShapeEnd end, Vec along, Vec u) {
    Section section = end.section();
    Vec v = along.cross(u);
    Vec width = width(end, along, u, v);
    Vec height = along.cross(width);
    List<Vec> ring = new ArrayList<>();
    if (section instanceof Section.Rectangular box) {
      Vec w = width.times(box.widthM() / 2);
      Vec h = height.times(box.heightM() / 2);
      ring.add(end.centre().plus(w).plus(h));
      ring.add(end.centre().minus(w).plus(h));
      ring.add(end.centre().minus(w).minus(h));
      ring.add(end.centre().plus(w).minus(h));
      return new Ring(ring, end.centre(), u, v);
    }
    double a = section instanceof Section.Oval o ? o.widthM() / 2 : section.largestSideM() / 2;
    double b = section instanceof Section.Oval o ? o.heightM() / 2 : section.largestSideM() / 2;
    for (int i = 0; i < ROUND_CORNERS; i++) {
      double t = 2 * Math.PI * i / ROUND_CORNERS;
      Vec off = width.times(a * Math.cos(t)).plus(height.times(b * Math.sin(t)));
      ring.add(end.centre().plus(off));
    }
    return new Ring(ring, end.centre(), u, v);
  }

  /** Where the width points as drawn, else the more level one of the axes across. */
  private static Vec width(ShapeEnd end, Vec along, Vec u, Vec v) {
    Vec drawn = end.width() == null ? Vec.ZERO : Vec.of(end.width()).across(along);
    if (drawn.norm() > 0.5) {
      return drawn.unit();
    }
    return Math.abs(u.z()) <= Math.abs(v.z()) ? u : v;
  }
}
