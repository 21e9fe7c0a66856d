package org.lagwright.ifc.extract.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Sizes that are written without their unit. An inch is 25.4 mm, a foot 304.8 mm. */
class BareSizesTest {

  /** Diameters end in a sign of their own. */
  private static final String ROUND = "\\X\\F8";

  private static MepModel read(String unit, String records) {
    String metres =
        switch (unit) {
          case "ft" -> "0.3048";
          case "in" -> "0.0254";
          default -> "0.001";
        };
    String units =
        InlineModel.MILLIMETRES.replace(
                "#902=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);",
                "#902=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'UNIT',#904);")
            + "#904=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(%s),#905);\n".formatted(metres)
            + "#905=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);\n";
    return InlineModel.read("IFC4", units + records);
  }

  /** A body in the unit of a file; the depth of the extrusion does not matter. */
  private static String drawn(String unit, String keyword, String predefined, String sizeMm) {
    double unitMm = unit.equals("ft") ? 304.8 : unit.equals("in") ? 25.4 : 1;
    String[] sides = sizeMm.split("x", -1);
    double first = Double.parseDouble(sides[0]) / unitMm;
    String profile =
        sides.length > 1
            ? "IFCRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s)"
                .formatted(first, Double.parseDouble(sides[1]) / unitMm)
            : "IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s)".formatted(first / 2);
    return "#1=%s('1',$,'Part',$,$,#14,#10,$,%s);\n".formatted(keyword, predefined) + body(profile);
  }

  private static String undrawn(String keyword, String name) {
    return "#1=%s('1',$,'%s',$,$,$,$,$,$);\n".formatted(keyword, name);
  }

  private static String size(String text) {
    return properties("Size", "IFCTEXT('" + text.replace("o", ROUND) + "')");
  }

  private static @Nullable String inWords(MepElement element) {
    return element.section() == null ? null : InWords.section(value(element.section()));
  }

  private static String ends(MepElement element) {
    return value(element.endSections()).stream()
        .map(InWords::section)
        .collect(Collectors.joining(", "));
  }

