package org.lagwright.ifc.geometry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Shortens straight bodies by the planes that cut them: the length runs between the points where
 * the planes meet the axis. Sections stay those of the uncut body.
 */
final class Clippings {

  /** Sine of the angle between axis and plane below which a plane cuts lengthwise. */
  private static final double ALONG = 0.05;

  /** Lines around the axis, how many of them must be cut, and where between axis and surface. */
  private static final int LINES = 16;

  private static final int MOST = 12;
  private static final double AROUND = 0.98;

  private final Coordinates coordinates;
  private final SolidReader solids;

  Clippings(Coordinates coordinates, SolidReader solids) {
    this.coordinates = coordinates;
    this.solids = solids;
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
    if (!tool.is("IfcHalfSpaceSolid") || tool.is("IfcPolygonalBoundedHalfSpace")) {
      return byBody(result, uncut, tool, frame);
    }
    IfcRecord plane = tool.ref("BaseSurface");
    Frame position = plane == null ? null : coordinates.axes(plane, "Position").frame();
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

  /** Cut by another body: it shortens what it takes all around the axis. */
  private Shape byBody(IfcRecord result, Shape uncut, IfcRecord tool, Frame frame) {
    Measured<Double> lengthM = uncut.lengthM();
    if (lengthM == null || uncut.form() != Form.STRAIGHT || uncut.ends().size() != 2) {
      return Parts.withProblem(uncut, result + ": measured without " + tool);
    }
    ShapeEnd first = uncut.ends().get(0);
    ShapeEnd last = uncut.ends().get(1);
    Tool by = solids.tool(tool, frame, List.of(first.centre(), last.centre()));
    boolean keepsInside = "INTERSECTION".equals(result.enumeration("Operator"));
    double[] kept = by == null ? null : kept(by, first, last, keepsInside);
    if (kept == null) {
      return Parts.withProblem(uncut, result + ": measured without " + tool);
    }
    Vec along = last.centre().minus(first.centre());
    List<ShapeEnd> ends =
        List.of(moved(first, along.times(kept[0])), moved(last, along.times(kept[1] - 1)));
    return shortened(result, uncut, lengthM, lengthM.value() * (kept[1] - kept[0]), ends);
  }

  /**
   * From where to where a body is left, as the mean of lines around its axis; null if most of them
   * stay whole, as along a notch or a hole, or go altogether, as in a bore.
   */
  private static double @Nullable [] kept(
      Tool by, ShapeEnd first, ShapeEnd last, boolean keepsInside) {
    Vec across = last.out().anyNormal();
    double radius = AROUND * smallestHalfM(first.section());
    List<double[]> whole = List.of(new double[] {0, 1});
    double from = 0;
    double to = 0;
    int shortened = 0;
    for (int i = 0; i < LINES; i++) {
      Vec off = across.turned(last.out(), 2 * Math.PI * i / LINES).times(radius);
      List<double[]> inside = by.spans(first.centre().plus(off), last.centre().plus(off));
      List<double[]> left = keepsInside ? Spans.and(whole, inside) : Spans.minus(whole, inside);
      double low = left.stream().mapToDouble(span -> span[0]).min().orElse(0);
      double high = left.stream().mapToDouble(span -> span[1]).max().orElse(1);
      shortened += low > 0 || high < 1 ? 1 : 0;
      from += low / LINES;
      to += high / LINES;
    }
    return shortened >= MOST && to > from ? new double[] {from, to} : null;
  }

  private static double smallestHalfM(Section section) {
    return section instanceof Section.Rectangular r
        ? Math.min(r.widthM(), r.heightM()) / 2
        : section instanceof Section.Oval o
            ? Math.min(o.widthM(), o.heightM()) / 2
            : section.largestSideM() / 2;
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
