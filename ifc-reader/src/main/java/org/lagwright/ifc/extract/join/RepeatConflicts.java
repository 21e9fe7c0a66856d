package org.lagwright.ifc.extract.join;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.extract.measure.Options;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Tells where two files contradict each other about an element that both hold. What is used is that
 * of the file it counts in.
 */
final class RepeatConflicts {

  private static final Options<Section> SECTIONS = new Options.Sections();
  private static final Options<Double> LENGTHS = new Options.Lengths();

  private final Joining joining;

  private RepeatConflicts(Joining joining) {
    this.joining = joining;
  }

  /**
   * @param repeated what repeats an element of another file
   */
  static void note(Joining joining, Collection<ElementKey> repeated) {
    RepeatConflicts conflicts = new RepeatConflicts(joining);
    for (ElementKey key : repeated) {
      MepElement element = joining.find(key);
      ElementKey first = element == null ? null : element.repeats();
      MepElement counts = first == null ? null : joining.find(first);
      if (element != null && counts != null && counts.kind().isLagged()) {
        conflicts.compare(counts, element);
      }
    }
  }

  private void compare(MepElement counts, MepElement element) {
    String file = joining.file(element.key().model());
    String own = joining.file(counts.key().model());
    compareInsulation(counts, element, own, file);
    if (counts.form() != element.form()
        && counts.form() != Form.UNKNOWN
        && element.form() != Form.UNKNOWN) {
      String form = counts.form().label();
      note(counts, ReadFinding.FORM_CONFLICT, form, "in " + own, file, element.form().label());
    }
    compare(
        counts,
        ReadFinding.SECTION_CONFLICT,
        SECTIONS,
        InWords::section,
        counts.section(),
        element.section(),
        own,
        file);
    compare(
        counts,
        ReadFinding.LENGTH_CONFLICT,
        LENGTHS,
        InWords::metres,
        counts.lengthM(),
        element.lengthM(),
        own,
        file);
  }

  private <T> void compare(
      MepElement counts,
      ReadFinding code,
      Options<T> options,
      Function<T, String> inWords,
      @Nullable Measured<T> used,
      @Nullable Measured<T> other,
      String own,
      String file) {
    if (used != null && other != null && differ(used, other, options)) {
      note(
          counts,
          code,
          inWords.apply(used.value()),
          used.evidence() + " in " + own,
          inWords.apply(other.value()),
          other.evidence() + " in " + file);
    }
  }

  /**
   * False if either file knows the value that the other one uses, as it tells of that itself, or
   * has it from what is joined to the element.
   */
  private static <T> boolean differ(Measured<T> used, Measured<T> other, Options<T> options) {
    return used.how() != How.NEIGHBOUR
        && other.how() != How.NEIGHBOUR
        && !options.agree(used.value(), other.value())
        && !hasLost(used, other.value(), options)
        && !hasLost(other, used.value(), options);
  }

  private static <T> boolean hasLost(Measured<T> measured, T value, Options<T> options) {
    for (Candidate<T> lost : measured.lost()) {
      if (options.agree(lost.value(), value)) {
        return true;
      }
    }
    return false;
  }

  private void compareInsulation(MepElement counts, MepElement element, String own, String file) {
    ExistingInsulation used = counts.existingInsulation();
    ExistingInsulation other = element.existingInsulation();
    Double usedM = used == null ? null : used.thicknessM();
    Double otherM = other == null ? null : other.thicknessM();
    if (used != null
        && other != null
        && usedM != null
        && otherM != null
        && !Thicknesses.same(usedM, otherM)
        && !isPartOf(other.coverings(), used.coverings())) {
      note(
          counts,
          ReadFinding.INSULATION_CONFLICT,
          inWords(usedM, used) + " in " + own,
          inWords(otherM, other) + " in " + file);
    }
  }

  private static String inWords(double thicknessM, ExistingInsulation insulation) {
    return InWords.millimetres(thicknessM) + " (" + insulation.evidence() + ")";
  }

  /** True if those are but some of the layers that were found in all files. */
  private boolean isPartOf(List<ElementKey> own, List<ElementKey> all) {
    Set<ElementKey> counted = new HashSet<>();
    for (ElementKey covering : own) {
      counted.add(itself(covering));
    }
    return !own.isEmpty() && all.size() > counted.size() && all.containsAll(counted);
  }

  private ElementKey itself(ElementKey covering) {
    MepElement element = joining.find(covering);
    @Nullable ElementKey first = element == null ? null : element.repeats();
    return first == null ? covering : first;
  }

  private void note(MepElement counts, ReadFinding code, String... values) {
    joining.note(Finding.about(counts.key(), code, Effect.NONE, values));
  }
}