  @ParameterizedTest
  @CsvSource({
    "mm, 100, 10o, 100.0 mm",
    "mm, 200, 20o, 200.0 mm",
    "mm, 315, 31.5o, 315.0 mm",
    "mm, 500, 50o, 500.0 mm",
    "mm, 200x200, 20x20, 200.0 x 200.0 mm",
    "mm, 400x200, 40x20, 400.0 x 200.0 mm",
    "mm, 254, 10o, 254.0 mm",
    "mm, 381, 15o, 381.0 mm",
    "mm, 609.6x304.8, 24x12, 609.6 x 304.8 mm",
    "mm, 250, 250o, 250.0 mm",
    "ft, 254, 10o, 254.0 mm",
    "ft, 152.4, 6o, 152.4 mm",
    "ft, 508, 20o, 508.0 mm",
    "ft, 609.6x304.8, 24x12, 609.6 x 304.8 mm",
    "ft, 609.6x203.2, 24x8, 609.6 x 203.2 mm",
    "ft, 250, 250o, 250.0 mm",
    "ft, 200, 20o, 200.0 mm",
    "in, 254, 10o, 254.0 mm",
  })
  void unitIsTheOneThatGivesTheDrawnDuct(String unit, String sizeMm, String text, String read) {
    MepModel model = read(unit, drawn(unit, "IFCDUCTSEGMENT", "$", sizeMm) + size(text));

    assertThat(inWords(element(model, 1))).isEqualTo(read);
    assertThat(Objects.requireNonNull(element(model, 1).section()).lost())
        .singleElement()
        .satisfies(c -> assertThat(c.why()).isEqualTo("agrees"));
    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "ft, 24x12, 609.6 x 304.8 mm",
    "ft, 24x8, 609.6 x 203.2 mm",
    "ft, 10o, 254.0 mm",
    "in, 6o, 152.4 mm",
    "in, 24x12, 609.6 x 304.8 mm",
    // what says its unit, or would be too wide in inches
    "ft, 250 mm x 200 mm, 250.0 x 200.0 mm",
    "ft, 400x200, 400.0 x 200.0 mm",
    "ft, 100o, 100.0 mm",
    "mm, 24\"x12\", 609.6 x 304.8 mm",
    "mm, 400x200, 400.0 x 200.0 mm",
    "mm, 80o, 80.0 mm",
    // no duct has so few millimetres
    "mm, 24x12,",
    "mm, 10o,",
  })
  void sizeOfADuctThatIsNotDrawnIsInTheUnitOfTheFile(String unit, String text, String read) {
    MepModel model = read(unit, undrawn("IFCDUCTSEGMENT", "Duct") + size(text));

    assertThat(inWords(element(model, 1))).isEqualTo(read);
  }

  @ParameterizedTest
  @CsvSource({".CONNECTOR., 254, 10o-10o", ".CONNECTOR., 200, 20o-20o", ".OBSTRUCTION., 254, 10o"})
  void sleeveAndCapHaveTheDrawnSize(String predefined, double sizeMm, String text) {
    MepModel model =
        read("mm", drawn("mm", "IFCDUCTFITTING", predefined, String.valueOf(sizeMm)) + size(text));

    assertThat(inWords(element(model, 1))).isEqualTo(sizeMm + " mm");
    assertThat(codes(model)).doesNotContain("SECTION_CONFLICT");
  }

  /** 100 mm fit into a sleeve of 160 mm, but not 80 mm into one of 250. */
  @ParameterizedTest
  @CsvSource({"160, 100 mm o, 100.0 mm, false", "250, 80 mm o, 250.0 mm, true"})
  void sleeveMuchWiderThanTheStatedDuctIsToldOf(
      String sizeMm, String text, String read, boolean told) {
    MepModel model = read("mm", drawn("mm", "IFCDUCTFITTING", ".CONNECTOR.", sizeMm) + size(text));

    assertThat(inWords(element(model, 1))).isEqualTo(read);
    assertThat(codes(model).contains("SECTION_CONFLICT")).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource({
    "ft, 24x12-12x8, '609.6 x 304.8 mm, 304.8 x 203.2 mm'",
    "ft, 10o-6o, '254.0 mm, 152.4 mm'",
    "mm, 400x200-300x200, '400.0 x 200.0 mm, 300.0 x 200.0 mm'",
    "ft, 400x200-300x200, '400.0 x 200.0 mm, 300.0 x 200.0 mm'"
  })
  void endsOfAFittingThatIsNotDrawnAreInTheUnitOfTheFile(String unit, String text, String read) {
    String fitting = "#1=IFCDUCTFITTING('1',$,'Part',$,$,$,$,$,.TRANSITION.);\n";
    MepModel model = read(unit, fitting + size(text));

    assertThat(ends(element(model, 1))).isEqualTo(read);
  }

  @Test
  void sizeOverTheInsulationIsInTheUnitOfTheFile() {
    MepModel model =
        read(
            "in",
            undrawn("IFCDUCTSEGMENT", "Duct")
                + properties(
                    "Overall Size",
                    "IFCTEXT('26x14')",
                    "Insulation Thickness",
                    "IFCLENGTHMEASURE(1.)"));

    assertThat(inWords(element(model, 1))).isEqualTo("609.6 x 304.8 mm");
  }

  /** What is left around a duct of 300 mm that is drawn 400 mm wide is 50 mm. */
  @ParameterizedTest
  @CsvSource({
    "400, 300 mm o, 300.0 mm",
    "200, 100 mm o, 200.0 mm",
    "250, 110 mm o, 110.0 mm",
    "600, 300 mm o, 600.0 mm",
    "140, 42 mm o, 140.0 mm"
  })
  void moreInsulationThanDuctIsNotGuessed(String sizeMm, String text, String read) {
    MepModel model = read("mm", drawn("mm", "IFCDUCTSEGMENT", "$", sizeMm) + size(text));

    boolean bare = read.equals(sizeMm + ".0 mm");
    assertThat(inWords(element(model, 1))).isEqualTo(read);
    assertThat(codes(model).contains("INSULATION_IN_BODY")).isNotEqualTo(bare);
  }

  @Test
  void nominalSizeOfARoundDuctIsInTheUnitOfTheFile() {
    MepModel model =
        read(
            "ft",
            undrawn("IFCDUCTSEGMENT", "Duct") + properties("NominalDiameter", "IFCLABEL('10')"));

    assertThat(inWords(element(model, 1))).isEqualTo("254.0 mm");
  }
}
