package org.lagwright.ifc.geometry;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.HalfSpace;
import org.lagwright.ifc.geometry.solid.HalfSpaces;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.schema.IfcRecord;

/** Tells which points half spaces hold, be they plain or bounded by a polygon. */
final class HalfSpaceRegions {

  private final Coordinates coordinates;
  private final Curves curves;

  HalfSpaceRegions(Coordinates coordinates, Curves curves) {
    this.coordinates = coordinates;
    this.curves = curves;
  }

  /** True for the world positions within it; null for what is no half space that is read here. */
  @Nullable Predicate<Point> holding(IfcRecord halfSpace, Frame frame) {
    HalfSpace side =
        halfSpace.is("IfcHalfSpaceSolid") ? HalfSpaces.side(coordinates, halfSpace, frame) : null;
    if (side == null) {
      return null;
    }
    Predicate<Point> behind = worldM -> side.holds(Vec.of(worldM));
    if (!halfSpace.is("IfcPolygonalBoundedHalfSpace")) {
      return behind;
    }
    PrismRegion column = column(halfSpace, frame);
    return column == null ? null : behind.and(column::holdsInPlan);
  }

  private @Nullable PrismRegion column(IfcRecord halfSpace, Frame frame) {
    Frame own = coordinates.axes(halfSpace, "Position").frame();
    Path boundary = curves.read(halfSpace.ref("PolygonalBoundary"));
    if (own == null || boundary == null) {
      return null;
    }
    Frame at = frame.times(own);
    return PrismRegion.of(at, Vec.of(at.ez()), boundary.points());
  }
}
