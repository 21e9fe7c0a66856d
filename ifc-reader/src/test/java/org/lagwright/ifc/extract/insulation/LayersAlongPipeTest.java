package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.message;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ring;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepModel;

/** Layers count where they lie, and only if they insulate. The pipe is 60.3 mm wide, 2.5 m long. */
class LayersAlongPipeTest {

  private static String circle(double diameterMm) {
    return "IFCCIRCLEPROFILEDEF(.AREA.,$,$," + diameterMm / 2 + ")";
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void layerOnAPartOfThePipeIsNotTheThicknessOfAllOfIt(boolean hollow) {
    String inner = hollow ? ring(120.3, 30) : circle(120.3);
    String outer = hollow ? ring(180.3, 30) : circle(180.3);
    MepModel model =
        read(PIPE + covering(2, "Wool", inner, 0, 2500) + covering(3, "Wool", outer, 1000, 600));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(1, within(0.001));
    assertThat(message(model, "INSULATION_CONFLICT"))
        .contains("30.0 mm on most of it", "60.0 mm on another part");
  }

  @Test
  void layerThatIsCutBackAtTheEndsLiesOnAllOfThePipe() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool", ring(120.3, 30), 0, 2500)
                + covering(3, "Wool", ring(180.3, 30), 50, 2400));

    assertThat(mm(of(model, 1))).isCloseTo(60, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(1, within(0.001));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  /** Each layer in two pieces with its joint elsewhere. */
  @Test
  void layersWithTheirJointsApartLieOnAllOfThePipe() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool", ring(120.3, 30), 0, 1500)
                + covering(3, "Wool", ring(120.3, 30), 1500, 1000)
                + covering(4, "Wool", ring(180.3, 30), 0, 1000)
                + covering(5, "Wool", ring(180.3, 30), 1000, 1500));

    assertThat(mm(of(model, 1))).isCloseTo(60, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(1, within(0.001));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  /** None of them is long against all of them. */
  @Test
  void manyPiecesOneBehindTheOtherAreTheThicknessOfAllOfThePipe() {
    StringBuilder pieces = new StringBuilder(PIPE);
    for (int i = 0; i < 25; i++) {
      pieces.append(covering(20 + i, "Wool", ring(120.3, 30), 100 * i, 100));
    }
    MepModel model = read(pieces.toString());

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(1, within(0.001));
    assertThat(of(model, 1).coverings()).hasSize(25);
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void sheetAroundTheInsulationIsNoneOfItsThickness(boolean hollow) {
    String wool = hollow ? ring(120.3, 30) : circle(120.3);
    String sheet = hollow ? ring(122.3, 1) : circle(122.3);
    MepModel model =
        read(PIPE + covering(2, "Wool", wool, 0, 2500) + covering(3, "Sheet", sheet, 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(of(model, 1).coverings()).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({
    "Fire collar,USERDEFINED,OTHER",
    "Brandschutzmanschette,WRAPPING,OTHER",
    "Wall sleeve,SLEEVING,OTHER",
    "Fire collar insulation,USERDEFINED,COVERING",
    "Fire collar,INSULATION,COVERING"
  })
  void fireCollarOrSleeveAmongTheCoveringsInsulatesNothing(String name, String type, Kind kind) {
    String collar =
        covering(2, name, ring(110.3, 25), 1000, 60).replace(".INSULATION.", "." + type + ".");
    MepModel model = read(PIPE + collar);

    assertThat(element(model, 200).kind()).isEqualTo(kind);
    assertThat(element(model, 1).existingInsulation() == null).isEqualTo(kind == Kind.OTHER);
  }
}
