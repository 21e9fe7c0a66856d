package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lagwright.takeoff.readiness.Readiness;
import org.lagwright.takeoff.readiness.Readiness.ModelReadiness;
import org.lagwright.takeoff.readiness.ReadinessRow;
import org.lagwright.takeoff.readiness.ReadinessRow.Group;

/** What the user reads after {@code check}. */
final class ReadinessText {

  private static final int MOST_WORST = 15;

  private final Readiness readiness;
  private final List<String> lines = new ArrayList<>();

  private ReadinessText(Readiness readiness) {
    this.readiness = readiness;
  }

  static List<String> of(Readiness readiness, List<Path> files) {
    ReadinessText text = new ReadinessText(readiness);
    text.models();
    text.requirements();
    text.worst();
    text.questions();
    text.lines.add("");
    files.forEach(file -> text.lines.add("written: " + file));
    return text.lines;
  }

  private void models() {
    lines.add("Elements that carry all that is needed for a takeoff");
    TextTable table = new TextTable("  ", "lllrrr");
    table.row("model", "schema", "written by", "elements", "ready", "%");
    for (ModelReadiness model : readiness.models()) {
      table.row(
          model.file().name(),
          model.file().schema(),
          named(model.file().exporter()),
          String.valueOf(model.elements()),
          String.valueOf(model.ready()),
          percent(model.ready(), model.elements()));
    }
    lines.addAll(table.lines());
  }

  private void requirements() {
    lines.add("");
    lines.add(
        "What a model must carry; 'as asked' by its own properties and relations, 'worked out'");
    lines.add("from bodies, neighbours and names");
    TextTable table = new TextTable("  ", "llrrrrr");
    table.row("requirement", "need", "elements", "as asked", "worked out", "missing", "missing %");
    for (ReadinessRow row : readiness.byRequirement()) {
      table.row(
          row.requirement().title(),
          row.requirement().isOfFile()
              ? row.requirement().need().label() + ", files"
              : row.requirement().need().label(),
          count(row.elements()),
          count(row.asAsked()),
          count(row.workedOut()),
          count(row.missing()),
          percent(row.missing(), row.elements()));
    }
    lines.addAll(table.lines());
  }

  private void worst() {
    List<ReadinessRow> worst = readiness.worst();
    if (worst.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("Where most is missing, by exporting program and type of element");
    TextTable table = new TextTable("  ", "rrlllll");
    table.row("missing", "of", "requirement", "need", "written by", "class", "type");
    for (ReadinessRow row : worst.subList(0, Math.min(MOST_WORST, worst.size()))) {
      Group group = row.group();
      table.row(
          count(row.missing()),
          count(row.elements()),
          row.requirement().title(),
          row.requirement().need().label(),
          named(group.exporter()),
          group.ifcClass(),
          group.typeName());
    }
    lines.addAll(table.lines());
    if (worst.size() > MOST_WORST) {
      lines.add("  and " + (worst.size() - MOST_WORST) + " more in readiness.csv");
    }
  }

  private void questions() {
    List<ReadinessRow> open =
        readiness.byRequirement().stream().filter(row -> row.missing() > 0).toList();
    if (open.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("What to ask the designers");
    TextTable table = new TextTable("  ", "ll").wrapped();
    for (ReadinessRow row : open) {
      table.row(
          row.requirement().title(),
          row.requirement().ask()
              + " "
              + row.requirement().why()
              + " Missing: "
              + row.missing()
              + ", such as "
              + String.join(", ", row.examples())
              + ".");
    }
    lines.addAll(table.lines());
  }

  private static String named(String exporter) {
    return exporter.isEmpty() ? "not said" : exporter;
  }

  private static String count(int number) {
    return number == 0 ? "-" : String.valueOf(number);
  }

  private static String percent(int part, int whole) {
    return whole == 0 ? "-" : String.format(Locale.ROOT, "%.1f", 100.0 * part / whole);
  }
}
