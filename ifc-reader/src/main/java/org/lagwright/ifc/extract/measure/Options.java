package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * The answers found for one question, most trusted first, and the choice among them. Answers that
 * were ruled out beforehand are kept with the reason.
 */
public abstract class Options<T> {

  /** Lengths in metres. */
  public static final class Lengths extends Options<Double> {

    @Override
    public boolean agree(Double aM, Double bM) {
      return Tolerances.sameLength(aM, bM);
    }
  }

  /** Angles in degrees. */
  static final class Angles extends Options<Double> {

    @Override
    public boolean agree(Double aDeg, Double bDeg) {
      return Tolerances.sameAngle(aDeg, bDeg);
    }
  }

  /** Cross-sections. */
  public static final class Sections extends Options<Section> {

    @Override
    public boolean agree(Section a, Section b) {
      return Tolerances.sameSection(a, b);
    }

    @Override
    boolean isWrittenOf(Section written, Section chosen) {
      return Tolerances.areSidesOf(written, chosen);
    }
  }

  private record Option<T>(T value, How how, Evidence evidence, @Nullable String ruledOut) {}

  private static final String AGREES = "agrees";

  private static final String DIFFERS = "differs";

  private final List<Option<T>> options = new ArrayList<>(4);

  /** True if two values are the same within tolerance. */
  public abstract boolean agree(T a, T b);

  /** True if what is written may mean a value that it does not equal. */
  boolean isWrittenOf(T written, T chosen) {
    return false;
  }

  void add(T value, How how, Evidence evidence) {
    options.add(new Option<>(value, how, evidence, null));
  }

  /** Adds what a property or quantity says; a placeholder must not be chosen. */
  void addStated(T value, Property property, boolean placeholder) {
    How how = property.quantity() ? How.QUANTITY_SET : How.PROPERTY;
    if (placeholder) {
      rule(value, how, property.evidence(), "placeholder");
    } else {
      add(value, how, property.evidence());
    }
  }

  void addAll(@Nullable Measured<T> measured) {
    if (measured != null) {
      add(measured.value(), measured.how(), measured.evidence());
      for (Candidate<T> other : measured.lost()) {
        rule(other.value(), other.how(), other.evidence(), other.why());
      }
    }
  }

  /** Adds a value that must not be chosen. */
  void rule(T value, How how, Evidence evidence, String why) {
    options.add(new Option<>(value, how, evidence, why));
  }

  /** Puts a value first. */
  void prefer(T value, How how, Evidence evidence) {
    options.add(0, new Option<>(value, how, evidence, null));
  }

  /** Keeps what was obtained in one of these ways from being chosen. */
  void ruleOut(Set<How> ways, String why) {
    options.replaceAll(
        o ->
            ways.contains(o.how) && o.ruledOut == null
                ? new Option<>(o.value, o.how, o.evidence, why)
                : o);
  }

  /** Values that were written down, not measured, as far as they are not ruled out. */
  List<T> stated() {
    List<T> stated = new ArrayList<>(options.size());
    for (Option<T> o : options) {
      if (o.ruledOut == null && isWritten(o)) {
        stated.add(o.value);
      }
    }
    return stated;
  }

  /** What would be chosen as it stands; null if there is nothing to choose. */
  @Nullable T leading() {
    for (Option<T> o : options) {
      if (o.ruledOut == null) {
        return o.value;
      }
    }
    return null;
  }

  /** The first option that is not ruled out, with all others as lost; null if there is none. */
  @Nullable Measured<T> choose() {
    int first = 0;
    while (first < options.size() && options.get(first).ruledOut() != null) {
      first++;
    }
    if (first == options.size()) {
      return null;
    }
    Option<T> chosen = options.get(first);
    List<Candidate<T>> lost = new ArrayList<>(options.size() - 1);
    for (Option<T> option : options) {
      if (option != chosen) {
        lost.add(lost(option, chosen));
      }
    }
    return new Measured<>(chosen.value(), chosen.how(), chosen.evidence(), lost);
  }

  private static boolean isWritten(Option<?> o) {
    return o.how == How.PROPERTY || o.how == How.QUANTITY_SET || o.how == How.TEXT;
  }

  private Candidate<T> lost(Option<T> other, Option<T> chosen) {
    String why = other.ruledOut();
    if (why == null) {
      boolean agrees =
          agree(other.value(), chosen.value())
              || (isWritten(other) && isWrittenOf(other.value(), chosen.value()));
      why = agrees ? AGREES : DIFFERS;
    }
    return new Candidate<>(other.value(), other.how(), other.evidence(), why);
  }

  /** The first candidate that agrees with the chosen value. */
  static <T> Optional<Candidate<T>> firstAgreeing(@Nullable Measured<T> measured) {
    return first(measured, AGREES);
  }

  /** The first candidate that differs from the chosen value for no known reason. */
  public static <T> Optional<Candidate<T>> firstConflict(@Nullable Measured<T> measured) {
    return first(measured, DIFFERS);
  }

  private static <T> Optional<Candidate<T>> first(@Nullable Measured<T> measured, String why) {
    List<Candidate<T>> lost = measured == null ? List.of() : measured.lost();
    for (Candidate<T> candidate : lost) {
      if (candidate.why().equals(why)) {
        return Optional.of(candidate);
      }
    }
    return Optional.empty();
  }
}
