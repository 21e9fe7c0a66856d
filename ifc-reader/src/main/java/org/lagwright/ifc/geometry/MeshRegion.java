package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.curve.Polygons;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Mesh;
import org.lagwright.ifc.model.Point;

/** The inside of a closed mesh of plane faces, whichever way round its faces are written. */
final class MeshRegion implements Region {

  /** Slanting in no simple ratio, so that the ray misses the edges that buildings are made of. */
  private static final Vec RAY = new Vec(0.9137, 0.3779, 0.1491).unit();

  private static final Vec RIGHT = RAY.anyNormal();
  private static final Vec UP = RAY.cross(RIGHT);

  private record Facet(List<List<Vec>> loops, Vec normal, double distance) {}

  private final Vec origin;
  private final Box box;
  private final List<Facet> facets = new ArrayList<>();

  MeshRegion(Mesh mesh) {
    this.origin = mesh.origin();
    List<Point> world = new ArrayList<>();
    mesh.vertices().forEach(v -> world.add(v.plus(origin).point()));
    this.box = Box.around(world);
    for (Mesh.Face face : mesh.faces()) {
      Vec normal = mesh.areaNormal(face).unit();
      if (Math.abs(normal.dot(RAY)) > Vec.TINY) {
        List<List<Vec>> loops = new ArrayList<>();
        for (int[] loop : face.loops()) {
          loops.add(mesh.points(loop).stream().map(MeshRegion::alongRay).toList());
        }
        Vec on = mesh.vertices().get(face.loops().get(0)[0]);
        facets.add(new Facet(loops, normal, normal.dot(on)));
      }
    }
  }

  /** What is seen when looking along the ray. */
  private static Vec alongRay(Vec point) {
    return new Vec(point.dot(RIGHT), point.dot(UP), 0);
  }

  @Override
  public Box box() {
    return box;
  }

  @Override
  public boolean holds(Point worldM) {
    if (!box.holds(worldM)) {
      return false;
    }
    Vec from = Vec.of(worldM).minus(origin);
    Vec seen = alongRay(from);
    boolean inside = false;
    for (Facet facet : facets) {
      boolean ahead = (facet.distance - facet.normal.dot(from)) / facet.normal.dot(RAY) > 0;
      inside ^= ahead && covers(facet, seen);
    }
    return inside;
  }

  /** A point within the outer loop and one hole lies in two loops, so not on the face. */
  private static boolean covers(Facet facet, Vec seen) {
    boolean on = false;
    for (List<Vec> loop : facet.loops) {
      on ^= Polygons.holds(loop, seen.x(), seen.y());
    }
    return on;
  }
}
