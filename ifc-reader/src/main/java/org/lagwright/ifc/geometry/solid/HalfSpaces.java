package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.HalfSpace;
import org.lagwright.ifc.geometry.mesh.Solid;
import org.lagwright.ifc.geometry.mesh.Tool;
import org.lagwright.ifc.geometry.profile.ProfileArea;
import org.lagwright.ifc.schema.IfcRecord;

/** Reads half spaces: plain, boxed, and bounded by a polygon. */
public final class HalfSpaces {

  private final Coordinates coordinates;
  private final Curves curves;
  private final double stepRad;

  HalfSpaces(Coordinates coordinates, Curves curves, double stepRad) {
    this.coordinates = coordinates;
    this.curves = curves;
    this.stepRad = stepRad;
  }

  /**
   * The half space as a body to cut with; it has no facets of its own.
   *
   * @param cut points of what it is to cut; a polygon is drawn out beyond them both ways
   */
  @Nullable Solid read(IfcRecord halfSpace, Frame frame, List<Vec> cut) {
    HalfSpace side = side(coordinates, halfSpace, frame);
    if (side == null) {
      return null;
    }
    Tool plain = new Tool.Convex(List.of(side));
    if (!halfSpace.is("IfcPolygonalBoundedHalfSpace")) {
      return new Solid(List.of(), plain, true);
    }
    Frame position = coordinates.axes(halfSpace, "Position").frame();
    Path boundary = curves.read(halfSpace.ref("PolygonalBoundary"));
    if (position == null || boundary == null) {
      return null;
    }
    Tool column = column(boundary.points(stepRad), frame.times(position), cut);
    return column == null ? null : new Solid(List.of(), new Tool.Both(plain, column), true);
  }

  /**
   * The material of a half space, be it plain or bounded: with agreement it lies opposite to the
   * normal of the surface. Null if that is no plane that is read here.
   */
  public static @Nullable HalfSpace side(
      Coordinates coordinates, IfcRecord halfSpace, Frame frame) {
    IfcRecord plane = halfSpace.ref("BaseSurface");
    Frame position =
        plane == null || !plane.is("IfcPlane") ? null : coordinates.axes(plane, "Position").frame();
    if (position == null) {
      return null;
    }
    Frame world = frame.times(position);
    Vec normal = Vec.of(world.ex()).cross(Vec.of(world.ey())).unit();
    Vec towards = normal.dot(Vec.of(world.ez())) < 0 ? normal.times(-1) : normal;
    boolean agrees = !"F".equals(halfSpace.enumeration("AgreementFlag"));
    return HalfSpace.below(Vec.of(world.origin()), agrees ? towards : towards.times(-1));
  }

  private static @Nullable Tool column(List<Vec> polygon, Frame frame, List<Vec> corners) {
    Vec origin = Vec.of(frame.origin());
    Vec along = Vec.of(frame.ez());
    double reach = 1 + 2 * corners.stream().mapToDouble(origin::distanceTo).max().orElse(0);
    List<Frame> stations = new ArrayList<>();
    for (double at : new double[] {-reach, reach}) {
      Vec centre = origin.plus(along.unit().times(at));
      stations.add(new Frame(centre.point(), frame.ex(), frame.ey(), frame.ez()));
    }
    List<ProfileArea> area = List.of(ProfileArea.of(polygon, List.of()));
    return SweptFacets.sweep(area, area, stations, false).tool();
  }
}
