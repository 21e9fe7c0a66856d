package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Run;
import org.lagwright.report.Account;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.Trace.Step;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.settings.Settings;

/**
 * How the numbers of one element came about, for the user to check by hand. Nothing is cut; lines
 * are wrapped.
 */
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
    text.read();
    text.votes();
    text.demands();
    text.following();
    text.ordered();
    text.findings();
    return text.lines;
  }

  private void head() {
    MepElement element = taken.element();
    String file = takeoff.models().get(element.key().model()).name();
    lines.addAll(
        Wrapped.lines("", element.globalId() + "  #" + element.key().step() + " in " + file));
    TextTable table = new TextTable("  ", "ll").wrapped();
    table.row("class", element.ifcClass());
    table.row("name", element.name());
    table.row("what", Words.kind(element.kind()) + ", " + Words.form(element.form()));
    String size = Words.size(element);
    table.row("size", size == null ? "unknown" : size);
    row(table, "ends", Words.ends(element.ends()));
    for (MepSystem system : element.systems()) {
      row(table, "system", system.name().isBlank() ? null : system.name());
    }
    place(table, element);
    row(table, "lagged", Words.existing(element.existingInsulation()));
    row(table, "lined", Words.existing(element.lining()));
    joints(element, table);
    table.row("scope", taken.scope().scope().label() + ": " + taken.scope().reason());
    table.row("account", account());
    lines.addAll(table.lines());
  }

  private static void row(TextTable table, String what, @Nullable String value) {
    if (value != null) {
      table.row(what, value);
    }
  }

  private static void place(TextTable table, MepElement element) {
    row(table, "place", Words.place(element.place()));
    String basis =
        element.place().basis().stream().map(Evidence::toString).collect(Collectors.joining("; "));
    row(table, "", basis.isEmpty() ? null : basis);
  }

  /** What it is joined to, and the run it lies in. */
  private void joints(MepElement element, TextTable table) {
    List<MepElement> all = takeoff.elements().stream().map(TakenElement::element).toList();
    for (Port port : element.ports()) {
      all.stream()
          .filter(other -> other.key().equals(port.connectedTo()))
          .findFirst()
          .ifPresent(
              other ->
                  table.row(
                      "joined to",
                      other.globalId()
                          + " "
                          + other.name()
                          + (port.touching() ? " (ends touch)" : "")));
    }
    Run.of(all).stream()
        .filter(run -> run.pieces().size() > 1 && run.pieces().contains(element.key()))
        .findFirst()
        .ifPresent(
            run ->
                table.row(
                    "run",
                    String.format(
                        Locale.ROOT,
                        "%d pieces without a branch, %.3f m",
                        run.pieces().size(),
                        run.lengthM())));
  }

  private String account() {
    return switch (Account.of(taken)) {
      case ON_LINE -> "on line " + taken.lineId();
      case LEFT_OUT -> "left out with " + taken.leftOutWith();
      case OUT_OF_SCOPE -> "out of scope by " + taken.scope().rule();
    };
  }

  /** What was read and decided before the thickness. */
  private void read() {
    List<Step> steps = taken.trace().steps();
    List<Step> before = steps.subList(0, DemandText.firstOf(steps));
    if (before.isEmpty()) {
      return;
    }
    section("How its numbers came about");
    lines.addAll(StepText.lines(before));
    if (taken.thickness() != null) {
      air(taken.thickness().location());
    }
  }

  private void air(String location) {
    Settings.Air air = takeoff.settings().air().get(location);
    if (air != null) {
      lines.addAll(Wrapped.lines("  air: ", Words.air(air)));
      lines.addAll(Wrapped.lines("      of location class " + location + ": ", air.source()));
    }
  }

  private void votes() {
    Classification service = taken.service();
    if (service == null || service.votes().isEmpty()) {
      return;
    }
    section("Votes for the service (" + service.serviceId() + " won)");
    TextTable table = new TextTable("  ", "rlll").wrapped();
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
    if (taken.thickness() != null && !taken.thickness().demands().isEmpty()) {
      section("Demands on the thickness");
      lines.addAll(DemandText.lines(taken.element(), taken.thickness()));
    }
  }

  /** What follows from the thickness. */
  private void following() {
    List<Step> steps = taken.trace().steps();
    List<Step> after = steps.subList(DemandText.lastOf(steps), steps.size());
    if (after.isEmpty()) {
      return;
    }
    section("What follows");
    lines.addAll(StepText.lines(after));
    lines.addAll(DemandText.outline(taken));
  }

  private void ordered() {
    List<String> text = OrderText.of(takeoff.order(), taken.element().key());
    if (!text.isEmpty()) {
      section("What is bought for it; cuts are numbered as on the sheet Cutting plan");
      lines.addAll(text);
    }
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
      lines.addAll(Wrapped.lines("  " + finding.code().name() + ": ", finding.message()));
    }
  }

  private void section(String title) {
    lines.add("");
    lines.add(title);
  }
}
