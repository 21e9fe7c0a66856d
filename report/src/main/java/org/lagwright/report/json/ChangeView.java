package org.lagwright.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.compare.Amount;
import org.lagwright.takeoff.compare.Change;
import org.lagwright.takeoff.compare.ElementChange;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** One element in both revisions, or in one of them. */
record ChangeView(
    List<String> changes,
    String kind,
    String form,
    String name,
    @Nullable String storey,
    @Nullable SideView before,
    @Nullable SideView now) {

  static ChangeView of(ElementChange change, boolean priced) {
    MepElement element = change.any().element();
    return new ChangeView(
        change.changes().stream().map(Change::label).toList(),
        element.kind().label(),
        element.form().label(),
        element.name(),
        element.place().storey(),
        SideView.of(change.before(), change.amountBefore(), priced),
        SideView.of(change.now(), change.amountNow(), priced));
  }

  /** The element in one revision. */
  record SideView(
      String globalId,
      @Nullable String service,
      @Nullable String size,
      @Nullable Double thicknessM,
      @Nullable String line,
      AmountView amount) {

    static @Nullable SideView of(@Nullable TakenElement taken, Amount amount, boolean priced) {
      if (taken == null) {
        return null;
      }
      Classification service = taken.service();
      ThicknessDecision thickness = taken.lineId() == null ? null : taken.thickness();
      return new SideView(
          taken.element().globalId(),
          service == null ? null : service.name(),
          Words.size(taken.element()),
          thickness == null ? null : Finite.number(thickness.totalM()),
          taken.lineId(),
          AmountView.of(amount, priced));
    }
  }

  /** What insulation amounts to. */
  record AmountView(
      double lengthM,
      int pieces,
      double outerAreaM2,
      double volumeM3,
      double hours,
      @Nullable Double money) {

    static AmountView of(Amount amount, boolean priced) {
      return new AmountView(
          Finite.number(amount.lengthM()),
          amount.pieces(),
          Finite.number(amount.outerAreaM2()),
          Finite.number(amount.volumeM3()),
          Finite.number(amount.hours()),
          priced ? Finite.number(amount.money()) : null);
    }
  }
}
