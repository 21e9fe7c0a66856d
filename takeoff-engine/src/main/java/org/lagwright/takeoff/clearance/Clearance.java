package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * Where the insulated envelopes of a takeoff meet each other or a bare neighbour. Envelopes follow
 * the thickness bought. Pipes, ducts, fittings, valves and inline items are looked at, insulated or
 * not; apparatus, terminals, walls and other parts of the building are not.
 *
 * @param clashes the worst cause first, of each cause the largest shortfall first
 * @param lookedAt elements that have a place in space
 * @param unplaced insulated elements that have none, with the reason
 */
public record Clearance(List<Clash> clashes, int lookedAt, List<Unplaced> unplaced) {

  private static final Comparator<Clash> WORST_FIRST =
      Comparator.comparing(Clash::cause)
          .thenComparing(Comparator.comparingDouble(Clash::shortfallM).reversed())
          .thenComparing(clash -> clash.first().element().key())
          .thenComparing(clash -> clash.second().element().key());

  public Clearance {
    clashes = List.copyOf(clashes);
    unplaced = List.copyOf(unplaced);
  }

  /** An insulated element that could not be looked at. */
  public record Unplaced(TakenElement element, String reason) {}

  /** Thickness of the envelope of an element, metres: what is bought, 0 off the lines. */
  public static double thicknessM(TakenElement taken) {
    ThicknessDecision decision = taken.thickness();
    return taken.lineId() == null || decision == null ? 0 : decision.totalM();
  }

  /** Looks through a finished takeoff; the wanted gaps are those of its settings. */
  public static Clearance of(Takeoff takeoff) {
    List<Placed> placed = new ArrayList<>();
    List<Unplaced> unplaced = new ArrayList<>();
    for (TakenElement taken : takeoff.elements()) {
      if (taken.element().kind().isLagged() && taken.element().repeats() == null) {
        BodyMaker.Made made = BodyMaker.make(taken.element(), thicknessM(taken));
        if (made.missing().isEmpty()) {
          placed.add(Placed.of(taken, made));
        } else if (thicknessM(taken) > 0) {
          unplaced.add(new Unplaced(taken, made.missing()));
        }
      }
    }
    ClearancePack wanted = ClearancePack.bundled().with(takeoff.settings().clearanceMm());
    List<Clash> clashes = new ArrayList<>(new ClashSearch(placed, wanted).clashes());
    clashes.sort(WORST_FIRST);
    return new Clearance(clashes, placed.size(), unplaced);
  }
}
