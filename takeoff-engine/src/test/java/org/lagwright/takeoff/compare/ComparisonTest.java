package org.lagwright.takeoff.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.TestSettings;
import org.lagwright.takeoff.price.Price;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

class ComparisonTest {

  @TempDir Path folder;

  private static Takeoff takeoff(TestElement... elements) {
    return Takeoff.of(List.of(TestElement.model(elements)), SettingsReader.defaults());
  }

  private static Comparison compare(TestElement before, TestElement now) {
    return Comparison.of(takeoff(before), takeoff(now));
  }

  private static Set<Change> changes(TestElement before, TestElement now) {
    List<ElementChange> changes = compare(before, now).changes();
    assertThat(changes).hasSize(1);
    return changes.get(0).changes();
  }

  private static TestElement pipe(long step) {
    return pipe(step, 60.3, 5);
  }

  private static TestElement pipe(long step, double outsideMm, double lengthM) {
    return TestElement.pipe(step, outsideMm, lengthM).inSystem("CHW flow").middle(10.0 * step, 5);
  }

  @Test
  void theSameElementIsAsItWas() {
    assertThat(changes(pipe(1), pipe(1))).isEmpty();
  }

  @Test
  void eachKindOfChangeIsTold() {
    assertThat(changes(pipe(1), pipe(1).middle(10.02, 5))).containsExactly(Change.MOVED);
    assertThat(changes(pipe(1), pipe(1).middle(10.005, 5))).isEmpty();
    assertThat(changes(pipe(1), pipe(1, 76.1, 5)))
        .contains(Change.RESIZED)
        .doesNotContain(Change.LENGTH_CHANGED, Change.REISSUED);
    assertThat(changes(pipe(1), pipe(1, 60.3, 5.2))).containsExactly(Change.LENGTH_CHANGED);
  }

  @Test
  void anotherServiceAndWhatFollowsFromItAreTold() {
    TestElement heating = TestElement.pipe(1, 60.3, 5).inSystem("Heating flow").middle(10, 5);
    TestElement gas = TestElement.pipe(1, 60.3, 5).inSystem("Natural gas").middle(10, 5);

    assertThat(changes(pipe(1), heating))
        .contains(Change.RESERVICED, Change.THICKNESS_CHANGED, Change.MATERIAL_CHANGED);
    assertThat(changes(pipe(1), gas)).contains(Change.RESERVICED, Change.SCOPE_CHANGED);
  }

  @Test
  void otherSettingsChangeTheThicknessOnly() {
    Takeoff before = takeoff(pipe(1));
    Takeoff now =
        Takeoff.of(
            List.of(TestElement.model(pipe(1))),
            TestSettings.of("thicknessesMm: {chilled-water-flow: 60}"));

    assertThat(Comparison.of(before, now).changed())
        .singleElement()
        .extracting(ElementChange::changes)
        .isEqualTo(Set.of(Change.THICKNESS_CHANGED));
  }

  @Test
  void anotherIdAtTheSamePlaceIsTheSamePiece() {
    TestElement renamed = TestElement.pipe(2, 60.3, 5).inSystem("CHW flow").middle(10.004, 5);

    assertThat(changes(pipe(1), renamed)).containsExactly(Change.REISSUED);
  }

  @Test
  void anotherIdAtAnotherPlaceOrOfAnotherSizeIsAnotherPiece() {
    assertThat(compare(pipe(1), pipe(2)).counts())
        .containsOnlyKeys(Change.ADDED, Change.REMOVED)
        .containsEntry(Change.ADDED, 1)
        .containsEntry(Change.REMOVED, 1);
    TestElement wider = TestElement.pipe(2, 76.1, 5).inSystem("CHW flow").middle(10, 5);
    assertThat(compare(pipe(1), wider).counts()).containsOnlyKeys(Change.ADDED, Change.REMOVED);
  }

  @Test
  void anotherIdOfTheSameNameIsTheSamePieceWhereNothingHasAPlace() {
    TestElement old = TestElement.pipe(1, 60.3, 5).inSystem("CHW flow").named("Riser 4");
    TestElement young = TestElement.pipe(2, 60.3, 5).inSystem("CHW flow").named("Riser 4");

    assertThat(changes(old, young)).containsExactly(Change.REISSUED);
  }

  @Test
  void anIdThatARevisionRepeatsIsToldByPlace() {
    Takeoff before = takeoff(pipe(1), pipe(2));
    List<TestElement> copies = new ArrayList<>();
    copies.add(TestElement.pipe(8, 60.3, 5).inSystem("CHW flow").middle(10, 5));
    copies.add(TestElement.pipe(9, 60.3, 5).inSystem("CHW flow").middle(20, 5));

    Comparison comparison = Comparison.of(before, takeoff(copies.toArray(TestElement[]::new)));

    assertThat(comparison.changed())
        .hasSize(2)
        .allSatisfy(change -> assertThat(change.changes()).containsExactly(Change.REISSUED));
  }

