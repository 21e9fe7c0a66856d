package org.lagwright.ifc.geometry;

import java.util.List;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Shortens straight bodies by the planes that cut them: the length runs between the points where
 * the planes meet the axis. Sections stay those of the uncut body.
 */
final class Clippings {

  /** Sine of the angle between axis and plane below which a plane cuts lengthwise. */
  private static final double ALONG = 0.05;

  private final Coordinates coordinates;

  Clippings(Coordinates coordinates) {
    this.coordinates = coordinates;
  }

  /**
   * @param uncut shape of the first operand
   * @param frame frame of both operands
   */
  Shape cut(IfcRecord result, Shape uncut, Frame frame) {
    IfcRecord tool = result.ref("SecondOperand");
    String operator = String.valueOf(result.enumeration("Operator"));
    if (tool == null) {
      return Parts.withProblem(uncut, result + ": second operand missing, measured without it");
    }
    if (!tool.is("IfcHalfSpaceSolid") || operator.equals("UNION")) {
      return Parts.withProblem(uncut, result + ": measured without " + tool);
    }
    IfcRecord plane = tool.ref("BaseSurface");
    Frame position = plane == null ? null : coordinates.axes(plane.ref("Position"));
    Measured<Double> lengthM = uncut.lengthM();
    if (position == null
        || lengthM == null
        || uncut.form() != Form.STRAIGHT
        || uncut.ends().size() != 2) {
      return Parts.withProblem(uncut, result + ": measured without the cut by " + tool);
    }
    boolean removesBehind = !"F".equals(tool.enumeration("AgreementFlag"));
    boolean keepsAhead = operator.equals("INTERSECTION") != removesBehind;
    Vec normal = frame.vector(Vec.of(position.ez()).times(keepsAhead ? 1 : -1)).unit();
    Vec on = frame.point(Vec.of(position.origin()));
    return atPlane(result, uncut, lengthM, on, normal);
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
    return new ShapeEnd(end.centre().plus(by).point(), end.outward(), end.section());
  }

  private static Shape shortened(
      IfcRecord result, Shape uncut, Measured<Double> was, double nowM, List<ShapeEnd> ends) {
    Evidence old = was.evidence();
    Evidence evidence =
        new Evidence(
            result.id(),
            result.entityName() + ".FirstOperand > " + old.path(),
            old.raw() + " up to the cutting planes");
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
