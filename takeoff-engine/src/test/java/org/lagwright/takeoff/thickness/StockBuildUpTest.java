package org.lagwright.takeoff.thickness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.material.Stock;
import org.lagwright.takeoff.pack.SourceStatus;

/** Which stock meets a requirement; the walls are those of the bundled pack. */
class StockBuildUpTest {

  private static final MaterialPack MATERIALS = MaterialPack.bundled();

  @ParameterizedTest
  @CsvSource({
    // foam: tube up to 168 mm, sheet beyond, two layers above 50 mm
    "fef_nbr, 60.3, 13, 13 tube",
    "fef_nbr, 60.3, 13.001, 19 tube",
    "fef_nbr, 60.3, 14.5, 19 tube",
    "fef_nbr, 60.3, 50, 50 tube",
    "fef_nbr, 60.3, 50.1, 32 tube + 19 tube",
    "fef_nbr, 60.3, 51.2, 40 tube + 13 tube",
    "fef_nbr, 60.3, 100, 50 tube + 50 tube",
    "fef_nbr, 60.3, 100.1, ''",
    // the second is sheet where no tube goes over the first
    "fef_nbr, 114.3, 51, 32 tube + 19 sheet",
    "fef_nbr, 168.3, 19, 19 tube",
    "fef_nbr, 168.6, 19, 19 sheet",
    "fef_nbr, 219.1, 60, 50 sheet + 10 sheet",
    // no bore from 3 mm above the pipe to half a millimetre below it: sheet, also as second layer
    "fef_nbr, 141.3, 19, 19 sheet",
    "fef_nbr, 90, 19, 19 sheet",
    "fef_nbr, 15.9, 19, 19 tube",
    "fef_nbr, 88.9, 60, 50 tube + 10 sheet",
    // rigid sections: second section over the first while the bore fits
    "sw_pipe_board, 60.3, 50.8, 60 section",
    "sw_pipe_board, 168.3, 127, 100 section + 30 sheet",
    "sw_pipe_board, 60.3, 127, 100 section + 30 section",
    "sw_pipe_board, 323.9, 40, 40 section",
    "sw_pipe_board, 406.4, 40, 40 sheet",
    "sw_pipe_board, 60.3, 0, ''",
  })
  void pipeGetsTheSmallestStockThatReaches(
      String material, double outsideMm, double requiredMm, String expected) {
    Section pipe = new Section.Round(outsideMm / 1000);

    assertThat(inWords(material, pipe, false, requiredMm)).isEqualTo(expected);
  }

  /** Walls of 13 mm with bores of 15 and 22 mm, of 25 mm with 22 mm; sections of 40 on 60. */
  @ParameterizedTest
  @CsvSource({
    "15, 13, 13 tube",
    "15, 20, 13 tube + 25 sheet",
    "21.3, 20, 25 tube",
    "28, 20, 25 sheet",
    "60.3, 30, 40 section",
    "48.3, 20, 25 sheet",
  })
  void wallIsTakenOnlyWhereItIsSoldInThatBore(
      double outsideMm, double requiredMm, String expected) {
    Stock stock =
        new Stock(
            List.of(13.0, 25.0),
            22,
            List.of(25.0),
            List.of(40.0),
            60,
            null,
            List.of(
                new Stock.Fit("tube", 13, 15),
                new Stock.Fit("tube", 13, 22),
                new Stock.Fit("tube", 25, 22),
                new Stock.Fit("section", 40, 60)),
            null,
            SourceStatus.USER,
            "test");
    MaterialFamily foam = MATERIALS.family("fef_nbr");
    MaterialFamily material =
        new MaterialFamily(
            "test",
            "test",
            List.of(),
            foam.conductivity(),
            foam.service(),
            null,
            true,
            true,
            stock,
            null);

    assertThat(
            inWords(
                StockBuildUp.choose(
                    material, new Section.Round(outsideMm / 1000), false, requiredMm / 1000)))
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "fef_nbr, 12.2, 13 sheet",
    "fef_nbr, 3, 6 sheet",
    "duct_wrap, 41, 50 sheet",
    "duct_wrap, 110, 80 sheet + 30 sheet",
    "duct_wrap, 201, ''",
  })
  void ductGetsSheet(String material, double requiredMm, String expected) {
    Section rectangular = new Section.Rectangular(0.6, 0.3);
    Section round = new Section.Round(0.1);

    assertThat(inWords(material, rectangular, true, requiredMm)).isEqualTo(expected);
    assertThat(inWords(material, round, true, requiredMm)).isEqualTo(expected);
  }

  @Test
  void roundingOfTheComputationIsNoReasonForTheNextWall() {
    Section pipe = new Section.Round(0.0603);

    assertThat(inWords("fef_nbr", pipe, false, 25 + 5e-7)).isEqualTo("25 tube");
    assertThat(inWords("fef_nbr", pipe, false, 25 + 5e-6)).isEqualTo("32 tube");
  }

  @Test
  void nothingReachesAnInfiniteRequirement() {
    assertThat(inWords("fef_nbr", new Section.Round(0.0603), false, Double.POSITIVE_INFINITY))
        .isEmpty();
  }

  private static String inWords(String material, Section section, boolean duct, double requiredMm) {
    return inWords(
        StockBuildUp.choose(MATERIALS.family(material), section, duct, requiredMm / 1000));
  }

  private static String inWords(List<Layer> layers) {
    return layers.stream()
        .map(l -> Math.round(l.thicknessM() * 1000) + " " + l.form().label())
        .collect(Collectors.joining(" + "));
  }
}
