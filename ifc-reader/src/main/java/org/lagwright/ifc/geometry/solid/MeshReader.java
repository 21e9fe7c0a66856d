package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Mesh;
import org.lagwright.ifc.geometry.surface.Patch;
import org.lagwright.ifc.geometry.surface.PatchIntegral;
import org.lagwright.ifc.geometry.surface.Surface;
import org.lagwright.ifc.geometry.surface.SurfaceReader;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.step.StepArguments;

/** Reads boundary representations, surface models and tessellated face sets as meshes. */
public final class MeshReader {

  private final Coordinates coordinates;
  private final Curves curves;
  private final double stepRad;
  private final SurfaceReader surfaces;

  /** True if all curved faces are measured; else by their edges, and further only when asked. */
  private final boolean curvedToo;

  /** Reads curved faces by their edges. */
  public MeshReader(Coordinates coordinates, Curves curves) {
    this(coordinates, curves, Leg.STEP_RAD, false);
  }

  /**
   * Measures curved faces too.
   *
   * @param stepRad edges are cut into steps of at most this
   */
  MeshReader(Coordinates coordinates, Curves curves, double stepRad) {
    this(coordinates, curves, stepRad, true);
  }

  private MeshReader(Coordinates coordinates, Curves curves, double stepRad, boolean curvedToo) {
    this.coordinates = coordinates;
    this.curves = curves;
    this.stepRad = stepRad;
    this.surfaces = new SurfaceReader(coordinates, curves);
    this.curvedToo = curvedToo;
  }

  /** The mesh of an item in world coordinates, null if the item is none or has no faces. */
  public @Nullable Mesh read(Item item) {
    Mesh.Builder mesh = new Mesh.Builder();
    add(item, mesh);
    return mesh.build();
  }

  /** Adds the faces of an item; nothing if the item has none. */
  void add(Item item, Mesh.Builder mesh) {
    IfcRecord record = item.record();
    if (record.is("IfcTriangulatedFaceSet")) {
      triangles(record, item.frame(), mesh);
    } else if (record.is("IfcPolygonalFaceSet")) {
      polygons(record, item.frame(), mesh);
    } else if (record.is("IfcManifoldSolidBrep")) {
      shell(record.ref("Outer"), item.frame(), mesh);
    } else if (record.is("IfcConnectedFaceSet")) {
      shell(record, item.frame(), mesh);
    } else if (record.is("IfcGeometricSet")) {
      for (IfcRecord element : record.refs("Elements")) {
        drawn(element, item.frame(), mesh);
      }
    } else {
      shells(record.refs("SbsmBoundary"), item.frame(), mesh);
      shells(record.refs("FbsmFaces"), item.frame(), mesh);
    }
  }

  private List<Vec> points(IfcRecord faceSet, Frame frame, Mesh.Builder mesh) {
    List<Vec> points = curves.pointList(faceSet.ref("Coordinates"));
    note(points, frame, mesh);
    return frame.points(points);
  }

  private void note(List<Vec> points, Frame frame, Mesh.Builder mesh) {
    double scale = frame.vector(Vec.X).norm();
    mesh.rounding().note(points, coordinates.units().lengthM(), scale);
  }

  private void triangles(IfcRecord faceSet, Frame frame, Mesh.Builder mesh) {
    List<Vec> points = points(faceSet, frame, mesh);
    double[] through = faceSet.numbers("PnIndex");
    double[] indices = faceSet.numbers("CoordIndex");
    for (int i = 0; i + 3 <= indices.length; i += 3) {
      double[] corners = {indices[i], indices[i + 1], indices[i + 2]};
      mesh.face(List.of(loop(points, through, corners)), true);
    }
  }

  private void polygons(IfcRecord faceSet, Frame frame, Mesh.Builder mesh) {
    List<Vec> points = points(faceSet, frame, mesh);
    double[] through = faceSet.numbers("PnIndex");
    for (IfcRecord face : faceSet.refs("Faces")) {
      List<List<Vec>> loops = new ArrayList<>();
      loops.add(loop(points, through, face.numbers("CoordIndex")));
      StepArguments holes = face.list("InnerCoordIndices");
      for (int i = 0; i < holes.size(); i++) {
        loops.add(loop(points, through, holes.numbers(i)));
      }
      mesh.face(loops, true);
    }
  }

  /** Points by number from 1, through a second list of numbers if there is one. */
  private static List<Vec> loop(List<Vec> points, double[] through, double[] indices) {
    List<Vec> loop = new ArrayList<>();
    for (double index : indices) {
      double at = through.length == 0 ? index : number(through, index);
      if (at >= 1 && at <= points.size()) {
        loop.add(points.get((int) at - 1));
      }
    }
    return loop;
  }

  private static double number(double[] through, double index) {
    return index >= 1 && index <= through.length ? through[(int) index - 1] : 0;
  }

  private void shells(List<IfcRecord> shells, Frame frame, Mesh.Builder mesh) {
    for (IfcRecord shell : shells) {
      shell(shell, frame, mesh);
    }
  }

