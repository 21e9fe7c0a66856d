package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;

/**
 * How the numbers of one element came about, in the order they were found.
 *
 * @param steps the steps, first one first
 */
public record Trace(List<Step> steps) {

  public Trace {
    steps = List.copyOf(steps);
  }

  /** This trace with more steps. */
  public Trace plus(List<Step> more) {
    List<Step> longer = new ArrayList<>(steps);
    longer.addAll(more);
    return new Trace(longer);
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
