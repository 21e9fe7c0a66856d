package org.lagwright.takeoff.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.takeoff.order.SheetPlanner.Rectangle;

class SheetPlannerTest {

  private static final SheetSize SHEET = new SheetSize("sheet", 1, 2);

  @Test
  void halvesFillTheirSheet() {
    SheetPlan plan = SheetPlanner.plan(cuts(1, 1, 1, 1, 2, 1), SHEET);

    assertThat(plan.sheets()).hasSize(2);
    assertThat(plan.gap()).isZero();
  }

  @Test
  void rectangleIsTurnedWhereItFitsOnlySo() {
    SheetPlan plan = SheetPlanner.plan(cuts(1.8, 0.4), SHEET);

    assertThat(plan.sheets()).hasSize(1);
    assertThat(plan.sheets().get(0).get(0).turned()).isTrue();
    assertThat(plan.restM(plan.sheets().get(0))).isCloseTo(0.2, within(1e-9));
  }

  @Test
  void largeRectangleIsSplitIntoStripsOfTheSheet() {
    List<SheetCut> strips = SheetPlanner.split(new SheetCut("wrap", 2.5, 3), SHEET);

    assertThat(strips.stream().mapToDouble(SheetCut::areaM2).sum()).isCloseTo(7.5, within(1e-9));
    assertThat(strips).hasSize(6);
    assertThat(SheetPlanner.plan(strips, SHEET).sheets()).hasSizeBetween(4, 5);
  }

  @Test
  void rectangleThatFitsIsNotSplit() {
    assertThat(SheetPlanner.split(new SheetCut("panel", 2, 1), SHEET)).hasSize(1);
  }

  @Test
  void rectangleLargerThanTheSheetIsRefused() {
    assertThatThrownBy(() -> SheetPlanner.plan(cuts(1.1, 1.2), SHEET))
        .hasMessageContaining("does not fit a sheet of 1 x 2 m");
  }

  @Test
  void piecesWiderThanHalfTheSheetCanOnlyLieBehindEachOther() {
    SheetPlan plan = SheetPlanner.plan(cuts(0.6, 1.2, 0.6, 1.2, 0.7, 1.1, 0.55, 0.75), SHEET);

    assertThat(plan.lowerBound()).isEqualTo(3);
    assertThat(plan.gap()).isZero();
  }

