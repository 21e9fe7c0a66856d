package org.lagwright.ifc.geometry.shape;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** Puts shapes together from ends and figures. */
public final class Parts {

  private Parts() {}

  /** A number in metres or degrees, measured on a record. */
  public static Measured<Double> number(double value, How how, long step, String path, String raw) {
    return Measured.of(value, how, new Evidence(step, path, raw));
  }

  /** A shape known by its ends. */
  public static Shape fromEnds(
      List<ShapeEnd> ends, How how, Evidence section, Evidence figures, List<String> problems) {
    Ends.Joined joined = Ends.join(ends);
    List<String> all = new ArrayList<>(problems);
    all.addAll(joined.problems());
    return new Shape(
        joined.form(),
        largest(joined.ordered(), how, section),
        measured(joined.lengthM(), how, figures),
        measured(joined.angleDeg(), how, figures),
        measured(joined.radiusM(), how, figures),
        joined.ordered(),
        all);
  }

  private static @Nullable Measured<Double> measured(
      @Nullable Double value, How how, Evidence evidence) {
    return value == null ? null : Measured.of(value, how, evidence);
  }

  /** The largest section of some ends, null if there are none. */
  public static @Nullable Measured<Section> largest(
      List<ShapeEnd> ends, How how, Evidence evidence) {
    Section largest = null;
    for (ShapeEnd end : ends) {
      boolean larger = largest == null || end.section().perimeterM() > largest.perimeterM();
      largest = larger ? end.section() : largest;
    }
    return largest == null ? null : Measured.of(largest, how, evidence);
  }

  /** The same shape, with one more thing that went wrong. */
  public static Shape withProblem(Shape shape, String problem) {
    List<String> problems = new ArrayList<>(shape.problems());
    problems.add(problem);
    return new Shape(
        shape.form(),
        shape.section(),
        shape.lengthM(),
        shape.angleDeg(),
        shape.bendRadiusM(),
        shape.ends(),
        problems,
        shape.sheath());
  }
}
