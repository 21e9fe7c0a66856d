package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Tool;
import org.lagwright.ifc.geometry.shape.ArcPiece;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Shortens straight bodies, reducers and bends by what cuts them. Of straight ones the length runs
 * between the points where planes meet the axis, and sections stay those of the uncut body.
 */
public final class Clippings {

  /** Sine of the angle between axis and plane below which a plane cuts lengthwise. */
  private static final double ALONG = 0.05;

  /** Where between axis and surface lines are drawn to see what a body takes. */
  private static final double AROUND = 0.98;

  /** The same where any wall is left of a bore. */
  private static final double SURFACE = 0.9995;

  /** How far into an end is looked, as a share of its size. */
  private static final double DEPTH = 0.01;

  /** Straight pieces of a line along a bend: off the arc by 1e-4 of the radius at 90 degrees. */
  private static final int ARC_STEPS = 64;

  private final Coordinates coordinates;
  private final SolidReader solids;

  /** Reads what is cut off in one file. */
  public Clippings(Coordinates coordinates, SolidReader solids) {
    this.coordinates = coordinates;
    this.solids = solids;
  }

  /**
   * @param uncut shape of the first operand
   * @param frame frame of both operands
   */
  public Shape cut(IfcRecord result, Shape uncut, Frame frame) {
    IfcRecord tool = result.ref("SecondOperand");
    String operator = String.valueOf(result.enumeration("Operator"));
    if (tool == null) {
      return Parts.withProblem(uncut, result + ": second operand missing, measured without it");
    }
    boolean plain = tool.is("IfcHalfSpaceSolid") && !tool.is("IfcPolygonalBoundedHalfSpace");
    if (!plain || uncut.form() != Form.STRAIGHT) {
      return byBody(result, uncut, tool, frame);
    }
    IfcRecord plane = tool.ref("BaseSurface");
    Frame position = plane == null ? null : coordinates.axes(plane, "Position").frame();
    Measured<Double> lengthM = uncut.lengthM();
    if (position == null || lengthM == null || uncut.ends().size() != 2) {
      return Parts.withProblem(uncut, result + ": measured without the cut by " + tool);
    }
    boolean removesBehind = !"F".equals(tool.enumeration("AgreementFlag"));
    boolean keepsAhead = operator.equals("INTERSECTION") != removesBehind;
    Vec normal = frame.vector(Vec.of(position.ez()).times(keepsAhead ? 1 : -1)).unit();
    Vec on = frame.point(Vec.of(position.origin()));
    return atPlane(result, uncut, lengthM, on, normal);
  }

  /** Cut by another body: it shortens what it takes all around the axis. */
  private Shape byBody(IfcRecord result, Shape uncut, IfcRecord tool, Frame frame) {
    List<Vec> reach = new ArrayList<>();
    for (ShapeEnd end : uncut.ends()) {
      reach.add(end.centre());
    }
    Shape without = Parts.withProblem(uncut, result + ": measured without " + tool);
    Tool by = reach.isEmpty() ? null : solids.tool(tool, frame, reach);
    if (by == null) {
      return without;
    }
    boolean keepsInside = "INTERSECTION".equals(result.enumeration("Operator"));
    ArcPiece arc = ArcPiece.of(uncut);
    if (arc != null) {
      CutLines cut = CutLines.of(new AroundArc(arc), ARC_STEPS, by, keepsInside);
      Measured<Double> angle = Objects.requireNonNull(uncut.angleDeg());
      return cut.isShortened()
          ? arc.between(cut.from(), cut.to(), evidence(result, angle.evidence()))
          : cut.isWhole() ? uncut : without;
    }
    Measured<Double> lengthM = uncut.lengthM();
    boolean straight = uncut.form() == Form.STRAIGHT || uncut.form() == Form.REDUCER;
    if (lengthM == null || !straight || uncut.ends().size() != 2) {
      return keepsInside || takesAnEnd(by, uncut.ends()) ? without : uncut;
    }
    CutLines cut = CutLines.of(new AroundAxis(uncut.ends()), 1, by, keepsInside);
    return cut.isShortened()
        ? between(result, uncut, lengthM, cut)
        : cut.isWhole() ? uncut : without;
  }

  private static Evidence evidence(IfcRecord result, Evidence old) {
    return new Evidence(
        result.id(),
        result.entityName() + ".FirstOperand > " + old.path(),
        old.raw() + " up to the cutting planes");
  }

  /** Lines along a straight body or a reducer, a little within its surface. */
  private record AroundAxis(List<ShapeEnd> ends, double within) implements CutLines.Along {

    AroundAxis(List<ShapeEnd> ends) {
      this(ends, AROUND);
    }

