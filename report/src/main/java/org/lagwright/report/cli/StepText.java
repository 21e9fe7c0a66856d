package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.lagwright.report.Words;
import org.lagwright.takeoff.Trace.Assumed;
import org.lagwright.takeoff.Trace.Computed;
import org.lagwright.takeoff.Trace.Decided;
import org.lagwright.takeoff.Trace.Given;
import org.lagwright.takeoff.Trace.Lost;
import org.lagwright.takeoff.Trace.Read;
import org.lagwright.takeoff.Trace.Step;

/** Steps of a trace: what and how much, and below it where it comes from. */
final class StepText {

  /** What the reader writes where a value that was not used confirms the one used. */
  private static final String AGREES = "agrees";

  private static final String BELOW = "      ";

  private StepText() {}

  /** The lines of these steps; what was not used stands below what was, and once only. */
  static List<String> lines(List<Step> steps) {
    List<String> lines = new ArrayList<>();
    for (Step step : new LinkedHashSet<>(steps)) {
      if (!(step instanceof Lost)) {
        lines.addAll(Wrapped.lines("  " + step.what() + ": ", step.value()));
      }
      lines.addAll(Wrapped.lines(BELOW, origin(step)));
    }
    return lines;
  }

  private static String origin(Step step) {
    if (step instanceof Read read) {
      return "read by " + Words.how(read.how()) + " from " + read.evidence();
    }
    if (step instanceof Lost lost) {
      return lost(lost);
    }
    if (step instanceof Decided decided) {
      String rule = "decided by " + decided.rule() + " (pack " + decided.pack() + "): ";
      return rule + decided.source();
    }
    if (step instanceof Computed computed) {
      return "computed: " + computed.formula();
    }
    if (step instanceof Assumed assumed) {
      return "assumed: " + assumed.why();
    }
    return "given in the settings: " + ((Given) step).setting();
  }

  private static String lost(Lost lost) {
    String by = " by " + Words.how(lost.how()) + " from " + lost.evidence() + ": " + lost.why();
    return lost.why().equals(AGREES) ? "also" + by : "not used: " + lost.value() + by;
  }
}
