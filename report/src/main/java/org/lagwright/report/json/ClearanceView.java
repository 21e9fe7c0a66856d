package org.lagwright.report.json;

import java.util.List;
import org.lagwright.takeoff.clearance.Clash;
import org.lagwright.takeoff.clearance.Clearance;
import org.lagwright.takeoff.clearance.Neighbour;
import org.lagwright.takeoff.clearance.Passage;

/** Where insulation does not fit, and where it goes through the building. */
record ClearanceView(
    int lookedAt,
    int building,
    int withoutBody,
    List<ClashView> clashes,
    List<PassageView> passages,
    List<UnplacedView> unplaced,
    List<UnplacedView> bareUnplaced) {

  static ClearanceView of(Clearance clearance) {
    return new ClearanceView(
        clearance.lookedAt(),
        clearance.building(),
        clearance.withoutBody(),
        clearance.clashes().stream().map(ClashView::of).toList(),
        clearance.passages().stream().map(PassageView::of).toList(),
        clearance.unplaced().stream().map(UnplacedView::of).toList(),
        clearance.bareUnplaced().stream().map(UnplacedView::of).toList());
  }

  /** An element and a neighbour with less room than wanted. */
  record ClashView(
      String cause,
      String method,
      SideView first,
      SideView second,
      double gapM,
      double bareGapM,
      double wantedM,
      double shortfallM,
      String note) {

    static ClashView of(Clash clash) {
      return new ClashView(
          clash.cause().label(),
          clash.second().method(),
          SideView.of(new Neighbour.Piece(clash.first())),
          SideView.of(clash.second()),
          Finite.number(clash.gapM()),
          Finite.number(clash.bareGapM()),
          Finite.number(clash.wantedM()),
          Finite.number(clash.shortfallM()),
          clash.note());
    }
  }

  /** An element that goes through a part of the building in an opening. */
  record PassageView(SideView element, SideView part, double marginM) {
    static PassageView of(Passage passage) {
      return new PassageView(
          SideView.of(new Neighbour.Piece(passage.element())),
          SideView.of(new Neighbour.Part(passage.part())),
          Finite.number(passage.marginM()));
    }
  }

  /** One of the two. */
  record SideView(String globalId, int model, long step, double thicknessM) {
    static SideView of(Neighbour side) {
      return new SideView(
          side.globalId(), side.key().model(), side.key().step(), side.thicknessM());
    }
  }

  /** An element that could not be looked at. */
  record UnplacedView(String globalId, int model, long step, String reason) {
    static UnplacedView of(Clearance.Unplaced unplaced) {
      return new UnplacedView(
          unplaced.element().element().globalId(),
          unplaced.element().element().key().model(),
          unplaced.element().element().key().step(),
          unplaced.reason());
    }
  }
}
