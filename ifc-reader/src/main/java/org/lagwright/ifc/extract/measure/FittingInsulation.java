package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.measure.Neighbours.Found;
import org.lagwright.ifc.extract.measure.Neighbours.Joint;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Finds fittings that are drawn together with their insulation: the body is wider than the pipes it
 * is joined to by twice the thickness that was drawn into those pipes, or that the fitting states.
 */
final class FittingInsulation {

  private final double lengthUnitM;

  FittingInsulation(double lengthUnitM) {
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * Notes the insulation in a body.
   *
   * @param ways ends of the fitting; of a bend one of them tells, of others all must
   * @return true if the drawn size holds insulation, and what is met is the bare size
   */
  boolean isIn(Draft draft, List<Joint> joints, int ways) {
    Measured<Section> drawn = draft.shape().section();
    List<Found> pipes = new ArrayList<>(joints.size());
    for (Joint joint : joints) {
      if (joint.met() != null && joint.met().ofSegment()) {
        pipes.add(joint.met());
      }
    }
    boolean told = draft.form() == Form.BEND ? !pipes.isEmpty() : pipes.size() == ways;
    if (drawn == null || !told || draft.form().isWiderThanItsPipe()) {
      return false;
    }
    Found widest = FittingMeasurer.largest(pipes);
    Optional<Double> restM = Thicknesses.between(widest.section(), drawn.value());
    if (restM.isEmpty() || !Thicknesses.isPossible(restM.get())) {
      return false;
    }
    Optional<Evidence> said = saidBy(draft, pipes, restM.get());
    if (said.isPresent()) {
      note(draft, drawn, widest, restM.get(), said.get());
    }
    return said.isPresent();
  }

  /** What says that the rest is insulation; empty if nothing does. */
  private Optional<Evidence> saidBy(Draft draft, List<Found> pipes, double restM) {
    boolean drawnThere = true;
    for (Found pipe : pipes) {
      drawnThere &= pipe.insulationM() > 0 && Thicknesses.same(pipe.insulationM(), restM);
    }
    if (drawnThere) {
      return Optional.of(pipes.get(0).evidence());
    }
    return Thicknesses.stated(
            draft.properties(), PropertyNames.Role.INSULATION_THICKNESS, lengthUnitM)
        .stream()
        .filter(p -> Thicknesses.same(Thicknesses.metres(p, lengthUnitM), restM))
        .map(Property::evidence)
        .findFirst();
  }

  private static void note(
      Draft draft, Measured<Section> drawn, Found pipe, double thicknessM, Evidence saidBy) {
    draft
        .change()
        .setDrawnInsulation(new ExistingInsulation(thicknessM, null, 1, saidBy, List.of()));
    draft.note(
        ReadFinding.INSULATION_IN_BODY,
        Effect.NONE,
        InWords.section(drawn.value()),
        InWords.section(pipe.section()),
        InWords.millimetres(thicknessM),
        saidBy.toString());
  }
}
