package org.lagwright.takeoff.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.material.Stock;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.thickness.ThicknessChooser;

/** Packs, catalogue and specification that lie beside a settings file. */
class UserPacksTest {

  private static final String RULE =
      """
      id: works-standard
      version: "3"
      source: "standard of the works, sheet 7"
      status: "given by the user, not checked"
      rows:
        - id: small
          printed: "up to 60 mm"
          families: [heating]
          locations: []
          sizeBy: outside
          upToMm: 60
          thicknessMm: 25
          rated: {wPerMK: 0.035, meanC: 40}
          coefficientWPerM2K: 10
          status: "given by the user, not checked"
          source: "sheet 7"
        - id: large
          printed: "above 60 mm"
          families: [heating]
          locations: []
          sizeBy: outside
          aboveMm: 60
          thicknessMm: 50
          rated: {wPerMK: 0.035, meanC: 40}
          coefficientWPerM2K: 10
          status: "given by the user, not checked"
          source: "sheet 7"
      examples:
        - {family: heating, location: indoor, mm: 60, row: small}
        - {family: heating, location: indoor, mm: 60.1, row: large}
      """;

  @TempDir Path folder;

  @Test
  void ruleOfTheUserCanBeChosen() throws IOException {
    write("rule.yaml", RULE);
    Settings settings = settings("packs: [rule.yaml]\nenergyRule: works-standard\n");

    assertThat(new ThicknessChooser(settings.packs()).packsInUse("works-standard"))
        .extracting(PackInfo::id)
        .contains("works-standard");
  }

  @Test
  void ruleWithAnExampleThatDoesNotHoldIsRefused() throws IOException {
    write("rule.yaml", RULE.replace("mm: 60.1, row: large", "mm: 60.1, row: small"));

    assertThatThrownBy(() -> settings("packs: [rule.yaml]\n"))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("rule.yaml")
        .hasMessageContaining("does not hold");
  }

  @Test
  void ruleWithoutSourceIsRefusedWithItsPlace() throws IOException {
    write("rule.yaml", RULE.replaceFirst("    source: \"sheet 7\"\n", ""));

    assertThatThrownBy(() -> settings("packs: [rule.yaml]\n"))
        .isInstanceOf(PackException.class)
        .hasMessageMatching("(?s).*rule.yaml:\\d+:\\d+: 'source' is missing here.*");
  }

  @Test
  void fileThatIsNoPackOfThicknessIsRefused() throws IOException {
    write("other.yaml", "id: x\n");

    assertThatThrownBy(() -> settings("packs: [other.yaml]\n"))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("neither 'families', 'ranges' nor 'rows'");
  }

  @Test
  void catalogueReplacesTheStockOfItsMaterials() throws IOException {
    write(
        "stock.csv",
        "material,form,thicknessMm,largestBoreMm\n"
            + "fef_nbr,tube,20,89\nfef_nbr,tube,10,114\nfef_nbr,sheet,15,\n");
    Settings settings = settings("catalogue: stock.csv\n");
    Stock stock = new ThicknessChooser(settings.packs()).materials().family("fef_nbr").stock();

    assertThat(stock.tubeWallsMm()).containsExactly(10.0, 20.0);
    assertThat(stock.largestTubeBoreMm()).isEqualTo(114);
    assertThat(stock.sheetsMm()).containsExactly(15.0);
    assertThat(stock.status().label()).isEqualTo("given by the user, not checked");
  }

  @Test
  void catalogueTellsLengthsAndSizes() throws IOException {
    write(
        "stock.csv",
        "material,form,thicknessMm,largestBoreMm,lengthM,widthM\n"
            + "fef_nbr,tube,20,89,1.5,\nfef_nbr,sheet,15,,2,0.5\n");
    Stock stock =
        new ThicknessChooser(settings("catalogue: stock.csv\n").packs())
            .materials()
            .family("fef_nbr")
            .stock();

    assertThat(stock.pieces())
        .containsExactly(
            new Stock.Sold("tube", 20.0, null, 1.5), new Stock.Sold("sheet", 15.0, 0.5, 2));
    assertThat(stock.bores()).isEmpty();
  }

  @Test
  void catalogueWithASheetOfNoWidthIsRefusedWithItsPlace() throws IOException {
    write("stock.csv", "material,form,thicknessMm,lengthM\nfef_nbr,sheet,10,2\n");

    assertThatThrownBy(() -> settings("catalogue: stock.csv\n"))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("stock.csv:2:4: widthM belongs to sheet and roll");
  }

