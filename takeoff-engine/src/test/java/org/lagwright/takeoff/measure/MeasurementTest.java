package org.lagwright.takeoff.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.fitting.Axes;
import org.lagwright.takeoff.measure.MeasurementMethod.Quantity;

class MeasurementTest {

  static List<ReferenceRows.Row> rules() {
    return ReferenceRows.read(MeasurementTest.class, "rules.csv");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void formulaOfTheMethodComesOut(ReferenceRows.Row row) {
    Form form =
        Stream.of(Form.values())
            .filter(f -> f.label().equals(row.text("form")))
            .findFirst()
            .orElseThrow();
    GeometricTruth truth = pipe(1, form, row.number("D"), row.number("t"), 1);
    double expected = row.number("expected");

    assertThat(measured(row.text("method"), truth).total(Quantity.valueOf(row.text("quantity"))))
        .isCloseTo(expected, within(row.tolerance(expected)));
  }

  /** Check IS1: the circle of 600 mm, pi 0.6^2 / 4 = 0.282743338823081 m2. */
  @Test
  void openingsUpToACircleOf600MillimetresAreNotDeducted() {
    double circleM2 = 0.282743338823081;

    assertThat(measured("is-14164", tee(2.0, circleM2)).total(Quantity.AREA))
        .isCloseTo(2 + circleM2, within(1e-12));
    assertThat(measured("is-14164", tee(2.0, circleM2 + 1e-6)).total(Quantity.AREA))
        .isCloseTo(2 + 2 * (circleM2 + 1e-6), within(1e-12));
    assertThat(Math.PI * 0.6 * 0.6 / 4).isCloseTo(circleM2, within(1e-15));
  }

  @Test
  void openingsAreDeductedByTheirShareWhereTheMethodSaysSo() {
    assertThat(measured("ca-trade", tee(2.0, 0.09)).total(Quantity.AREA))
        .isCloseTo(2.09, within(1e-12));
    assertThat(measured("ca-trade", tee(2.0, 0.11)).total(Quantity.AREA))
        .isCloseTo(2.0, within(1e-12));
  }

  @Test
  void wholeNumbersRoundUpFromFiftyOneHundredths() {
    assertThat(measured("za-a", pipe(1, Form.STRAIGHT, 0.06, 0.02, 4.50)).total(Quantity.LENGTH))
        .isEqualTo(4);
    assertThat(measured("za-a", pipe(1, Form.STRAIGHT, 0.06, 0.02, 4.51)).total(Quantity.LENGTH))
        .isEqualTo(5);
  }

  @Test
  void reducersCountInTheLargerAndTeesInTheSmallerSize() {
    GeometricTruth reducer = withEnds(pipe(1, Form.REDUCER, 0.0889, 0.02, 0.1), 0.0889, 0.0603);
    GeometricTruth tee = withEnds(pipe(2, Form.TEE, 0.0889, 0.02, 0.3), 0.0889, 0.0889, 0.0603);
    Measurement measurement = Measurement.of(method("za-a"), List.of(reducer, tee));

    assertThat(measurement.rows())
        .filteredOn(row -> row.rule().of() == Quantity.PIECES)
        .extracting(Measurement.Row::size)
        .containsExactly("88.9 mm", "60.3 mm");
  }

  @Test
  void shortInterruptionsAreMeasuredOverAndLongOnesAreNot() {
    GeometricTruth pipe = pipe(1, Form.STRAIGHT, 0.06, 0.02, 4);

    assertThat(length("de-metre-and-pieces", pipe, gap(2, 1.0))).isCloseTo(5, within(1e-12));
    assertThat(length("de-metre-and-pieces", pipe, gap(2, 1.01))).isCloseTo(4, within(1e-12));
    assertThat(length("net", pipe, gap(2, 0.5))).isCloseTo(4, within(1e-12));
    assertThat(length("over-measured", pipe, gap(2, 0.5))).isCloseTo(4, within(1e-12));
  }

  @Test
  void ductFittingsMeasureAtLeastOneSquareMetre() {
    GeometricTruth small =
        new GeometricTruth(
            new ElementKey(0, 1),
            "L001",
            Form.BEND,
            false,
            true,
            false,
            new Section.Rectangular(0.2, 0.1),
            List.of(),
            0.02,
            Math.PI / 2,
            new Quantities(0, 1, 0.2, 0.004),
            new Axes(0.3, 0.4, List.of()));

    assertThat(measured("duct-girth-length", small).total(Quantity.AREA)).isEqualTo(1);
  }

  @Test
  void netAndOverMeasuredDifferByTheFittingsAlone() {
    List<GeometricTruth> truths =
        List.of(
            pipe(1, Form.STRAIGHT, 0.1143, 0.03, 4.2),
            pipe(2, Form.BEND, 0.1143, 0.03, 0.24),
            pipe(3, Form.STRAIGHT, 0.1143, 0.03, 1.8),
            pipe(4, Form.VALVE_BODY, 0.1143, 0.03, 0.19));
    Reconciliation why =
        Reconciliation.of(
            Measurement.of(method("net"), truths), Measurement.of(method("over-measured"), truths));

    assertThat(why.rows())
        .filteredOn(row -> row.quantity() == Quantity.LENGTH)
        .filteredOn(row -> Math.abs(row.difference()) > 1e-12)
        .satisfiesExactlyInAnyOrder(
            row -> {
              assertThat(row.form()).isEqualTo(Form.BEND);
              assertThat(row.difference()).isCloseTo(0.24, within(1e-12));
              assertThat(row.why()).contains("not measured").contains("through fittings");
            },
            row -> {
              assertThat(row.form()).isEqualTo(Form.VALVE_BODY);
              assertThat(row.difference()).isCloseTo(0.19, within(1e-12));
            });
    assertThat(why.rows())
        .filteredOn(row -> row.quantity() == Quantity.PIECES)
        .allSatisfy(row -> assertThat(row.difference()).isZero());
  }

  @Test
  void anyTwoMethodsReconcileOnAnyModel() {
    long seed = 20_240_501;
    Random random = new Random(seed);
    List<GeometricTruth> truths = new ArrayList<>();
    Form[] forms = Form.values();
    for (int i = 0; i < 300; i++) {
      Form form = forms[random.nextInt(forms.length)];
      double diameterM = 0.02 + random.nextDouble() / 2;
      truths.add(
          i % 10 == 0
              ? tee(2, random.nextDouble())
              : pipe(i, form, diameterM, 0.01 + random.nextDouble() / 20, 3));
    }
    List<Measurement> all =
        MeasurementPack.bundled().methods().stream()
            .map(method -> Measurement.of(method, truths))
            .toList();
    for (Measurement one : all) {
      for (Measurement other : all) {
        Reconciliation why = Reconciliation.of(one, other);
        for (Quantity quantity : Quantity.values()) {
          double explained =
              why.rows().stream()
                  .filter(row -> row.quantity() == quantity)
                  .mapToDouble(Reconciliation.Row::difference)
                  .sum();
          assertThat(explained)
              .as("seed %d, %s, %s", seed, one.method().id(), other.method().id())
              .isCloseTo(other.total(quantity) - one.total(quantity), within(1e-6));
        }
      }
    }
  }

  @Test
  void methodsThatNobodyReadSayThatTheyAreUnverified() {
    assertThat(MeasurementPack.bundled().methods())
        .hasSizeGreaterThan(12)
        .filteredOn(m -> m.source().contains("memory") || m.source().contains("common practice"))
        .hasSizeGreaterThan(3)
        .allSatisfy(m -> assertThat(m.status().shown()).startsWith("unverified"));
  }

  private static double length(String id, GeometricTruth... truths) {
    return measured(id, truths).total(Quantity.LENGTH);
  }

  private static Measurement measured(String id, GeometricTruth... truths) {
    return Measurement.of(method(id), List.of(truths));
  }

  private static MeasurementMethod method(String id) {
    return MeasurementPack.bundled().methods().stream()
        .filter(method -> method.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** A piece of pipe with exact surface and volume; a bend turns by 90 degrees. */
  private static GeometricTruth pipe(
      long step, Form form, double diameterM, double thicknessM, double lengthM) {
    boolean segment = form == Form.STRAIGHT || form == Form.FLEXIBLE;
    Section section = new Section.Round(diameterM);
    Envelope envelope = Envelope.around(section, thicknessM);
    return new GeometricTruth(
        new ElementKey(0, step),
        "L001",
        form,
        segment,
        false,
        false,
        section,
        List.of(),
        thicknessM,
        form == Form.BEND ? Math.PI / 2 : 0,
        new Quantities(
            segment ? lengthM : 0,
            segment ? 0 : 1,
            envelope.outerPerimeterM() * lengthM,
            envelope.ringAreaM2() * lengthM),
        new Axes(lengthM, lengthM, List.of()));
  }

  private static GeometricTruth tee(double areaM2, double footM2) {
    GeometricTruth pipe = pipe(1, Form.TEE, 1, 0.05, 2);
    return new GeometricTruth(
        pipe.element(),
        pipe.lineId(),
        pipe.form(),
        false,
        false,
        false,
        pipe.section(),
        List.of(),
        pipe.thicknessM(),
        0,
        new Quantities(0, 1, areaM2, 0.1),
        new Axes(2, 2, List.of(footM2)));
  }

  private static GeometricTruth gap(long step, double lengthM) {
    GeometricTruth pipe = pipe(step, Form.STRAIGHT, 0.06, 0, lengthM);
    return new GeometricTruth(
        pipe.element(),
        "L001",
        Form.VALVE_BODY,
        false,
        false,
        true,
        pipe.section(),
        List.of(),
        0,
        0,
        Quantities.NONE,
        pipe.axes());
  }

  private static GeometricTruth withEnds(GeometricTruth truth, double... diametersM) {
    List<Section> ends = new ArrayList<>();
    for (double diameterM : diametersM) {
      ends.add(new Section.Round(diameterM));
    }
    return new GeometricTruth(
        truth.element(),
        truth.lineId(),
        truth.form(),
        truth.segment(),
        truth.duct(),
        truth.gap(),
        truth.section(),
        ends,
        truth.thicknessM(),
        truth.angleRad(),
        truth.net(),
        truth.axes());
  }
}
