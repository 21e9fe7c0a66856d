package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.ThicknessChooser;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** Says once for each file, service and kind where the energy rule is silent, as on most ducts. */
final class SilentRules {

  /** Where the project itself says how thick, nobody needs to ask a rule. */
  private static final Set<Demand.Kind> SPEAKS =
      Set.of(Demand.Kind.ENERGY_RULE, Demand.Kind.SPECIFICATION, Demand.Kind.USER);

  private SilentRules() {}

  private record Key(int model, String what, String service) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int byModel = Integer.compare(model, other.model);
      int byWhat = byModel == 0 ? what.compareTo(other.what) : byModel;
      return byWhat == 0 ? service.compareTo(other.service) : byWhat;
    }
  }

  static List<Finding> findings(
      List<Judgement> judgements, String energyRule, ServicePack services) {
    if (energyRule.equals(ThicknessChooser.NO_ENERGY_RULE)) {
      return List.of();
    }
    Map<Key, Integer> counts = new TreeMap<>();
    for (Judgement judgement : judgements) {
      Classification service = judgement.service();
      ThicknessDecision thickness = judgement.thickness();
      if (service != null
          && thickness != null
          && judgement.leftOutWith() == null
          && isSilent(service, thickness)) {
        MepElement element = judgement.element();
        String what = LaggedElements.isDuct(element, service, services) ? "ducts" : "pipes";
        counts.merge(new Key(element.key().model(), what, service.name()), 1, Integer::sum);
      }
    }
    List<Finding> findings = new ArrayList<>();
    counts.forEach(
        (key, count) ->
            findings.add(
                Finding.ofFile(
                    key.model(),
                    TakeoffFinding.ENERGY_RULE_SILENT,
                    Effect.NONE,
                    energyRule,
                    key.what(),
                    key.service(),
                    String.valueOf(count))));
    return findings;
  }

  /** A service without a temperature for energy, such as cold water, is exempt and not silent. */
  private static boolean isSilent(Classification service, ThicknessDecision thickness) {
    return service.energyC() != null
        && thickness.demands().stream().noneMatch(demand -> SPEAKS.contains(demand.kind()));
  }
}
