package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * Where the insulated envelopes of a takeoff meet each other, a bare neighbour or the building.
 * Envelopes follow the thickness bought. Pipes, ducts, fittings, valves and inline items are looked
 * at, insulated or not, and walls, slabs, beams and the like by the boxes around them; apparatus
 * and terminals are not.
 *
 * @param clashes the worst cause first, of each cause the largest shortfall first
 * @param passages insulated elements that go through the building in openings large enough
 * @param lookedAt elements that have a place in space
 * @param unplaced insulated elements that have none, with the reason
 * @param bareUnplaced bare ones that have none, against which nothing could be held
 * @param building parts of the building that were looked at
 * @param withoutBody parts of the building without a body that can be read
 */
public record Clearance(
    List<Clash> clashes,
    List<Passage> passages,
    int lookedAt,
    List<Unplaced> unplaced,
    List<Unplaced> bareUnplaced,
    int building,
    int withoutBody) {

  private static final Comparator<Clash> WORST_FIRST =
      Comparator.comparing(Clash::cause)
          .thenComparing(Comparator.comparingDouble(Clash::shortfallM).reversed())
          .thenComparing(clash -> clash.first().element().key())
          .thenComparing(clash -> clash.second().key());

  private static final Comparator<Passage> BY_ELEMENT =
      Comparator.comparing((Passage passage) -> passage.element().element().key())
          .thenComparing(passage -> passage.part().key());

  public Clearance {
    clashes = List.copyOf(clashes);
    passages = List.copyOf(passages);
    unplaced = List.copyOf(unplaced);
    bareUnplaced = List.copyOf(bareUnplaced);
  }

  /** An element that could not be looked at. */
  public record Unplaced(TakenElement element, String reason) {}

  /** Thickness of the envelope of an element, metres: what is bought, 0 where it is bare. */
  public static double thicknessM(TakenElement taken) {
    ThicknessDecision decision = taken.thickness();
    boolean bare = taken.lineId() == null && !taken.isUnderBox();
    return bare || decision == null ? 0 : decision.totalM();
  }

  /**
   * Looks through a finished takeoff; the wanted gaps are those of its settings. Reads the bodies
   * of the building from the models if nobody has done so before.
   */
  public static Clearance of(Takeoff takeoff) {
    List<Unplaced> unplaced = new ArrayList<>();
    List<Unplaced> bareUnplaced = new ArrayList<>();
    List<Placed> placed =
        withoutCrowds(placed(takeoff, unplaced, bareUnplaced), unplaced, bareUnplaced);
    ClearancePack wanted = ClearancePack.bundled().with(takeoff.settings().clearanceMm());
    BuildingSearch building = new BuildingSearch(takeoff.surroundings(), wanted);
    building.search(placed);
    List<Clash> clashes = new ArrayList<>(new ClashSearch(placed, wanted).clashes());
    clashes.addAll(building.clashes());
    clashes.sort(WORST_FIRST);
    return new Clearance(
        clashes,
        building.passages().stream().sorted(BY_ELEMENT).toList(),
        placed.size(),
        unplaced,
        bareUnplaced,
        building.lookedAt(),
        building.withoutBody());
  }

  /**
   * What has a place.
   *
   * @param unplaced takes the insulated elements that have none
   * @param bareUnplaced takes the bare ones
   */
  private static List<Placed> placed(
      Takeoff takeoff, List<Unplaced> unplaced, List<Unplaced> bareUnplaced) {
    Jackets jackets = new Jackets(takeoff);
    List<Placed> placed = new ArrayList<>();
    for (TakenElement taken : takeoff.elements()) {
      if (taken.element().kind().isLagged() && taken.element().repeats() == null) {
        BodyMaker.Made made = BodyMaker.make(taken.element(), thicknessM(taken));
        if (made.missing().isEmpty()) {
          placed.add(Placed.of(taken, made, jackets.has(taken)));
        } else {
          leaveOut(taken, made.missing(), unplaced, bareUnplaced);
        }
      }
    }
    return placed;
  }

  private static void leaveOut(
      TakenElement taken, String why, List<Unplaced> unplaced, List<Unplaced> bareUnplaced) {
    (thicknessM(taken) > 0 ? unplaced : bareUnplaced).add(new Unplaced(taken, why));
  }

  private static List<Placed> withoutCrowds(
      List<Placed> all, List<Unplaced> unplaced, List<Unplaced> bareUnplaced) {
    Crowds crowds = new Crowds(all);
    List<Placed> placed = new ArrayList<>(all.size());
    for (Placed one : all) {
      if (crowds.hold(one)) {
        leaveOut(one.taken(), Crowds.REASON, unplaced, bareUnplaced);
      } else {
        placed.add(one);
      }
    }
    return placed;
  }
}