  private void shell(@Nullable IfcRecord shell, Frame frame, Mesh.Builder mesh) {
    for (IfcRecord face : shell == null ? List.<IfcRecord>of() : shell.refs("CfsFaces")) {
      IfcRecord surface = face.ref("FaceSurface");
      boolean plane = surface == null || surface.is("IfcPlane");
      List<List<Vec>> loops = new ArrayList<>();
      for (IfcRecord bound : face.refs("Bounds")) {
        List<Vec> loop = bound(bound);
        note(loop, frame, mesh);
        loops.add(bound.is("IfcFaceOuterBound") ? 0 : loops.size(), loop);
      }
      List<List<Vec>> world = inWorld(loops, frame);
      if (surface == null || plane) {
        mesh.face(world, plane);
      } else if (curvedToo) {
        Patch patch = patch(surface, loops, frame);
        mesh.face(world, false, patch, patch == null ? List::of : patch.tiles());
      } else {
        mesh.face(world, false, null, () -> tiles(surface, loops, frame));
      }
    }
  }

  private static List<List<Vec>> inWorld(List<List<Vec>> loops, Frame frame) {
    List<List<Vec>> world = new ArrayList<>(loops.size());
    for (List<Vec> loop : loops) {
      world.add(frame.points(loop));
    }
    return world;
  }

  /** A surface that is drawn by itself: quadrangles with their corners on it. */
  private void drawn(IfcRecord element, Frame frame, Mesh.Builder mesh) {
    SurfaceReader.Trimmed part = surfaces.trimmed(element);
    List<Vec> last = List.of();
    for (List<Vec> row : part == null ? List.<List<Vec>>of() : part.rows(stepRad)) {
      List<Vec> points = frame.points(row);
      for (int i = 1; i < last.size(); i++) {
        mesh.face(
            List.of(List.of(last.get(i - 1), last.get(i), points.get(i), points.get(i - 1))), true);
      }
      last = points;
    }
  }

  private @Nullable Patch patch(IfcRecord surface, List<List<Vec>> loops, Frame frame) {
    Surface read = surfaces.read(surface);
    List<List<Vec>> open = open(loops);
    return read == null || open.isEmpty() ? null : PatchIntegral.of(read, open, frame, stepRad);
  }

  private List<List<List<Vec>>> tiles(IfcRecord surface, List<List<Vec>> loops, Frame frame) {
    Surface read = surfaces.read(surface);
    List<List<Vec>> open = open(loops);
    return read == null || open.isEmpty()
        ? List.of()
        : PatchIntegral.tiles(read, open, frame, stepRad);
  }

  /** Loops of more than a vertex, which is a pole. */
  private static List<List<Vec>> open(List<List<Vec>> loops) {
    return loops.stream().filter(loop -> loop.size() > 1).toList();
  }

  /** Points of a loop in the direction of its face. */
  private List<Vec> bound(IfcRecord bound) {
    List<Vec> points = loop(bound.ref("Bound"));
    // a loop that runs the other way matters only where curved faces are measured
    if (curvedToo && "F".equals(bound.enumeration("Orientation"))) {
      Collections.reverse(points);
    }
    return points;
  }

  private List<Vec> loop(@Nullable IfcRecord loop) {
    if (loop == null || !loop.is("IfcEdgeLoop")) {
      return loop == null ? new ArrayList<>() : coordinates.corners(loop, "Polygon");
    }
    List<Vec> points = new ArrayList<>();
    loop.refs("EdgeList").forEach(edge -> points.addAll(edge(edge)));
    return points;
  }

  /** Points of an edge in the direction of its loop, both ends included. */
  private List<Vec> edge(IfcRecord oriented) {
    IfcRecord edge = oriented.is("IfcOrientedEdge") ? oriented.ref("EdgeElement") : oriented;
    if (edge == null) {
      return List.of();
    }
    List<Vec> points = new ArrayList<>(alongEdge(edge));
    if ("F".equals(oriented.enumeration("Orientation"))) {
      Collections.reverse(points);
    }
    return points;
  }

  private List<Vec> alongEdge(IfcRecord edge) {
    Vec start = vertex(edge.ref("EdgeStart"));
    Vec end = vertex(edge.ref("EdgeEnd"));
    if (start == null || end == null) {
      return List.of();
    }
    IfcRecord curve = edge.ref("EdgeGeometry");
    boolean sameSense = !"F".equals(edge.enumeration("SameSense"));
    Path path = curve == null ? null : curves.between(curve, start, end, sameSense);
    if (path == null) {
      return List.of(start, end);
    }
    List<Vec> points = new ArrayList<>(path.points(stepRad));
    points.add(end);
    return points;
  }

  private @Nullable Vec vertex(@Nullable IfcRecord vertex) {
    return vertex == null ? null : coordinates.point(vertex.ref("VertexGeometry"));
  }
}