  @Test
  void catalogueTellsBoreByWallAndConductivityByMeanTemperature() throws IOException {
    write(
        "stock.csv",
        "material,form,thicknessMm,boreMm,conductivityWPerMK,meanC\n"
            + "fef_nbr,tube,13,22,0.034,0\nfef_nbr,tube,25,35,0.034,0\nfef_nbr,,,,0.036,20\n"
            + "sw_pipe_board,,,,0.04,50\n");
    MaterialPack materials = settings("catalogue: stock.csv\n").packs().materials();
    MaterialFamily foam = materials.family("fef_nbr");

    assertThat(foam.stock().sizes())
        .containsExactly(new Stock.Fit("tube", 13, 22), new Stock.Fit("tube", 25, 35));
    assertThat(foam.stock().largestTubeBoreMm()).isEqualTo(35);
    assertThat(foam.stock().findBoreMm("tube", 13, 21.3)).hasValue(22);
    assertThat(foam.stock().findBoreMm("tube", 25, 21.3)).isEmpty();
    assertThat(foam.conductivityAt(10).wPerMK()).isEqualTo(0.035);
    assertThat(foam.conductivity().status().label()).isEqualTo("given by the user, not checked");
    assertThat(materials.family("sw_pipe_board").conductivityAt(0).wPerMK()).isEqualTo(0.04);
    assertThat(materials.family("sw_pipe_board").stock())
        .isEqualTo(MaterialPack.bundled().family("sw_pipe_board").stock());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fef_nbr,tube,13,22,,0.034, | 2:7: a conductivity needs its mean temperature",
        "fef_nbr,tube,13,22,,,10 | 2:6: a conductivity needs its mean temperature",
        "fef_nbr,tube,13,22,,34,10 | 2:6: the conductivity must lie between 0 and 1",
        "fef_nbr,tube,13,-1,,, | 2:4: the bore must be above 0 mm",
        "fef_nbr,tube,13,,,, | 2:5: 'largestboremm' is empty",
        "fef_nbr,,13,,,, | 2:2: 'form' is empty",
        "fef_nbr,hose,13,,,, | 2:2: 'hose' is none of tube, sheet, section",
        "fef_nbr,tube,13,22,,0.034,10\\nfef_nbr,tube,13,28,,0.035,10 | 3:6: another row says 0.034",
        "fef_nbr,tube,13,22,,,\\nfef_nbr,tube,19,,89,, | 3:4: give boreMm in all rows"
      })
  void catalogueThatIsWrongIsRefusedWithLineAndColumn(String rows, String message)
      throws IOException {
    write(
        "stock.csv",
        "material,form,thicknessMm,boreMm,largestBoreMm,conductivityWPerMK,meanC\n"
            + rows.replace("\\n", "\n")
            + "\n");

    assertThatThrownBy(() -> settings("catalogue: stock.csv\n"))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("stock.csv:" + message);
  }

  @Test
  void catalogueWithAnUnknownMaterialIsRefusedWithItsPlace() throws IOException {
    write("stock.csv", "material,form,thicknessMm\nfoam,sheet,10\n");

    assertThatThrownBy(() -> settings("catalogue: stock.csv\n"))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("stock.csv:2:1: 'foam' is no known material");
  }

  @Test
  void specificationFromAFileNamesItsRow() throws IOException {
    write(
        "spec.csv",
        "service;location;upToMm;thicknessMm;source\n"
            + "chilled-water-flow;plant-room;60,3;25;4.2.1\nchilled-water-flow;;;32;\n");
    Settings settings = settings("demands: {specificationFile: spec.csv}\n");
    DemandSettings.SpecificationRow first = settings.demands().rows().get(0);

    assertThat(settings.demands().rows()).hasSize(2);
    assertThat(first.thicknessMm()).isEqualTo(25);
    assertThat(first.source()).endsWith("spec.csv, row 2: 4.2.1");
    assertThat(first.fits("chilled-water-flow", "plant-room", 0.0603)).isTrue();
    assertThat(first.fits("chilled-water-flow", "plant-room", 0.0604)).isFalse();
    assertThat(first.fits("chilled-water-flow", "indoor", 0.05)).isFalse();
  }

  @Test
  void specificationWithAnUnknownServiceIsRefusedWithItsPlace() throws IOException {
    write("spec.csv", "service,thicknessMm\nsteem,25\n");

    assertThatThrownBy(() -> settings("demands: {specificationFile: spec.csv}\n"))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("spec.csv:2:1: 'steem' is no service");
  }

  @Test
  void demandsWithUnknownNamesOrImpossibleFiguresAreRefused() {
    assertThatThrownBy(() -> settings("demands: {heatLossWPerM: {steem: 60}}\n"))
        .hasMessageContaining("'steem' is no service");
    assertThatThrownBy(() -> settings("demands: {touchLimitC: 5}\n"))
        .hasMessageContaining("touchLimitC must lie between 30 and 100");
    assertThatThrownBy(
            () ->
                settings(
                    "demands: {frost: {airC: 4, waterC: 5, hours: 8, iceShare: 0.25,"
                        + " locations: [outdoor]}}\n"))
        .hasMessageContaining("airC must be");
    assertThatThrownBy(() -> settings("demands: {tariffs: {hot: {hoursPerYear: 9999}}}\n"))
        .hasMessageContaining("hoursPerYear");
  }

  private Settings settings(String yaml) throws IOException {
    return SettingsReader.read(write("job.yaml", yaml));
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
  }
}
