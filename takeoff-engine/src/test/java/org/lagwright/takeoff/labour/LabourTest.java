package org.lagwright.takeoff.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffFinding;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.Trace;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.SourceStatus;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/** Hours through the takeoff as a whole. */
class LabourTest {

  private static final double TINY = 1e-9;

  @TempDir Path folder;

  @Test
  void hoursAreRateTimesLengthTimesFactors() throws IOException {
    Labour labour = labour(norms("tube,h/m,0.5"), chilled(1, 4));

    assertThat(labour.items()).hasSize(1);
    assertThat(labour.hours()).isCloseTo(0.5 * 4 * 1.15, within(TINY));
    assertThat(labour.items().get(0).factors()).extracting(LabourFactor::id).contains("cold");
  }

  @Test
  void rowsOfTheUserReplaceAllRowsOfTheirItemAndNoOther() throws IOException {
    Takeoff takeoff =
        takeoff(
            norms("tube,h/m,0.5"),
            chilled(1, 4),
            TestElement.pipe(2, 60.3, 3).inSystem("LTHW flow", "HEATING"));
    List<Norm> used = takeoff.labour().items().stream().map(LabourItem::norm).toList();

    assertThat(used).extracting(Norm::item).containsExactlyInAnyOrder("tube", "section");
    assertThat(used)
        .filteredOn(norm -> norm.item().equals("tube"))
        .allMatch(norm -> norm.status() == SourceStatus.USER)
        .allMatch(norm -> norm.source().contains("norms.csv, row 2"));
    assertThat(takeoff.packs()).extracting("id").contains("labour", "labour-norms");
  }

  @Test
  void shippedDefaultsOfCommonPracticeAreCalledUnverified() {
    Labour labour = Takeoff.of(List.of(TestElement.model(chilled(1, 4))), defaults()).labour();

    assertThat(labour.norms().norms())
        .filteredOn(norm -> norm.status() == SourceStatus.COMMON_PRACTICE)
        .hasSizeGreaterThan(20)
        .allMatch(norm -> norm.status().shown().startsWith("unverified: "));
    assertThat(labour.items().get(0).norm().status().shown()).startsWith("unverified: ");
  }

  @Test
  void whatNoNormCoversIsAFindingAndHasNoHours() throws IOException {
    Path settings = normTable("item,upToMm,unit,value", "tube,30,h/m,0.5");
    Takeoff takeoff = takeoff(settings, chilled(1, 4));

    assertThat(takeoff.labour().hours()).isZero();
    assertThat(takeoff.findings())
        .filteredOn(f -> f.code() == TakeoffFinding.LABOUR_NORM_MISSING)
        .singleElement()
        .extracting(Finding::message)
        .asString()
        .contains("60.3 mm")
        .contains("tube of fef_nbr");
  }

  @ParameterizedTest
  @CsvSource({"2.0, 1", "3.04, 1", "3.05, 1.10", "5.0, 1.20", "6.2, 1.25", "50, 1.55"})
  void theFactorForHeightIsThatOfTheHighestBandReached(double heightM, double factor)
      throws IOException {
    Path settings = norms("tube,h/m,1");
    Labour labour = labour(settings, chilled(1, 1).in("Level 1", 4, "Hall", heightM));

    assertThat(labour.hours()).isCloseTo(1.15 * factor, within(TINY));
  }

  @Test
  void anUnknownHeightIsSaidOnceForTheFile() throws IOException {
    Takeoff takeoff = takeoff(norms("tube,h/m,1"), chilled(1, 1), chilled(2, 1));

    assertThat(takeoff.findings())
        .filteredOn(f -> f.code() == TakeoffFinding.HEIGHT_UNKNOWN)
        .singleElement()
        .extracting(f -> f.values().get(0))
        .isEqualTo("2");
  }

  @Test
  void outdoorsAndProjectFactorMultiply() throws IOException {
    Path settings = settings("labour: {norms: norms.csv, factors: {project: 1.5, outdoor: 1.3}}\n");
    norms("tube,h/m,1");

    assertThat(labour(settings, chilled(1, 2).at("Roof", true)).hours())
        .isCloseTo(2 * 1.3 * 1.15 * 1.5, within(TINY));
  }

