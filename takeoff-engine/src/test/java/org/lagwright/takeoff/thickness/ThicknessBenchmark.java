package org.lagwright.takeoff.thickness;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.economy.EnergyTariff;
import org.lagwright.takeoff.thickness.Asked.InsulationPrice;

/**
 * Thickness of many elements with few different conditions, all demands at once.
 *
 * <p>As a program it prints the time of a fresh chooser after a warm-up: {@code java
 * org.lagwright.takeoff.thickness.ThicknessBenchmark [ELEMENTS]}.
 */
public final class ThicknessBenchmark {

  /** Different conditions among the elements. */
  static final int CONDITIONS = 200;

  private static final int WARM_UPS = 3;

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

  /** Prints the milliseconds for the elements, 100 000 unless told. */
  public static void main(String[] arguments) {
    int elements = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100_000;
    for (int i = 0; i < WARM_UPS; i++) {
      new ThicknessBenchmark().decideAll(elements);
    }
    ThicknessBenchmark benchmark = new ThicknessBenchmark();
    long start = System.nanoTime();
    int built = benchmark.decideAll(elements);
    double ms = (System.nanoTime() - start) / 1e6;
    System.out.printf(
        "thickness: %d elements, %d computed, %d built, %.0f ms%n",
        elements, benchmark.computed(), built, ms);
  }
}
