package org.lagwright.ifc.geometry.frame;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcRecord;

/** Reads points, directions and axis systems; lengths come out in metres. Null means broken. */
public final class Coordinates {

  /** Coordinates are smaller, whatever their unit: a light year in millimetres. */
  private static final double LARGEST = 1e19;

  /** Directions and axes that are remembered: most files write those along the axes once. */
  private static final int REMEMBERED = 1 << 8;

  /** Corners that are remembered: each is shared by several faces of a body, which follow soon. */
  private static final int REMEMBERED_CORNERS = 1 << 11;

  private final GeometryUnits units;
  private final Recent<Vec> directions = new Recent<>(REMEMBERED);
  private final Recent<Axes> axes = new Recent<>(REMEMBERED);
  private final Recent<Vec> corners = new Recent<>(REMEMBERED_CORNERS);

  /**
   * An axis placement.
   *
   * @param frame null if it is broken
   * @param givesAxis true if it says which way its third axis points
   */
  public record Axes(@Nullable Frame frame, boolean givesAxis) {}

  /** Reads points and directions in these units. */
  public Coordinates(GeometryUnits units) {
    this.units = units;
  }

  /** The units of the file. */
  public GeometryUnits units() {
    return units;
  }

  /** A length attribute in metres, NaN if there is none that a body could have. */
  public double length(IfcRecord record, String attribute) {
    double number = record.number(attribute);
    return isUsable(number) ? number * units.lengthM() : Double.NaN;
  }

  /** An IfcCartesianPoint of two or three dimensions. */
  public @Nullable Vec point(@Nullable IfcRecord point) {
    Vec read = point == null ? null : triple(point.numbers("Coordinates"));
    return read == null ? null : read.times(units.lengthM());
  }

  /** Points of a list that others name too, without those that are broken. */
  public List<Vec> corners(IfcRecord owner, String attribute) {
    long[] ids = owner.refIds(attribute);
    List<Vec> found = new ArrayList<>(ids.length);
    for (long id : ids) {
      Vec corner = corners.find(id);
      if (corner == null) {
        corner = point(owner.findTarget(id));
        if (corner == null) {
          continue;
        }
        corners.keep(id, corner);
      }
      found.add(corner);
    }
    return found;
  }

  /** An IfcDirection, made a unit vector. */
  public @Nullable Vec direction(@Nullable IfcRecord direction) {
    Vec read = direction == null ? null : triple(direction.numbers("DirectionRatios"));
    return read == null || read.isTiny() ? null : read.unit();
  }

  private static @Nullable Vec triple(double[] numbers) {
    if (numbers.length < 2) {
      return null;
    }
    Vec read = new Vec(numbers[0], numbers[1], numbers.length > 2 ? numbers[2] : 0);
    return isUsable(read.x()) && isUsable(read.y()) && isUsable(read.z()) ? read : null;
  }

  /** Squares of larger numbers leave no digit for a building. */
  private static boolean isUsable(double number) {
    return Math.abs(number) < LARGEST;
  }

  /** A direction attribute; the default where the record leaves it out, null where it is broken. */
  private @Nullable Vec direction(IfcRecord owner, String attribute, Vec absent) {
    long id = owner.refId(attribute);
    Vec known = id == 0 ? null : directions.find(id);
    if (known != null) {
      return known;
    }
    Vec read = owner.has(attribute) ? direction(owner.ref(attribute)) : absent;
    if (id != 0 && read != null) {
      directions.keep(id, read);
    }
    return read;
  }

  /** The optional axis placement of a solid or a profile; the identity where left out. */
  public @Nullable Frame position(IfcRecord owner, String attribute) {
    return owner.has(attribute) ? axes(owner, attribute).frame : Frame.WORLD;
  }

  /** The axis placement that an attribute refers to, broken if there is none. */
  public Axes axes(IfcRecord owner, String attribute) {
    long id = owner.refId(attribute);
    Axes known = axes.find(id);
    if (known == null) {
      IfcRecord placement = owner.ref(attribute);
      known = new Axes(axes(placement), placement != null && placement.has("Axis"));
      axes.keep(id, known);
    }
    return known;
  }

  /** IfcAxis2Placement2D and 3D, IfcAxis1Placement. The axis given wins over the reference. */
  public @Nullable Frame axes(@Nullable IfcRecord placement) {
    Vec origin = placement == null ? null : point(placement.ref("Location"));
    Vec z = placement == null ? null : direction(placement, "Axis", Vec.Z);
    Vec given = placement == null ? null : direction(placement, "RefDirection", Vec.X);
    if (origin == null || z == null || given == null) {
      return null;
    }
    Vec x = firstAxis(z, given);
    return Frame.of(origin, x, z.cross(x), z);
  }

  private static Vec firstAxis(Vec z, Vec given) {
    Vec x = given.across(z);
    return x.norm() < 1e-6 ? z.anyNormal() : x.unit();
  }

  /**
   * IfcCartesianTransformationOperator2D and 3D, also the uneven ones. Axis 2 may make it a mirror;
   * where it is left out the frame is right-handed.
   */
  @Nullable Frame operator(@Nullable IfcRecord operator) {
    Vec origin = operator == null ? null : point(operator.ref("LocalOrigin"));
    Vec z = operator == null ? null : direction(operator, "Axis3", Vec.Z);
    Vec first = operator == null ? null : direction(operator, "Axis1", Vec.X);
    if (operator == null || origin == null || z == null || first == null) {
      return null;
    }
    Vec x = firstAxis(z, first);
    Vec y = z.cross(x);
    Vec second = direction(operator, "Axis2", y);
    if (second == null) {
      return null;
    }
    Vec signed = second.dot(y) < 0 ? y.times(-1) : y;
    double scale = scale(operator, "Scale", 1);
    return Frame.of(
        origin,
        x.times(scale),
        signed.times(scale(operator, "Scale2", scale)),
        z.times(scale(operator, "Scale3", scale)));
  }

  /** The operator of a derived profile; that of a mirrored one is fixed: x turns into -x. */
  public @Nullable Frame profileOperator(IfcRecord profile) {
    if (profile.is("IfcMirroredProfileDef")) {
      return Frame.of(Vec.ZERO, Vec.X.times(-1), Vec.Y, Vec.Z);
    }
    return profile.has("Operator") ? operator(profile.ref("Operator")) : Frame.WORLD;
  }

  private static double scale(IfcRecord operator, String attribute, double absent) {
    double scale = operator.number(attribute);
    return Double.isFinite(scale) && scale != 0 ? scale : absent;
  }
}
