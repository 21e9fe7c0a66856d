package org.lagwright.takeoff.thickness;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.economy.EnergyTariff;
import org.lagwright.takeoff.thickness.Asked.InsulationPrice;

/**
 * Thickness of many elements with few different conditions, all demands at once. Run by {@code
 * .ci/bench} on one core; see {@link #main}.
 */
public final class ThicknessBenchmark {

  /** Different conditions among the elements. */
  static final int CONDITIONS = 200;

  private static final int WARM_UPS = 5;
  private static final double LIMIT_S = 1;

  private final List<Conditions> conditions = new ArrayList<>();
  private final ThicknessChooser chooser = ThicknessChooser.bundled();

  ThicknessBenchmark() {
    double[] outsideM = {
      0.0213, 0.0337, 0.0483, 0.0603, 0.0889, 0.1143, 0.1683, 0.219, 0.273, 0.324
    };
    for (int i = 0; i < CONDITIONS; i++) {
      boolean cold = i % 2 == 0;
      double mediumC = cold ? 2 + i / 20 : 45 + i / 4;
      conditions.add(conditions(outsideM[i / 2 % outsideM.length], cold, mediumC));
    }
  }

  /**
   * Decides elements whose conditions repeat; each gets its own equal copy, as a run does.
   *
   * @return how many have a build-up
   */
  int decideAll(int elements) {
    int built = 0;
    for (int i = 0; i < elements; i++) {
      Conditions c = conditions.get(i % CONDITIONS);
      Conditions copy =
          new Conditions(
              c.section(),
              c.duct(),
              c.condensationC(),
              c.energyC(),
              c.exposure(),
              c.marginK(),
              c.materialId(),
              c.energyRuleId(),
              c.userMinimumM(),
              c.location(),
              c.family(),
              c.asked());
      built += chooser.decide(copy).layers().isEmpty() ? 0 : 1;
    }
    return built;
  }

  int computed() {
    return chooser.computed();
  }

  private static Conditions conditions(double outsideM, boolean cold, double mediumC) {
    Asked asked =
        new Asked(
            40.0,
            60.0,
            null,
            new EnergyTariff(2500, 0.1, 0.9, 0.2),
            new InsulationPrice(400, 20, 0.05, 20),
            null);
    return new Conditions(
        new Section.Round(outsideM),
        false,
        cold ? mediumC : null,
        mediumC,
        Exposure.still(26, 70 + outsideM, 0.9),
        1,
        cold ? "fef_nbr" : "gw_pipe_board",
        "us-ashrae-90.1-pipe",
        null,
        "indoor",
        cold ? "chilled" : "heating",
        asked);
  }

  /**
   * Prints the seconds of a fresh chooser in a fresh machine, without reading the packs, and then
   * of a fresh chooser when the code is warm: by the clock, and of the core with compiler and
   * collector, which a busy machine does not change. Ends with 1 where the core of the fresh one is
   * over the limit.
   *
   * @param arguments how many elements, 100 000 unless told
   */
  public static void main(String[] arguments) throws IOException {
    int elements = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100_000;
    System.out.println(machine());
    Seconds fresh = seconds(new ThicknessBenchmark(), elements);
    Seconds warm = fresh;
    for (int i = 0; i < WARM_UPS; i++) {
      warm = seconds(new ThicknessBenchmark(), elements);
    }
    boolean met = fresh.ofCore() <= LIMIT_S;
    System.out.printf(
        Locale.ROOT,
        "thickness of %d elements, %d conditions: fresh %s, warm %s; limit %.0f s of the core, fresh"
            + "  %s%n",
        elements,
        CONDITIONS,
        fresh.inWords(),
        warm.inWords(),
        LIMIT_S,
        met ? "met" : "NOT MET");
    System.exit(met ? 0 : 1);
  }

  private record Seconds(double byClock, double ofCore) {
    String inWords() {
      return String.format(Locale.ROOT, "%.3f s by the clock, %.3f s of the core", byClock, ofCore);
    }
  }

  private static Seconds seconds(ThicknessBenchmark benchmark, int elements) {
    OperatingSystemMXBean system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    long start = System.nanoTime();
    long coreStart = system.getProcessCpuTime();
    int built = benchmark.decideAll(elements);
    double ofCore = (system.getProcessCpuTime() - coreStart) / 1e9;
    double byClock = (System.nanoTime() - start) / 1e9;
    if (built != elements || benchmark.computed() != CONDITIONS) {
      throw new IllegalStateException(built + " built, " + benchmark.computed() + " computed");
    }
    return new Seconds(byClock, ofCore);
  }

  private static String machine() throws IOException {
    try (Stream<String> info = Files.lines(Path.of("/proc/cpuinfo"))) {
      String cpu =
          info.filter(line -> line.startsWith("model name"))
              .map(line -> line.substring(line.indexOf(':') + 2))
              .findFirst()
              .orElse("unknown processor");
      return String.format(
          Locale.ROOT,
          "JDK %s, %s, %d core, load %s",
          Runtime.version(),
          cpu,
          Runtime.getRuntime().availableProcessors(),
          Files.readString(Path.of("/proc/loadavg")).split(" ", 2)[0]);
    }
  }
}
