package org.lagwright.takeoff.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.measure.MeasurementMethod.Along;
import org.lagwright.takeoff.measure.MeasurementMethod.CountedAs;
import org.lagwright.takeoff.measure.MeasurementMethod.Openings;
import org.lagwright.takeoff.measure.MeasurementMethod.Quantity;
import org.lagwright.takeoff.measure.MeasurementMethod.Rule;

/**
 * A takeoff measured by one method: a pure function of what is true of each element.
 *
 * @param method the method
 * @param rows its totals by line and rule
 * @param sums its totals by quantity and form, before rounding
 */
public record Measurement(MeasurementMethod method, List<Row> rows, List<FormSum> sums) {

  public Measurement {
    rows = List.copyOf(rows);
    sums = List.copyOf(sums);
  }

  /**
   * The total of a line by one rule.
   *
   * @param size the size it is counted in where that is not the size of the line, null otherwise
   * @param quantity in the unit of the rule, rounded as the method says
   * @param elements the elements it sums
   */
  public record Row(
      String lineId, Rule rule, @Nullable String size, double quantity, List<ElementKey> elements) {
    public Row {
      elements = List.copyOf(elements);
    }
  }

  /**
   * What all elements of a form contribute, before rounding.
   *
   * @param why the rules that measured them, in words
   */
  public record FormSum(Quantity quantity, Form form, double value, List<String> why) {
    public FormSum {
      why = List.copyOf(why);
    }
  }

  /** Measures by a method. */
  public static Measurement of(MeasurementMethod method, List<GeometricTruth> truths) {
    Map<Group, Sum> groups = new TreeMap<>(Group.ORDER);
    Map<FormKey, Sum> forms = new TreeMap<>(FormKey.ORDER);
    for (GeometricTruth truth : truths) {
      Set<String> facts = truth.facts();
      for (Quantity quantity : Quantity.values()) {
        Rule rule = firstRule(method, quantity, truth, facts);
        if (rule != null) {
          double value = value(rule, truth);
          Group group =
              new Group(truth.lineId(), method.rules().indexOf(rule), countedSize(rule, truth));
          groups.computeIfAbsent(group, k -> new Sum()).add(value, truth.element());
          FormKey form = new FormKey(quantity, truth.form());
          forms.computeIfAbsent(form, k -> new Sum()).add(value, rule.text());
        }
      }
    }
    List<Row> rows = new ArrayList<>();
    groups.forEach((group, sum) -> rows.add(row(method, group, sum)));
    List<FormSum> sums = new ArrayList<>();
    forms.forEach(
        (key, sum) ->
            sums.add(new FormSum(key.quantity(), key.form(), sum.value, List.copyOf(sum.texts))));
    return new Measurement(method, rows, sums);
  }

  private static final class Sum {
    double value;
    final List<ElementKey> elements = new ArrayList<>();
    final Set<String> texts = new LinkedHashSet<>();

    void add(double more, ElementKey element) {
      value += more;
      elements.add(element);
    }

    void add(double more, String text) {
      value += more;
      texts.add(text);
    }
  }

  private record FormKey(Quantity quantity, Form form) {
    static final Comparator<FormKey> ORDER =
        Comparator.comparing(FormKey::quantity).thenComparing(FormKey::form);
  }

  /** What shares a row. */
  private record Group(String lineId, int rule, String size) {
    static final Comparator<Group> ORDER =
        Comparator.comparing(Group::lineId)
            .thenComparingInt(Group::rule)
            .thenComparing(Group::size);
  }

  private static Row row(MeasurementMethod method, Group group, Sum sum) {
    Double wholeFrom = method.wholeFrom();
    double quantity = wholeFrom == null ? sum.value : Math.floor(sum.value + 1 - wholeFrom + 1e-9);
    return new Row(
        group.lineId(),
        method.rules().get(group.rule()),
        group.size().isEmpty() ? null : group.size(),
        quantity,
        sum.elements);
  }

  private static @Nullable Rule firstRule(
      MeasurementMethod method, Quantity quantity, GeometricTruth truth, Set<String> facts) {
    return method.rules().stream()
        .filter(rule -> rule.of() == quantity && rule.fits(truth, facts))
        .findFirst()
        .orElse(null);
  }

