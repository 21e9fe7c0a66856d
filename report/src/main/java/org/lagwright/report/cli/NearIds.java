package org.lagwright.report.cli;

import java.util.List;
import java.util.stream.Stream;
import org.lagwright.takeoff.Takeoff;

/** Guesses which id was meant. */
final class NearIds {

  /** Two swapped or mistyped characters. */
  private static final int MOST_DIFFERENCES = 2;

  private static final int MOST_GUESSES = 3;

  private NearIds() {}

  /** GlobalIds and line ids that differ in case or in a few characters, at most three. */
  static List<String> of(String id, Takeoff takeoff) {
    return Stream.concat(
            takeoff.lines().stream().map(line -> line.id()),
            takeoff.elements().stream().map(taken -> taken.element().globalId()))
        .filter(candidate -> isNear(id, candidate))
        .distinct()
        .limit(MOST_GUESSES)
        .map(TextTable::shown)
        .toList();
  }

  private static boolean isNear(String id, String candidate) {
    if (id.equalsIgnoreCase(candidate)) {
      return true;
    }
    boolean comparable = id.length() == candidate.length() && id.length() > 2 * MOST_DIFFERENCES;
    return comparable && differences(id, candidate) <= MOST_DIFFERENCES;
  }

  private static int differences(String a, String b) {
    int differences = 0;
    for (int i = 0; i < a.length(); i++) {
      differences += a.charAt(i) == b.charAt(i) ? 0 : 1;
    }
    return differences;
  }
}
