package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;

/**
 * How the numbers of one element came about, in the order they were found. Words are put together
 * only when asked for: a large model has many millions of them, and few are ever read.
 */
public final class Trace {

  private final List<Supplier<List<Step>>> parts;

  /**
   * A trace of these steps.
   *
   * @param steps the steps, first one first
   */
  public static Trace of(List<Step> steps) {
    return new Trace(List.of(new Held(steps)));
  }

  private Trace(List<Supplier<List<Step>>> parts) {
    this.parts = List.copyOf(parts);
  }

  /** Steps that stand ready. */
  private record Held(List<Step> steps) implements Supplier<List<Step>> {
    Held {
      steps = List.copyOf(steps);
    }

    @Override
    public List<Step> get() {
      return steps;
    }
  }

  /** A trace in the making. */
  static final class Builder {
    private final List<Supplier<List<Step>>> parts = new ArrayList<>();

    /** Adds a step as it is. */
    void add(Step step) {
      parts.add(new Held(List.of(step)));
    }

    /** Adds steps that are put into words when they are asked for. */
    void later(Supplier<List<Step>> steps) {
      parts.add(steps);
    }

    Trace trace() {
      return new Trace(parts);
    }
  }

  /** The steps, first one first. */
  public List<Step> steps() {
    return parts.stream().flatMap(part -> part.get().stream()).toList();
  }

  /** The steps that were given as they are, without those put into words when asked for. */
  Stream<Step> held() {
    return parts.stream()
        .flatMap(part -> part instanceof Held held ? held.steps().stream() : Stream.of());
  }

  /** This trace with more steps, put into words when they are asked for. */
  public Trace plus(Supplier<List<Step>> more) {
    List<Supplier<List<Step>>> longer = new ArrayList<>(parts);
    longer.add(more);
    return new Trace(longer);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Trace trace && trace.steps().equals(steps());
  }

  @Override
  public int hashCode() {
    return steps().hashCode();
  }

  @Override
  public String toString() {
    return steps().toString();
  }

  /** One step; {@code what} names the quantity, {@code value} shows it with its unit. */
  public sealed interface Step {
    String what();

    String value();
  }

  /** Read from the model. */
  public record Read(String what, String value, How how, Evidence evidence) implements Step {}

  /** A candidate from the model that was not used, and why. */
  public record Lost(String what, String value, How how, Evidence evidence, String why)
      implements Step {}

  /** Decided by a rule of a pack. */
  public record Decided(String what, String value, String pack, String rule, String source)
      implements Step {}

  /** Computed from values above it. */
  public record Computed(String what, String value, String formula) implements Step {}

  /** Assumed because nothing told. */
  public record Assumed(String what, String value, String why) implements Step {}

  /** Given by the user in the settings. */
  public record Given(String what, String value, String setting) implements Step {}
}
