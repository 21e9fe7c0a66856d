package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.lagwright.report.Words;
import org.lagwright.takeoff.verify.Coverage;
import org.lagwright.takeoff.verify.CoverageGroup;
import org.lagwright.takeoff.verify.CoverageStatus;
import org.lagwright.takeoff.verify.CoverageSum;
import org.lagwright.takeoff.verify.ElementCoverage;

/** What the user reads after {@code verify}. */
final class CoverageText {

  private static final int MOST_WORST = 15;

  private final Coverage coverage;
  private final List<String> lines = new ArrayList<>();

  private CoverageText(Coverage coverage) {
    this.coverage = coverage;
  }

  static List<String> of(Coverage coverage) {
    CoverageText text = new CoverageText(coverage);
    text.byStatus();
    text.by("service", CoverageGroup::service);
    text.by("location", CoverageGroup::location);
    text.by("storey", CoverageGroup::storey);
    text.by("size", CoverageGroup::size);
    text.worst();
    return text.lines;
  }

  private void byStatus() {
    lines.add("Insulation shown in the models against what is required");
    TextTable table = new TextTable("  ", "lrrrrrr");
    table.row("", "elements", "%", "length m", "%", "outer area m2", "%");
    Map<CoverageStatus, CoverageSum> sums = coverage.byStatus();
    CoverageSum all = Coverage.sum(coverage.elements());
    sums.forEach((status, sum) -> row(table, status.label(), sum, all));
    row(table, "all", all, all);
    lines.addAll(table.lines());
    if (coverage.withoutArea() > 0) {
      lines.add("  " + Words.withoutArea(coverage));
    }
  }

  private static void row(TextTable table, String label, CoverageSum sum, CoverageSum all) {
    boolean areaKnown = sum.areaM2() > 0 || sum.elements() == 0;
    table.row(
        label,
        String.valueOf(sum.elements()),
        percent(sum.elements(), all.elements()),
        decimals(2, sum.lengthM()),
        percent(sum.lengthM(), all.lengthM()),
        areaKnown ? decimals(2, sum.areaM2()) : "not known",
        areaKnown ? percent(sum.areaM2(), all.areaM2()) : "-");
  }

  /** The largest groups first, so that the order of elements in the file does not matter. */
  private void by(String what, Function<CoverageGroup, String> key) {
    Map<String, List<ElementCoverage>> groups =
        coverage.elements().stream()
            .collect(
                Collectors.groupingBy(
                    e -> key.apply(e.group()), TreeMap::new, Collectors.toList()));
    List<Map.Entry<String, List<ElementCoverage>>> largestFirst =
        new ArrayList<>(groups.entrySet());
    largestFirst.sort(Comparator.comparingInt(group -> -group.getValue().size()));
    lines.add("");
    lines.add("Elements by " + what);
    TextTable table = new TextTable("  ", "l" + "r".repeat(CoverageStatus.values().length + 1));
    List<String> head = new ArrayList<>(List.of(""));
    for (CoverageStatus status : CoverageStatus.values()) {
      head.add(status.label());
    }
    head.add("covered area %");
    table.row(head.toArray(String[]::new));
    largestFirst.forEach(group -> table.row(row(group.getKey(), group.getValue())));
    lines.addAll(table.lines());
  }

  private static String[] row(String name, List<ElementCoverage> elements) {
    Map<CoverageStatus, CoverageSum> sums = Coverage.byStatus(elements);
    List<String> row = new ArrayList<>(List.of(name.isEmpty() ? "not known" : name));
    sums.values().forEach(s -> row.add(s.elements() == 0 ? "-" : String.valueOf(s.elements())));
    row.add(percent(Coverage.covered(elements).areaM2(), Coverage.sum(elements).areaM2()));
    return row.toArray(String[]::new);
  }

  private void worst() {
    List<ElementCoverage> worst = coverage.worst();
    if (worst.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("Where most is missing");
    TextTable table = new TextTable("  ", "rlrrll");
    table.row("m2", "GlobalId", "required mm", "shown mm", "service", "size");
    for (ElementCoverage e : worst.subList(0, Math.min(MOST_WORST, worst.size()))) {
      table.row(
          decimals(2, e.missingM2()),
          e.globalId(),
          mm(e.requiredM()),
          e.shownM() == null ? "-" : mm(e.shownM()),
          e.group().service(),
          e.group().size());
    }
    lines.addAll(table.lines());
    if (worst.size() > MOST_WORST) {
      int more = worst.size() - MOST_WORST;
      lines.add("  and " + more + " more; 'takeoff' lists all on the sheet Coverage");
    }
  }

  private static String mm(double metres) {
    return String.valueOf(Words.roundedMm(metres));
  }

  private static String percent(double part, double whole) {
    return whole == 0 ? "-" : decimals(1, 100 * part / whole);
  }

  private static String decimals(int digits, double number) {
    return String.format(Locale.ROOT, "%." + digits + "f", number);
  }
}
