package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;

import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/**
 * Nominal sizes that contradict each other, or the outside. Diameters by EN 10255: DN 40 has 48.3
 * mm, DN 50 60.3, DN 65 76.1, DN 80 88.9.
 */
class NominalSizeConflictTest {

  /** A property of the element #1. */
  private static String stating(String property, double mm) {
    return properties(property, "IFCPOSITIVELENGTHMEASURE(" + mm + ")");
  }

  private static MepModel undrawn(String keyword, String name, String property, double mm) {
    return read(
        "#1=%s('1',$,'%s',$,$,$,$,$,$);\n".formatted(keyword, name) + stating(property, mm));
  }

  private static MepModel drawn(String name, double outsideMm, double nominalMm) {
    return read(
        "#1=IFCPIPESEGMENT('1',$,'%s',$,$,#14,#10,$,$);\n".formatted(name)
            + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$," + outsideMm / 2 + ")")
            + stating("Nominal Diameter", nominalMm));
  }

  /** Each reading that lost, with the reason. */
  private static String lost(MepElement element) {
    Measured<Section> section = Objects.requireNonNull(element.section());
    return section.lost().stream()
        .map(c -> InWords.section(c.value()) + " " + c.evidence().raw() + " " + c.why())
        .collect(Collectors.joining(", "));
  }

  @ParameterizedTest
  @CsvSource({
    "IFCPIPESEGMENT,Rohr DN50,40,48.3,60.3 mm Rohr DN50 differs",
    "IFCPIPESEGMENT,Rohr DN50,80,88.9,60.3 mm Rohr DN50 differs",
    "IFCVALVE,Kugelhahn DN50,40,48.3,60.3 mm Kugelhahn DN50 differs",
    "IFCPIPEFITTING,Bogen DN50,40,48.3,60.3 mm Bogen DN50 differs"
  })
  void anotherNominalSizeInTheNameIsToldOf(
      String keyword, String name, double nominalMm, double outsideMm, String lost) {
    MepModel model = undrawn(keyword, name, "Nominal Diameter", nominalMm);

    assertThat(diameterMm(element(model, 1))).isEqualTo(outsideMm);
    assertThat(lost(element(model, 1))).isEqualTo(lost);
    assertThat(codes(model)).contains("SECTION_CONFLICT");
  }

  /** Plastic pipes of 63 mm outside stand for DN 50. */
  @ParameterizedTest
  @CsvSource({"Rohr DN50,50", "Rohr DN63,50", "Rohr DN50,63", "Rohr DN63,63"})
  void nominalSizesOfOnePipeAreNoContradiction(String name, double nominalMm) {
    MepModel model = undrawn("IFCPIPESEGMENT", name, "Nominal Diameter", nominalMm);

    assertThat(codes(model)).doesNotContain("SECTION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({
    "Rohr DN65,60.3,50,DN50,76.1 mm Rohr DN65 differs",
    "Rohr DN80,60.3,50,DN50,88.9 mm Rohr DN80 differs",
    "Rohr DN65,76.1,50,DN65,60.3 mm 50.0 differs",
    "Rohr DN65,60.3,65,DN65,'76.1 mm 65.0 differs, 76.1 mm Rohr DN65 differs'"
  })
  void pipeIsCalledByTheNominalSizeThatItHas(
      String name, double outsideMm, double nominalMm, String nominal, String lost) {
    MepModel model = drawn(name, outsideMm, nominalMm);

    assertThat(diameterMm(element(model, 1))).isEqualTo(outsideMm);
    assertThat(element(model, 1).nominalSize()).isEqualTo(nominal);
    assertThat(lost(element(model, 1))).isEqualTo(lost);
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT");
  }

  /** Copper of 54 mm, plastics of 63 mm, cast iron of 58 mm are called DN 50. */
  @ParameterizedTest
  @CsvSource({"60.3", "54", "63", "58", "60.5"})
  void outsideThatPipesOfTheNominalSizeHaveIsNoContradiction(double outsideMm) {
    assertThat(codes(drawn("Rohr DN50", outsideMm, 50))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"IFCPIPESEGMENT", "IFCVALVE"})
  void outsideThatOnlyPipesOfAnotherNominalSizeHaveIsToldOf(String keyword) {
    MepModel model = undrawn(keyword, "Part DN40", "Outer Diameter", 60.3);

    assertThat(diameterMm(element(model, 1))).isEqualTo(60.3);
    assertThat(lost(element(model, 1))).isEqualTo("48.3 mm Part DN40 differs");
    assertThat(codes(model)).contains("SECTION_CONFLICT");
  }

  @ParameterizedTest(name = "{0} drawn {1} mm wide with a bare nominal diameter of {2}: {3}")
  @CsvSource({
    "IFCPIPESEGMENT, 60.3, 0.08, SECTION_CONFLICT",
    "IFCPIPESEGMENT, 60.3, 0.05, ''",
    "IFCPIPESEGMENT, 21.3, 0.5, ''",
    "IFCPIPESEGMENT, 26.9, 0.75, ''",
    "IFCDUCTSEGMENT, 250, 0.315, SECTION_CONFLICT",
    "IFCDUCTSEGMENT, 315, 0.315, ''",
  })
  void bareFigureBelowOneIsInMetresUnlessItMayBeInches(
      String keyword, double drawnMm, double bare, String code) {
    MepModel model =
        read(
            "#1=%s('1',$,'Part',$,$,#14,#10,$,$);\n".formatted(keyword)
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$," + drawnMm / 2 + ")")
                + properties("NominalDiameter", "IFCREAL(" + bare + ")"));

    assertThat(diameterMm(element(model, 1))).isEqualTo(drawnMm);
    assertThat(String.join(",", codes(model))).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({"IFCPIPESEGMENT, 60.3", "IFCDUCTSEGMENT, 50"})
  void bareFigureInMetresIsTheSizeOfWhatIsNotDrawn(String keyword, double outsideMm) {
    MepModel model =
        read(
            "#1=%s('1',$,'Part',$,$,$,$,$,$);\n".formatted(keyword)
                + properties("NominalDiameter", "IFCREAL(0.05)"));

    assertThat(diameterMm(element(model, 1))).isEqualTo(outsideMm);
  }
}