  @Test
  void aFurtherLayerCostsItsShareOfANormThere() throws IOException {
    Path settings =
        settings("labour: {norms: norms.csv}\nthicknessesMm: {chilled-water-flow: 70}\n");
    normTable("item,unit,value", "tube,h/m2,1", "sheet,h/m2,1");
    Labour labour = labour(settings, chilled(1, 2));

    assertThat(labour.items()).hasSize(2);
    LabourItem first = labour.items().get(0);
    LabourItem second = labour.items().get(1);
    double outerM2PerM = Math.PI * (0.0603 + 2 * first.layer().thicknessM());
    double farther =
        Math.PI * (0.0603 + 2 * first.layer().thicknessM() + 2 * second.layer().thicknessM());
    assertThat(first.hours()).isCloseTo(2 * outerM2PerM * 1.15, within(1e-5));
    assertThat(second.hours()).isCloseTo(2 * farther * 1.15 * 0.7, within(1e-5));
  }

  @Test
  void aJacketHasItsOwnHoursByAreaAndItsOwnStep() throws IOException {
    norms("tube,h/m,1", "jacket,h/m2,0.5");
    Path settings =
        settings(
            "labour: {norms: norms.csv}\norder: {hangers: none, jackets: [{jacket: metal}]}\n");
    Takeoff takeoff = takeoff(settings, chilled(1, 2));
    double areaM2 = takeoff.totals().outerAreaM2();

    assertThat(takeoff.labour().hours(TradeStep.JACKET))
        .isCloseTo(areaM2 * 0.5 * 1.15, within(TINY));
    assertThat(takeoff.labour().hours()).isCloseTo((2 + areaM2 * 0.5) * 1.15, within(TINY));
  }

  @Test
  void aNormThatHoldsTheJacketGetsNoneOnTop() throws IOException {
    Path settings = settings("order: {hangers: none, jackets: [{jacket: metal}]}\n");
    Labour labour = labour(settings, TestElement.pipe(1, 60.3, 3).inSystem("LTHW flow", "HEATING"));

    assertThat(labour.items()).extracting(item -> item.norm().id()).containsExactly("section-clad");
  }

  @Test
  void eachHangerCostsAFootOfItsPipe() throws IOException {
    norms("tube,h/m,1", "section,h/m,2");
    Path settings = settings("labour: {norms: norms.csv}\norder: {hangers: us-steel-water}\n");
    Labour shown =
        labour(
            settings, chilled(1, 6).end(0, 0, -1, 0).end(6, 0, 1, 0), hanger(11, 1), hanger(12, 3));
    // MSS SP-69: 2 in steel with water each 10 ft; 6 m over 3.048 m are 2, and one more
    Labour spaced = labour(settings, TestElement.pipe(1, 60.3, 6).inSystem("LTHW flow", "HEATING"));

    assertThat(shown.hours()).isCloseTo((6 + 2 * 0.3048) * 1.15, within(TINY));
    assertThat(shown.items())
        .filteredOn(item -> item.unit().equals("pcs"))
        .singleElement()
        .satisfies(item -> assertThat(item.quantity()).isCloseTo(2, within(TINY)))
        .satisfies(item -> assertThat(item.equivalent()).extracting(Norm::id).isEqualTo("hanger"));
    assertThat(spaced.hours()).isCloseTo((6 + 3 * 0.3048) * 2, within(TINY));
  }

