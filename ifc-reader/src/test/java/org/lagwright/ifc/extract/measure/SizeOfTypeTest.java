package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Names of types that speak of another size than that of the piece, or of many sizes. */
class SizeOfTypeTest {

  private static final String PIPE = "IFCPIPESEGMENT";
  private static final String DUCT = "IFCDUCTSEGMENT";

  /** A straight piece, 2 m long, of a type; its records are those from ten times its id on. */
  private static String piece(int id, String keyword, String name, String type, String profile) {
    int at = id * 10;
    return """
        #%1$d=%2$s('%1$d',$,'%3$s',$,'%4$s',#14,#%6$d,$,$);
        #%6$d=IFCPRODUCTDEFINITIONSHAPE($,$,(#%7$d));
        #%7$d=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#%8$d));
        #%8$d=IFCEXTRUDEDAREASOLID(#%9$d,$,#13,2000.);
        #%9$d=%5$s;
        """
        .formatted(id, keyword, name, type, profile, at, at + 1, at + 2, at + 3);
  }

  private static final String PLACE =
      """
      #13=IFCDIRECTION((0.,0.,1.));
      #14=IFCLOCALPLACEMENT($,#15);
      #15=IFCAXIS2PLACEMENT3D(#16,$,$);
      #16=IFCCARTESIANPOINT((0.,0.,0.));
      """;

  private static String round(double diameterMm) {
    return "IFCCIRCLEPROFILEDEF(.AREA.,$,$," + diameterMm / 2 + ")";
  }

  private static String rectangle(double widthMm, double heightMm) {
    return "IFCRECTANGLEPROFILEDEF(.AREA.,$,$," + widthMm + "," + heightMm + ")";
  }

  private static @Nullable String size(MepElement element) {
    return element.section() == null ? null : InWords.section(value(element.section()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Kanal|Width;IFCLENGTHMEASURE(400.);Height;IFCLENGTHMEASURE(400.)",
        "Kanal|Size;IFCTEXT('400x400')",
        "Kanal 400x400|Tag;IFCTEXT('x')"
      })
  void ductDrawnAsItIsStatedHasNoInsulationAroundTheSizeOfItsType(String name, String stated) {
    MepModel model =
        read(
            PLACE
                + piece(1000, DUCT, name, "Kanal 200x200", rectangle(400, 400))
                + properties(500, 1000, "Set", stated.split(";", -1)));

    assertThat(size(element(model, 1000))).isEqualTo("400.0 x 400.0 mm");
    assertThat(element(model, 1000).existingInsulation()).isNull();
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT");
  }

  /** 33.7 mm is DN 25, and by 2 x 6 mm wider than the 21.7 mm of a pipe of DN 15. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Rohr|Outer Diameter;IFCPOSITIVELENGTHMEASURE(33.7)",
        "Rohr|Nominal Diameter;IFCPOSITIVELENGTHMEASURE(25.)",
        "Rohr DN25|Tag;IFCTEXT('x')",
        "Rohr 33,7x2,6|Tag;IFCTEXT('x')"
      })
  void pipeDrawnAsItIsStatedHasNoInsulationAroundTheSizeOfItsType(String name, String stated) {
    MepModel model =
        read(
            PLACE
                + piece(1000, PIPE, name, "Stahlrohr DN15", round(33.7))
                + properties(500, 1000, "Set", stated.split(";", -1)));

    assertThat(size(element(model, 1000))).isEqualTo("33.7 mm");
    assertThat(element(model, 1000).existingInsulation()).isNull();
  }

  /** What must stay: nothing says 120.3 mm, so the rest around a pipe of DN 50 is insulation. */
  @Test
  void sizeOfTheTypeLeavesInsulationWhereNothingSaysOtherwise() {
    MepModel model = read(PLACE + piece(1000, PIPE, "Rohr", "Stahlrohr DN50", round(120.3)));

    assertThat(size(element(model, 1000))).isEqualTo("60.3 mm");
    assertThat(Objects.requireNonNull(element(model, 1000).existingInsulation()).thicknessM())
        .isCloseTo(0.03, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Stahlrohr DN10-DN200",
        "Kupferrohr DN 15 - DN 50",
        "Rohr DN15 bis DN50",
        "Pipe DN15..DN200",
        "Pipe DN15 to DN200",
        "Rohr DN15, DN20, DN50",
        "Rohr DN15-50",
        "Rohr 16x2 - 63x5,8",
        "Rohr \u00D816 - \u00D863"
      })
  void typeForManySizesTellsNoneOfAPipe(String type) {
    for (double diameterMm : new double[] {33.7, 60.3, 219.1}) {
      MepModel model = read(PLACE + piece(1000, PIPE, "Rohr", type, round(diameterMm)));

      assertThat(size(element(model, 1000))).isEqualTo(diameterMm + " mm");
      assertThat(element(model, 1000).existingInsulation()).isNull();
      assertThat(codes(model)).isEmpty();
    }
    MepModel bodyless = read("#1000=%s('1',$,'Rohr',$,'%s',$,$,$,$);\n".formatted(PIPE, type));
    assertThat(size(element(bodyless, 1000))).isNull();
    assertThat(element(bodyless, 1000).nominalSize()).isNull();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Spiralrohr DN100-DN500",
        "Rohr \u00D8100 - \u00D8500",
        "Kanal 200x200 bis 2000x2000",
        "Kanal 200x200-2000x1000"
      })
  void typeForManySizesTellsNoneOfADuct(String type) {
    MepModel model =
        read(
            PLACE
                + piece(1000, DUCT, "Rohr", type, round(160))
                + piece(2000, DUCT, "Kanal", type, rectangle(400, 400)));

    assertThat(size(element(model, 1000))).isEqualTo("160.0 mm");
    assertThat(size(element(model, 2000))).isEqualTo("400.0 x 400.0 mm");
    assertThat(codes(model)).isEmpty();
  }

