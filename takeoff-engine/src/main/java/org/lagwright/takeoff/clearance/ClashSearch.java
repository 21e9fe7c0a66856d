package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.service.Classification;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds the pairs that do not fit: neighbours by a tree of their plans, then by distance. */
final class ClashSearch {

  /** Less is drawing accuracy; common practice, no source. */
  static final double TOLERANCE_M = 0.0001;

  /** An end so near the body of the same service was meant to join it; common practice. */
  private static final double MEANT_TO_JOIN_M = 0.01;

  private final List<Placed> placed;
  private final ClearancePack wanted;
  private final Joined joined;

  ClashSearch(List<Placed> placed, ClearancePack wanted) {
    this.placed = placed;
    this.wanted = wanted;
    this.joined = new Joined(placed.stream().map(p -> p.taken().element()).toList());
  }

  List<Clash> clashes() {
    STRtree tree = new STRtree();
    for (int i = 0; i < placed.size(); i++) {
      tree.insert(placed.get(i).box().plan(), i);
    }
    List<Clash> clashes = new ArrayList<>();
    double mostM = wanted.largestM();
    for (int i = 0; i < placed.size(); i++) {
      Placed one = placed.get(i);
      int at = i;
      Envelope plan = one.box().plan();
      plan.expandBy(mostM);
      tree.query(
          plan,
          found -> {
            int other = (Integer) found;
            if (other > at) {
              find(one, placed.get(other)).ifPresent(clashes::add);
            }
          });
    }
    return clashes;
  }

  private Optional<Clash> find(Placed one, Placed other) {
    double wantedM = wanted.betweenM(one, other);
    if (!(one.insulated() || other.insulated())
        || !one.box().isNear(other.box(), wantedM)
        || joined.areJoined(one.taken().element().key(), other.taken().element().key())) {
      return Optional.empty();
    }
    double gapM = Gap.betweenM(one.made().insulated(), other.made().insulated(), wantedM);
    if (gapM > wantedM - TOLERANCE_M || wereMeantToJoin(one, other)) {
      return Optional.empty();
    }
    double bareM = Gap.betweenM(one.made().bare(), other.made().bare(), Double.MAX_VALUE);
    Neighbour neighbour = new Neighbour.Piece(other.taken());
    Cause cause = Cause.of(gapM, bareM);
    return Optional.of(
        new Clash(
            one.taken(),
            neighbour,
            gapM,
            bareM,
            wantedM,
            cause,
            Clash.note(one.note("A"), other.note("B"))));
  }

  /** Pieces of one service that end on each other, though the model joins them not. */
  private static boolean wereMeantToJoin(Placed one, Placed other) {
    Classification service = one.taken().service();
    return service != null
        && sameService(service, other.taken())
        && (endsOn(one, other) || endsOn(other, one));
  }

  private static boolean sameService(Classification service, TakenElement other) {
    return other.service() != null
        && Objects.equals(service.serviceId(), other.service().serviceId());
  }

  private static boolean endsOn(Placed one, Placed other) {
    return one.made().ends().stream()
        .filter(end -> other.box().isNear(Solid.point(end).box(), MEANT_TO_JOIN_M))
        .anyMatch(end -> other.distanceM(end, MEANT_TO_JOIN_M) <= MEANT_TO_JOIN_M);
  }
}
