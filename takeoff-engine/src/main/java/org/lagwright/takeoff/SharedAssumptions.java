package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;

/** Says once for each file and assumption how many elements on lines rest on it. */
final class SharedAssumptions {

  /** What a step of the trace must be about to be counted here, and the code of its finding. */
  private static final Map<String, TakeoffFinding> CODES =
      new TreeMap<>(
          Map.of(
              "location",
              TakeoffFinding.LOCATION_ASSUMED,
              MakingSteps.WIDTH,
              TakeoffFinding.WIDTH_ASSUMED));

  private SharedAssumptions() {}

  static List<Finding> findings(List<Judgement> judgements) {
    List<Finding> findings = new ArrayList<>();
    CODES.forEach((what, code) -> findings.addAll(findings(judgements, what, code)));
    return findings;
  }

  private static List<Finding> findings(
      List<Judgement> judgements, String what, TakeoffFinding code) {
    Map<Integer, Map<String, Long>> counts =
        judgements.stream()
            .filter(judgement -> judgement.lineKey() != null)
            .flatMap(
                judgement ->
                    judgement.trace().steps().stream()
                        .filter(step -> step instanceof Trace.Assumed && step.what().equals(what))
                        .map(step -> Map.entry(judgement.element().key().model(), step.value())))
            .collect(
                Collectors.groupingBy(
                    Map.Entry::getKey,
                    TreeMap::new,
                    Collectors.groupingBy(
                        Map.Entry::getValue, TreeMap::new, Collectors.counting())));
    List<Finding> findings = new ArrayList<>();
    counts.forEach(
        (model, byValue) ->
            byValue.forEach(
                (value, count) ->
                    findings.add(
                        Finding.ofFile(
                            model, code, Effect.ASSUMED, String.valueOf(count), value))));
    return findings;
  }
}