  @Test
  void hangersMayHaveHoursOfTheirOwnAndCountNoneWhereTheSettingsSayNone() throws IOException {
    norms("tube,h/m,1", "hanger,h/pc,0.5");
    Path counted = settings("labour: {norms: norms.csv}\norder: {hangers: us-steel-water}\n");
    double hours = labour(counted, chilled(1, 6)).hours();
    Path none = settings("labour: {norms: norms.csv}\norder: {hangers: none}\n");

    assertThat(hours).isCloseTo((6 + 3 * 0.5) * 1.15, within(TINY));
    assertThat(labour(none, chilled(1, 6)).hours()).isCloseTo(6 * 1.15, within(TINY));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"jacket-fitting, 1.33", "jacket-box, 1.5"})
  void jacketsOverFittingsAndBoxesCostMoreThanOverStraights(String norm, double factor)
      throws IOException {
    norms("tube,h/m,1", "jacket,h/m2,0.5");
    Path settings =
        settings(
            "labour: {norms: norms.csv}\norder: {hangers: none, jackets: [{jacket: metal}]}\n");
    TestElement element =
        norm.equals("jacket-box")
            ? valve(1)
            : TestElement.fitting(1, Form.BEND, 60.3).bend(90, 0.08);
    Takeoff takeoff = takeoff(settings, element.inSystem("CHWS"));

    assertThat(takeoff.labour().hours(TradeStep.JACKET))
        .isCloseTo(takeoff.totals().outerAreaM2() * 0.5 * factor * 1.15, within(TINY));
    assertThat(takeoff.labour().normsInUse())
        .filteredOn(used -> used.id().equals(norm))
        .singleElement()
        .satisfies(used -> assertThat(used.status().shown()).startsWith("unverified: "));
  }

  @Test
  void aFlangePairCostsThreeFeetOfItsPipe() throws IOException {
    Labour labour =
        labour(norms("tube,h/m,1"), TestElement.fitting(1, Form.FLANGE, 114.3).inSystem("CHWS"));

    assertThat(labour.hours()).isCloseTo(0.9144 * 1.15, within(TINY));
  }

  @Test
  void hoursPerPieceOfTheUserNeedNoRateOfTheStraight() throws IOException {
    Labour labour =
        labour(norms("valve-body,h/pc,0.8"), valve(1).inSystem("CHWS"), valve(2).inSystem("CHWS"));

    assertThat(labour.items()).hasSize(1);
    assertThat(labour.hours()).isCloseTo(2 * 0.8 * 1.15, within(TINY));
  }

  @Test
  void fittingsOfDuctsGoByTheirArea() {
    TestElement bend =
        TestElement.of(1, Kind.DUCT_FITTING, Form.BEND)
            .section(new Section.Rectangular(0.4, 0.3))
            .bend(90, 0.4)
            .inSystem("Supply air");
    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(bend)), defaults());
    LabourItem item = takeoff.labour().items().get(0);
    double areaM2 = takeoff.lines().get(0).outerAreaM2();

    assertThat(item.unit()).isEqualTo("m2");
    assertThat(item.hours()).isCloseTo(areaM2 * 1.5 * 0.45 * 1.15, within(TINY));
  }

  @Test
  void otherRunsWithinReachMakeItCrowded() throws IOException {
    Path settings = norms("tube,h/m,1");
    List<TestElement> rack = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      rack.add(chilled(i + 1, 6).along(0, 0.2 * i, 6));
    }
    Labour crowded = labour(settings, rack.toArray(TestElement[]::new));
    Labour apart = labour(settings, chilled(1, 6).along(0, 0, 6), chilled(2, 6).along(0, 5, 6));

    // 60.3 mm pipes 200 mm apart: clear distances 140 and 340 mm, so the middle ones have two
    assertThat(crowded.items())
        .extracting(item -> item.factorsInWords() + " " + item.quantity())
        .containsExactlyInAnyOrder("cold, project 12.0", "crowded, cold, project 18.0");
    assertThat(apart.items())
        .singleElement()
        .extracting(LabourItem::factorsInWords)
        .isEqualTo("cold, project");
  }

  @Test
  void piecesOfOneRunAndRunsThatMeetItAreNoNeighbours() {
    List<MepElement> run = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      run.add(chilled(i + 1, 0.05).along(0.05 * i, 0, 0.05).joinedTo(i + 2).build());
    }
    Neighbours neighbours = new Neighbours(run, 0.3);

    assertThat(neighbours.count(TestElement.key(4))).isZero();
  }

  @Test
  void hoursAddUpByAreaServiceAndStep() throws IOException {
    Labour labour =
        labour(
            norms("tube,h/m,1"),
            chilled(1, 3).in("Level 1", 4, "Hall", 2),
            chilled(2, 2).in("Level 0", 0, "Plant", 2),
            TestElement.pipe(3, 60.3, 3)
                .inSystem("LTHW flow", "HEATING")
                .in("Level 0", 0, "Plant", 2));

    assertThat(labour.hoursByArea().keySet())
        .extracting(WorkArea::inWords)
        .containsExactly("Level 0, Plant", "Level 1, Hall");
    assertThat(sum(labour.hoursByArea())).isCloseTo(labour.hours(), within(TINY));
    assertThat(sum(labour.hoursByService())).isCloseTo(labour.hours(), within(TINY));
    assertThat(Arrays.stream(TradeStep.values()).mapToDouble(labour::hours).sum())
        .isCloseTo(labour.hours(), within(TINY));
    assertThat(labour.hours(TradeStep.GLUE_AND_SEAL)).isPositive();
  }

  @Test
  void theHoursOfAnElementStandInItsTrace() throws IOException {
    Takeoff takeoff = takeoff(norms("tube,h/m,0.5"), chilled(1, 4));

    assertThat(takeoff.elements().get(0).trace().steps())
        .filteredOn(step -> step.what().equals("labour"))
        .singleElement()
        .isEqualTo(
            new Trace.Computed(
                "labour",
                "2.300 h",
                "4.000 m x 0.5 h/m (tube-row-2, given by the user, not checked) x cold 1.150"
                    + " x project 1.000"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "item,unit,value;tuba,h/m,1 | norms.csv:2:1: 'tuba' is no item. Known: ",
        "item,unit,value;tube,m/pc,1 | norms.csv:2:2: 'm/pc' is no unit for tube. Known: h/m, h/m2,",
        "item,unit,value;bend,h/m,1 | norms.csv:2:2: 'h/m' is no unit for bend.",
        "item,unit,value;hanger,m2/m2,1 | norms.csv:2:2: 'm2/m2' is no unit for hanger. Known: h/pc,",
        "item,unit,value;jacket-box,h/m2,1 | norms.csv:2:2: 'h/m2' is no unit for jacket-box.",
        "item,unit,value;tube,h/m,0 | norms.csv:2:3: it must be above 0.",
        "item,unit,value;tube,h/m,fast | norms.csv:2:3: 'fast' is no number.",
        "item,unit,value;tube,h/m, | norms.csv:2:3: 'value' is empty.",
        "item,unit,value,material;tube,h/m,1,hay | norms.csv:2:4: 'hay' is no material. Known: ",
        "item,unit,value,on;tube,h/m,1,wall | norms.csv:2:4: 'wall' is no on. Known: duct, pipe.",
        "item,unit,value,status;tube,h/m,1,sure | norms.csv:2:4: 'sure' is no status.",
        "item,unit,value,id;tube,h/m,1,a;tube,h/m,1,a | norms.csv:3:4: the id 'a' stands twice.",
        "item,unit;tube,h/m | norms.csv:1: the column 'value' is missing.",
        "item,unit,value,rate;tube,h/m,1,2 | norms.csv:1:4: unknown column 'rate'."
      })
  void aWrongNormIsNamedWithFileLineAndColumn(String table, String message) throws IOException {
    Path settings = normTable(table.split(";"));

    assertThatThrownBy(() -> SettingsReader.read(settings))
        .isInstanceOf(PackException.class)
        .hasMessageContaining(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "labour: {factors: {roof: 2}} | :1:20: 'roof' is no factor of labour. Known: cold, crowded,",
        "labour: {factors: {outdoor: 0}} | :1:20: factors of outdoor is impossible: 0.0 is not between",
        "labour: {norms: none.csv} | none.csv: no such file.",
        "labour: {rates: x.csv} | :1:10: unknown key 'rates'."
      })
  void aWrongSettingOfLabourIsNamed(String text, String message) throws IOException {
    Path settings = settings(text + "\n");

    assertThatThrownBy(() -> SettingsReader.read(settings))
        .isInstanceOf(PackException.class)
        .hasMessageContaining(message);
  }

  private static double sum(Map<?, Double> hours) {
    return hours.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  private static TestElement chilled(long step, double lengthM) {
    return TestElement.pipe(step, 60.3, lengthM).inSystem("CHWS");
  }

  private static TestElement hanger(long step, double x) {
    return TestElement.of(step, Kind.OTHER, Form.UNKNOWN).named("Hanger " + step).middle(x, 0.05);
  }

  private static TestElement valve(long step) {
    return TestElement.of(step, Kind.VALVE, Form.VALVE_BODY).round(60.3).length(0.15);
  }

  private static Settings defaults() {
    return SettingsReader.defaults();
  }

  /** Settings that count no hangers, unless they say something of the order themselves. */
  private Path settings(String text) throws IOException {
    String order = text.contains("order:") ? "" : "order: {hangers: none}\n";
    return Files.writeString(folder.resolve("settings.yaml"), text + order);
  }

  /** Settings with own norms; each row is item, unit, value. */
  private Path norms(String... rows) throws IOException {
    List<String> lines = new ArrayList<>(List.of("item,unit,value"));
    lines.addAll(List.of(rows));
    return normTable(lines.toArray(String[]::new));
  }

  private Path normTable(String... lines) throws IOException {
    Files.writeString(folder.resolve("norms.csv"), String.join("\n", lines) + "\n");
    Path settings = folder.resolve("settings.yaml");
    return Files.exists(settings) ? settings : settings("labour: {norms: norms.csv}\n");
  }

  private static Labour labour(Path settings, TestElement... elements) {
    return takeoff(settings, elements).labour();
  }

  private static Takeoff takeoff(Path settings, TestElement... elements) {
    return Takeoff.of(List.of(TestElement.model(elements)), SettingsReader.read(settings));
  }
}
