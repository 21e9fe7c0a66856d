package org.lagwright.takeoff.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.settings.SettingsReader;

/**
 * Heating pipes of 60.3 mm whose energy rule asks for 39.2 mm of glass wool, of which 40 mm is
 * bought.
 */
class CoverageTest {

  private static Coverage coverage(TestElement... elements) {
    return Coverage.of(Takeoff.of(List.of(TestElement.model(elements)), SettingsReader.defaults()));
  }

  private static TestElement heating(long step) {
    return TestElement.pipe(step, 60.3, 10).inSystem("Heating flow").at("Ground floor", null);
  }

  private static TestElement insulated(
      long step, @Nullable Double thicknessM, @Nullable String material, double share) {
    return heating(step).insulated(thicknessM, material, share, 100 + step);
  }

  private static CoverageSum sum(Coverage coverage, CoverageStatus status) {
    return Objects.requireNonNull(coverage.byStatus().get(status));
  }

  private static ElementCoverage only(TestElement element) {
    return coverage(element).elements().get(0);
  }

  @ParameterizedTest
  @CsvSource({"0, COVERED", "-0.0009, COVERED", "-0.0011, TOO_THIN", "-0.02, TOO_THIN"})
  void whatIsThinnerThanRequiredByMoreThanAMillimetreIsTooThin(double offM, CoverageStatus status) {
    double requiredM = only(heating(1)).requiredM();

    assertThat(only(insulated(1, requiredM + offM, "mineral wool", 1)).status()).isEqualTo(status);
  }

  @ParameterizedTest
  @CsvSource({"0, COVERED", "0.0049, COVERED", "0.0051, TOO_THICK"})
  void whatIsThickerThanBoughtByMoreThanFiveMillimetresIsTooThick(
      double overM, CoverageStatus status) {
    double boughtM = only(heating(1)).boughtM();

    assertThat(only(insulated(1, boughtM + overM, "mineral wool", 1)).status()).isEqualTo(status);
  }

  @ParameterizedTest
  @CsvSource({
    "Glaswolle 40 kg/m3, COVERED",
    "LAINE MINERALE, COVERED",
    "Closed cell rubber, WRONG_MATERIAL",
    "Elastomerschaum, WRONG_MATERIAL",
    "PUR, WRONG_MATERIAL",
    "Type 3, COVERED"
  })
  void materialOfAnotherFamilyIsWrongAndAnUnknownNameSaysNothing(
      String material, CoverageStatus status) {
    assertThat(only(insulated(1, 0.040, material, 1)).status()).isEqualTo(status);
  }

  @Test
  void nothingShownIsBareAndAThicknessNotShownIsUnknown() {
    assertThat(only(heating(1)).status()).isEqualTo(CoverageStatus.BARE);
    assertThat(only(insulated(1, null, null, 1)).status()).isEqualTo(CoverageStatus.UNKNOWN);
  }

  @Test
  void elementLeftOutIsUnknownAndCountsNoArea() {
    ElementCoverage unknown = only(TestElement.pipe(1, 60.3, 10).inSystem("System 7"));

    assertThat(unknown.status()).isEqualTo(CoverageStatus.UNKNOWN);
    assertThat(unknown.requiredM()).isNaN();
    assertThat(unknown.missingM2()).isZero();
  }

  @Test
  void lengthOfWhatIsLeftOutCountsAsUnknownAndItsAreaIsNotKnown() {
    Coverage coverage =
        coverage(
            insulated(1, 0.040, "mineral wool", 1),
            TestElement.pipe(2, 60.3, 30).inSystem("System 7"),
            TestElement.fitting(3, Form.TEE, 60.3).length(0.2).inSystem("System 7"));

    assertThat(sum(coverage, CoverageStatus.UNKNOWN)).isEqualTo(new CoverageSum(2, 30, 0));
    assertThat(sum(coverage, CoverageStatus.COVERED).lengthM()).isCloseTo(10, within(1e-9));
    assertThat(coverage.withoutArea()).isEqualTo(2);
    assertThat(coverage.coveredPct()).isCloseTo(100.0 / 3, within(1e-9));
  }

