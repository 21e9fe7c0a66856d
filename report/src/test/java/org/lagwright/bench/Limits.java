package org.lagwright.bench;

import static org.lagwright.bench.Engines.EXTRACT;
import static org.lagwright.bench.Engines.EXTRACT_ZIP;
import static org.lagwright.bench.Engines.INFLATE;
import static org.lagwright.bench.Engines.LINES;
import static org.lagwright.bench.Engines.OPEN;
import static org.lagwright.bench.Engines.RELATIONS;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What the figures of one run must keep, as ratios within that run. */
final class Limits {

  private static final double HEAP_LIMIT_MB = 256 * 1.048576;

  private Limits() {}

  /**
   * A ratio and the most it may be.
   *
   * @param aim what we would like; the same as the limit where there is no other
   */
  record Limit(String what, double value, double most, double aim) {

    boolean isMet() {
      return value <= most;
    }

    String text() {
      String verdict = value <= aim ? "met, aim too" : isMet() ? "met" : "NOT MET";
      return String.format(
          Locale.ROOT, "%-58s %8.3f  limit %7.3f  aim %7.3f  %s", what, value, most, aim, verdict);
    }
  }

  /** The limits that the sizes measured allow to check. */
  static List<Limit> of(List<SizeResult> results) {
    List<Limit> limits = new ArrayList<>();
    for (SizeResult result : results) {
      switch (result.megabytes()) {
        case 10 -> small(result, limits);
        case 1000 -> large(result, limits);
        default -> {}
      }
      limits.add(ratio(result, EXTRACT_ZIP, INFLATE, 1.5, 1.1));
    }
    SizeResult middle = find(results, 100);
    SizeResult large = find(results, 1000);
    if (middle != null && large != null) {
      double growth = large.seconds(EXTRACT) / middle.seconds(EXTRACT);
      limits.add(new Limit("1000 MB / 100 MB, " + EXTRACT, growth, 11, 11));
    }
    return limits;
  }

  private static void small(SizeResult result, List<Limit> limits) {
    limits.add(ratio(result, EXTRACT, OPEN, 1 / 2.0, 1 / 4.0));
  }

  private static void large(SizeResult result, List<Limit> limits) {
    limits.add(ratio(result, EXTRACT, OPEN, 1 / 6.0, 1 / 15.0));
    limits.add(ratio(result, EXTRACT, RELATIONS, 1 / 20.0, 1 / 50.0));
    limits.add(ratio(result, EXTRACT, LINES, 15, 8));
    double heapMb = result.heapMb(EXTRACT);
    limits.add(new Limit(at(result, "heap of extraction, MB"), heapMb, HEAP_LIMIT_MB, 134));
    double anonymous = result.median(EXTRACT, Measurement::anonymousBytes) / result.bytes();
    limits.add(new Limit(at(result, "anonymous memory / file"), anonymous, 0.3, 0.2));
  }

  private static Limit ratio(
      SizeResult result, String ours, String other, double most, double aim) {
    double value = result.seconds(ours) / result.seconds(other);
    return new Limit(at(result, ours + " / " + other), value, most, aim);
  }

  private static String at(SizeResult result, String what) {
    return result.megabytes() + " MB: " + what;
  }

  private static @Nullable SizeResult find(List<SizeResult> results, int megabytes) {
    return results.stream().filter(r -> r.megabytes() == megabytes).findFirst().orElse(null);
  }
}
