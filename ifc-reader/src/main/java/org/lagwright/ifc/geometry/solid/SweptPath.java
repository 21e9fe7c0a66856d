package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** Measures a section swept along a path: straight, one bend with its tangents, or many parts. */
public final class SweptPath {

  /** Turns smaller than this are none. */
  private static final double STRAIGHT_RAD = Math.toRadians(0.1);

  /** A corner between two straight legs up to which a row of legs stands for an arc. */
  private static final double SMOOTH_RAD = Math.toRadians(31);

  /** A corner that turns more leads back into the pipe. */
  private static final double BACK_RAD = Math.toRadians(175);

  /** Relative difference of the radii of arcs that make one bend. */
  private static final double SAME_RADIUS = 1e-3;

  /** Relative difference up to which an ellipse is the mitre of a circle. */
  private static final double MITRED = 2e-3;

  private SweptPath() {}

  /**
   * @param start the section where the path starts; its centre may lie beside the path
   * @param section where the size stands
   * @param directrix where the path stands
   */
  static Shape measure(Path directrixPath, Outline start, Evidence section, Evidence directrix) {
    return measure(directrixPath, start, section, directrix, false);
  }

  /**
   * @param ellipse whether the section is an ellipse, which may be the mitre of a circle, and no
   *     flat oval
   */
  static Shape measure(
      Path directrixPath, Outline start, Evidence section, Evidence directrix, boolean ellipse) {
    Vec aside = start.centre().minus(directrixPath.first().start());
    Path path = aside.norm() < Path.SAME_POINT_M ? directrixPath : beside(directrixPath, aside);
    if (path == null) {
      return Shape.unmeasured("profile lies beside a directrix of several bends");
    }
    Leg first = path.first();
    Leg last = path.last();
    Outline seen = start.across(first.startTangent());
    Outline across = ellipse ? unmitred(seen, path) : seen;
    List<ShapeEnd> ends =
        Ends.known(
            across.at(first.start()).end(first.startTangent().times(-1)),
            turned(across, path).at(last.end()).end(last.endTangent()));
    if (ends.size() < 2) {
      return Shape.unmeasured("profile and directrix lie in one plane");
    }
    Shape shape = shape(path, ends, section, directrix);
    return across.equals(seen) ? shape : withOval(shape, seen, section);
  }

  /**
   * The circle whose mitre an ellipse is: exporters sweep the seam of a segmented round bend, which
   * is longer in the plane of the bend by 1 / cos of the angle it is swept through.
   */
  private static Outline unmitred(Outline outline, Path path) {
    if (outline.kind() != Outline.Kind.OVAL
        || !(path.first() instanceof Leg.Arc arc)
        || path.legs().size() > 1) {
      return outline;
    }
    Vec axis = arc.u().cross(arc.v()).unit();
    boolean uInPlane = Math.abs(outline.u().unit().dot(axis)) < MITRED;
    Vec in = uInPlane ? outline.u() : outline.v();
    Vec out = uInPlane ? outline.v() : outline.u();
    double stretch = in.norm() / out.norm() * Math.cos(arc.sweepRad());
    boolean mitre = Math.abs(in.unit().dot(axis)) < MITRED && Math.abs(stretch - 1) < MITRED;
    Vec round = in.unit().times(out.norm());
    return mitre
        ? new Outline(
            Outline.Kind.ROUND,
            outline.centre(),
            uInPlane ? round : outline.u(),
            uInPlane ? outline.v() : round)
        : outline;
  }

  private static Shape withOval(Shape shape, Outline oval, Evidence evidence) {
    Measured<Section> section = Objects.requireNonNull(shape.section());
    Candidate<Section> lost =
        new Candidate<>(
            oval.section(), How.SOLID, evidence, "ellipse of a mitre of the round duct");
    return new Shape(
        shape.form(),
        new Measured<>(section.value(), section.how(), section.evidence(), List.of(lost)),
        shape.lengthM(),
        shape.angleDeg(),
        shape.bendRadiusM(),
        shape.ends(),
        shape.problems());
  }

  /** Measures a curve that is drawn without any body; it has a length and turns, but no section. */
  public static Shape line(Path path, Evidence evidence, String problem) {
    return Parts.withProblem(shape(path, List.of(), evidence, evidence), problem);
  }

  /** The outline carried along the path: turned at every leg from its first to its last tangent. */
  private static Outline turned(Outline outline, Path path) {
    Outline turned = outline;
    Vec tangent = path.first().startTangent();
    for (Leg leg : path.legs()) {
      turned = turned.turned(tangent, leg.startTangent());
      if (leg instanceof Leg.Arc arc) {
        for (int i = 1; i <= 4; i++) {
          turned = turned.turned(arc.tangentAt((i - 1) / 4.0), arc.tangentAt(i / 4.0));
        }
      }
      tangent = leg.endTangent();
    }
    return turned;
  }

