package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lagwright.takeoff.thickness.Conditions;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Proof;
import org.lagwright.takeoff.thickness.ThicknessChooser;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * Thickness against condensation for a cold group, by relative humidity of its air.
 *
 * @param group what is lagged
 * @param steps by rising humidity
 */
public record HumiditySweep(ThicknessGroup group, List<Step> steps) {

  /** Relative humidities looked at, %. */
  public static final List<Integer> HUMIDITIES_PCT =
      List.of(50, 55, 60, 65, 70, 75, 80, 85, 90, 95);

  /**
   * One humidity.
   *
   * @param humidityPct relative humidity
   * @param neededM thickness needed, metres; infinite where none is enough
   * @param bought build-up in words; empty where nothing is needed or nothing reaches it
   */
  public record Step(int humidityPct, double neededM, String bought) {}

  public HumiditySweep {
    steps = List.copyOf(steps);
  }

  /**
   * The sweeps of the cold groups that the settings choose, of all where they choose none; once for
   * equal service and conditions.
   */
  public static List<HumiditySweep> of(Takeoff takeoff) {
    ThicknessChooser chooser = new ThicknessChooser(takeoff.settings().packs());
    List<HumiditySweep> sweeps = new ArrayList<>();
    Set<Object> seen = new HashSet<>();
    List<String> chosen = takeoff.settings().humiditySweep();
    for (ThicknessGroup group : ThicknessGroup.of(takeoff)) {
      Proof proof = group.decision().proof();
      boolean wanted = chosen.isEmpty() || chosen.contains(group.serviceId());
      if (wanted && proof != null && isKeptDry(group.decision()) && seen.add(key(group, proof))) {
        sweeps.add(new HumiditySweep(group, steps(chooser, proof.conditions())));
      }
    }
    return sweeps;
  }

  private static Object key(ThicknessGroup group, Proof proof) {
    return List.of(group.service(), proof.conditions());
  }

  private static boolean isKeptDry(ThicknessDecision decision) {
    return decision.demands().stream()
        .anyMatch(d -> d.kind() == Demand.Kind.CONDENSATION && d.thicknessM() > 0);
  }

  private static List<Step> steps(ThicknessChooser chooser, Conditions conditions) {
    List<Step> steps = new ArrayList<>();
    for (int humidityPct : HUMIDITIES_PCT) {
      ThicknessDecision decision = chooser.decide(conditions.onlyCondensationAt(humidityPct));
      steps.add(new Step(humidityPct, decision.requiredM(), decision.layersInWords()));
    }
    return steps;
  }
}
