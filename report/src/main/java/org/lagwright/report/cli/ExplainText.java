package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.report.Account;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.Trace.Assumed;
import org.lagwright.takeoff.Trace.Computed;
import org.lagwright.takeoff.Trace.Decided;
import org.lagwright.takeoff.Trace.Given;
import org.lagwright.takeoff.Trace.Lost;
import org.lagwright.takeoff.Trace.Read;
import org.lagwright.takeoff.Trace.Step;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** How the numbers of one element came about, for the user to read. */
final class ExplainText {

  private final Takeoff takeoff;
  private final TakenElement taken;
  private final List<String> lines = new ArrayList<>();

  private ExplainText(Takeoff takeoff, TakenElement taken) {
    this.takeoff = takeoff;
    this.taken = taken;
  }

  /** The explanation, line by line. */
  static List<String> of(Takeoff takeoff, TakenElement taken) {
    ExplainText text = new ExplainText(takeoff, taken);
    text.head();
    text.steps();
    text.votes();
    text.demands();
    text.findings();
    return text.lines;
  }

  private void head() {
    MepElement element = taken.element();
    lines.add(
        TextTable.shown(
            element.globalId()
                + "  #"
                + element.key().step()
                + " in "
                + takeoff.models().get(element.key().model()).name()));
    TextTable table = new TextTable("  ", "ll");
    table.row("class", element.ifcClass());
    table.row("name", element.name());
    table.row("what", element.kind().label() + ", " + element.form().label());
    String size = Words.size(element);
    table.row("size", size == null ? "unknown" : size);
    table.row("scope", taken.scope().scope().label() + ": " + taken.scope().reason());
    table.row("account", account());
    lines.addAll(table.lines());
  }

  private String account() {
    return switch (Account.of(taken)) {
      case ON_LINE -> "on line " + taken.lineId();
      case LEFT_OUT -> "left out with " + taken.leftOutWith();
      case OUT_OF_SCOPE -> "out of scope by " + taken.scope().rule();
    };
  }

  private void steps() {
    List<Step> steps = taken.trace().steps();
    if (!steps.isEmpty()) {
      section("How its numbers came about");
    }
    for (Step step : steps) {
      lines.add("  " + TextTable.shown(step.what() + ": " + step.value()));
      lines.add("      " + origin(step));
    }
  }

  private static String origin(Step step) {
    if (step instanceof Read read) {
      return "read by " + read.how() + " from " + TextTable.shown(read.evidence().toString());
    }
    if (step instanceof Lost lost) {
      return "not used, "
          + lost.why()
          + ": "
          + lost.how()
          + " from "
          + TextTable.shown(lost.evidence().toString());
    }
    if (step instanceof Decided decided) {
      return "decided by "
          + decided.rule()
          + " of "
          + decided.pack()
          + " ("
          + decided.source()
          + ")";
    }
    if (step instanceof Computed computed) {
      return "computed: " + computed.formula();
    }
    if (step instanceof Assumed assumed) {
      return "assumed: " + TextTable.shown(assumed.why());
    }
    return "given in the settings: " + TextTable.shown(((Given) step).setting());
  }

  private void votes() {
    Classification service = taken.service();
    if (service == null || service.votes().isEmpty()) {
      return;
    }
    section("Votes for the service (" + service.serviceId() + " won)");
    TextTable table = new TextTable("  ", "rlll");
    service
        .votes()
        .forEach(
            vote ->
                table.row(
                    String.format(Locale.ROOT, "%.1f", vote.weight()),
                    vote.serviceId(),
                    vote.from(),
                    vote.text()));
    lines.addAll(table.lines());
  }

  private void demands() {
    ThicknessDecision thickness = taken.thickness();
    if (thickness == null || thickness.demands().isEmpty()) {
      return;
    }
    section("Demands on the thickness");
    TextTable table = new TextTable("  ", "rlll");
    for (Demand demand : thickness.demands()) {
      table.row(
          Words.millimetres(demand.thicknessM()) + " mm",
          Words.demand(demand),
          demand.equals(thickness.governing()) ? "governs" : "",
          demand.source());
    }
    lines.addAll(table.lines());
    lines.add("  bought: " + bought(thickness));
  }

  private static String bought(ThicknessDecision thickness) {
    return thickness.layers().isEmpty() ? "nothing" : thickness.layersInWords();
  }

  private void findings() {
    List<Finding> own =
        takeoff.findings().stream()
            .filter(finding -> taken.element().key().equals(finding.element()))
            .toList();
    if (own.isEmpty()) {
      return;
    }
    section("Findings");
    for (Finding finding : own) {
      lines.add("  " + finding.code().name() + ": " + TextTable.shown(finding.message()));
    }
  }

  private void section(String title) {
    lines.add("");
    lines.add(title);
  }
}
