package org.lagwright.ifc.geometry.solid;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.BSpline;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.Profile;
import org.lagwright.ifc.geometry.profile.Profiles;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.schema.IfcRecord;

/** Measures what is swept along a curve: disks and profiles. */
public final class Sweeps {

  private static final double FULL_TURN = 2 * Math.PI;

  /** How far off its trims an arc may end, as a share of its radius; angles are rounded. */
  private static final double AT_TRIM = 1e-4;

  private final Coordinates coordinates;
  private final Curves curves;
  private final Profiles profiles;

  /** Reads swept bodies of one file. */
  public Sweeps(Coordinates coordinates, Curves curves, Profiles profiles) {
    this.coordinates = coordinates;
    this.curves = curves;
    this.profiles = profiles;
  }

  /** IfcSweptDiskSolid. */
  public Shape disk(Item item) {
    IfcRecord solid = item.record();
    double radius = coordinates.length(solid, "Radius");
    Path path = smooth(solid);
    if (path == null || !(radius > 0 && Double.isFinite(radius))) {
      return Shape.unmeasured(solid + ": directrix or radius cannot be read");
    }
    Outline local = Outline.circle(path.first().start(), path.first().startTangent(), radius);
    Evidence section =
        new Evidence(solid.id(), solid.entityName() + ".Radius", solid.raw("Radius"));
    return SweptPath.measure(
        path.in(item.frame()), local.in(item.frame()), section, evidence(solid));
  }

  /** IfcSurfaceCurveSweptAreaSolid, IfcFixedReferenceSweptAreaSolid and their like. */
  public Shape profile(Item item) {
    IfcRecord solid = item.record();
    Frame own = coordinates.position(solid, "Position");
    Path path = smooth(solid);
    Profile profile = profiles.read(solid, "SweptArea");
    if (own == null || path == null || profile == null) {
      return Shape.unmeasured(solid + ": position, directrix or profile cannot be read");
    }
    Outline outline = profile.outline();
    if (outline == null) {
      return Shape.unmeasured(
          solid + ": profile " + profile.evidence() + " is neither circle, rectangle nor oval");
    }
    Frame frame = item.frame().times(own);
    Outline placed = outline.in(start(solid, path, outline)).in(frame);
    boolean ellipse = isEllipse(solid.ref("SweptArea"), profile);
    return SweptPath.measure(path.in(frame), placed, profile.evidence(), evidence(solid), ellipse);
  }

  /** True of a whole ellipse, also one of several arcs; a flat oval has arcs of circles. */
  private static boolean isEllipse(@Nullable IfcRecord area, Profile profile) {
    if (profile.path() == null) {
      return area != null && area.is("IfcEllipseProfileDef");
    }
    for (Leg leg : profile.path().legs()) {
      if (!(leg instanceof Leg.Arc arc)
          || Math.abs(arc.u().norm() - arc.v().norm()) < Path.SAME_POINT_M) {
        return false;
      }
    }
    return true;
  }

  static Evidence evidence(IfcRecord solid) {
    return new Evidence(solid.id(), solid.entityName() + ".Directrix", solid.raw("Directrix"));
  }

  /**
   * Where the profile stands at the start: its x axis along the fixed reference, or its y axis
   * along the normal of the reference surface. So it is written in most files we met; others keep
   * to the schema and lay its x axis there, which shows where the y axis would lift the profile out
   * of the plane of the bend. The normal may point either way: the side is taken on which the
   * profile does not run into the centre of the bend.
   */
  Frame start(IfcRecord solid, Path path, Outline outline) {
    Vec tangent = path.first().startTangent();
    Vec reference = reference(solid, tangent);
    Vec across = reference == null ? Vec.ZERO : reference.across(tangent);
    Vec given = across.norm() < 1e-6 ? tangent.anyNormal() : across.unit();
    Vec origin = path.first().start();
    if (solid.has("FixedReference")) {
      return xAlong(given, origin, tangent);
    }
    Frame frame = xAlong(given.cross(tangent), origin, tangent);
    if (!(path.first() instanceof Leg.Arc arc)) {
      return frame;
    }
    Frame bySchema = xAlong(given, origin, tangent);
    if (!isInPlane(outline.in(frame), arc) && isInPlane(outline.in(bySchema), arc)) {
      frame = bySchema;
    }
    return runsIntoCentre(outline.in(frame), arc)
        ? xAlong(Vec.of(frame.ex()).times(-1), origin, tangent)
        : frame;
  }

  private static Frame xAlong(Vec x, Vec origin, Vec tangent) {
    return Frame.of(origin, x, tangent.cross(x), tangent);
  }

  private static boolean isInPlane(Outline outline, Leg.Arc arc) {
    Vec axis = arc.u().cross(arc.v()).unit();
    return Math.abs(outline.centre().minus(arc.centre()).dot(axis)) < Path.SAME_POINT_M;
  }

