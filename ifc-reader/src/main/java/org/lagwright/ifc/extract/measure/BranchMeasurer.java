package org.lagwright.ifc.extract.measure;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.graph.Axis;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;

/**
 * The branch of a tee or lateral: from the axis of the run to the end of the branch, along its own
 * axis. Every reading of it, and the choice.
 */
final class BranchMeasurer {

  /** Sine of the least angle between branch and run. */
  private static final double LEAST_SINE = Math.sin(Math.toRadians(5));

  /** Ends of a run that are shifted sideways by less are in line. */
  private static final double IN_LINE_M = 1e-3;

  private final Placeholders placeholders;
  private final double lengthUnitM;

  BranchMeasurer(Placeholders placeholders, double lengthUnitM) {
    this.placeholders = placeholders;
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * @param joined what the joints make, null if they do not tell
   */
  void measure(Draft draft, @Nullable Shape joined) {
    if (draft.form() != Form.TEE && draft.form() != Form.LATERAL) {
      return;
    }
    Options<Double> options = new Options.Lengths();
    add(draft.shape(), options);
    add(joined, options);
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.BRANCH_LENGTH)) {
      Optional<Double> lengthM = PropertyLengths.lengthM(p, lengthUnitM);
      if (lengthM.isPresent()) {
        options.addStated(lengthM.get(), p, placeholders.contains(p));
      }
    }
    draft.change().setBranchLengthM(options.choose());
    Conflicts.noteBranch(draft);
  }

  private static void add(@Nullable Shape shape, Options<Double> options) {
    if (shape == null || (shape.form() != Form.TEE && shape.form() != Form.LATERAL)) {
      return;
    }
    Measured<Double> run = shape.lengthM();
    if (run != null && shape.ends().size() == 3) {
      double lengthM = lengthM(shape.ends().get(0), shape.ends().get(1), shape.ends().get(2));
      if (lengthM > 0) {
        options.add(lengthM, run.how(), run.evidence());
      }
    }
  }

  /** From where the axes pass each other; NaN if the branch runs along the run. */
  private static double lengthM(ShapeEnd start, ShapeEnd end, ShapeEnd branch) {
    Axis run = axis(start, end);
    double along = run.cosine(branch.outward());
    double sine = Math.sqrt(Math.max(0, 1 - along * along));
    double offM = branch.centreM().distanceM(run.at(run.along(branch.centreM())));
    double besideM = run.distanceToLineM(branch.centreM(), branch.outward());
    double acrossM = Math.sqrt(Math.max(0, offM * offM - besideM * besideM));
    return sine < LEAST_SINE ? Double.NaN : acrossM / sine;
  }

  /** Of a run that loses size at one side only the axis of its larger end. */
  private static Axis axis(ShapeEnd start, ShapeEnd end) {
    Axis between = Axis.between(start.centreM(), end.centreM());
    boolean widens = end.section().perimeterM() > start.section().perimeterM();
    ShapeEnd larger = widens ? end : start;
    double cosine = between.cosine(larger.outward());
    double asideM = between.lengthM() * Math.sqrt(Math.max(0, 1 - cosine * cosine));
    boolean oneSided =
        asideM > IN_LINE_M && start.section().perimeterM() != end.section().perimeterM();
    return oneSided ? new Axis(larger.centreM(), larger.outward(), between.lengthM()) : between;
  }
}
