package org.lagwright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs a process and watches its memory in {@code /proc}, so on Linux only. */
final class Probe {

  /** Who looks more often takes time from what uses all processors. */
  private static final int SAMPLE_MS = 200;

  private static final Pattern ANONYMOUS = Pattern.compile("RssAnon:\\s+(\\d+) kB");
  private static final Pattern RESIDENT = Pattern.compile("VmHWM:\\s+(\\d+) kB");
  private static final Pattern HEAP = Pattern.compile(PeakHeap.PREFIX + "(\\d+)");

  /** Clock ticks in a second, as {@code getconf CLK_TCK} says on every Linux we know. */
  private static final double TICKS = 100;

  private long anonymousKb;
  private long residentKb;

  private Probe() {}

  /**
   * Runs an engine once.
   *
   * @param folder for what it prints
   * @throws IllegalStateException where it fails or does not print what is expected
   */
  static Measurement run(Engine engine, Path folder) throws IOException, InterruptedException {
    return new Probe().measure(engine, folder);
  }

  private Measurement measure(Engine engine, Path folder) throws IOException, InterruptedException {
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    double cpuBefore = cpuOfChildren();
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(engine.command())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    Path proc = Path.of("/proc", Long.toString(process.pid()));
    do {
      sample(proc);
    } while (!process.waitFor(SAMPLE_MS, TimeUnit.MILLISECONDS));
    double seconds = (System.nanoTime() - start) / 1e9;
    String printed = Files.readString(out, StandardCharsets.UTF_8);
    String complaints = Files.readString(err, StandardCharsets.UTF_8);
    if (process.exitValue() != 0 || !printed.contains(engine.expected())) {
      throw new IllegalStateException(
          engine.name()
              + " should print '"
              + engine.expected()
              + "', printed\n"
              + printed
              + complaints);
    }
    double cpuSeconds = cpuOfChildren() - cpuBefore;
    return new Measurement(
        seconds, cpuSeconds, anonymousKb << 10, residentKb << 10, number(HEAP, complaints, 0));
  }

  /** The process may end at any moment, and its files with it. */
  private void sample(Path proc) {
    try {
      String status = Files.readString(proc.resolve("status"));
      anonymousKb = Math.max(anonymousKb, number(ANONYMOUS, status, 0));
      residentKb = number(RESIDENT, status, residentKb);
    } catch (IOException e) {
      // over; the samples before count
    }
  }

  /** User and system time of all processes that were started and have ended. */
  private static double cpuOfChildren() throws IOException {
    String stat = Files.readString(Path.of("/proc/self/stat"));
    // proc(5): fields 16 and 17, counted from behind the name in brackets, which is field 2
    String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
    return (Long.parseLong(fields[13]) + Long.parseLong(fields[14])) / TICKS;
  }

  private static long number(Pattern pattern, String text, long otherwise) {
    Matcher matcher = pattern.matcher(text);
    return matcher.find() ? Long.parseLong(matcher.group(1)) : otherwise;
  }
}
