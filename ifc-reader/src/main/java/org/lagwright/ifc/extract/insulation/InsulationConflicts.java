package org.lagwright.ifc.extract.insulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.StatedInsulation;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.extract.text.WordedThickness;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;

/** Tells where what a model says of the insulation of an element contradicts itself. */
final class InsulationConflicts {

  private final double lengthUnitM;

  InsulationConflicts(double lengthUnitM) {
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * A covering that states another thickness than it is drawn with, or pieces that differ.
   *
   * @param covering its record in words
   */
  void noteStacks(Draft host, String covering, List<Layers.Stack> stacks) {
    for (Layers.Stack stack : stacks) {
      if (stack.statedM().isPresent()
          && stack.drawnM().isPresent()
          && !Thicknesses.same(stack.statedM().get(), stack.drawnM().get())) {
        conflict(
            host,
            InWords.millimetres(stack.drawnM().get()) + " as drawn around it",
            InWords.millimetres(stack.statedM().get()) + " by the properties of " + covering);
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
                    InWords.millimetres(longest.orElse(m)) + " on most of it",
                    InWords.millimetres(m) + " on another part"));
  }

  /**
   * Two coverings of different thickness that both lie close around the element, and so are no
   * layers around each other; the thicker one is taken.
   *
   * @param named the record of the one in words
   * @param otherNamed that of the other
   */
  void noteSamePlace(
      Draft host, Layers.Covering one, String named, Layers.Covering other, String otherNamed) {
    double oneM = Objects.requireNonNull(one.wallM());
    double otherM = Objects.requireNonNull(other.wallM());
    String inWords = InWords.millimetres(oneM) + " by " + named;
    String otherInWords = InWords.millimetres(otherM) + " by " + otherNamed;
    boolean thicker = oneM > otherM;
    conflict(
        host,
        thicker ? inWords : otherInWords,
        (thicker ? otherInWords : inWords) + ", drawn at the same place");
  }

  /**
   * Two coverings of different thickness, of which one has no body or stands in another file.
   *
   * @param oneM thickness of the one in metres
   * @param otherM that of the other
   * @param takenM what is taken to be there, null if not known
   */
  void noteUnclear(
      Draft host,
      @Nullable Double takenM,
      double oneM,
      String named,
      double otherM,
      String otherNamed) {
    conflict(
        host,
        takenM == null ? "not known" : InWords.millimetres(takenM),
        "%s by %s and %s by %s, and not whether these are layers"
            .formatted(InWords.millimetres(oneM), named, InWords.millimetres(otherM), otherNamed));
  }

  /** Coverings without bodies that are alike in all they tell: pieces, layers, or written twice. */
  void noteAlike(Draft host, List<Undrawn> coverings) {
    double sumM = 0;
    double takenM = 0;
    for (Undrawn each : coverings) {
      sumM += thicknessM(each);
    }
    for (Undrawn each : Undrawn.withoutRepeats(coverings)) {
      takenM += thicknessM(each);
    }
    conflict(
        host,
        InWords.millimetres(takenM) + ", counting once what is written alike",
        InWords.millimetres(sumM) + " if its " + coverings.size() + " coverings are layers");
  }

  private static double thicknessM(Undrawn covering) {
    Double statedM = covering.covering().statedM();
    return statedM == null ? 0 : statedM;
  }

  /**
   * Everything else that the element shows or states, against the thickness that was chosen.
   *
   * @param shown what else may show it: the body, layers of the material
   */
  void compare(
      Draft draft, Optional<ExistingInsulation> chosen, List<Optional<ExistingInsulation>> shown) {
    Double chosenM = chosen.isPresent() ? chosen.get().thicknessM() : null;
    List<String> others = new ArrayList<>();
    if (chosen.isEmpty()) {
      addBareFigures(draft, others);
    }
    if (chosenM != null) {
      for (Optional<ExistingInsulation> other : shown) {
        Double otherM = other.isPresent() ? other.get().thicknessM() : null;
        if (otherM != null && !Thicknesses.same(otherM, chosenM)) {
          others.add(inWords(other.get(), otherM));
        }
      }
      addTexts(draft, chosenM, others);
      addNames(draft, chosenM, others);
    }
    chosen.ifPresent(insulation -> addPurpose(insulation, others));
    List<Property> stated =
        StatedInsulation.isToldInside(draft)
            ? List.of()
            : Thicknesses.stated(
                draft.properties(), PropertyNames.Role.INSULATION_THICKNESS, lengthUnitM);
    Property zero = chosenM == null ? null : zeroAgainstType(draft, stated);
    if (zero != null) {
      others.add(zero.evidence().toString());
    }
    for (Property p : stated) {
      double statedM = Thicknesses.metres(p, lengthUnitM);
      if (chosenM == null ? chosen.isEmpty() : !Thicknesses.same(statedM, chosenM)) {
        others.add(p.evidence().toString());
      }
    }
    if (!others.isEmpty()) {
      String taken = chosen.isEmpty() ? "none" : inWords(chosen.get(), chosenM);
      conflict(draft, taken, String.join(", ", others));
    }
  }

  /** What serves as a safeguard may be wool that insulates as well, or a board that does not. */
  private static void addPurpose(ExistingInsulation chosen, List<String> others) {
    for (String text : new String[] {chosen.material(), chosen.evidence().raw()}) {
      if (text != null && Words.mayBeNoInsulation(text)) {
        others.add("'" + text + "', which may be there against fire, sound or damage alone");
        return;
      }
    }
  }

  /** The zero of an element whose type alone states a thickness; null if there is none. */
  private @Nullable Property zeroAgainstType(Draft draft, List<Property> stated) {
    for (Property p : stated) {
      if (!p.fromType()) {
        return null;
      }
    }
    for (Property p :
        PropertyNames.listOf(draft.properties(), PropertyNames.Role.INSULATION_THICKNESS)) {
      if (!stated.isEmpty() && !p.fromType() && PropertyLengths.offsetM(p, lengthUnitM) == 0) {
        return p;
      }
    }
    return null;
  }

  /**
   * What is called insulation and is but a figure may be its thickness, or the number of a type.
   */
  private void addBareFigures(Draft draft, List<String> others) {
    for (Property p :
        PropertyNames.listOf(draft.properties(), PropertyNames.Role.INSULATION_MATERIAL)) {
      boolean bare = !PropertyLengths.isTyped(p) && !Double.isNaN(PropertyLengths.figure(p));
      if (bare && Thicknesses.isPossible(Thicknesses.metres(p, lengthUnitM))) {
        others.add(p.evidence().toString());
      }
    }
  }

  /** Texts that name another thickness, and what denies that there is insulation. */
  private static void addTexts(Draft draft, double chosenM, List<String> others) {
    for (Property p :
        PropertyNames.listOf(draft.properties(), PropertyNames.Role.INSULATION_MATERIAL)) {
      Optional<Double> wordedM = WordedThickness.metres(p.text());
      boolean another = wordedM.isPresent() && !Thicknesses.same(wordedM.get(), chosenM);
      if (another || StatedInsulation.isNo(p) || WordedThickness.denies(p.text())) {
        others.add(p.evidence().toString());
      }
    }
  }

  /** Names that call it insulated, and with another thickness. */
  private static void addNames(Draft draft, double chosenM, List<String> others) {
    for (String name : draft.names().all()) {
      Optional<Double> namedM =
          name.contains("mm") ? WordedThickness.ofInsulated(name) : Optional.empty();
      if (namedM.isPresent() && !Thicknesses.same(namedM.get(), chosenM)) {
        others.add(new Evidence(draft.step(), "name", name).toString());
        return;
      }
    }
  }

  private static String inWords(ExistingInsulation chosen, @Nullable Double thicknessM) {
    String thickness = thicknessM == null ? "not known" : InWords.millimetres(thicknessM);
    return thickness + " (" + chosen.evidence() + ")";
  }

  private static void conflict(Draft draft, String taken, String other) {
    draft.note(ReadFinding.INSULATION_CONFLICT, Effect.NONE, taken, other);
  }
}