  @Test
  void whatChangesItsServiceLeavesOneAndJoinsAnother() {
    TestElement heating = TestElement.pipe(1, 60.3, 5).inSystem("Heating flow").middle(10, 5);

    Comparison comparison = compare(pipe(1), heating);

    assertThat(comparison.byService()).containsOnlyKeys("chilled water flow", "heating flow");
    assertThat(comparison.byService().get("chilled water flow"))
        .isNotNull()
        .satisfies(a -> assertThat(a.before().lengthM()).isEqualTo(5))
        .satisfies(a -> assertThat(a.now()).isEqualTo(Amount.NONE));
    assertThat(comparison.difference().lengthM()).isZero();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void differencesAddUpToTheDifferenceOfBothTakeoffs(long seed) {
    Random random = new Random(seed);
    Takeoff before = takeoff(random(random));
    Takeoff now = takeoff(random(random));

    Comparison comparison = Comparison.of(before, now);

    Amount difference = comparison.difference();
    assertThat(difference.lengthM())
        .as("seed %d", seed)
        .isCloseTo(
            now.totals().insulatedLengthM() - before.totals().insulatedLengthM(), within(1e-9));
    assertThat(difference.pieces())
        .isEqualTo(now.totals().insulatedPieces() - before.totals().insulatedPieces());
    assertThat(difference.outerAreaM2())
        .isCloseTo(now.totals().outerAreaM2() - before.totals().outerAreaM2(), within(1e-9));
    assertThat(difference.volumeM3())
        .isCloseTo(now.totals().volumeM3() - before.totals().volumeM3(), within(1e-9));
    assertThat(difference.hours())
        .isCloseTo(now.labour().hours() - before.labour().hours(), within(1e-9));
    Amount byService =
        comparison.byService().values().stream()
            .map(a -> a.now().minus(a.before()))
            .reduce(Amount.NONE, Amount::plus);
    assertThat(byService.outerAreaM2()).isCloseTo(difference.outerAreaM2(), within(1e-9));
    assertThat(comparison.changes())
        .hasSizeBetween(
            Math.max(before.elements().size(), now.elements().size()),
            before.elements().size() + now.elements().size());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void moneyOfTheElementsAndOfTheJobIsTheDifferenceOfBothPrices(long seed) {
    Random random = new Random(seed);
    Comparison comparison = comparePriced(random(random), random(random));

    PriceChange price = Objects.requireNonNull(comparison.price());
    assertThat(price.before().buildUp().netMaterials()).isPositive();
    assertThat(comparison.difference().money() + price.ofTheJob())
        .as("seed %d", seed)
        .isCloseTo(price.difference(), within(1e-6));
    assertThat(price.ofTheJobNow()).isCloseTo(beyondNet(price.now()), within(1e-6));
    assertThat(price.ofTheJobBefore()).isCloseTo(beyondNet(price.before()), within(1e-6));
  }

  /** Rests of packs and waste with their share of overhead and profit, by hand. */
  private static double beyondNet(Price price) {
    return price.buildUp().beyondNet() * 1.12 * 1.08;
  }

  @Test
  void aPipeThatDidNotChangeCostsWhatItCost() {
    TestElement[] before = {pipe(1), pipe(2, 60.3, 3)};
    TestElement[] now = {pipe(1), pipe(2, 60.3, 4)};

    Comparison comparison = comparePriced(before, now);

    ElementChange same = comparison.changes().get(0);
    ElementChange longer = comparison.changes().get(1);
    assertThat(same.changes()).isEmpty();
    assertThat(same.difference().money()).isCloseTo(0, within(1e-9));
    // a metre of tube at 6, and its hours at 40 with 3 % tools; 12 % overhead, 8 % profit
    double perMetre = (6 + longer.difference().hours() * 40 * 1.03) * 1.12 * 1.08;
    assertThat(longer.difference().money()).isCloseTo(perMetre, within(1e-6));
  }

  private Comparison comparePriced(TestElement[] before, TestElement[] now) {
    Settings settings = priced();
    return Comparison.of(
        Takeoff.of(List.of(TestElement.model(before)), settings),
        Takeoff.of(List.of(TestElement.model(now)), settings));
  }

  private Settings priced() {
    try {
      Files.writeString(
          folder.resolve("prices.csv"), "goods,unit,price\ntube,m,6\nsection,m,9\nsheet,m2,20\n");
      return SettingsReader.read(
          Files.writeString(
              folder.resolve("settings.yaml"),
              "price: {list: prices.csv, currency: EUR, labourRatePerH: 40, toolsPct: 3,"
                  + " overheadPct: 12, markupPct: 8, taxPct: 19}\n"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TestElement[] random(Random random) {
    List<String> systems = List.of("CHW flow", "Heating flow", "Natural gas", "System 7");
    List<TestElement> elements = new ArrayList<>();
    for (long step = 1; step <= 30; step++) {
      if (random.nextInt(4) == 0) {
        continue;
      }
      double outsideMm = List.of(21.3, 60.3, 114.3).get(random.nextInt(3));
      TestElement element =
          random.nextInt(3) == 0
              ? TestElement.fitting(step, Form.BEND, outsideMm).bend(90, 0.1)
              : TestElement.pipe(step, outsideMm, 1 + random.nextInt(5));
      elements.add(
          element
              .inSystem(systems.get(random.nextInt(systems.size())))
              .middle(step, random.nextInt(2)));
    }
    return elements.toArray(TestElement[]::new);
  }
}
