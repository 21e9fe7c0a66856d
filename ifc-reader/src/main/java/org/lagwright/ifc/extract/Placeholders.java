package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Finds properties that carry one and the same value on elements of different measured size: what
 * an exporter writes when it knows nothing. They are no evidence for anything.
 */
final class Placeholders {

  /** Fewer equal values may well be equal in truth. */
  private static final int AT_LEAST = 3;

  /** Names of the placeholder properties, as {@code set.property}. */
  private final Set<String> names = new HashSet<>();

  private final List<Finding> findings = new ArrayList<>();

  /**
   * What a property should agree with.
   *
   * @param wrongShare share of elements on which it must be wrong. A length is wrong on most where
   *     it is a placeholder; a nominal size is vague and fits many by chance
   */
  private record Question(
      PropertyNames.Role role,
      Function<Draft, @Nullable Double> drawn,
      BiPredicate<Double, Double> agree,
      double wrongShare) {}

  private static final List<Question> QUESTIONS =
      List.of(
          new Question(
              PropertyNames.Role.LENGTH, Placeholders::drawnLength, Placeholders::sameLength, 0.5),
          new Question(
              PropertyNames.Role.OUTSIDE_DIAMETER,
              Placeholders::drawnDiameter,
              Placeholders::sameLength,
              0.5),
          new Question(
              PropertyNames.Role.DIAMETER,
              Placeholders::drawnDiameter,
              Placeholders::sameLength,
              0.5),
          new Question(
              PropertyNames.Role.NOMINAL,
              Placeholders::drawnDiameter,
              Placeholders::nominal,
              0.05));

  Placeholders(Collection<Draft> drafts, int model) {
    QUESTIONS.forEach(question -> look(drafts, question, model));
  }

  private static @Nullable Double drawnLength(Draft draft) {
    return draft.shape.lengthM() == null ? null : draft.shape.lengthM().value();
  }

  private static @Nullable Double drawnDiameter(Draft draft) {
    return draft.shape.section() != null && draft.shape.section().value() instanceof Section.Round r
        ? r.outsideDiameterM()
        : null;
  }

  private static boolean sameLength(double property, double drawnM) {
    return Math.abs(property - drawnM) <= 0.02 * drawnM;
  }

  /** A nominal size may come in metres or as a bare number of millimetres. */
  private static boolean nominal(double property, double drawnM) {
    return PipeSizes.mayBe((int) Math.round(property < 5 ? property * 1000 : property), drawnM);
  }

  private record Sighting(Property property, double drawnM) {}

  private void look(Collection<Draft> drafts, Question question, int model) {
    Map<String, List<Sighting>> byName = new LinkedHashMap<>();
    for (Draft draft : drafts) {
      boolean measured = draft.isSegment() || draft.isLaggedItem();
      Double drawnM = measured ? question.drawn.apply(draft) : null;
      if (drawnM != null) {
        PropertyNames.of(draft.properties, question.role)
            .filter(p -> p.number() != null)
            .forEach(
                p ->
                    byName
                        .computeIfAbsent(name(p), n -> new ArrayList<>())
                        .add(new Sighting(p, drawnM)));
      }
    }
    byName.forEach((name, sightings) -> judge(name, sightings, question, model));
  }

  private void judge(String name, List<Sighting> sightings, Question question, int model) {
    long values = sightings.stream().map(s -> s.property.number()).distinct().count();
    long drawn = sightings.stream().map(s -> Math.round(s.drawnM * 1000)).distinct().count();
    long wrong =
        sightings.stream().filter(s -> !question.agree.test(valueOf(s.property), s.drawnM)).count();
    boolean oftenWrong = wrong > question.wrongShare * sightings.size();
    if (sightings.size() >= AT_LEAST && values == 1 && drawn > 1 && oftenWrong) {
      names.add(name);
      findings.add(
          Finding.ofFile(
              model,
              ReadFinding.PLACEHOLDER_VALUES,
              Effect.NONE,
              name,
              sightings.get(0).property.text(),
              String.valueOf(sightings.size())));
    }
  }

  private static double valueOf(Property property) {
    Double number = property.number();
    return number == null ? Double.NaN : number;
  }

  private static String name(Property property) {
    return property.set() + "." + property.name();
  }

  boolean contains(Property property) {
    return names.contains(name(property));
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }
}
