package org.lagwright.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.report.Account;
import org.lagwright.report.Words;
import org.lagwright.report.json.ThicknessView.DemandView;
import org.lagwright.report.json.ThicknessView.LayerView;
import org.lagwright.report.json.ThicknessView.ProofView;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** One element, in the names of the schema. */
record ElementView(
    String globalId,
    long step,
    int model,
    String ifcClass,
    String name,
    @Nullable String type,
    String kind,
    String form,
    @Nullable SectionView section,
    List<SectionView> ends,
    @Nullable Double lengthM,
    @Nullable Double angleDeg,
    @Nullable Double bendRadiusM,
    @Nullable Double branchLengthM,
    MeasuredByView measuredBy,
    @Nullable String system,
    @Nullable ServiceView service,
    @Nullable String storey,
    @Nullable String space,
    @Nullable Double heightAboveFloorM,
    @Nullable PointView positionM,
    @Nullable String location,
    String scope,
    String reason,
    String rule,
    String account,
    @Nullable Double thicknessM,
    List<LayerView> layers,
    @Nullable String governing,
    List<DemandView> demands,
    @Nullable ProofView proof,
    @Nullable List<MakingView> making,
    @Nullable QuantitiesView quantities,
    @Nullable String line,
    @Nullable String leftOutWith,
    @Nullable ExistingView existingInsulation,
    @Nullable ExistingView lining) {

  record MeasuredByView(@Nullable String section, @Nullable String length) {}

  record QuantitiesView(double lengthM, int pieces, double outerAreaM2, double volumeM3) {
    static QuantitiesView of(Quantities q) {
      return new QuantitiesView(
          Finite.number(q.lengthM()),
          q.pieces(),
          Finite.number(q.outerAreaM2()),
          Finite.number(q.volumeM3()));
    }
  }

  record PointView(double x, double y, double z) {
    static @Nullable PointView of(@Nullable Point point) {
      return point == null
          ? null
          : new PointView(
              Finite.number(point.x()), Finite.number(point.y()), Finite.number(point.z()));
    }
  }

  record ExistingView(
      @Nullable Double thicknessM, @Nullable String material, double share, String evidence) {
    static @Nullable ExistingView of(@Nullable ExistingInsulation existing) {
      return existing == null
          ? null
          : new ExistingView(
              Finite.orNull(existing.thicknessM()),
              existing.material(),
              Finite.number(existing.share()),
              existing.evidence().toString());
    }
  }

  static ElementView of(TakenElement taken) {
    MepElement element = taken.element();
    ThicknessDecision thickness = taken.thickness();
    return new ElementView(
        element.globalId(),
        element.key().step(),
        element.key().model(),
        element.ifcClass(),
        element.name(),
        Words.type(element),
        element.kind().label(),
        element.form().label(),
        section(element),
        element.ends().stream().map(end -> SectionView.of(end, null)).toList(),
        value(element.lengthM()),
        value(element.angleDeg()),
        value(element.bendRadiusM()),
        value(element.branchLengthM()),
        new MeasuredByView(how(element.section()), how(element.lengthM())),
        Words.systems(element.systems()),
        ServiceView.of(taken.service()),
        element.place().storey(),
        element.place().space(),
        Finite.orNull(element.place().heightAboveFloorM()),
        PointView.of(element.place().positionM()),
        thickness == null ? null : thickness.location(),
        taken.scope().scope().label(),
        taken.scope().reason(),
        taken.scope().rule(),
        Account.of(taken).label(),
        thickness == null ? null : Finite.number(thickness.totalM()),
        thickness == null ? List.of() : thickness.layers().stream().map(LayerView::of).toList(),
        governing(thickness),
        thickness == null ? List.of() : thickness.demands().stream().map(DemandView::of).toList(),
        thickness == null ? null : ProofView.of(thickness.proof()),
        MakingView.of(taken.making()),
        taken.lineId() == null ? null : QuantitiesView.of(taken.quantities()),
        taken.lineId(),
        taken.leftOutWith(),
        ExistingView.of(element.existingInsulation()),
        ExistingView.of(element.lining()));
  }

  private static @Nullable SectionView section(MepElement element) {
    return element.section() == null
        ? null
        : SectionView.of(element.section().value(), element.nominalSize());
  }

  private static @Nullable String how(@Nullable Measured<?> measured) {
    return measured == null ? null : measured.how().name();
  }

  private static @Nullable Double value(@Nullable Measured<Double> measured) {
    return measured == null ? null : Finite.number(measured.value());
  }

  private static @Nullable String governing(@Nullable ThicknessDecision thickness) {
    return thickness == null || thickness.governing() == null
        ? null
        : thickness.governing().kind().label();
  }
}
