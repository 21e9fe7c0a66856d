package org.lagwright.takeoff.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Form;
import org.lagwright.takeoff.measure.Measurement.FormSum;
import org.lagwright.takeoff.measure.MeasurementMethod.Quantity;

/**
 * Why two methods give different totals for one model: form by form, and what each rounds. The
 * differences add up to the difference of the totals.
 *
 * @param first one method
 * @param other the other
 * @param rows what differs or is measured by either
 */
public record Reconciliation(Measurement first, Measurement other, List<Row> rows) {

  /** Sums this small are rounding of the arithmetic. */
  private static final double ROUNDING = 1e-9;

  public Reconciliation {
    rows = List.copyOf(rows);
  }

  /**
   * One part of the difference.
   *
   * @param form elements of this form; null for what rounding makes
   * @param firstValue by the first method
   * @param otherValue by the other
   * @param why the rules of both
   */
  public record Row(
      Quantity quantity, @Nullable Form form, double firstValue, double otherValue, String why) {

    /** The other less the first. */
    public double difference() {
      return otherValue - firstValue;
    }
  }

  /** Compares two measurements of the same elements. */
  public static Reconciliation of(Measurement first, Measurement other) {
    List<Row> rows = new ArrayList<>();
    for (Quantity quantity : Quantity.values()) {
      TreeSet<Form> forms = new TreeSet<>();
      Stream.of(first, other)
          .flatMap(measurement -> measurement.sums().stream())
          .filter(sum -> sum.quantity() == quantity)
          .forEach(sum -> forms.add(sum.form()));
      forms.forEach(form -> rows.add(row(first.sum(quantity, form), other.sum(quantity, form))));
      double firstRounded = first.total(quantity) - first.exact(quantity);
      double otherRounded = other.total(quantity) - other.exact(quantity);
      if (Math.abs(firstRounded) > ROUNDING || Math.abs(otherRounded) > ROUNDING) {
        rows.add(new Row(quantity, null, firstRounded, otherRounded, "rounding of line totals"));
      }
    }
    return new Reconciliation(first, other, rows);
  }

  /** True where both methods measure anything of a quantity. */
  public boolean isMeasuredByBoth(Quantity quantity) {
    return Stream.of(first, other)
        .allMatch(m -> m.sums().stream().anyMatch(sum -> sum.quantity() == quantity));
  }

  private static Row row(FormSum first, FormSum other) {
    String one = String.join(" / ", first.why());
    String two = String.join(" / ", other.why());
    return new Row(
        first.quantity(),
        first.form(),
        first.value(),
        other.value(),
        one.equals(two) ? one : one + "; against: " + two);
  }
}
