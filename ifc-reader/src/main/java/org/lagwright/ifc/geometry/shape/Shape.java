package org.lagwright.ifc.geometry.shape;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * What the geometry of one element tells. Everything that could not be measured is null or empty,
 * with a phrase in {@code problems}.
 *
 * @param form STRAIGHT, BEND, TEE, LATERAL, WYE, CROSS, REDUCER, TRANSITION, OFFSET, CAP, or
 *     UNKNOWN
 * @param section outer section; of a reducer, tee or cross that of its largest end
 * @param lengthM length along the centre line in metres; of a tee the run, of a bend the arc
 * @param angleDeg angle that a bend turns through, of a lateral that between branch and run; in
 *     degrees, above 0
 * @param bendRadiusM centre-line radius of a bend in metres
 * @param ends open ends in world coordinates; tees and laterals run, run, branch; crosses in pairs
 * @param problems why something is missing or weak, as short phrases
 * @param sheath a shell that fits around it, which may be insulation; null if there is none
 */
public record Shape(
    Form form,
    @Nullable Measured<Section> section,
    @Nullable Measured<Double> lengthM,
    @Nullable Measured<Double> angleDeg,
    @Nullable Measured<Double> bendRadiusM,
    List<ShapeEnd> ends,
    List<String> problems,
    @Nullable Sheath sheath) {

  /** Problem of an element that has no representation at all. */
  public static final String NO_REPRESENTATION = "no representation";

  /** Problem of an element of which something else than a body is drawn. */
  public static final String NO_BODY = "no body representation";

  /** Problem of an element of which only a bounding box is drawn. */
  public static final String ONLY_A_BOX = "only a box around it is drawn, no body";

  /** Of what was not measured, and need not be. */
  public static final Shape NOTHING =
      new Shape(Form.UNKNOWN, null, null, null, null, List.of(), List.of());

  public Shape {
    ends = List.copyOf(ends);
    problems = List.copyOf(problems);
  }

  /** A shape without a shell around it. */
  public Shape(
      Form form,
      @Nullable Measured<Section> section,
      @Nullable Measured<Double> lengthM,
      @Nullable Measured<Double> angleDeg,
      @Nullable Measured<Double> bendRadiusM,
      List<ShapeEnd> ends,
      List<String> problems) {
    this(form, section, lengthM, angleDeg, bendRadiusM, ends, problems, null);
  }

  /**
   * The shape that a set of ends makes; run and branch are told apart and put in order.
   *
   * @param ends two to four ends in world coordinates
   * @param evidence where the ends stand
   */
  public static Shape ofEnds(List<ShapeEnd> ends, How how, Evidence evidence) {
    return Parts.fromEnds(ends, how, evidence, evidence, List.of());
  }

  /** True for a box that may run along another of its edges than the one that was taken. */
  public boolean mayLieOtherwise() {
    return Prism.mayLieOtherwise(this);
  }

  /** The same box along its other edges, the longer one first; empty if it may not lie so. */
  public List<Shape> otherReadings() {
    return Prism.otherReadings(this);
  }

  /** False if the file draws nothing that could be measured. */
  public boolean isDrawn() {
    return !problems.contains(NO_REPRESENTATION) && !problems.contains(NO_BODY) && !isOnlyBoxed();
  }

  /** True if nothing but a box around the element is drawn. */
  public boolean isOnlyBoxed() {
    return problems.contains(ONLY_A_BOX);
  }

  /** The upright box around the centres of its ends, of which there is one at least. */
  public Box endsBox() {
    List<Point> centresM = new ArrayList<>(ends.size());
    for (ShapeEnd end : ends) {
      centresM.add(end.centreM());
    }
    return Box.around(centresM);
  }

  /** The same shape with one more reason why something about it is weak. */
  public Shape withProblem(String problem) {
    return Parts.withProblem(this, problem);
  }

  /** The same shape at another place. */
  public Shape movedBy(Vec way) {
    List<ShapeEnd> moved = new ArrayList<>(ends.size());
    for (ShapeEnd end : ends) {
      Point centreM = end.centre().plus(way).point();
      moved.add(new ShapeEnd(centreM, end.outward(), end.section(), end.width()));
    }
    return new Shape(form, section, lengthM, angleDeg, bendRadiusM, moved, problems, sheath);
  }

  /** A shape of which nothing is known, with the reason. */
  public static Shape unmeasured(String problem) {
    return new Shape(Form.UNKNOWN, null, null, null, null, List.of(), List.of(problem));
  }
}