  @Test
  void nothingToCutBuysNothing() {
    assertThat(SheetPlanner.plan(List.of(), SHEET).sheets()).isEmpty();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void everyPlanCutsAllPiecesWithoutOverlapAndIsNoWorseThanShelves(long seed) {
    Random random = new Random(seed);
    SheetSize size = random.nextBoolean() ? SHEET : new SheetSize("roll", 1, 8);
    List<SheetCut> cuts = new ArrayList<>();
    int count = 1 + random.nextInt(100);
    for (int i = 0; i < count; i++) {
      double shortM = (30 + random.nextInt(970)) / 1000.0;
      double longM = (30 + random.nextInt(1970)) / 1000.0;
      cuts.add(
          random.nextBoolean()
              ? new SheetCut("c" + i, shortM, longM)
              : new SheetCut("c" + i, longM, shortM));
    }

    SheetPlan plan = SheetPlanner.plan(cuts, size);

    assertThat(plan.sheets().stream().flatMap(List::stream).map(PlacedCut::cut))
        .containsExactlyInAnyOrderElementsOf(cuts);
    plan.sheets().forEach(sheet -> assertLiesWell(sheet, size));
    assertThat(plan.sheets().size()).isLessThanOrEqualTo(shelves(cuts, size));
    assertThat(plan.gap()).isGreaterThanOrEqualTo(0);
    assertThat(SheetPlanner.plan(cuts, size)).isEqualTo(plan);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void patternsOfShelvesNeedFewerSheetsWhereSizesRepeat(long seed) {
    Random random = new Random(seed);
    List<SheetCut> sizes = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      double widthM = (30 + random.nextInt(900)) / 1000.0;
      sizes.add(new SheetCut("size " + i, widthM, (30 + random.nextInt(1900)) / 1000.0));
    }
    List<SheetCut> cuts = new ArrayList<>();
    for (int i = 0; i < 800; i++) {
      SheetCut size = sizes.get(random.nextInt(sizes.size()));
      cuts.add(new SheetCut("c" + i, size.widthM(), size.lengthM()));
    }

    SheetPlan plan = SheetPlanner.plan(cuts, SHEET);

    assertThat(plan.sheets().size()).isLessThan(shelves(cuts, SHEET));
    assertThat(plan.sheets().stream().flatMap(List::stream).map(PlacedCut::cut))
        .containsExactlyInAnyOrderElementsOf(cuts);
    plan.sheets().forEach(sheet -> assertLiesWell(sheet, SHEET));
    int byGuillotine =
        GuillotineNesting.ways(1000, 2000).stream()
            .mapToInt(way -> way.nest(rectangles(cuts)).size())
            .min()
            .orElseThrow();
    assertThat(plan.sheets().size()).isLessThanOrEqualTo(byGuillotine);
    assertThat(new ShelfProgramme(rectangles(cuts), 1000, 2000).nest(leftover()))
        .hasSizeLessThan(shelves(cuts, SHEET));
  }

  @Test
  void moreSizesThanTheProgrammeTakesAreLeftToShelvesAndGuillotineCuts() {
    List<SheetCut> cuts = new ArrayList<>();
    for (int i = 0; i < 230; i++) {
      cuts.add(new SheetCut("c" + i, 0.4 + i / 1000.0, 0.9));
    }

    assertThat(new ShelfProgramme(rectangles(cuts), 1000, 2000).nest(leftover())).isEmpty();
    SheetPlan plan = SheetPlanner.plan(cuts, SHEET);
    assertThat(plan.sheets().size()).isLessThanOrEqualTo(shelves(cuts, SHEET));
    assertThat(plan.lowerBound()).isPositive();
  }

  private static GuillotineNesting leftover() {
    return GuillotineNesting.ways(1000, 2000).get(0);
  }

  private static List<Rectangle> rectangles(List<SheetCut> cuts) {
    List<Rectangle> rectangles = new ArrayList<>();
    cuts.forEach(cut -> rectangles.add(Rectangle.of(cut, rectangles.size())));
    return rectangles;
  }

  /** First-fit decreasing height. */
  private static int shelves(List<SheetCut> cuts, SheetSize size) {
    return new ShelfNesting((int) (size.widthM() * 1000), (int) (size.lengthM() * 1000))
        .nest(rectangles(cuts))
        .size();
  }

  private static void assertLiesWell(List<PlacedCut> sheet, SheetSize size) {
    for (PlacedCut one : sheet) {
      assertThat(one.acrossM() + one.widthM()).isLessThanOrEqualTo(size.widthM() + 1e-9);
      assertThat(one.alongM() + one.lengthM()).isLessThanOrEqualTo(size.lengthM() + 1e-9);
      for (PlacedCut other : sheet) {
        assertThat(one == other || areApart(one, other)).as("%s and %s", one, other).isTrue();
      }
    }
  }

  private static boolean areApart(PlacedCut a, PlacedCut b) {
    double slack = 1e-9;
    return a.acrossM() + a.widthM() <= b.acrossM() + slack
        || b.acrossM() + b.widthM() <= a.acrossM() + slack
        || a.alongM() + a.lengthM() <= b.alongM() + slack
        || b.alongM() + b.lengthM() <= a.alongM() + slack;
  }

  /** Pairs of width and length. */
  private static List<SheetCut> cuts(double... sidesM) {
    List<SheetCut> cuts = new ArrayList<>();
    for (int i = 0; i < sidesM.length; i += 2) {
      cuts.add(new SheetCut("c" + i, sidesM[i], sidesM[i + 1]));
    }
    return cuts;
  }
}
