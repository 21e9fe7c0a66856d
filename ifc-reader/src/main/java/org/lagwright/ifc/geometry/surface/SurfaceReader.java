package org.lagwright.ifc.geometry.surface;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.curve.SampledCurve;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.schema.IfcRecord;

/** Reads the curved surfaces of faces; null where one is broken or of a kind not read here. */
public final class SurfaceReader {

  private final Coordinates coordinates;
  private final Curves curves;

  /** Reads surfaces of one file. */
  public SurfaceReader(Coordinates coordinates, Curves curves) {
    this.coordinates = coordinates;
    this.curves = curves;
  }

  /** A surface, null if it is of a kind that is not read. */
  public @Nullable Surface read(IfcRecord surface) {
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
    Frame axis = coordinates.axes(surface, "AxisPosition").frame();
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

  /** A surface between two parameters each way. */
  public record Trimmed(Surface surface, double fromU, double fromV, double toU, double toV) {

    private static final int MOST = 400;

    /** Rows of points along u, one for each step along v. */
    public List<List<Vec>> rows(double stepRad) {
      int alongU = steps(surface.rangeU(), fromU, toU, stepRad);
      int alongV = surface.periodV() > 0 ? steps(surface.rangeV(), fromV, toV, stepRad) : 1;
      List<List<Vec>> rows = new ArrayList<>();
      for (int j = 0; j <= alongV; j++) {
        List<Vec> row = new ArrayList<>();
        for (int i = 0; i <= alongU; i++) {
          row.add(
              surface.at(fromU + (toU - fromU) * i / alongU, fromV + (toV - fromV) * j / alongV));
        }
        rows.add(row);
      }
      return rows;
    }

    /** Steps in shares of a whole turn. */
    private static int steps(double whole, double from, double to, double stepRad) {
      double turns = Math.abs(to - from) / whole;
      return (int) Math.max(1, Math.min(MOST, Math.ceil(turns * 2 * Math.PI / stepRad - 1e-6)));
    }
  }

  /** A trimmed surface, or one of extrusion, which ends by itself; null if it is neither. */
  public @Nullable Trimmed trimmed(IfcRecord element) {
    if (element.is("IfcSurfaceOfLinearExtrusion")) {
      double depthM = coordinates.length(element, "Depth");
      return read(element) instanceof Surface.Moved moved && depthM > 0
          ? new Trimmed(moved, 0, 0, moved.curve().lengthM(), depthM)
          : null;
    }
    IfcRecord basis =
        element.is("IfcRectangularTrimmedSurface") ? element.ref("BasisSurface") : null;
    Surface surface = basis == null ? null : read(basis);
    boolean known = surface instanceof Surface.Cylinder || surface instanceof Surface.Torus;
    if (surface == null || !known) {
      return null;
    }
    double angleRad = coordinates.units().angleRad();
    double unitV = surface.periodV() > 0 ? angleRad : coordinates.units().lengthM();
    Trimmed part =
        new Trimmed(
            surface,
            element.number("U1") * angleRad,
            element.number("V1") * unitV,
            element.number("U2") * angleRad,
            element.number("V2") * unitV);
    boolean told = Double.isFinite(part.fromU + part.fromV + part.toU + part.toV);
    return told && part.fromU != part.toU && part.fromV != part.toV ? part : null;
  }
}