  /** What must stay: two figures that are no list. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Rohr DN50-PN16|60.3 mm",
        "Rohr DN50-6000|60.3 mm",
        "Rohr DN50 - 100 mm|60.3 mm",
        "Rohr DN50, DN50|60.3 mm",
        "Rohr DN 50 - 60,3x3,2|60.3 mm",
        "Rohr DN50 in DN80 Rohr|60.3 mm",
        "Rohr 22x1 / DN20|22.0 mm"
      })
  void oneSizeWithOtherFiguresBehindItIsStillTheSize(String name, String size) {
    MepModel model = read("#1=%s('1',$,'%s',$,$,$,$,$,$);\n".formatted(PIPE, name));

    assertThat(size(element(model, 1))).isEqualTo(size);
  }

  @Test
  void typeOfOneSizeOnPiecesOfManyTellsNone() {
    StringBuilder records = new StringBuilder(PLACE);
    double[] drawnMm = {160, 200, 250, 100};
    for (int i = 0; i < drawnMm.length; i++) {
      String name = "Luftkanal \u00D8100:" + i;
      records.append(piece(1000 + 10 * i, DUCT, name, "Luftkanal \u00D8100", round(drawnMm[i])));
    }
    MepModel model = read(records.toString());

    for (int i = 0; i < drawnMm.length; i++) {
      assertThat(size(element(model, 1000 + 10 * i))).isEqualTo(drawnMm[i] + " mm");
      assertThat(element(model, 1000 + 10 * i).existingInsulation()).isNull();
    }
    assertThat(codes(model)).containsExactly("PLACEHOLDER_VALUES");
  }

  /** Pieces of one size, bare and with insulation of two thicknesses. */
  @Test
  void typeOfOneSizeOnBareAndInsulatedPiecesIsTheirSize() {
    StringBuilder records = new StringBuilder(PLACE);
    double[] drawnMm = {60.3, 120.3, 140.3, 120.3, 120.3};
    for (int i = 0; i < drawnMm.length; i++) {
      records.append(piece(1000 + 10 * i, PIPE, "Rohr", "Rohr DN50", round(drawnMm[i])));
    }
    MepModel model = read(records.toString());

    for (int i = 0; i < drawnMm.length; i++) {
      assertThat(size(element(model, 1000 + 10 * i))).isEqualTo("60.3 mm");
    }
  }
}