  @Test
  void whatIsLeftOutStandsUnderItsServiceWhereThatIsKnown() {
    TestElement chiller = TestElement.of(1, Kind.EQUIPMENT, Form.APPARATUS).inSystem("CHWS");
    TestElement liquid = TestElement.pipe(1, 15, 7).inSystem("Refrigerant liquid");
    TestElement untold = TestElement.pipe(1, 60.3, 10).inSystem("System 7");

    assertThat(only(chiller).group().service()).isEqualTo("chilled water flow");
    assertThat(only(liquid).group().service()).isEqualTo("refrigerant liquid");
    assertThat(only(untold).group().service()).isEqualTo("not known");
  }

  @Test
  void whatIsOutOfScopeIsNotAskedForInsulation() {
    assertThat(coverage(TestElement.pipe(1, 60.3, 10).inSystem("Sprinkler")).elements()).isEmpty();
  }

  @Test
  void insulationOnAPartCountsThereAndIsBareElsewhere() {
    Coverage coverage = coverage(insulated(1, 0.040, "mineral wool", 0.6));

    assertThat(coverage.elements().get(0).status()).isEqualTo(CoverageStatus.BARE);
    assertThat(sum(coverage, CoverageStatus.COVERED).lengthM()).isCloseTo(6, within(1e-9));
    assertThat(sum(coverage, CoverageStatus.BARE).lengthM()).isCloseTo(4, within(1e-9));
    assertThat(sum(coverage, CoverageStatus.BARE).elements()).isEqualTo(1);
    assertThat(coverage.elements().get(0).missingM2())
        .isCloseTo(sum(coverage, CoverageStatus.BARE).areaM2(), within(1e-9));
  }

  @Test
  void sumsByStatusAreThoseOfAllElements() {
    Coverage coverage =
        coverage(
            heating(1),
            insulated(2, 0.040, "mineral wool", 1),
            insulated(3, 0.020, null, 0.5),
            insulated(4, 0.100, null, 1),
            insulated(5, null, null, 1),
            TestElement.pipe(6, 60.3, 10).inSystem("System 7"));

    CoverageSum all =
        coverage.byStatus().values().stream().reduce(CoverageSum.NONE, CoverageSum::plus);
    assertThat(all.elements()).isEqualTo(6);
    assertThat(all.lengthM()).isCloseTo(60, within(1e-9));
    assertThat(all.areaM2())
        .isCloseTo(
            coverage.elements().stream().mapToDouble(ElementCoverage::areaM2).sum(), within(1e-9));
  }

  @Test
  void theWorstComesFirstAndWhatIsCoveredIsNotAmongThem() {
    Coverage coverage =
        coverage(insulated(1, 0.020, null, 1), heating(2), insulated(3, 0.040, "mineral wool", 1));

    assertThat(coverage.worst()).extracting(e -> e.key().step()).containsExactly(2L, 1L);
  }

  @Test
  void coveredShareIsTheSmallerOfThatByElementsAndThatByArea() {
    TestElement small = TestElement.pipe(1, 60.3, 1).inSystem("Heating flow");
    Coverage coverage = coverage(small, insulated(2, 0.040, "mineral wool", 1));

    assertThat(coverage.coveredPct()).isEqualTo(50);
    assertThat(coverage(insulated(2, 0.040, null, 1)).coveredPct()).isEqualTo(100);
    assertThat(coverage(new TestElement[0]).coveredPct()).isEqualTo(100);
  }

  @Test
  void everyMaterialFamilyOfTheWordsIsOneOfThePacks() {
    assertThat(new MaterialWords().knownFamilies())
        .isNotEmpty()
        .isSubsetOf(MaterialPack.bundled().ids());
  }
}
