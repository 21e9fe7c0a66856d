package org.lagwright.takeoff.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CuttingPlannerTest {

  private static final StockLength TUBE = new StockLength(2.0, 0.003);

  @Test
  void pairsThatFillATubeShareIt() {
    CuttingPlan plan = plan(1.2, 1.2, 0.797, 0.797);

    assertThat(plan.pieces()).hasSize(2);
    assertThat(plan.gap()).isZero();
    assertThat(plan.pieces()).allSatisfy(piece -> assertThat(piece.restM()).isZero());
  }

  @Test
  void theSawTakesItsWidthFromEachCut() {
    assertThat(plan(1.0, 1.0).pieces()).hasSize(2);
    assertThat(CuttingPlanner.plan(cuts(1.0, 1.0), new StockLength(2, 0)).pieces()).hasSize(1);
  }

  @Test
  void cutOfTheFullLengthNeedsNoSaw() {
    CuttingPlan plan = plan(2.0, 2.0);

    assertThat(plan.pieces()).hasSize(2);
    assertThat(plan.wasteShare()).isCloseTo(0, within(1e-12));
  }

  @Test
  void patternsBeatFirstFitWhereItWastes() {
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      cuts.addAll(cuts(0.9, 0.6, 0.5));
    }
    // 0.9 + 0.6 + 0.5 fills a tube; first fit pairs 0.9 with 0.9 and never finds that
    StockLength knife = new StockLength(2, 0);
    CuttingPlan plan = CuttingPlanner.plan(cuts, knife);

    assertThat(BinPacking.firstFit(falling(cuts), 2000)).hasSizeGreaterThan(6);
    assertThat(plan.pieces()).hasSize(6);
    assertThat(plan.gap()).isZero();
  }

  @Test
  void runLongerThanTheTubeIsSplit() {
    assertThat(CuttingPlanner.split(new Cut("run", 5.3), TUBE))
        .extracting(Cut::lengthM)
        .satisfiesExactly(
            a -> assertThat(a).isEqualTo(2.0),
            b -> assertThat(b).isEqualTo(2.0),
            c -> assertThat(c).isCloseTo(1.3, within(1e-9)));
    assertThat(CuttingPlanner.split(new Cut("run", 4.0), TUBE)).hasSize(2);
  }

  @Test
  void cutLongerThanTheStockIsRefused() {
    assertThatThrownBy(() -> plan(2.1)).hasMessageContaining("does not fit");
  }

  @Test
  void nothingToCutBuysNothing() {
    CuttingPlan plan = CuttingPlanner.plan(List.of(), TUBE);

    assertThat(plan.pieces()).isEmpty();
    assertThat(plan.wasteShare()).isZero();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void everyPlanCutsAllPiecesFitsItsStockAndIsNoWorseThanFirstFit(long seed) {
    Random random = new Random(seed);
    int count = 1 + random.nextInt(300);
    int types = 1 + random.nextInt(40);
    List<Double> lengths = new ArrayList<>();
    for (int i = 0; i < types; i++) {
      lengths.add((20 + random.nextInt(1980)) / 1000.0);
    }
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      cuts.add(new Cut("c" + i, lengths.get(random.nextInt(types))));
    }
    Collections.shuffle(cuts, random);

    CuttingPlan plan = CuttingPlanner.plan(cuts, TUBE);

    assertThat(plan.pieces().stream().flatMap(p -> p.cuts().stream()))
        .containsExactlyInAnyOrderElementsOf(cuts);
    assertThat(plan.pieces())
        .allSatisfy(
            piece -> {
              double usedM = piece.cuts().stream().mapToDouble(Cut::lengthM).sum();
              double lostM = (piece.cuts().size() - 1) * TUBE.kerfM();
              assertThat(usedM + lostM).isLessThanOrEqualTo(TUBE.lengthM() + 1e-9);
            });
    assertThat(plan.pieces().size())
        .isLessThanOrEqualTo(BinPacking.firstFit(kerfed(falling(cuts)), 2003).size());
    assertThat(plan.gap()).isBetween(0, 1);
    assertThat(CuttingPlanner.plan(cuts, TUBE)).isEqualTo(plan);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void boundIsNeverAboveTheBestPackingOfAFewPieces(long seed) {
    Random random = new Random(seed);
    int[] sizes = random.ints(7, 10, 95).map(i -> i).toArray();
    int[] falling = Arrays.stream(sizes).map(i -> -i).sorted().map(i -> -i).toArray();
    int least = least(falling, new int[7], 0, 0, 100);

    BinPacking packing = BinPacking.best(falling, 100);

    assertThat(packing.lowerBound()).isLessThanOrEqualTo(least);
    assertThat(packing.bins().size()).isEqualTo(least);
  }

  @ParameterizedTest(name = "{0} lengths")
  @ValueSource(ints = {120, 330})
  void patternsFindTheLengthsThatFillATubeAmongManyLengths(int lengths) {
    StockLength knife = new StockLength(2, 0);
    List<Cut> cuts = threesThatFillATube(lengths);

    CuttingPlan plan = CuttingPlanner.plan(cuts, knife);

    int firstFit = BinPacking.firstFit(falling(cuts), 2000).size();
    assertThat(plan.lowerBound()).isEqualTo(cuts.size() / 3);
    assertThat(plan.pieces().size()).isLessThan(firstFit);
    assertThat(plan.gap()).isLessThanOrEqualTo(cuts.size() / 100);
  }

  @Test
  void moreLengthsThanTheProgrammeTakesAreLeftToFirstAndBestFit() {
    List<Cut> cuts = threesThatFillATube(3000);
    assertThat(cuts.stream().map(Cut::lengthM).distinct().count()).isGreaterThan(400);

    List<List<Integer>> firstFit = BinPacking.firstFit(falling(cuts), 2000);
    assertThat(new PatternProgramme(falling(cuts), 2000).pack(firstFit))
        .isEqualTo(new BinPacking(List.of(), 0));
    CuttingPlan plan = CuttingPlanner.plan(cuts, new StockLength(2, 0));
    assertThat(plan.pieces().size()).isLessThanOrEqualTo(firstFit.size());
    assertThat(plan.gap()).isPositive();
  }

  /** Sets of three lengths that make 2 m together, each ten times; seed 1. */
  private static List<Cut> threesThatFillATube(int lengths) {
    Random random = new Random(1);
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < lengths / 3; i++) {
      int first = 600 + random.nextInt(250);
      int second = 500 + random.nextInt(250);
      for (int times = 0; times < 10; times++) {
        cuts.addAll(cuts(first / 1e3, second / 1e3, (2000 - first - second) / 1e3));
      }
    }
    return cuts;
  }

  /** The least number of bins by trying everything. */
  private static int least(int[] sizes, int[] used, int bins, int item, int capacity) {
    if (item == sizes.length) {
      return bins;
    }
    int best = Integer.MAX_VALUE;
    for (int bin = 0; bin <= bins; bin++) {
      if (used[bin] + sizes[item] <= capacity) {
        used[bin] += sizes[item];
        best = Math.min(best, least(sizes, used, Math.max(bins, bin + 1), item + 1, capacity));
        used[bin] -= sizes[item];
      }
    }
    return best;
  }

  private static CuttingPlan plan(double... lengthsM) {
    return CuttingPlanner.plan(cuts(lengthsM), TUBE);
  }

  private static List<Cut> cuts(double... lengthsM) {
    List<Cut> cuts = new ArrayList<>();
    for (double lengthM : lengthsM) {
      cuts.add(new Cut("piece " + cuts.size(), lengthM));
    }
    return cuts;
  }

  private static int[] falling(List<Cut> cuts) {
    return cuts.stream()
        .sorted(Comparator.comparingDouble(Cut::lengthM).reversed())
        .mapToInt(cut -> (int) Math.round(cut.lengthM() * 1000))
        .toArray();
  }

  private static int[] kerfed(int[] sizes) {
    return Arrays.stream(sizes).map(size -> size + 3).toArray();
  }
}
