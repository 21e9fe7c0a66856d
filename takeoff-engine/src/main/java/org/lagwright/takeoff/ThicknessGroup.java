package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.Vote;
import org.lagwright.takeoff.thickness.Proof;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * Elements on lines that share a service and a decision on the thickness: what an engineer signs.
 *
 * @param serviceId service id
 * @param service service in words
 * @param votes what said so, with how many elements of the group
 * @param sizes sizes of its elements in words
 * @param lines ids of the lines they stand on
 * @param elements how many
 * @param lengthM metres of straight and flexible pieces
 * @param decision the demands and what is bought
 */
public record ThicknessGroup(
    String serviceId,
    String service,
    Map<String, Integer> votes,
    Set<String> sizes,
    Set<String> lines,
    int elements,
    double lengthM,
    ThicknessDecision decision) {

  /** The groups of a takeoff in the order of its elements; what is bare or left out has none. */
  public static List<ThicknessGroup> of(Takeoff takeoff) {
    Map<Key, Collected> groups = new LinkedHashMap<>();
    for (TakenElement taken : takeoff.elements()) {
      ThicknessDecision decision = taken.thickness();
      Classification service = taken.service();
      String line = taken.lineId();
      if (decision != null && service != null && line != null) {
        groups
            .computeIfAbsent(new Key(service.serviceId(), service.name(), decision), Collected::new)
            .add(taken, service, line);
      }
    }
    return groups.values().stream().map(Collected::group).toList();
  }

  /** What the straight pieces save in a year; null where no tariff is known. */
  public Proof.@Nullable Saving savingPerYear() {
    Proof proof = decision.proof();
    Proof.Saving perMetre = proof == null ? null : proof.saving();
    return perMetre == null
        ? null
        : new Proof.Saving(
            perMetre.heatKWh() * lengthM,
            perMetre.energyKWh() * lengthM,
            perMetre.cost() * lengthM,
            perMetre.co2Kg() * lengthM);
  }

  /** By identity of the decision: equal conditions share one. */
  private record Key(String serviceId, String service, ThicknessDecision decision) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Key key
          && key.serviceId.equals(serviceId)
          && key.decision == decision;
    }

    @Override
    public int hashCode() {
      return Objects.hash(serviceId, System.identityHashCode(decision));
    }
  }

  private static final class Collected {
    private final Key key;
    private final Map<String, Integer> votes = new LinkedHashMap<>();
    private final Set<String> sizes = new TreeSet<>();
    private final Set<String> lines = new TreeSet<>();
    private int elements;
    private double lengthM;

    Collected(Key key) {
      this.key = key;
    }

    void add(TakenElement taken, Classification service, String line) {
      Set<String> said = new TreeSet<>();
      for (Vote vote : service.votes()) {
        said.add(vote.from() + " '" + vote.text() + "'");
      }
      said.forEach(words -> votes.merge(words, 1, Integer::sum));
      Size.find(taken.element()).map(Size::words).ifPresent(sizes::add);
      lines.add(line);
      elements++;
      lengthM += taken.quantities().lengthM();
    }

    ThicknessGroup group() {
      return new ThicknessGroup(
          key.serviceId(), key.service(), votes, sizes, lines, elements, lengthM, key.decision());
    }
  }

  /** Votes in words, the most frequent first. */
  public List<String> votesInWords() {
    List<Map.Entry<String, Integer>> sorted = new ArrayList<>(votes.entrySet());
    sorted.sort(Map.Entry.<String, Integer>comparingByValue().reversed());
    return sorted.stream().map(e -> e.getKey() + " (" + e.getValue() + ")").toList();
  }
}