  private static boolean runsIntoCentre(Outline outline, Leg.Arc arc) {
    Vec radial = arc.start().minus(arc.centre()).unit();
    double middle = outline.centre().minus(arc.centre()).dot(radial);
    double half = Math.abs(outline.u().dot(radial)) + Math.abs(outline.v().dot(radial));
    return middle < half * 0.999;
  }

  private @Nullable Vec reference(IfcRecord solid, Vec tangent) {
    if (solid.has("FixedReference")) {
      return coordinates.direction(solid.ref("FixedReference"));
    }
    IfcRecord surface = solid.ref("ReferenceSurface");
    if (surface == null) {
      return null;
    }
    Frame position = coordinates.position(surface, "Position");
    if (position == null || surface.is("IfcPlane")) {
      return position == null ? null : Vec.of(position.ez());
    }
    Vec extruded = coordinates.direction(surface.ref("ExtrudedDirection"));
    return extruded == null ? null : tangent.cross(position.vector(extruded));
  }

  /** The directrix, as the arc that it stands for where it is a row of chords. */
  private @Nullable Path smooth(IfcRecord solid) {
    Path path = directrix(solid);
    return path == null ? null : path.asArc();
  }

  /** The directrix between its parameters; null if it cannot be read. */
  @Nullable Path directrix(IfcRecord solid) {
    IfcRecord curve = solid.ref("Directrix");
    if (curve != null && curve.is("IfcLine")) {
      return line(curve, solid);
    }
    boolean spline =
        curve != null
            && (curve.is("IfcBSplineCurveWithKnots")
                || curve.is("IfcRationalBSplineCurveWithKnots"));
    Path read = curve != null && spline ? BSpline.fine(curve, coordinates) : curves.read(curve);
    double filletM = coordinates.length(solid, "FilletRadius");
    Path whole = read != null && filletM > 0 ? read.filleted(filletM) : read;
    double from = parameter(solid, "StartParam", Double.NEGATIVE_INFINITY);
    double to = parameter(solid, "EndParam", Double.POSITIVE_INFINITY);
    if (curve == null || whole == null || (Double.isInfinite(from) && Double.isInfinite(to))) {
      return whole;
    }
    if (isByLength(solid)) {
      double unitM = coordinates.units().lengthM();
      return whole.betweenM(from * unitM, to * unitM);
    }
    double angle = coordinates.units().angleRad();
    if (curve.is("IfcConic") && whole.first() instanceof Leg.Arc arc) {
      double start = Double.isInfinite(from) ? 0 : from * angle;
      double end = Double.isInfinite(to) ? FULL_TURN : to * angle;
      return between(arc, start, end, whole);
    }
    if (curve.is("IfcTrimmedCurve")) {
      return wayRound(curve, from * angle, to * angle, whole);
    }
    return curve.is("IfcPolyline") ? whole.between(from, to) : whole;
  }

  /** A circle or ellipse between two of its parameters; after the last one it begins anew. */
  private static Path between(Leg.Arc conic, double from, double to, Path whole) {
    double sweep = to < from ? (to - from) % FULL_TURN + FULL_TURN : to - from;
    boolean part = sweep > 0 && sweep < FULL_TURN;
    return part ? new Path(List.of(Curves.arcFrom(conic, from, sweep))) : whole;
  }

  /**
   * An arc whose parameters lie at its trims runs from one to the other as the parameters count,
   * which holds where the sense of the trims would lead the other way round. Of other parameters
   * files do not tell whether they count from the first trim, along the circle or as a share.
   */
  private Path wayRound(IfcRecord curve, double from, double to, Path trimmed) {
    IfcRecord basis = curve.ref("BasisCurve");
    Leg.Arc conic = basis != null && basis.is("IfcConic") ? curves.conic(basis) : null;
    if (conic == null || !(to > from && to - from < FULL_TURN)) {
      return trimmed;
    }
    Leg.Arc arc = Curves.arcFrom(conic, from, to - from);
    double offM =
        arc.start().distanceTo(trimmed.first().start())
            + arc.end().distanceTo(trimmed.last().end());
    return offM < AT_TRIM * arc.radiusM() ? new Path(List.of(arc)) : trimmed;
  }

  /** The part of an unbounded line; null without both parameters. */
  private @Nullable Path line(IfcRecord line, IfcRecord solid) {
    IfcRecord vector = line.ref("Dir");
    // a length counts as it stands, a parameter as often as the vector is long
    double perUnit = isByLength(solid) && vector != null ? 1 / vector.number("Magnitude") : 1;
    double from = parameter(solid, "StartParam", Double.NaN);
    double to = parameter(solid, "EndParam", Double.NaN);
    return curves.line(line, from * perUnit, to * perUnit);
  }

  private static double parameter(IfcRecord solid, String attribute, double absent) {
    double number = solid.number(attribute);
    return Double.isFinite(number) ? number : absent;
  }

  /** IFC4X3 also allows lengths along the directrix. */
  private static boolean isByLength(IfcRecord solid) {
    String measure = solid.valueType(solid.has("EndParam") ? "EndParam" : "StartParam");
    return measure != null && measure.contains("LENGTHMEASURE");
  }
}
