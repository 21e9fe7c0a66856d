package org.lagwright.ifc.oracle;

import static org.lagwright.ifc.oracle.OracleMesh.cross;
import static org.lagwright.ifc.oracle.OracleMesh.dot;
import static org.lagwright.ifc.oracle.OracleMesh.minus;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Point;

/**
 * Triangles that another program made of a round bend, cut finer and bent onto the torus that their
 * corners lie on. IfcGeomServer goes round a pipe in 25 steps and along its bend in so few that 4 %
 * of a small bend are missing between its triangles and the surface; of a thin wall the differences
 * of outside and bore come to 5 %. The corners themselves lie on both surfaces, so what is missing
 * follows from them. Triangles whose corners do not lie on our torus stay flat.
 */
final class BentTriangles {

  private static final int PARTS = 8;

  /** Corners of one triangle lie this equally far from the centre line: single precision. */
  private static final double SAME_M = 1e-4;

  private final OracleMesh mesh;
  private final Shape bend;
  private final Point centre;
  private final Point axis;
  private final double radiusM;
  private final int[] welded;
  private final Set<List<Integer>> bentEdges = new HashSet<>();

  private BentTriangles(OracleMesh mesh, Shape bend) {
    this.mesh = mesh;
    this.bend = bend;
    this.radiusM = Objects.requireNonNull(bend.bendRadiusM()).value();
    ShapeEnd start = bend.ends().get(0);
    Point along = times(start.outward(), -1);
    Point chord = minus(bend.ends().get(1).centreM(), start.centreM());
    Point inwards = unit(minus(chord, times(along, dot(chord, along))));
    this.centre = plus(start.centreM(), times(inwards, radiusM));
    this.axis = cross(along, inwards);
    this.welded = welded(mesh);
  }

  /** Volume within the triangles once they are bent, m3. */
  static double volumeM3(OracleMesh mesh, Shape bend) {
    return new BentTriangles(mesh, bend).volumeM3();
  }

  /** For each corner the first one in its place. */
  private static int[] welded(OracleMesh mesh) {
    int[] first = new int[mesh.cornersM().length / 3];
    for (int i = 0; i < first.length; i++) {
      first[i] = i;
      for (int j = 0; j < i && first[i] == i; j++) {
        first[i] = mesh.corner(i).distanceM(mesh.corner(j)) < SAME_M / 5 ? j : i;
      }
    }
    return first;
  }

  private double volumeM3() {
    int[] all = mesh.triangles();
    List<int[]> bent = new ArrayList<>();
    List<int[]> flat = new ArrayList<>();
    for (int i = 0; i < all.length; i += 3) {
      int[] t = {welded[all[i]], welded[all[i + 1]], welded[all[i + 2]]};
      (isOnTorus(t) ? bent : flat).add(t);
    }
    bent.forEach(t -> edges(t).forEach(bentEdges::add));
    double sum = 0;
    for (int[] t : bent) {
      sum += volumeM3(t, true);
    }
    for (int[] t : flat) {
      sum += volumeM3(t, false);
    }
    return Math.abs(sum);
  }

  private boolean isOnTorus(int[] t) {
    Point a = mesh.corner(t[0]);
    Point normal = cross(minus(mesh.corner(t[1]), a), minus(mesh.corner(t[2]), a));
    double fromM = fromLineM(a);
    return bend.ends().stream().noneMatch(end -> mesh.lies(a, normal, end))
        && Math.abs(fromLineM(mesh.corner(t[1])) - fromM) < SAME_M
        && Math.abs(fromLineM(mesh.corner(t[2])) - fromM) < SAME_M;
  }

  private static List<List<Integer>> edges(int[] t) {
    return List.of(edge(t[0], t[1]), edge(t[1], t[2]), edge(t[2], t[0]));
  }

  private static List<Integer> edge(int a, int b) {
    return List.of(Math.min(a, b), Math.max(a, b));
  }

  /** Signed volume between the parts of a triangle and the centre of the bend. */
  private double volumeM3(int[] t, boolean bent) {
    double sum = 0;
    for (int i = 0; i < PARTS; i++) {
      for (int j = 0; j < PARTS - i; j++) {
        Point a = at(t, i, j, bent);
        Point b = at(t, i + 1, j, bent);
        Point c = at(t, i, j + 1, bent);
        sum += sixfold(a, b, c);
        if (i + j < PARTS - 1) {
          sum += sixfold(b, at(t, i + 1, j + 1, bent), c);
        }
      }
    }
    return sum / 6;
  }

  private double sixfold(Point a, Point b, Point c) {
    return dot(minus(a, centre), cross(minus(b, centre), minus(c, centre)));
  }

  /** A point of a triangle, moved onto the torus if its triangle or its edge is bent. */
  private Point at(int[] t, int i, int j, boolean bent) {
    int k = PARTS - i - j;
    Point a = mesh.corner(t[0]);
    Point b = mesh.corner(t[1]);
    Point c = mesh.corner(t[2]);
    Point flat =
        plus(
            times(a, (double) k / PARTS),
            plus(times(b, (double) i / PARTS), times(c, (double) j / PARTS)));
    List<Integer> onEdge =
        j == 0
            ? edge(t[0], t[1])
            : k == 0 ? edge(t[1], t[2]) : i == 0 ? edge(t[2], t[0]) : List.of();
    return bent || bentEdges.contains(onEdge) ? onTorus(flat, fromLineM(a)) : flat;
  }

  private Point onTorus(Point point, double fromM) {
    Point line = onLine(point);
    return plus(line, times(unit(minus(point, line)), fromM));
  }

  private double fromLineM(Point point) {
    return point.distanceM(onLine(point));
  }

  /** The nearest point of the centre line. */
  private Point onLine(Point point) {
    Point off = minus(point, centre);
    Point level = minus(off, times(axis, dot(off, axis)));
    return plus(centre, times(unit(level), radiusM));
  }

  private static Point plus(Point a, Point b) {
    return new Point(a.x() + b.x(), a.y() + b.y(), a.z() + b.z());
  }

  private static Point times(Point a, double factor) {
    return new Point(a.x() * factor, a.y() * factor, a.z() * factor);
  }

  private static Point unit(Point a) {
    return times(a, 1 / Math.sqrt(dot(a, a)));
  }
}
