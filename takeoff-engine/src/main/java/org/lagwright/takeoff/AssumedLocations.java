package org.lagwright.takeoff;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;

/** Says once for each file and location class how many lines rest on air that was assumed. */
final class AssumedLocations {

  private AssumedLocations() {}

  static List<Finding> findings(List<Judgement> judgements) {
    Map<Integer, Map<String, Long>> counts =
        judgements.stream()
            .filter(judgement -> judgement.lineKey() != null)
            .flatMap(
                judgement ->
                    judgement.trace().steps().stream()
                        .filter(AssumedLocations::isAssumed)
                        .map(step -> Map.entry(judgement.element().key().model(), step.value())))
            .collect(
                Collectors.groupingBy(
                    Map.Entry::getKey,
                    TreeMap::new,
                    Collectors.groupingBy(
                        Map.Entry::getValue, TreeMap::new, Collectors.counting())));
    return counts.entrySet().stream()
        .flatMap(
            model ->
                model.getValue().entrySet().stream()
                    .map(
                        location ->
                            Finding.ofFile(
                                model.getKey(),
                                TakeoffFinding.LOCATION_ASSUMED,
                                Effect.ASSUMED,
                                String.valueOf(location.getValue()),
                                location.getKey())))
        .toList();
  }

  private static boolean isAssumed(Trace.Step step) {
    return step instanceof Trace.Assumed && step.what().equals("location");
  }
}
