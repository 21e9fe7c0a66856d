package org.lagwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Generates models, proves that each engine reads them right, and measures all engines in
 * interleaved rounds, so that a busy moment of the machine meets them all.
 */
public final class Bench {

  /** Of the model whose reading lists the classes: every kind of element and of joint occurs. */
  private static final int TRAINING_MB = 10;

  private final Engines engines;
  private final Path work;
  private final String schema;
  private final int rounds;

  private Bench(Engines engines, Path work, String schema, int rounds) {
    this.engines = engines;
    this.work = work;
    this.schema = schema;
    this.rounds = rounds;
  }

  /**
   * Runs the benchmark; ends with exit code 1 where a limit is not met.
   *
   * @param arguments folder of the repository, folder with web-ifc, folder for files, schema,
   *     rounds, then sizes in megabytes
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path work = Files.createDirectories(Path.of(arguments[2]));
    Engines engines = new Engines(Path.of(arguments[0]), Path.of(arguments[1]), work);
    Bench bench = new Bench(engines, work, arguments[3], Integer.parseInt(arguments[4]));
    System.out.print(machine(arguments[3], bench.rounds));
    for (Engine engine : engines.archives(LargeFile.write(TRAINING_MB, arguments[3], work))) {
      Probe.run(engine, work);
    }
    List<SizeResult> results = new ArrayList<>();
    for (String size : Arrays.copyOfRange(arguments, 5, arguments.length)) {
      SizeResult result = bench.measure(Integer.parseInt(size));
      System.out.print(result.text());
      results.add(result);
    }
    List<Limits.Limit> limits = Limits.of(results);
    System.out.println("\nLimits");
    limits.forEach(limit -> System.out.println("  " + limit.text()));
    System.exit(limits.stream().allMatch(Limits.Limit::isMet) ? 0 : 1);
  }

  private static String machine(String schema, int rounds) throws IOException {
    try (Stream<String> info = Files.lines(Path.of("/proc/cpuinfo"))) {
      String cpu =
          info.filter(line -> line.startsWith("model name"))
              .map(line -> line.substring(line.indexOf(':') + 2))
              .findFirst()
              .orElse("unknown processor");
      return String.format(
          Locale.ROOT,
          "JDK %s, %s, %d cores, load %s%n%s, median of %d interleaved rounds, warm page cache,"
              + " our program with SerialGC and an archive of classes, extraction with"
              + " %s and -Xmx%dm%n",
          Runtime.version(),
          cpu,
          Runtime.getRuntime().availableProcessors(),
          Files.readString(Path.of("/proc/loadavg")).split(" ", 2)[0],
          schema,
          rounds,
          String.join(" ", Engines.EXTRACT_FLAGS),
          Engines.HEAP_MB);
    }
  }

  private SizeResult measure(int megabytes) throws IOException, InterruptedException {
    LargeFile file = LargeFile.write(megabytes, schema, work);
    Probe.run(engines.proof(file), work);
    Map<String, Long> heapBytes = new HashMap<>();
    for (Engine engine : engines.heaps(file)) {
      heapBytes.put(engine.name(), Probe.run(engine, work).heapBytes());
    }
    Map<String, List<Measurement>> measurements = new LinkedHashMap<>();
    for (int round = 0; round < rounds; round++) {
      for (Engine engine : engines.all(file)) {
        measurements
            .computeIfAbsent(engine.name(), name -> new ArrayList<>())
            .add(Probe.run(engine, work));
      }
    }
    return new SizeResult(megabytes, file.bytes(), measurements, heapBytes);
  }
}
