package org.lagwright.takeoff.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Georeference;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.UprightBox;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/**
 * Heating pipes of 60.3 mm with 40 mm of insulation along x at height 0, and ducts of 400 x 200 mm,
 * against walls of 0.2 m and slabs of 0.3 m.
 */
class BuildingClearanceTest {

  private static final double RADIUS_M = 0.0603 / 2 + 0.04;
  private static final double ACCURACY_M = 2e-5;

  @TempDir Path folder;

  private static TestElement heating(long step) {
    return TestElement.pipe(step, 60.3, 4).inSystem("Heating flow").along(0, 0, 4);
  }

  private static BuildingPart part(
      long step, String ifcClass, UprightBox box, UprightBox... openings) {
    return new BuildingPart(
        new ElementKey(0, step),
        "part-" + step,
        ifcClass,
        "P" + step,
        null,
        box,
        List.of(openings));
  }

  private static UprightBox box(double x, double y, double z, double l, double w, double h) {
    return new UprightBox(new Point(x, y, z), 0, l, w, h);
  }

  /** A wall across the pipe at x = 2. */
  private static BuildingPart across(UprightBox... openings) {
    return part(900, "IfcWall", box(2, 0, 0, 0.2, 6, 3), openings);
  }

  private static MepModel model(List<BuildingPart> parts, TestElement... elements) {
    List<MepElement> built = Arrays.stream(elements).map(TestElement::build).toList();
    ModelFile file = new ModelFile(0, "alder-quay.ifc", "0".repeat(64), "IFC4");
    return new MepModel(file, built, List.of(), List.of(), Map.of(), Georeference.NONE, parts);
  }

  private static Clearance clearance(List<BuildingPart> parts, TestElement... elements) {
    return clearance(SettingsReader.defaults(), parts, elements);
  }

  private static Clearance clearance(
      Settings settings, List<BuildingPart> parts, TestElement... elements) {
    return Clearance.of(Takeoff.of(List.of(model(parts, elements)), settings));
  }

