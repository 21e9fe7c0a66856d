package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Counts the hints of one element. Hints from the same place count once per family, so that an
 * element in five systems of one name, or of one name in three attributes, does not shout. Words of
 * a broader family (heating) support a narrower one (floor heating) and never contradict it. A
 * family that leaves open which service it is (domestic water, hot or cold not told) never wins
 * against one that tells.
 */
final class Ballot {

  /**
   * The outcome.
   *
   * @param service the winner, null where no family is told
   * @param strength weight behind it, at most 1
   * @param rival the service that contradicts, null if none
   */
  record Outcome(@Nullable Service service, double strength, @Nullable Service rival) {
    static final Outcome NOTHING = new Outcome(null, 0, null);
  }

  /** Part of a weight below which a difference is rounding. */
  private static final double ROUNDING = 1e-9;

  private final ServicePack services;
  private final VotePack votes;
  private final Set<String> openFamilies;

  Ballot(ServicePack services, VotePack votes) {
    this.services = services;
    this.votes = votes;
    this.openFamilies = services.openFamilies();
  }

  /** True if a service only says which family it is, and this one says more. */
  boolean isMoreTelling(Service service, Service open) {
    return openFamilies.contains(open.family())
        && services.family(service.family()).broader().contains(open.family());
  }

  Outcome count(List<Hint> hints) {
    for (Hint hint : hints) {
      if (hint.exact() != null) {
        return new Outcome(services.service(hint.exact()), 1, null);
      }
    }
    Circuit circuit = Circuit.of(hints);
    Map<String, Double> own = own(hints, circuit);
    Map<String, Double> scores = scores(own);
    String winner =
        scores.keySet().stream()
            .min(
                Comparator.comparingDouble((String f) -> -score(scores, f))
                    .thenComparingInt(this::familyOrder))
            .orElse(null);
    if (winner == null) {
      return Outcome.NOTHING;
    }
    Service service = services.service(winner, direction(hints, winner, circuit));
    double strength = Math.min(1, score(scores, winner));
    takeOpenFrom(scores, own, service);
    return new Outcome(service, strength, rival(hints, service, scores, circuit));
  }

  /** Weight of each family by its own words: the heaviest hint of each place, summed. */
  private static Map<String, Double> own(List<Hint> hints, Circuit circuit) {
    Map<List<String>, Double> perPlace = new HashMap<>();
    for (Hint hint : hints) {
      String family = hint.familyMeant(circuit);
      if (family != null) {
        perPlace.merge(List.of(family, hint.place()), hint.weight(), Math::max);
      }
    }
    Map<String, Double> own = new HashMap<>();
    perPlace.keySet().stream()
        .sorted(Comparator.comparing(key -> key.get(1)))
        .forEach(
            key -> own.merge(key.get(0), Objects.requireNonNull(perPlace.get(key)), Double::sum));
    return own;
  }

  /** Adds the weight of broader families to those narrower ones that carry weight themselves. */
  private Map<String, Double> scores(Map<String, Double> own) {
    Map<String, Double> scores = new HashMap<>();
    own.forEach(
        (family, weight) -> {
          double sum = weight;
          for (String broader : services.family(family).broader()) {
            double support = own.getOrDefault(broader, 0.0);
            boolean open = openFamilies.contains(broader);
            if (open || weight >= votes.contradictionShare() * support) {
              sum += support;
            }
          }
          scores.put(family, sum);
        });
    return scores;
  }

  /** What leaves open which of its services is meant speaks neither for the winner nor against. */
  private void takeOpenFrom(Map<String, Double> scores, Map<String, Double> own, Service winner) {
    for (String open : services.family(winner.family()).broader()) {
      double support = openFamilies.contains(open) ? score(own, open) : 0;
      if (support > 0) {
        for (Map.Entry<String, Double> entry : scores.entrySet()) {
          if (services.family(entry.getKey()).broader().contains(open)) {
            entry.setValue(entry.getValue() - support);
          }
        }
      }
    }
  }

  private @Nullable String direction(List<Hint> hints, String family, Circuit circuit) {
    Set<String> possible = services.directions(family);
    Map<List<String>, Double> perPlace = new HashMap<>();
    for (Hint hint : hints) {
      String meant = hint.familyMeant(circuit);
      if (hint.direction() != null
          && possible.contains(hint.direction())
          && (meant == null || services.related(meant, family))) {
        perPlace.merge(List.of(hint.direction(), hint.place()), hint.weight(), Math::max);
      }
    }
    return clearWinner(perPlace);
  }

  /** The direction with the most weight, null where none or where two weigh the same. */
  private static @Nullable String clearWinner(Map<List<String>, Double> perPlace) {
    Map<String, Double> sums = new HashMap<>();
    perPlace.forEach((key, weight) -> sums.merge(key.get(0), weight, Double::sum));
    List<Map.Entry<String, Double>> sorted = new ArrayList<>(sums.entrySet());
    sorted.sort(Map.Entry.<String, Double>comparingByValue().reversed());
    if (sorted.isEmpty()) {
      return null;
    }
    double first = sorted.get(0).getValue();
    boolean tie = sorted.size() > 1 && sorted.get(1).getValue() >= first * (1 - ROUNDING);
    return tie ? null : sorted.get(0).getKey();
  }

  private @Nullable Service rival(
      List<Hint> hints, Service winner, Map<String, Double> scores, Circuit circuit) {
    double needed = votes.contradictionShare() * score(scores, winner.family()) * (1 - ROUNDING);
    return scores.keySet().stream()
        .filter(f -> !services.related(f, winner.family()))
        .filter(f -> score(scores, f) >= needed)
        .sorted(
            Comparator.comparingDouble((String f) -> -score(scores, f))
                .thenComparingInt(this::familyOrder))
        .map(f -> services.service(f, direction(hints, f, circuit)))
        .filter(rival -> differs(winner, rival))
        .findFirst()
        .orElse(null);
  }

  /** A colder rival always does: it condenses where the winner does not yet. */
  private boolean differs(Service winner, Service rival) {
    if (!winner.scope().equals(rival.scope()) || !winner.material().equals(rival.material())) {
      return true;
    }
    Double a = services.temperatureRow(winner).condensationC();
    Double b = services.temperatureRow(rival).condensationC();
    return a == null
        || b == null
        || Math.abs(a - b) > votes.contradictionK()
        || (b < a && rival.kind().equals("cold"));
  }

  private int familyOrder(String family) {
    return services.families().indexOf(services.family(family));
  }

  private static double score(Map<String, Double> scores, String family) {
    return scores.getOrDefault(family, 0.0);
  }
}