  /** The path of the centre, for straight paths and for those with one arc; else null. */
  private static @Nullable Path beside(Path path, Vec aside) {
    List<Leg> legs = new ArrayList<>();
    Vec off = aside;
    int arcs = 0;
    for (Leg leg : path.legs()) {
      if (leg instanceof Leg.Arc arc && arc.isCircular()) {
        Vec radial = arc.u().unit();
        Vec axis = arc.u().cross(arc.v()).unit();
        double radiusM = arc.radiusM() + off.dot(radial);
        Vec centre = arc.centre().plus(axis.times(off.dot(axis)));
        Leg.Arc moved =
            new Leg.Arc(
                centre, radial.times(radiusM), arc.v().unit().times(radiusM), arc.sweepRad());
        legs.add(moved);
        off = moved.end().minus(arc.end());
        arcs++;
      } else {
        legs.add(new Leg.Line(leg.start().plus(off), leg.end().plus(off)));
      }
    }
    Path moved = new Path(legs);
    return arcs == 1 || (corners(path).isEmpty() && arcs == 0) ? moved : null;
  }

  private static Shape shape(Path path, List<ShapeEnd> ends, Evidence section, Evidence directrix) {
    List<Leg.Arc> arcs = new ArrayList<>();
    for (Leg leg : path.legs()) {
      if (leg instanceof Leg.Arc arc) {
        arcs.add(arc);
      }
    }
    List<Vec> corners = corners(path);
    if (arcs.isEmpty() && corners.isEmpty()) {
      return of(Form.STRAIGHT, path, Double.NaN, Double.NaN, ends, section, directrix, "");
    }
    if (!arcs.isEmpty() && corners.isEmpty() && isOneBend(arcs)) {
      double turn = Math.toDegrees(arcs.stream().mapToDouble(Leg.Arc::sweepRad).sum());
      double radiusM = arcs.get(0).radiusM();
      return of(Form.BEND, path, turn, radiusM, ends, section, directrix, "");
    }
    if (arcs.isEmpty() && isOneTurn(corners)) {
      double turn = corners.stream().mapToDouble(SweptPath::angle).sum();
      double radiusM = corners.size() < 3 ? Double.NaN : radius(path, corners);
      String problem = corners.size() < 3 ? "bend without an arc, its radius is not known" : "";
      return of(Form.BEND, path, Math.toDegrees(turn), radiusM, ends, section, directrix, problem);
    }
    String many = "path of " + path.legs().size() + " legs, several bends in one element";
    return of(Form.UNKNOWN, path, Double.NaN, Double.NaN, ends, section, directrix, many);
  }

  /** Axis of every corner between legs, as long as the sine and turned by the angle. */
  private static List<Vec> corners(Path path) {
    List<Vec> corners = new ArrayList<>();
    for (int i = 1; i < path.legs().size(); i++) {
      Vec in = path.legs().get(i - 1).endTangent();
      Vec out = path.legs().get(i).startTangent();
      double angle = in.angleTo(out);
      if (angle > STRAIGHT_RAD) {
        Vec axis = in.cross(out);
        corners.add((axis.isTiny() ? in.anyNormal() : axis.unit()).times(angle));
      }
    }
    return corners;
  }

  private static double angle(Vec corner) {
    return corner.norm();
  }

  private static boolean isOneBend(List<Leg.Arc> arcs) {
    Leg.Arc first = arcs.get(0);
    return arcs.stream()
        .allMatch(
            arc ->
                arc.isCircular()
                    && arc.centre().distanceTo(first.centre()) < SAME_RADIUS * first.radiusM()
                    && Math.abs(arc.radiusM() - first.radiusM()) < SAME_RADIUS * first.radiusM());
  }

  /** One corner that does not turn back, or many small ones the same way round. */
  private static boolean isOneTurn(List<Vec> corners) {
    Vec first = corners.get(0).unit();
    if (angle(corners.get(0)) > BACK_RAD) {
      return false;
    }
    return corners.stream()
        .allMatch(
            c ->
                c.unit().angleTo(first) < STRAIGHT_RAD * 10
                    && (corners.size() == 1 || angle(c) < SMOOTH_RAD));
  }

  /** Radius of the circle through the corners of a row of short legs. */
  private static double radius(Path path, List<Vec> corners) {
    List<Vec> turning = new ArrayList<>();
    for (int i = 1; i < path.legs().size(); i++) {
      Leg leg = path.legs().get(i);
      if (path.legs().get(i - 1).endTangent().angleTo(leg.startTangent()) > STRAIGHT_RAD) {
        turning.add(leg.start());
      }
    }
    Leg.Arc arc =
        Curves.arcThrough(
            turning.get(0), turning.get(corners.size() / 2), turning.get(corners.size() - 1));
    return arc == null ? Double.NaN : arc.radiusM();
  }

  private static Shape of(
      Form form,
      Path path,
      double angleDeg,
      double radiusM,
      List<ShapeEnd> ends,
      Evidence section,
      Evidence directrix,
      String problem) {
    return new Shape(
        form,
        ends.isEmpty() ? null : Measured.of(ends.get(0).section(), How.SOLID, section),
        Measured.of(path.lengthM(), How.SOLID, directrix),
        Double.isNaN(angleDeg) ? null : Measured.of(angleDeg, How.SOLID, directrix),
        Double.isNaN(radiusM) ? null : Measured.of(radiusM, How.SOLID, directrix),
        ends,
        problem.isEmpty() ? List.of() : List.of(problem));
  }
}