  private static String countedSize(Rule rule, GeometricTruth truth) {
    if (rule.countedAs() == null || truth.ends().isEmpty()) {
      return "";
    }
    Comparator<Section> bySide = Comparator.comparingDouble(Section::largestSideM);
    Section end =
        rule.countedAs() == CountedAs.LARGEST_END
            ? truth.ends().stream().max(bySide).orElseThrow()
            : truth.ends().stream().min(bySide).orElseThrow();
    return Math.round(end.largestSideM() * 10_000) / 10.0 + " mm";
  }

  private static double value(Rule rule, GeometricTruth truth) {
    double factor = or(rule.factor(), 1);
    double value = factor * plainValue(rule, truth);
    return rule.least() == null ? value : Math.max(rule.least(), value);
  }

  private static double plainValue(Rule rule, GeometricTruth truth) {
    return switch (rule.of()) {
      case LENGTH -> lengthM(rule, truth);
      case PIECES -> truth.net().pieces();
      case AREA -> areaM2(rule, truth);
      case VOLUME -> volumeM3(rule, truth);
    };
  }

  private static double lengthM(Rule rule, GeometricTruth truth) {
    double diameterM = truth.section().largestSideM();
    return switch (rule.along()) {
      case NET -> truth.net().lengthM();
      case AXIS -> truth.axes().throughM();
      case CORNERS -> truth.axes().cornersM();
      case EQUIVALENT -> or(rule.diameters(), 0) * diameterM + or(rule.metres(), 0);
      case ARC -> or(rule.diameters(), 0) * diameterM * truth.angleRad();
      case ITSELF, END -> throw new IllegalStateException(rule.id());
    };
  }

  /** Girth of the insulation as the rule reckons it, times length; pi (D + a t + c) L of pipes. */
  private static double areaM2(Rule rule, GeometricTruth truth) {
    double outerM =
        or(rule.outerFactor(), 2) * truth.thicknessM() + or(rule.outerPlusMm(), 0) / 1000;
    Envelope envelope = Envelope.around(truth.section(), outerM / 2);
    if (rule.along() == Along.END) {
      double diameterM = truth.section().largestSideM() + outerM;
      return Math.PI * diameterM * diameterM / 4;
    }
    if (rule.along() == Along.ITSELF) {
      return withOpenings(rule.openings(), truth);
    }
    return envelope.outerPerimeterM() * lengthM(rule, truth);
  }

  /** The exact surface leaves out what branches stand on. */
  private static double withOpenings(@Nullable Openings openings, GeometricTruth truth) {
    double areaM2 = truth.net().outerAreaM2();
    if (openings == null || areaM2 == 0) {
      return areaM2;
    }
    double surfaceM2 = areaM2;
    for (double openingM2 : truth.axes().footsM2()) {
      areaM2 +=
          openings.deducts(openingM2, surfaceM2) ? openings.largeFactor() * openingM2 : openingM2;
    }
    return areaM2;
  }

  /** Cross-section of the insulation as the rule reckons it, times length; pi (D + k t) k t L. */
  private static double volumeM3(Rule rule, GeometricTruth truth) {
    if (rule.along() == Along.ITSELF) {
      return truth.net().volumeM3();
    }
    double thicknessM = or(rule.thicknessFactor(), 1) * truth.thicknessM();
    return Envelope.around(truth.section(), thicknessM).ringAreaM2() * lengthM(rule, truth);
  }

  private static double or(@Nullable Double value, double otherwise) {
    return value == null ? otherwise : value;
  }

  /** Total of a quantity, rounded as the method says. */
  public double total(Quantity quantity) {
    return rows.stream().filter(r -> r.rule().of() == quantity).mapToDouble(Row::quantity).sum();
  }

  /** The total of a quantity before rounding. */
  double exact(Quantity quantity) {
    return sums.stream().filter(s -> s.quantity() == quantity).mapToDouble(FormSum::value).sum();
  }

  /** What all elements of a form contribute; nothing, not measured, where no rule fits them. */
  FormSum sum(Quantity quantity, Form form) {
    return sums.stream()
        .filter(sum -> sum.quantity() == quantity && sum.form() == form)
        .findFirst()
        .orElse(new FormSum(quantity, form, 0, List.of("not measured")));
  }
}
