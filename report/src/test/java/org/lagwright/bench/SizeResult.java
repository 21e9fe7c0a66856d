package org.lagwright.bench;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * All rounds for one model.
 *
 * @param measurements by the name of the engine, one a round
 * @param heapBytes by the name of the engine, most that was in use in a run of its own
 */
record SizeResult(
    int megabytes,
    long bytes,
    Map<String, List<Measurement>> measurements,
    Map<String, Long> heapBytes) {

  private static final double MEGABYTE = 1e6;

  double seconds(String engine) {
    return median(engine, Measurement::seconds);
  }

  /** Median of the rounds. */
  double median(String engine, ToDoubleFunction<Measurement> figure) {
    List<Measurement> rounds = measurements.get(engine);
    if (rounds == null) {
      throw new IllegalArgumentException(engine + " was not measured");
    }
    double[] sorted = rounds.stream().mapToDouble(figure).sorted().toArray();
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  /** 0 where the engine does not tell. */
  double heapMb(String engine) {
    return heapBytes.getOrDefault(engine, 0L) / MEGABYTE;
  }

  /** A table for the terminal. */
  String text() {
    StringBuilder table = new StringBuilder();
    table.append(String.format(Locale.ROOT, "%n%d MB (%,d bytes)%n", megabytes, bytes));
    table.append(
        String.format(
            "  %-30s %9s %9s %9s %9s %9s %12s %11s%n",
            "", "seconds", "fastest", "cpu s", "MB/s", "heap MB", "anonymous MB", "resident MB"));
    for (Map.Entry<String, List<Measurement>> engine : measurements.entrySet()) {
      table.append(row(engine.getKey(), engine.getValue()));
    }
    return table.toString();
  }

  private String row(String name, List<Measurement> rounds) {
    double seconds = seconds(name);
    double fastest = rounds.stream().mapToDouble(Measurement::seconds).min().orElse(Double.NaN);
    return String.format(
        Locale.ROOT,
        "  %-30s %9.3f %9.3f %9.2f %9.0f %9.0f %12.0f %11.0f%n",
        name,
        seconds,
        fastest,
        median(name, Measurement::cpuSeconds),
        bytes / MEGABYTE / seconds,
        heapMb(name),
        median(name, Measurement::anonymousBytes) / MEGABYTE,
        median(name, Measurement::residentBytes) / MEGABYTE);
  }
}
