package org.lagwright.testmodels.large;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A number that is known about a model before it is read.
 *
 * @param what the sort of number: {@code segment}, {@code bend}, {@code port} ...
 * @param of what it is about: {@code pipe-segment 60.3}
 * @param count how many there are
 * @param total sum over them; metres where they have a length or radius, else a plain number
 */
public record KnownQuantity(String what, String of, long count, double total) {

  private static final String HEAD = "what,of,count,total\n";

  /** One line each; no cell holds a comma. */
  public static String csv(List<KnownQuantity> quantities) {
    return quantities.stream()
        .map(q -> String.format(Locale.ROOT, "%s,%s,%d,%s%n", q.what, q.of, q.count, q.total))
        .map(line -> line.replace(System.lineSeparator(), "\n"))
        .collect(Collectors.joining("", HEAD, ""));
  }

  /**
   * What {@link #csv} wrote.
   *
   * @throws IllegalArgumentException where it is something else
   */
  public static List<KnownQuantity> parse(String csv) {
    if (!csv.startsWith(HEAD)) {
      throw new IllegalArgumentException("does not begin with " + HEAD);
    }
    return csv.substring(HEAD.length()).lines().map(KnownQuantity::parseLine).toList();
  }

  private static KnownQuantity parseLine(String line) {
    String[] cells = line.split(",", -1);
    return new KnownQuantity(
        cells[0], cells[1], Long.parseLong(cells[2]), Double.parseDouble(cells[3]));
  }
}
