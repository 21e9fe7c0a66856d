package org.lagwright.ifc.geometry.curve;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.step.StepArguments;
import org.lagwright.ifc.step.StepArguments.Token;

/** Reads bounded curves of two or three dimensions as paths; null where one cannot be read. */
public final class Curves {

  /** Composite curves within composite curves that are followed. */
  private static final int MAX_NESTING = 20;

  /** Pieces of one curve; composite curves that repeat each other can come to billions. */
  private static final int MAX_LEGS = 100_000;

  private final Coordinates coordinates;

  /** Reads curves of one file. */
  public Curves(Coordinates coordinates) {
    this.coordinates = coordinates;
  }

  /** The path of a curve, null if it is broken, unbounded, empty or of a kind not read here. */
  public @Nullable Path read(@Nullable IfcRecord curve) {
    Path path = read(curve, 0);
    return path == null || path.isEmpty() ? null : path;
  }

  private @Nullable Path read(@Nullable IfcRecord curve, int nesting) {
    if (curve == null || nesting > MAX_NESTING) {
      return null;
    }
    return switch (curve.entityName()) {
      case "IfcPolyline" -> polyline(curve);
      case "IfcIndexedPolyCurve" -> indexed(curve);
      case "IfcCompositeCurve",
          "IfcCompositeCurveOnSurface",
          "IfcBoundaryCurve",
          "IfcOuterBoundaryCurve",
          "Ifc2DCompositeCurve" ->
          composite(curve, nesting);
      case "IfcGradientCurve" -> gradient(curve, nesting);
      // what it adds is the cant of rails
      case "IfcSegmentedReferenceCurve" -> read(curve.ref("BaseCurve"), nesting + 1);
      case "IfcTrimmedCurve" -> trimmed(curve);
      case "IfcCircle", "IfcEllipse" -> full(curve);
      case "IfcSurfaceCurve", "IfcSeamCurve", "IfcIntersectionCurve" ->
          read(curve.ref("Curve3D"), nesting + 1);
      case "IfcBSplineCurveWithKnots", "IfcRationalBSplineCurveWithKnots" ->
          BSpline.read(curve, coordinates);
      default -> null;
    };
  }

  private @Nullable Path polyline(IfcRecord curve) {
    List<Vec> points = new ArrayList<>();
    for (IfcRecord record : curve.refs("Points")) {
      Vec point = coordinates.point(record);
      if (point == null) {
        return null;
      }
      points.add(point);
    }
    return points.size() == curve.refIds("Points").length ? Path.through(points) : null;
  }

