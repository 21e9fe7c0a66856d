package org.lagwright.ifc.oracle;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.testmodels.check.TriangleMesh;

/**
 * Triangles that another program made of a product.
 *
 * @param globalId empty where the program does not tell it
 * @param step record number, 0 where the program does not tell it
 * @param cornersM x, y, z of each corner in the world, metres
 * @param triangles three corners each
 */
record OracleMesh(String globalId, long step, double[] cornersM, int[] triangles) {

  /** A triangle lies in an end if it is this parallel to it (cosine) ... */
  private static final double PARALLEL = 0.999;

  /** ... and this near to its plane, over its size. */
  private static final double NEAR = 5e-3;

  /** What another program made, with its record number. */
  static OracleMesh of(TriangleMesh mesh) {
    return new OracleMesh("", mesh.step(), mesh.cornersM(), mesh.triangles());
  }

  Box box() {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < cornersM.length / 3; i++) {
      corners.add(corner(i));
    }
    return Box.around(corners);
  }

  /** Volume enclosed, if the triangles close it. */
  double volumeM3() {
    Point tip = corner(0);
    double six = 0;
    for (int i = 0; i < triangles.length; i += 3) {
      Point a = minus(corner(triangles[i]), tip);
      Point b = minus(corner(triangles[i + 1]), tip);
      six += dot(a, cross(b, minus(corner(triangles[i + 2]), tip)));
    }
    return Math.abs(six) / 6;
  }

  /** Area of all triangles but those that lie in an end. */
  double areaWithoutM2(List<ShapeEnd> ends) {
    double area = 0;
    for (int i = 0; i < triangles.length; i += 3) {
      Point a = corner(triangles[i]);
      Point normal = cross(minus(corner(triangles[i + 1]), a), minus(corner(triangles[i + 2]), a));
      boolean inAnEnd = ends.stream().anyMatch(end -> lies(a, normal, end));
      area += inAnEnd ? 0 : Math.sqrt(dot(normal, normal)) / 2;
    }
    return area;
  }

  /** True if a triangle of a normal lies in an end. */
  boolean lies(Point corner, Point normal, ShapeEnd end) {
    double size = end.section().largestSideM();
    Point off = minus(corner, end.centreM());
    double slant = Math.abs(dot(normal, end.outward()));
    return slant > PARALLEL * Math.sqrt(dot(normal, normal))
        && Math.abs(dot(off, end.outward())) < NEAR * size
        && Math.sqrt(dot(off, off)) < size;
  }

  Point corner(int index) {
    return new Point(cornersM[3 * index], cornersM[3 * index + 1], cornersM[3 * index + 2]);
  }

  static Point minus(Point a, Point b) {
    return new Point(a.x() - b.x(), a.y() - b.y(), a.z() - b.z());
  }

  static double dot(Point a, Point b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }

  static Point cross(Point a, Point b) {
    return new Point(
        a.y() * b.z() - a.z() * b.y(),
        a.z() * b.x() - a.x() * b.z(),
        a.x() * b.y() - a.y() * b.x());
  }
}
