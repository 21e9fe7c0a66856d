package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.report.Account;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** The sheet {@code Elements}: every element read, with what was decided about it. */
final class ElementsSheet {

  static final String NAME = "Elements";

  /** Present for every element, where a faulty file may lack the GlobalId. */
  static final String STEP = "Step id";

  static final String ACCOUNT = "Account";

  private final Takeoff takeoff;
  private final Map<ElementKey, String> codes;

  ElementsSheet(Takeoff takeoff) {
    this.takeoff = takeoff;
    codes =
        takeoff.findings().stream()
            .filter(f -> f.element() != null)
            .collect(Collectors.groupingBy(ElementsSheet::key, codesInOrder()));
  }

  private static ElementKey key(Finding finding) {
    ElementKey key = finding.element();
    if (key == null) {
      throw new IllegalArgumentException("a finding about a file has no element");
    }
    return key;
  }

  private static Collector<Finding, ?, String> codesInOrder() {
    return Collectors.collectingAndThen(
        Collectors.mapping(f -> f.code().name(), Collectors.toCollection(TreeSet::new)),
        names -> String.join(" ", names));
  }

  /** The table, at its place. */
  Table<TakenElement> table() {
    List<Column<TakenElement>> columns = new ArrayList<>();
    columns.addAll(identity());
    columns.addAll(shape());
    columns.addAll(surroundings());
    columns.addAll(decisions());
    columns.addAll(origins());
    return new Table<>(NAME, 0, columns, takeoff.elements());
  }

  private List<Column<TakenElement>> identity() {
    return List.of(
        Column.text("GlobalId", 28, t -> t.element().globalId()),
        Column.number(STEP, 11, Look.PLAIN, t -> (double) t.element().key().step()),
        Column.text("Model file", 40, t -> takeoff.models().get(t.element().key().model()).name()),
        Column.text("IFC class", 36, t -> t.element().ifcClass()),
        Column.text("Name", 40, t -> t.element().name()),
        Column.text("Type", 40, t -> Words.type(t.element())),
        Column.text("Kind", 16, t -> Words.kind(t.element().kind())),
        Column.text("Form", 16, t -> Words.form(t.element().form())));
  }

  private List<Column<TakenElement>> shape() {
    return List.of(
        Column.text("Size", 34, t -> Words.size(t.element())),
        Column.text("Ends", 44, t -> Words.ends(t.element().ends())),
        Column.number("Length m", 10, Look.THREE_DECIMALS, t -> value(t, MepElement::lengthM)),
        Column.number("Angle deg", 8, Look.PLAIN, t -> rounded(t, MepElement::angleDeg, 10)),
        Column.number(
            "Bend radius m", 11, Look.PLAIN, t -> rounded(t, MepElement::bendRadiusM, 1e4)),
        Column.wrapped("System", 50, t -> Words.systems(t.element().systems())));
  }

  private List<Column<TakenElement>> surroundings() {
    return List.of(
        Column.text("Service", 50, t -> service(t, Classification::name)),
        Column.number(
            "Medium for condensation degC",
            14,
            Look.PLAIN,
            t -> t.service() == null ? null : t.service().condensationC()),
        Column.number(
            "Medium for energy degC",
            12,
            Look.PLAIN,
            t -> t.service() == null ? null : t.service().energyC()),
        Column.text("Storey", 30, t -> t.element().place().storey()),
        Column.text("Space", 30, t -> t.element().place().space()),
        Column.number(
            "Above floor m", 10, Look.TWO_DECIMALS, t -> t.element().place().heightAboveFloorM()),
        Column.text("Location", 16, t -> thickness(t, ThicknessDecision::location)));
  }

  private List<Column<TakenElement>> decisions() {
    return List.of(
        Column.text("Scope", 8, t -> t.scope().scope().label()),
        Column.text(ACCOUNT, 14, t -> Account.of(t).label()),
        Column.wrapped("Reason", 72, t -> t.scope().reason()),
        Column.text("Scope rule", 30, t -> t.scope().rule()),
        Column.number("Thickness mm", 11, Look.PLAIN, ElementsSheet::thicknessMm),
        Column.number(
            "Condensation needs mm", 13, Look.PLAIN, t -> neededMm(t, Demand.Kind.CONDENSATION)),
        Column.number(
            "Energy rule needs mm", 12, Look.PLAIN, t -> neededMm(t, Demand.Kind.ENERGY_RULE)),
        Column.text("Build-up", 30, t -> thickness(t, ThicknessDecision::layersInWords)),
        Column.text("Making", 40, t -> making(t, Making::inWords)),
        Column.wrapped("Making because", 72, t -> making(t, Making::reasons)),
        Column.text("Governing demand", 60, ElementsSheet::governing),
        Column.text("Line", 10, TakenElement::lineId),
        Column.number(
            "Outer area m2", 11, Look.TWO_DECIMALS, t -> onLine(t, t.quantities().outerAreaM2())),
        Column.number(
            "Volume m3", 10, Look.THREE_DECIMALS, t -> onLine(t, t.quantities().volumeM3())));
  }

  private List<Column<TakenElement>> origins() {
    return List.of(
        Column.text("Section measured by", 16, t -> Words.how(t.element().section())),
        Column.text("Length measured by", 16, t -> Words.how(t.element().lengthM())),
        Column.text(
            "Insulation in the model", 40, t -> Words.existing(t.element().existingInsulation())),
        Column.text("Lining in the model", 30, t -> Words.existing(t.element().lining())),
        Column.wrapped("Finding codes", 44, t -> codes.get(t.element().key())));
  }

  private static @Nullable Double value(
      TakenElement taken, Function<MepElement, @Nullable Measured<Double>> measured) {
    Measured<Double> found = measured.apply(taken.element());
    return found == null ? null : found.value();
  }

  private static @Nullable Double rounded(
      TakenElement taken, Function<MepElement, @Nullable Measured<Double>> measured, double steps) {
    Double found = value(taken, measured);
    return found == null ? null : Math.round(found * steps) / steps;
  }

  private static @Nullable String service(
      TakenElement taken, Function<Classification, String> text) {
    return taken.service() == null ? null : text.apply(taken.service());
  }

  private static @Nullable String thickness(
      TakenElement taken, Function<ThicknessDecision, String> text) {
    return taken.thickness() == null ? null : text.apply(taken.thickness());
  }

  private static @Nullable String making(TakenElement taken, Function<Making, String> text) {
    return taken.making() == null ? null : text.apply(taken.making());
  }

  /** What one demand needs, to a tenth; null where it does not apply or is out of reach. */
  private static @Nullable Double neededMm(TakenElement taken, Demand.Kind kind) {
    if (taken.thickness() == null) {
      return null;
    }
    return taken.thickness().demands().stream()
        .filter(d -> d.kind() == kind && d.isReachable())
        .findFirst()
        .map(d -> Math.round(d.thicknessM() * 10_000) / 10.0)
        .orElse(null);
  }

  private static @Nullable Double thicknessMm(TakenElement taken) {
    return taken.thickness() == null ? null : Words.roundedMm(taken.thickness().totalM());
  }

  private static @Nullable String governing(TakenElement taken) {
    ThicknessDecision decision = taken.thickness();
    return decision == null || decision.governing() == null
        ? null
        : Words.demand(decision.governing());
  }

  private static @Nullable Double onLine(TakenElement taken, double value) {
    return taken.lineId() == null ? null : value;
  }
}