  private @Nullable Path indexed(IfcRecord curve) {
    List<Vec> points = pointList(curve.ref("Points"));
    if (points.isEmpty()) {
      return null;
    }
    if (!curve.has("Segments")) {
      return Path.through(points);
    }
    StepArguments segments = curve.list("Segments");
    List<Leg> legs = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      List<Vec> through = pick(points, segments.typed(i).numbers(0));
      if (through.size() < 2) {
        return null;
      }
      boolean arc = segments.keyword(i).orElse("").equals("IFCARCINDEX") && through.size() == 3;
      Leg leg = arc ? arcThrough(through.get(0), through.get(1), through.get(2)) : null;
      legs.addAll(leg == null ? Path.through(through).legs() : List.of(leg));
    }
    return new Path(legs);
  }

  private static List<Vec> pick(List<Vec> points, double[] indices) {
    List<Vec> picked = new ArrayList<>();
    for (double index : indices) {
      if (!(index >= 1 && index <= points.size())) {
        return List.of();
      }
      picked.add(points.get((int) index - 1));
    }
    return picked;
  }

  /** The points of a point list of two or three dimensions; empty if broken. */
  public List<Vec> pointList(@Nullable IfcRecord list) {
    if (list == null) {
      return List.of();
    }
    double[] numbers = list.numbers("CoordList");
    int dimensions = list.is("IfcCartesianPointList2D") ? 2 : 3;
    double scale = coordinates.units().lengthM();
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i + dimensions <= numbers.length; i += dimensions) {
      double z = dimensions == 3 ? numbers[i + 2] : 0;
      Vec point = new Vec(numbers[i], numbers[i + 1], z).times(scale);
      if (!point.isFinite()) {
        return List.of();
      }
      points.add(point);
    }
    return points;
  }

  /** The arc through three points, null if they lie on a line. */
  public static Leg.@Nullable Arc arcThrough(Vec a, Vec b, Vec c) {
    Vec ab = b.minus(a);
    Vec ac = c.minus(a);
    Vec normal = ab.cross(ac);
    double area2 = normal.dot(normal);
    if (normal.norm() <= 1e-9 * ab.norm() * ac.norm()) {
      return null;
    }
    Vec toCentre =
        ac.cross(normal)
            .times(-ab.dot(ab))
            .plus(ab.cross(normal).times(ac.dot(ac)))
            .times(-0.5 / area2);
    Vec centre = a.plus(toCentre);
    Vec u = a.minus(centre);
    Vec v = normal.unit().cross(u);
    return new Leg.Arc(centre, u, v, turn(u, v, c.minus(centre)));
  }

  /** Angle from u towards v of a vector in their plane, 0 to 2 pi. */
  private static double turn(Vec u, Vec v, Vec of) {
    double angle = Math.atan2(of.dot(v) / v.dot(v), of.dot(u) / u.dot(u));
    return angle < 0 ? angle + 2 * Math.PI : angle;
  }

  private @Nullable Path composite(IfcRecord curve, int nesting) {
    List<Leg> legs = new ArrayList<>();
    for (IfcRecord segment : curve.refs("Segments")) {
      if (segment.is("IfcCurveSegment")) {
        List<Leg> placed = placed(segment);
        if (placed.isEmpty()) {
          return null;
        }
        legs.addAll(placed);
        continue;
      }
      Path part = read(segment.ref("ParentCurve"), nesting + 1);
      if (part == null || part.isEmpty()) {
        return null;
      }
      boolean sameSense = !"F".equals(segment.enumeration("SameSense"));
      legs.addAll(joined(legs, sameSense ? part : part.reversed()).legs());
      if (legs.size() > MAX_LEGS) {
        return null;
      }
    }
    return new Path(legs);
  }

  /** The height over a curve in plan, by the distance along that; sampled into straight legs. */
  private @Nullable Path gradient(IfcRecord curve, int nesting) {
    Path plan = read(curve.ref("BaseCurve"), nesting + 1);
    Path profile = composite(curve, nesting);
    return plan == null || plan.isEmpty() || profile == null || profile.isEmpty()
        ? null
        : Alignment.over(plan, profile);
  }

  /**
   * A piece of an alignment: line, arc or clothoid, that begins at its placement along its x axis.
   * Empty if it cannot be read.
   */
  private List<Leg> placed(IfcRecord segment) {
    Frame frame = coordinates.axes(segment, "Placement").frame();
    IfcRecord parent = segment.ref("ParentCurve");
    double lengthM = coordinates.length(segment, "SegmentLength");
    boolean possible = Double.isFinite(lengthM) && Math.abs(lengthM) > Path.SAME_POINT_M;
    if (frame == null || parent == null || !possible) {
      return List.of();
    }
    if (parent.is("IfcLine")) {
      return List.of(new Leg.Line(Vec.ZERO, Vec.X.times(lengthM)).in(frame));
    }
    if (parent.is("IfcClothoid")) {
      double constantM = coordinates.length(parent, "ClothoidConstant");
      double startM = coordinates.length(segment, "SegmentStart");
      return Alignment.clothoid(constantM, startM, lengthM).stream()
          .map(leg -> leg.in(frame))
          .toList();
    }
    double radius = parent.is("IfcCircle") ? coordinates.length(parent, "Radius") : Double.NaN;
    if (!(radius > 0 && Double.isFinite(radius))) {
      return List.of();
    }
    double side = Math.signum(lengthM) * radius;
    return List.of(
        new Leg.Arc(
                Vec.Y.times(side),
                Vec.Y.times(-side),
                Vec.X.times(radius),
                Math.abs(lengthM) / radius)
            .in(frame));
  }

  /** Turns a part round where only that way it begins where the last one ends. */
  private static Path joined(List<Leg> before, Path part) {
    if (before.isEmpty()) {
      return part;
    }
    Vec end = before.get(before.size() - 1).end();
    boolean fits = part.first().start().distanceTo(end) < 10 * Path.SAME_POINT_M;
    boolean fitsTurned = part.last().end().distanceTo(end) < 10 * Path.SAME_POINT_M;
    return !fits && fitsTurned ? part.reversed() : part;
  }

  private @Nullable Path full(IfcRecord conic) {
    Leg.Arc arc = conic(conic);
    return arc == null ? null : new Path(List.of(arc));
  }

  /** The whole circle or ellipse from its parameter 0 on. */
  public Leg.@Nullable Arc conic(IfcRecord conic) {
    Frame frame = coordinates.axes(conic, "Position").frame();
    boolean circle = conic.is("IfcCircle");
    double a = coordinates.length(conic, circle ? "Radius" : "SemiAxis1");
    double b = coordinates.length(conic, circle ? "Radius" : "SemiAxis2");
    if (frame == null || !(a > 0 && b > 0 && Double.isFinite(a) && Double.isFinite(b))) {
      return null;
    }
    Leg.Arc arc = new Leg.Arc(Vec.ZERO, Vec.X.times(a), Vec.Y.times(b), 2 * Math.PI);
    return arc.in(frame);
  }

  private @Nullable Path trimmed(IfcRecord curve) {
    IfcRecord basis = curve.ref("BasisCurve");
    if (basis == null) {
      return null;
    }
    if (basis.is("IfcLine")) {
      Vec from = onLine(curve, "Trim1", basis);
      Vec to = onLine(curve, "Trim2", basis);
      return from == null || to == null ? null : Path.through(List.of(from, to));
    }
    Leg.Arc whole = basis.is("IfcConic") ? conic(basis) : null;
    if (whole == null) {
      return null;
    }
    double from = onConic(curve, "Trim1", whole);
    double to = onConic(curve, "Trim2", whole);
    return part(whole, from, to, !"F".equals(curve.enumeration("SenseAgreement")));
  }

  private static @Nullable Path part(Leg.Arc whole, double from, double to, boolean forward) {
    if (!Double.isFinite(from) || !Double.isFinite(to)) {
      return null;
    }
    double low = forward ? from : to;
    double sweep = ((forward ? to : from) - low) % (2 * Math.PI);
    double turn = sweep <= 1e-9 ? sweep + 2 * Math.PI : sweep;
    Leg.Arc arc = arcFrom(whole, low, turn);
    return new Path(List.of(forward ? arc : arc.reversed()));
  }

  /** The part of an edge's curve between two of its points; null if it is a plain line. */
  public @Nullable Path between(IfcRecord curve, Vec start, Vec end, boolean sameSense) {
    if (!curve.is("IfcConic")) {
      Path path = read(curve);
      return path == null ? null : path.between(start, end, sameSense);
    }
    Leg.Arc whole = conic(curve);
    if (whole == null) {
      return null;
    }
    double from = turn(whole.u(), whole.v(), start.minus(whole.centre()));
    double to = turn(whole.u(), whole.v(), end.minus(whole.centre()));
    return part(whole, from, to, sameSense);
  }

  /** Part of a whole conic from a parameter on. */
  public static Leg.Arc arcFrom(Leg.Arc whole, double from, double sweep) {
    double cos = Math.cos(from);
    double sin = Math.sin(from);
    return new Leg.Arc(
        whole.centre(),
        whole.u().times(cos).plus(whole.v().times(sin)),
        whole.v().times(cos).minus(whole.u().times(sin)),
        sweep);
  }

  /** Parameter of a trimming point in radians, NaN if there is none. */
  private double onConic(IfcRecord curve, String attribute, Leg.Arc whole) {
    Vec point = trimPoint(curve, attribute);
    double parameter = trimParameter(curve, attribute) * coordinates.units().angleRad();
    boolean byPoint = "CARTESIAN".equals(curve.enumeration("MasterRepresentation"));
    return point != null && (byPoint || !Double.isFinite(parameter))
        ? turn(whole.u(), whole.v(), point.minus(whole.centre()))
        : parameter;
  }

  /** The part of an unbounded line between two parameters, null without them. */
  public @Nullable Path line(IfcRecord line, double from, double to) {
    Vec start = onLine(line, from);
    Vec end = onLine(line, to);
    return start == null || end == null || start.distanceTo(end) < Path.SAME_POINT_M
        ? null
        : Path.through(List.of(start, end));
  }

  private @Nullable Vec onLine(IfcRecord curve, String attribute, IfcRecord line) {
    Vec point = trimPoint(curve, attribute);
    double parameter = trimParameter(curve, attribute);
    return point != null || !Double.isFinite(parameter) ? point : onLine(line, parameter);
  }

  private @Nullable Vec onLine(IfcRecord line, double parameter) {
    IfcRecord vector = line.ref("Dir");
    Vec start = coordinates.point(line.ref("Pnt"));
    Vec direction = vector == null ? null : coordinates.direction(vector.ref("Orientation"));
    if (vector == null || start == null || direction == null || !Double.isFinite(parameter)) {
      return null;
    }
    double magnitude = coordinates.length(vector, "Magnitude");
    return start.plus(direction.times(parameter * magnitude));
  }

  private @Nullable Vec trimPoint(IfcRecord curve, String attribute) {
    for (IfcRecord point : curve.refs(attribute)) {
      return coordinates.point(point);
    }
    return null;
  }

  private static double trimParameter(IfcRecord curve, String attribute) {
    StepArguments selects = curve.list(attribute);
    for (int i = 0; i < selects.size(); i++) {
      if (selects.token(i) == Token.TYPED || selects.token(i) == Token.NUMBER) {
        return selects.number(i);
      }
    }
    return Double.NaN;
  }
}
