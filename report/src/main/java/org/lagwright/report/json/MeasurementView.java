package org.lagwright.report.json;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.measure.Measurement;
import org.lagwright.takeoff.measure.MeasurementMethod;
import org.lagwright.takeoff.measure.MeasurementMethod.Quantity;

/** The takeoff by one method of measurement. */
record MeasurementView(
    String method,
    String name,
    String source,
    String status,
    @Nullable String note,
    TotalsView totals,
    List<RowView> rows) {

  /** Totals of the method. */
  record TotalsView(double lengthM, double pieces, double areaM2, double volumeM3) {}

  /** The total of a line by one rule. */
  record RowView(
      String line,
      @Nullable String countedAs,
      String unit,
      double quantity,
      String ruleId,
      String rule,
      String source,
      String status,
      List<String> elements) {}

  static MeasurementView of(Measurement measurement, Function<List<ElementKey>, List<String>> ids) {
    MeasurementMethod method = measurement.method();
    return new MeasurementView(
        method.id(),
        method.name(),
        method.source(),
        method.status().shown(),
        method.note(),
        new TotalsView(
            Finite.number(measurement.total(Quantity.LENGTH)),
            Finite.number(measurement.total(Quantity.PIECES)),
            Finite.number(measurement.total(Quantity.AREA)),
            Finite.number(measurement.total(Quantity.VOLUME))),
        measurement.rows().stream().map(row -> row(method, row, ids)).toList());
  }

  private static RowView row(
      MeasurementMethod method, Measurement.Row row, Function<List<ElementKey>, List<String>> ids) {
    return new RowView(
        row.lineId(),
        row.size(),
        row.rule().of().unit(),
        Finite.number(row.quantity()),
        row.rule().id(),
        row.rule().text(),
        method.sourceOf(row.rule()),
        method.statusOf(row.rule()).shown(),
        ids.apply(row.elements()));
  }
}
