package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lagwright.ifc.geometry.frame.Vec;

/** Generates closed bodies of known size and writes them the different ways IFC knows. */
public final class MeshText {

  public final List<double[]> points = new ArrayList<>();
  public final List<int[]> faces = new ArrayList<>();

  /** Adds a ring about a centre in the plane of u and v; its point numbers. */
  public int[] ring(double[] centre, double[] u, double[] v, double radius, int corners) {
    int[] ring = new int[corners];
    for (int i = 0; i < corners; i++) {
      double t = 2 * Math.PI * i / corners;
      ring[i] = points.size();
      double[] point = new double[3];
      for (int k = 0; k < 3; k++) {
        point[k] = centre[k] + radius * (Math.cos(t) * u[k] + Math.sin(t) * v[k]);
      }
      points.add(point);
    }
    return ring;
  }

  /** Adds a rectangle about a centre with half sides u and v. */
  public int[] rectangle(double[] centre, double[] u, double[] v) {
    int[][] signs = {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}};
    int[] ring = new int[4];
    for (int i = 0; i < 4; i++) {
      ring[i] = points.size();
      double[] point = new double[3];
      for (int k = 0; k < 3; k++) {
        point[k] = centre[k] + signs[i][0] * u[k] + signs[i][1] * v[k];
      }
      points.add(point);
    }
    return ring;
  }

  /** Joins two rings of equal size by a wall of quadrilaterals. */
  public MeshText wall(int[] from, int[] to) {
    for (int i = 0; i < from.length; i++) {
      int next = (i + 1) % from.length;
      faces.add(new int[] {from[i], from[next], to[next], to[i]});
    }
    return this;
  }

  public MeshText cap(int[] ring) {
    faces.add(ring.clone());
    return this;
  }

  /** A capped tube through rings. */
  public MeshText tube(int[]... rings) {
    cap(rings[0]);
    for (int i = 1; i < rings.length; i++) {
      wall(rings[i - 1], rings[i]);
    }
    return cap(rings[rings.length - 1]);
  }

  /** A bend from the x axis towards the y axis: rings at equal steps of the angle. */
  public MeshText bend(double radius, double bendRadius, double angleRad, int corners, int steps) {
    int[][] rings = new int[steps + 1][];
    for (int i = 0; i <= steps; i++) {
      double t = angleRad * i / steps;
      double[] centre = {bendRadius * Math.sin(t), bendRadius * (1 - Math.cos(t)), 0};
      double[] radial = {-Math.sin(t), Math.cos(t), 0};
      rings[i] = ring(centre, radial, new double[] {0, 0, 1}, radius, corners);
    }
    return tube(rings);
  }

  /** Moves, after turning about a unit axis. */
  public MeshText placed(double[] axis, double angleRad, double[] by) {
    for (double[] p : points) {
      Vec turned = new Vec(p[0], p[1], p[2]).turned(new Vec(axis[0], axis[1], axis[2]), angleRad);
      p[0] = turned.x() + by[0];
      p[1] = turned.y() + by[1];
      p[2] = turned.z() + by[2];
    }
    return this;
  }

  public MeshText insideOut() {
    for (int[] face : faces) {
      for (int i = 0; i < face.length / 2; i++) {
        int kept = face[i];
        face[i] = face[face.length - 1 - i];
        face[face.length - 1 - i] = kept;
      }
    }
    return this;
  }

  /** As IfcTriangulatedFaceSet #id, caps cut into fans. */
  public String triangulated(int id) {
    List<String> triangles = new ArrayList<>();
    for (int[] face : faces) {
      for (int i = 1; i + 1 < face.length; i++) {
        triangles.add("(%d,%d,%d)".formatted(face[0] + 1, face[i] + 1, face[i + 1] + 1));
      }
    }
    return "#%d=IFCTRIANGULATEDFACESET(#%d,$,.T.,(%s),$);\n"
            .formatted(id, id + 1, String.join(",", triangles))
        + pointList(id + 1);
  }

  /** As IfcPolygonalFaceSet #id. */
  public String polygonal(int id) {
    StringBuilder records = new StringBuilder();
    List<String> references = new ArrayList<>();
    for (int i = 0; i < faces.size(); i++) {
      List<String> corners = new ArrayList<>();
      for (int corner : faces.get(i)) {
        corners.add(Integer.toString(corner + 1));
      }
      references.add("#" + (id + 2 + i));
      records.append(
          "#%d=IFCINDEXEDPOLYGONALFACE((%s));\n".formatted(id + 2 + i, String.join(",", corners)));
    }
    return "#%d=IFCPOLYGONALFACESET(#%d,.T.,(%s),$);\n"
            .formatted(id, id + 1, String.join(",", references))
        + pointList(id + 1)
        + records;
  }

  private String pointList(int id) {
    List<String> texts = new ArrayList<>();
    for (double[] p : points) {
      texts.add("(" + coordinates(p) + ")");
    }
    return "#%d=IFCCARTESIANPOINTLIST3D((%s));\n".formatted(id, String.join(",", texts));
  }

  private static String coordinates(double[] p) {
    return String.format(Locale.ROOT, "%.9f,%.9f,%.9f", p[0], p[1], p[2]);
  }

  /** As IfcFacetedBrep #id. */
  public String faceted(int id) {
    return "#%d=IFCFACETEDBREP(#%d);\n".formatted(id, id + 1) + shell(id + 1, "IFCCLOSEDSHELL");
  }

  /** As IfcShellBasedSurfaceModel #id. */
  public String surface(int id) {
    return "#%d=IFCSHELLBASEDSURFACEMODEL((#%d));\n".formatted(id, id + 1)
        + shell(id + 1, "IFCOPENSHELL");
  }

  /** As IfcFaceBasedSurfaceModel #id, with what follows it a face set each. */
  public static String faceBased(int id, List<MeshText> bodies) {
    StringBuilder records = new StringBuilder();
    List<String> references = new ArrayList<>();
    for (MeshText body : bodies) {
      int set = id + 1000 * (references.size() + 1);
      references.add("#" + set);
      records.append(body.shell(set, "IFCCONNECTEDFACESET"));
    }
    return "#%d=IFCFACEBASEDSURFACEMODEL((%s));\n".formatted(id, String.join(",", references))
        + records;
  }

  private String shell(int id, String keyword) {
    StringBuilder records = new StringBuilder();
    List<String> references = new ArrayList<>();
    int next = id + 1;
    for (int[] face : faces) {
      List<String> corners = new ArrayList<>();
      references.add("#" + next);
      records.append("#%d=IFCFACE((#%d));\n".formatted(next, next + 1));
      records.append("#%d=IFCFACEOUTERBOUND(#%d,.T.);\n".formatted(next + 1, next + 2));
      int loop = next + 2;
      next += 3;
      for (int corner : face) {
        corners.add("#" + next);
        records.append(
            "#%d=IFCCARTESIANPOINT((%s));\n".formatted(next++, coordinates(points.get(corner))));
      }
      records.append("#%d=IFCPOLYLOOP((%s));\n".formatted(loop, String.join(",", corners)));
    }
    return "#%d=%s((%s));\n".formatted(id, keyword, String.join(",", references)) + records;
  }
}