  @ParameterizedTest
  @CsvSource({
    "0.026, ''",
    "0.0248, TOO_CLOSE",
    "0, TOO_CLOSE",
    "-0.01, INSULATION_CLASH",
    "-0.0399, INSULATION_CLASH",
    "-0.0402, BARE_CLASH"
  })
  void aPipeBesideAWallNeedsTwentyFiveMillimetres(double gapM, String cause) {
    BuildingPart wall = part(900, "IfcWall", box(2, RADIUS_M + gapM + 0.1, 0, 10, 0.2, 3));
    List<Clash> clashes = clearance(List.of(wall), heating(1)).clashes();

    assertThat(clashes)
        .extracting(c -> c.cause().name())
        .isEqualTo(cause.isEmpty() ? List.of() : List.of(cause));
    for (Clash clash : clashes) {
      assertThat(clash.gapM()).isCloseTo(gapM, within(ACCURACY_M));
      assertThat(clash.bareGapM()).isCloseTo(gapM + 0.04, within(ACCURACY_M));
      assertThat(clash.wantedM()).isEqualTo(0.025);
      assertThat(clash.second().method()).isEqualTo("box");
      assertThat(clash.second().globalId()).isEqualTo("part-900");
      assertThat(clash.note()).contains("by the box around it");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {10, 30, 45, 85, 120})
  void aWallThatStandsAtAnAngleIsReckonedAtThatAngle(double degrees) {
    double turnRad = Math.toRadians(degrees);
    // beside the end of the pipe at (4, 0), 10 mm from its insulation
    double apartM = 0.1 + 0.01;
    TestElement pipe =
        TestElement.pipe(1, 60.3, 4)
            .inSystem("Heating flow")
            .end(0, 0, -Math.cos(turnRad), -Math.sin(turnRad))
            .end(
                4 * Math.cos(turnRad), 4 * Math.sin(turnRad), Math.cos(turnRad), Math.sin(turnRad));
    double offM = RADIUS_M + apartM;
    Point centre =
        new Point(
            2 * Math.cos(turnRad) - offM * Math.sin(turnRad),
            2 * Math.sin(turnRad) + offM * Math.cos(turnRad),
            0);
    BuildingPart wall = part(900, "IfcWall", new UprightBox(centre, turnRad, 10, 0.2, 3));

    assertThat(clearance(List.of(wall), pipe).clashes())
        .singleElement()
        .satisfies(clash -> assertThat(clash.gapM()).isCloseTo(0.01, within(ACCURACY_M)));
  }

  @ParameterizedTest
  @CsvSource({"0.049, 1", "0.051, 0"})
  void aDuctUnderASlabNeedsFiftyMillimetres(double gapM, int clashes) {
    TestElement duct = TestElement.duct(1, 400, 200, 4).inSystem("Supply air").along(0, 0, 4);
    double thicknessM =
        Clearance.thicknessM(
            Takeoff.of(List.of(model(List.of(), duct)), SettingsReader.defaults())
                .elements()
                .get(0));
    BuildingPart slab =
        part(900, "IfcSlab", box(0, 0, 0.1 + thicknessM + gapM + 0.15, 20, 20, 0.3));

    assertThat(thicknessM).isPositive();
    assertThat(clearance(List.of(slab), duct).clashes()).hasSize(clashes);
  }

  @Test
  void aPipeThroughAWallWithoutAnOpeningIsAClashThatAsksForOne() {
    Clearance clearance = clearance(List.of(across()), heating(1));

    assertThat(clearance.passages()).isEmpty();
    assertThat(clearance.clashes())
        .singleElement()
        .satisfies(
            clash -> {
              assertThat(clash.cause()).isEqualTo(Cause.BARE_CLASH);
              assertThat(clash.suggestion()).startsWith("Ask for an opening");
            });
  }

  @ParameterizedTest
  @CsvSource({
    // height and width of the opening, room at the tighter side beside 140.3 mm
    "0.3, 0.4, 0.07985",
    "0.1403, 0.4, 0"
  })
  void aPipeThroughAnOpeningThatHoldsItsInsulationIsStatedAndNoClash(
      double heightM, double widthM, double roomM) {
    Clearance clearance =
        clearance(List.of(across(box(2, 0, 0, 0.4, widthM, heightM))), heating(1));

    assertThat(clearance.clashes()).isEmpty();
    assertThat(clearance.passages())
        .singleElement()
        .satisfies(
            passage -> {
              assertThat(passage.element().element().key()).isEqualTo(TestElement.key(1));
              assertThat(passage.part().globalId()).isEqualTo("part-900");
              assertThat(passage.marginM()).isCloseTo(roomM, within(ACCURACY_M));
            });
  }

  @ParameterizedTest
  @CsvSource({"0.10, INSULATION_CLASH, -0.02015", "0.05, BARE_CLASH, -0.04515"})
  void anOpeningThatIsTooSmallIsAClashByWhatSticksOut(double sideM, Cause cause, double gapM) {
    UprightBox opening = box(2, 0, 0, 0.4, sideM, sideM);

    assertThat(clearance(List.of(across(opening)), heating(1)).clashes())
        .singleElement()
        .satisfies(
            clash -> {
              assertThat(clash.cause()).isEqualTo(cause);
              assertThat(clash.gapM()).isCloseTo(gapM, within(ACCURACY_M));
              assertThat(clash.bareGapM()).isCloseTo(gapM + 0.04, within(ACCURACY_M));
              assertThat(clash.note()).contains("in an opening too small");
            });
  }

  @Test
  void anOpeningElsewhereInTheWallHelpsNothing() {
    UprightBox elsewhere = box(2, 1.5, 0, 0.4, 0.5, 0.5);

    assertThat(clearance(List.of(across(elsewhere)), heating(1)).clashes()).hasSize(1);
    assertThat(clearance(List.of(across(elsewhere)), heating(1)).passages()).isEmpty();
  }

  @Test
  void ofSeveralOpeningsTheOneItGoesThroughCounts() {
    UprightBox elsewhere = box(2, 1.5, 0, 0.4, 0.5, 0.5);
    UprightBox here = box(2, 0, 0, 0.4, 0.5, 0.5);

    assertThat(clearance(List.of(across(elsewhere, here)), heating(1)).passages()).hasSize(1);
  }

  @Test
  void aRiserThroughASlabWithAShaftIsNoClash() {
    TestElement riser =
        TestElement.pipe(1, 60.3, 2).inSystem("Heating flow").endAtHeight(-1).endAtHeight(1);
    BuildingPart slab =
        part(900, "IfcSlab", box(0, 0, 0, 20, 20, 0.3), box(0, 0, 0, 0.5, 0.5, 0.4));

    assertThat(clearance(List.of(slab), riser).clashes()).isEmpty();
    assertThat(clearance(List.of(slab), riser).passages())
        .singleElement()
        .satisfies(p -> assertThat(p.marginM()).isCloseTo(0.25 - RADIUS_M, within(ACCURACY_M)));
  }

  @Test
  void aPieceThatEndsAtTheWallWhereTheNextGoesThroughIsToldByThatOne() {
    TestElement before = TestElement.pipe(1, 60.3, 1.9).inSystem("Heating flow").along(0, 0, 1.9);
    TestElement through = TestElement.pipe(2, 60.3, 2).inSystem("Heating flow").along(1.9, 0, 2);

    assertThat(clearance(List.of(across()), before, through).clashes()).hasSize(2);
    assertThat(clearance(List.of(across()), before.joinedTo(2), through.joinedTo(1)).clashes())
        .singleElement()
        .satisfies(c -> assertThat(c.first().element().key()).isEqualTo(TestElement.key(2)));
  }

  @Test
  void whatGetsNoInsulationIsNoMatterOfClearance() {
    TestElement drain = TestElement.pipe(1, 60.3, 4).inSystem("Soil drain").along(0, 0, 4);

    assertThat(clearance(List.of(across()), drain).clashes()).isEmpty();
  }

  @Test
  void roomForAJacketCountsWhereTheSettingsAskForOne() throws IOException {
    Path settings = folder.resolve("settings.yaml");
    Files.writeString(settings, "order:\n  jackets: [{jacket: metal}]\n");
    BuildingPart wall = part(900, "IfcWall", box(2, RADIUS_M + 0.09 + 0.1, 0, 10, 0.2, 3));

    assertThat(clearance(List.of(wall), heating(1)).clashes()).isEmpty();
    assertThat(clearance(SettingsReader.read(settings), List.of(wall), heating(1)).clashes())
        .singleElement()
        .satisfies(clash -> assertThat(clash.wantedM()).isEqualTo(0.1));
  }

  @Test
  void theSettingsChangeTheGapWantedToTheBuilding() throws IOException {
    Path settings = folder.resolve("settings.yaml");
    Files.writeString(settings, "clearance: {pipe-building: 0}\n");
    BuildingPart wall = part(900, "IfcWall", box(2, RADIUS_M + 0.01 + 0.1, 0, 10, 0.2, 3));

    assertThat(clearance(List.of(wall), heating(1)).clashes()).hasSize(1);
    assertThat(clearance(SettingsReader.read(settings), List.of(wall), heating(1)).clashes())
        .isEmpty();
  }

  @Test
  void aPartThatTwoFilesHoldCountsOnceAndOneWithoutBodyIsCounted() {
    BuildingPart bodiless =
        new BuildingPart(new ElementKey(0, 901), "x", "IfcStair", "", null, null, List.of());
    MepModel first = model(List.of(across(), bodiless), heating(1));
    MepModel second = model(List.of(across()));
    Clearance clearance =
        Clearance.of(Takeoff.of(List.of(first, second), SettingsReader.defaults()));

    assertThat(clearance.building()).isEqualTo(1);
    assertThat(clearance.withoutBody()).isEqualTo(1);
    assertThat(clearance.clashes()).hasSize(1);
  }

  @Test
  void bareElementsWithoutAPlaceAreCountedToo() {
    TestElement nowhere = TestElement.pipe(2, 60.3, 4).inSystem("Soil drain");
    Clearance clearance = clearance(List.of(), heating(1), nowhere);

    assertThat(clearance.unplaced()).isEmpty();
    assertThat(clearance.bareUnplaced())
        .singleElement()
        .satisfies(
            u -> {
              assertThat(u.element().element().key()).isEqualTo(TestElement.key(2));
              assertThat(u.reason()).isEqualTo("the places of its ends are not known");
            });
  }

  /** Walls along the axes, whose gaps to a pipe along x are known by arithmetic; no index. */
  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33})
  void theIndexFindsWhatLookingAtEveryWallFinds(long seed) {
    Random random = new Random(seed);
    List<BuildingPart> walls = new ArrayList<>();
    TreeSet<String> expected = new TreeSet<>();
    for (int i = 0; i < 400; i++) {
      double x = 12 * random.nextDouble() - 4;
      double y = 2 * random.nextDouble() - 1;
      double l = 0.1 + random.nextDouble();
      double w = 0.1 + 0.2 * random.nextDouble();
      walls.add(part(1000 + i, "IfcWall", box(x, y, 0, l, w, 3)));
      double dx = Math.max(0, Math.max(x - l / 2 - 4, -(x + l / 2)));
      double dy = Math.max(0, Math.abs(y) - w / 2 - RADIUS_M);
      if (Math.hypot(dx, dy) < 0.0249) {
        expected.add("part-" + (1000 + i));
      }
    }
    TreeSet<String> found = new TreeSet<>();
    clearance(walls, heating(1)).clashes().forEach(c -> found.add(c.second().globalId()));

    assertThat(expected).as("seed %d", seed).hasSizeGreaterThan(20);
    assertThat(found).as("seed %d", seed).isEqualTo(expected);
  }
}
