package org.lagwright.report.json;

import java.util.List;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.clearance.Clash;
import org.lagwright.takeoff.clearance.Clearance;

/** Where insulation does not fit. */
record ClearanceView(int lookedAt, List<ClashView> clashes, List<UnplacedView> unplaced) {

  static ClearanceView of(Clearance clearance) {
    return new ClearanceView(
        clearance.lookedAt(),
        clearance.clashes().stream().map(ClashView::of).toList(),
        clearance.unplaced().stream().map(UnplacedView::of).toList());
  }

  /** Two elements with less room than wanted. */
  record ClashView(
      String cause,
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
          SideView.of(clash.first()),
          SideView.of(clash.second()),
          Finite.number(clash.gapM()),
          Finite.number(clash.bareGapM()),
          Finite.number(clash.wantedM()),
          Finite.number(clash.shortfallM()),
          clash.note());
    }
  }

  /** One of the two. */
  record SideView(String globalId, int model, long step, double thicknessM) {
    static SideView of(TakenElement taken) {
      return new SideView(
          taken.element().globalId(),
          taken.element().key().model(),
          taken.element().key().step(),
          Clearance.thicknessM(taken));
    }
  }

  /** An insulated element that could not be looked at. */
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
