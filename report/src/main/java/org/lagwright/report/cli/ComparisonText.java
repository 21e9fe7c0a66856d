package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lagwright.takeoff.compare.Amount;
import org.lagwright.takeoff.compare.Comparison;

/** What the user reads after {@code compare}. */
final class ComparisonText {

  private ComparisonText() {}

  static List<String> of(Comparison comparison, List<Path> files) {
    List<String> lines = new ArrayList<>();
    lines.add("Elements");
    TextTable counts = new TextTable("  ", "lr");
    comparison
        .counts()
        .forEach((change, count) -> counts.row(change.label(), String.valueOf(count)));
    int same = comparison.changes().size() - comparison.changed().size();
    counts.row("as they were", String.valueOf(same));
    lines.addAll(counts.lines());
    lines.add("");
    lines.add("Difference by service");
    TextTable services = new TextTable("  ", "lrrrrr");
    services.row("", "length m", "pieces", "outer area m2", "volume m3", "hours");
    comparison.byService().forEach((name, a) -> row(services, name, a.now().minus(a.before())));
    row(services, "all", comparison.difference());
    lines.addAll(services.lines());
    lines.add("");
    files.forEach(file -> lines.add("written: " + file));
    return lines;
  }

  private static void row(TextTable table, String name, Amount difference) {
    table.row(
        name,
        signed(2, difference.lengthM()),
        signed(0, difference.pieces()),
        signed(2, difference.outerAreaM2()),
        signed(3, difference.volumeM3()),
        signed(2, difference.hours()));
  }

  /** With its sign; what rounds to nothing has none. */
  private static String signed(int digits, double number) {
    String text = String.format(Locale.ROOT, "%+." + digits + "f", number);
    return text.chars().anyMatch(c -> c >= '1' && c <= '9') ? text : text.substring(1);
  }
}
