package org.lagwright.ifc.geometry;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcRecord;

/** Reads the curved surfaces of faces; null where one is broken or of a kind not read here. */
final class SurfaceReader {

  private final Coordinates coordinates;
  private final Curves curves;

  SurfaceReader(Coordinates coordinates, Curves curves) {
    this.coordinates = coordinates;
    this.curves = curves;
  }

  @Nullable Surface read(IfcRecord surface) {
    if (surface.is("IfcBSplineSurface")) {
      return BSplineSurface.read(surface, coordinates);
    }
    Frame frame = coordinates.position(surface, "Position");
    if (frame == null) {
      return null;
    }
    return switch (surface.entityName()) {
      case "IfcCylindricalSurface" -> {
        double radiusM = coordinates.length(surface, "Radius");
        yield radiusM > 0 ? new Surface.Cylinder(frame, radiusM) : null;
      }
      case "IfcSphericalSurface" -> {
        double radiusM = coordinates.length(surface, "Radius");
        yield radiusM > 0 ? new Surface.Sphere(frame, radiusM) : null;
      }
      case "IfcToroidalSurface" -> {
        double majorM = coordinates.length(surface, "MajorRadius");
        double minorM = coordinates.length(surface, "MinorRadius");
        yield majorM > 0 && minorM > 0 ? new Surface.Torus(frame, majorM, minorM) : null;
      }
      case "IfcSurfaceOfRevolution" -> turned(surface, frame);
      case "IfcSurfaceOfLinearExtrusion" -> moved(surface, frame);
      default -> null;
    };
  }

  private @Nullable SampledCurve swept(IfcRecord surface) {
    IfcRecord profile = surface.ref("SweptCurve");
    Path path = profile == null ? null : curves.read(profile.ref("Curve"));
    if (path == null && profile != null) {
      path = curves.read(profile.ref("OuterCurve"));
    }
    return path == null ? null : SampledCurve.of(path);
  }

  private @Nullable Surface turned(IfcRecord surface, Frame frame) {
    SampledCurve curve = swept(surface);
    Frame axis = coordinates.axes(surface.ref("AxisPosition"));
    if (curve == null || axis == null) {
      return null;
    }
    // the axis and the curve stand in the position of the surface; the curve is turned in the axis
    Vec z = Vec.of(axis.ez());
    Vec x = z.anyNormal();
    Frame about = Frame.of(Vec.of(axis.origin()), x, z.cross(x), z);
    SampledCurve seen =
        new SampledCurve(
            curve.points().stream()
                .map(
                    p -> {
                      Vec off = p.minus(Vec.of(about.origin()));
                      return new Vec(off.dot(x), off.dot(z.cross(x)), off.dot(z));
                    })
                .toList(),
            curve.upToM());
    return new Surface.Turned(frame.times(about), seen);
  }

  private @Nullable Surface moved(IfcRecord surface, Frame frame) {
    SampledCurve curve = swept(surface);
    Vec direction = coordinates.direction(surface.ref("ExtrudedDirection"));
    return curve == null || direction == null ? null : new Surface.Moved(frame, curve, direction);
  }
}
