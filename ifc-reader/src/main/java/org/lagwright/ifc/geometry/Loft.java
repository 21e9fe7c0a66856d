package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Section;

/**
 * A closed mesh between the two ends of a measured body, to see how it meets other bodies. Corners
 * lie on the sections, so measuring it gives the same ends again.
 */
final class Loft {

  private static final int ROUND_CORNERS = 24;

  private Loft() {}

  static void add(ShapeEnd from, ShapeEnd to, Mesh.Builder mesh) {
    Vec start = from.out().times(-1);
    Vec finish = to.out();
    Vec hinge = start.cross(finish);
    Vec u = hinge.norm() > 1e-3 ? hinge.unit() : level(start);
    List<Vec> first = ring(from, u, start.cross(u));
    List<Vec> last = ring(to, u, finish.cross(u));
    mesh.face(List.of(first), true);
    mesh.face(List.of(last), true);
    for (int i = 0; first.size() == last.size() && i < first.size(); i++) {
      int next = (i + 1) % first.size();
      mesh.face(List.of(List.of(first.get(i), first.get(next), last.get(next), last.get(i))), true);
    }
  }

  /** The level direction across, in which widths are measured; any one for vertical bodies. */
  private static Vec level(Vec along) {
    Vec across = Vec.Z.cross(along);
    return across.norm() > 1e-6 ? across.unit() : along.anyNormal();
  }

  private static List<Vec> ring(ShapeEnd end, Vec u, Vec v) {
    Section section = end.section();
    boolean uIsLevel = Math.abs(u.z()) <= Math.abs(v.z());
    Vec width = uIsLevel ? u : v;
    Vec height = uIsLevel ? v : u;
    List<Vec> ring = new ArrayList<>();
    if (section instanceof Section.Rectangular box) {
      Vec w = width.times(box.widthM() / 2);
      Vec h = height.times(box.heightM() / 2);
      ring.add(end.centre().plus(w).plus(h));
      ring.add(end.centre().minus(w).plus(h));
      ring.add(end.centre().minus(w).minus(h));
      ring.add(end.centre().plus(w).minus(h));
      return ring;
    }
    double a = section instanceof Section.Oval o ? o.widthM() / 2 : section.largestSideM() / 2;
    double b = section instanceof Section.Oval o ? o.heightM() / 2 : section.largestSideM() / 2;
    for (int i = 0; i < ROUND_CORNERS; i++) {
      double t = 2 * Math.PI * i / ROUND_CORNERS;
      Vec off = width.times(a * Math.cos(t)).plus(height.times(b * Math.sin(t)));
      ring.add(end.centre().plus(off));
    }
    return ring;
  }
}
