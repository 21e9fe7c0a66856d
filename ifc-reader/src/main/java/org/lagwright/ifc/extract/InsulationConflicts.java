package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;

/** Tells where what a model says of the insulation of an element contradicts itself. */
final class InsulationConflicts {

  private final double lengthUnitM;

  InsulationConflicts(double lengthUnitM) {
    this.lengthUnitM = lengthUnitM;
  }

  /** A covering that states another thickness than it is drawn with, or pieces that differ. */
  void noteStacks(Draft host, Draft covering, List<Layers.Stack> stacks) {
    for (Layers.Stack stack : stacks) {
      if (stack.statedM().isPresent()
          && stack.drawnM().isPresent()
          && !Thicknesses.same(stack.statedM().get(), stack.drawnM().get())) {
        conflict(
            host,
            Sizes.millimetres(stack.drawnM().get()) + " as drawn around it",
            Sizes.millimetres(stack.statedM().get()) + " by the properties of #" + covering.step());
      }
    }
    Optional<Double> longest = stacks.get(0).thicknessM();
    stacks.stream()
        .flatMap(stack -> stack.thicknessM().stream())
        .filter(m -> longest.isPresent() && !Thicknesses.same(m, longest.get()))
        .findFirst()
        .ifPresent(
            m ->
                conflict(
                    host,
                    Sizes.millimetres(longest.orElse(m)) + " on most of it",
                    Sizes.millimetres(m) + " on another part"));
  }

  /** Everything else that the element states, against the thickness that was chosen. */
  void compare(Draft draft, Optional<ExistingInsulation> chosen) {
    Double chosenM = chosen.isPresent() ? chosen.get().thicknessM() : null;
    List<String> others = new ArrayList<>();
    for (Property p :
        Thicknesses.stated(
            draft.properties(), PropertyNames.Role.INSULATION_THICKNESS, lengthUnitM)) {
      double statedM = Thicknesses.metres(p, lengthUnitM);
      if (chosenM == null ? chosen.isEmpty() : !Thicknesses.same(statedM, chosenM)) {
        others.add(p.evidence().toString());
      }
    }
    if (!others.isEmpty()) {
      String taken = chosenM == null ? "none" : inWords(chosen.orElseThrow(), chosenM);
      conflict(draft, taken, String.join(", ", others));
    }
  }

  private static String inWords(ExistingInsulation chosen, double thicknessM) {
    return Sizes.millimetres(thicknessM) + " (" + chosen.evidence() + ")";
  }

  private static void conflict(Draft draft, String taken, String other) {
    draft.note(ReadFinding.INSULATION_CONFLICT, Effect.NONE, taken, other);
  }
}