    @Override
    public Vec at(double turnRad, double share) {
      Vec off = ends.get(1).out().anyNormal().turned(ends.get(1).out(), turnRad);
      double first = ends.get(0).section().smallestSideM() / 2;
      double last = ends.get(1).section().smallestSideM() / 2;
      Vec middle = between(ends.get(0).centre(), ends.get(1).centre(), share);
      return middle.plus(off.times(within * (first + (last - first) * share)));
    }
  }

  /** Lines along a bend, a little within its surface. */
  private record AroundArc(ArcPiece arc) implements CutLines.Along {
    @Override
    public Vec at(double turnRad, double share) {
      ShapeEnd first = arc.bend().ends().get(0);
      Vec off = first.out().anyNormal().turned(first.out(), turnRad);
      return arc.at(off.times(AROUND * first.section().smallestSideM() / 2), share);
    }
  }

  private static Vec between(Vec first, Vec last, double share) {
    return first.plus(last.minus(first).times(share));
  }

  /** True if a body takes something off an end all around, and not only a bore. */
  private static boolean takesAnEnd(Tool by, List<ShapeEnd> ends) {
    for (ShapeEnd end : ends) {
      Vec inwards = end.out().times(-DEPTH * end.section().largestSideM());
      ShapeEnd within =
          new ShapeEnd(end.centre().plus(inwards).point(), end.outward(), end.section());
      AroundAxis stub = new AroundAxis(List.of(within, end), SURFACE);
      if (CutLines.of(stub, 1, by, true).to() > 0) {
        return true;
      }
    }
    return false;
  }

  private static Shape between(
      IfcRecord result, Shape uncut, Measured<Double> lengthM, CutLines cut) {
    ShapeEnd first = uncut.ends().get(0);
    ShapeEnd last = uncut.ends().get(1);
    ShapeEnd from = at(first, first, last, cut.from());
    ShapeEnd to = at(last, first, last, cut.to());
    double leftM = lengthM.value() * (cut.to() - cut.from());
    Shape shortened = shortened(result, uncut, lengthM, leftM, List.of(from, to));
    Measured<Section> section = uncut.section();
    return section == null || uncut.form() == Form.STRAIGHT
        ? shortened
        : new Shape(
            shortened.form(),
            Parts.largest(shortened.ends(), section.how(), section.evidence()),
            shortened.lengthM(),
            null,
            null,
            shortened.ends(),
            shortened.problems());
  }

  /** The end that a cut at a share of the length makes. */
  private static ShapeEnd at(ShapeEnd end, ShapeEnd first, ShapeEnd last, double share) {
    return new ShapeEnd(
        between(first.centre(), last.centre(), share).point(),
        end.outward(),
        between(first.section(), last.section(), share),
        end.width());
  }

  private static Section between(Section first, Section last, double share) {
    if (first instanceof Section.Round a && last instanceof Section.Round b) {
      return new Section.Round(between(a.outsideDiameterM(), b.outsideDiameterM(), share));
    }
    if (first instanceof Section.Rectangular a && last instanceof Section.Rectangular b) {
      return new Section.Rectangular(
          between(a.widthM(), b.widthM(), share), between(a.heightM(), b.heightM(), share));
    }
    return share < 0.5 ? first : last;
  }

  private static double between(double first, double last, double share) {
    return first + (last - first) * share;
  }

  /** Keeps what lies on the side the normal points to. */
  private static Shape atPlane(
      IfcRecord result, Shape uncut, Measured<Double> lengthM, Vec on, Vec normal) {
    ShapeEnd first = uncut.ends().get(0);
    ShapeEnd last = uncut.ends().get(1);
    Vec along = last.out();
    double slope = along.dot(normal);
    if (Math.abs(slope) < ALONG) {
      return Parts.withProblem(uncut, result + ": cut lengthwise, measured without the cut");
    }
    double at = on.minus(first.centre()).dot(normal) / slope;
    double from = slope > 0 ? Math.max(0, at) : 0;
    double to = slope > 0 ? lengthM.value() : Math.min(lengthM.value(), at);
    if (to <= from) {
      return Shape.unmeasured(result + ": the cut leaves nothing");
    }
    List<ShapeEnd> ends =
        List.of(moved(first, along.times(from)), moved(last, along.times(to - lengthM.value())));
    return shortened(result, uncut, lengthM, to - from, ends);
  }

  private static ShapeEnd moved(ShapeEnd end, Vec by) {
    return new ShapeEnd(end.centre().plus(by).point(), end.outward(), end.section(), end.width());
  }

  private static Shape shortened(
      IfcRecord result, Shape uncut, Measured<Double> was, double nowM, List<ShapeEnd> ends) {
    Evidence evidence = evidence(result, was.evidence());
    return new Shape(
        uncut.form(),
        uncut.section(),
        new Measured<>(nowM, was.how(), evidence, was.lost()),
        null,
        null,
        ends,
        uncut.problems());
  }
}
