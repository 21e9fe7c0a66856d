package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;

/**
 * Carries services along the connections from elements that tell to elements that do not: first the
 * family, then a narrower one where the family leaves open which service it is, then the direction
 * where only that is missing. Works in rings round the known elements, so the order of the elements
 * in the file does not matter.
 */
final class NeighbourVotes {

  /** What an element may take over from its neighbour. */
  private interface Need {
    boolean takes(Ballot.Outcome taker, Service given);
  }

  private final Connections connections;
  private final ServicePack services;
  private final Ballot ballot;
  private final double share;
  private final Map<ElementKey, List<Hint>> hints;
  private final Map<ElementKey, Ballot.Outcome> outcomes = new HashMap<>();

  /**
   * @param share part of its strength that a service keeps from one element to the next
   * @param hints what each element tells itself; what it takes over is added
   */
  NeighbourVotes(
      Connections connections,
      ServicePack services,
      Ballot ballot,
      double share,
      Map<ElementKey, List<Hint>> hints) {
    this.connections = connections;
    this.services = services;
    this.ballot = ballot;
    this.share = share;
    this.hints = hints;
    hints.forEach((key, own) -> outcomes.put(key, ballot.count(own)));
  }

  /** The outcome for every element. */
  Map<ElementKey, Ballot.Outcome> carry() {
    carry((taker, given) -> taker.service() == null);
    carry(this::leavesOpen);
    carry(NeighbourVotes::lacksDirection);
    return outcomes;
  }

  /** What is only known as domestic water takes over whether it is hot or cold. */
  private boolean leavesOpen(Ballot.Outcome taker, Service given) {
    return taker.service() != null && ballot.isMoreTelling(given, taker.service());
  }

  private static boolean lacksDirection(Ballot.Outcome taker, Service given) {
    Service service = taker.service();
    return service != null
        && service.directionAssumed()
        && given.direction() != null
        && given.family().equals(service.family());
  }

  private void carry(Need need) {
    Set<ElementKey> ring = new HashSet<>(outcomes.keySet());
    while (!ring.isEmpty()) {
      Map<ElementKey, List<Hint>> received = receive(ring, need);
      ring = new HashSet<>();
      for (Map.Entry<ElementKey, List<Hint>> entry : received.entrySet()) {
        if (take(entry.getKey(), entry.getValue())) {
          ring.add(entry.getKey());
        }
      }
    }
  }

  /** What the elements round a ring take over from it. */
  private Map<ElementKey, List<Hint>> receive(Set<ElementKey> ring, Need need) {
    Map<ElementKey, List<Hint>> received = new TreeMap<>();
    for (ElementKey giver : ring.stream().sorted().toList()) {
      Ballot.Outcome outcome = outcome(giver);
      Service given = outcome.service();
      if (given == null || !connections.passesOn(giver)) {
        continue;
      }
      for (MepElement taker : connections.neighbours(giver)) {
        if (mayCarry(taker, given) && need.takes(outcome(taker.key()), given)) {
          received
              .computeIfAbsent(taker.key(), k -> new ArrayList<>())
              .add(hint(giver, given, outcome.strength() * share));
        }
      }
    }
    return received;
  }

  /** Adds what was taken over; true if that changed the service. */
  private boolean take(ElementKey key, List<Hint> received) {
    List<Hint> all = new ArrayList<>(hints.getOrDefault(key, List.of()));
    all.addAll(received);
    hints.put(key, List.copyOf(all));
    Ballot.Outcome after = ballot.count(all);
    Ballot.Outcome before = outcomes.put(key, after);
    return before == null || !Objects.equals(before.service(), after.service());
  }

  private Hint hint(ElementKey giver, Service given, double weight) {
    MepElement element = connections.element(giver);
    String text = element.globalId() + " " + element.name();
    return Hint.ofFamily(
        given.family(), given.direction(), VotePack.FROM_NEIGHBOUR, text.strip(), weight);
  }

  private boolean mayCarry(MepElement taker, Service given) {
    return taker.kind() != Kind.COVERING
        && taker.kind() != Kind.OTHER
        && services.family(given.family()).carriedIn().fits(Carrier.of(taker));
  }

  private Ballot.Outcome outcome(ElementKey key) {
    return outcomes.getOrDefault(key, Ballot.Outcome.NOTHING);
  }
}
