package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.join;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.BODY_ONLY;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ring;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepModel;

/** Coverings that contradict themselves, or the pipe of 60.3 mm that they are said to cover. */
class CoveringConflictTest {

  private static final String RELATED = "#9=IFCRELCOVERSBLDGELEMENTS('9',$,$,$,#1,(#200));\n";

  private static final String FULL = "IFCCIRCLEPROFILEDEF(.AREA.,$,$,60.15)";

  @ParameterizedTest
  @CsvSource({
    "Wool 60 mm,true",
    "Wool 30 mm,false",
    "Wool,false",
    "Shell 60.3 mm,false",
    "Shell 60/30 mm,false",
    "Wool 1500 mm,false"
  })
  void nameThatTellsAnotherThicknessThanIsDrawnIsAFinding(String name, boolean found) {
    for (String profile : new String[] {ring(120.3, 30), FULL}) {
      MepModel model = read(PIPE + covering(2, name, profile, 0, 2500) + RELATED);

      assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
      assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
    }
  }

  /** Around an inner layer a full body shows both. */
  @Test
  void nameOfAnOuterLayerIsNotHeldAgainstBothLayers() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool 30 mm", FULL, 0, 2500)
                + covering(3, "Foam 20 mm", FULL.replace("60.15", "80.15"), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(50, within(0.01));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({"Wool,60,true", "Wool,30,false", "Wool 60 mm,30,true", "Wool 30 mm,30,false"})
  void coveringWithoutABodyThatTellsTwoThicknessesIsAFinding(
      String name, double widthMm, boolean found) {
    String stated =
        properties(250, 200, "Set", "Thickness", "IFCLENGTHMEASURE(30.)")
            + "#280=IFCELEMENTQUANTITY('q',$,'Qto_CoveringBaseQuantities',$,$,(#281));\n"
            + "#281=IFCQUANTITYLENGTH('Width',$,$,%s,$);\n".formatted(widthMm)
            + "#282=IFCRELDEFINESBYPROPERTIES('rq',$,$,$,(#200),#280);\n";
    MepModel model =
        read(
            PIPE
                + "#200=IFCCOVERING('c',$,'%s',$,$,$,$,$,.INSULATION.);\n".formatted(name)
                + RELATED
                + stated);

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
  }

  @Test
  void widthOfABoardAmongThePropertiesIsNoSecondThickness() {
    MepModel model =
        read(
            PIPE
                + "#200=IFCCOVERING('c',$,'Board',$,$,$,$,$,.INSULATION.);\n"
                + RELATED
                + properties(
                    250,
                    200,
                    "Set",
                    "Thickness",
                    "IFCLENGTHMEASURE(30.)",
                    "Width",
                    "IFCLENGTHMEASURE(400.)"));

    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({"40000.,true", "800.,true", "400.,false", "0.,false"})
  void coveringThatIsDrawnAwayFromItsPipeIsAFinding(String xMm, boolean found) {
    String drawn =
        covering(2, "Wool", ring(120.3, 30), 0, 2500)
            .replace("((0.0,0.0,0.0))", "((%s,0.,0.))".formatted(xMm));
    MepModel model = read(PIPE + drawn + RELATED);

    assertThat(drawn).contains("((" + xMm);
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
  }

  @ParameterizedTest
  @CsvSource({"50,15,true", "60.3,15,false", "90.3,15,false"})
  void coveringThatIsDrawnInsideOfItsPipeIsAFinding(
      double diameterMm, double wallMm, boolean found) {
    MepModel model = read(PIPE + covering(2, "Wool", ring(diameterMm, wallMm), 0, 2500) + RELATED);

    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
  }

  @Test
  void liningOfADuctIsNoCoveringThatIsTooNarrow() {
    MepModel model =
        read(
            "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
                + InlineModel.body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,150.)")
                + covering(2, "Lining", ring(250, 25), 0, 2500)
                + RELATED);

    assertThat(InlineModel.element(model, 1).lining()).isNotNull();
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  /** What is drawn is 30 mm; the finding is on the pipe and names the file of the covering. */
  @ParameterizedTest
  @CsvSource({"Wool 60 mm,true", "Wool 30 mm,false"})
  void coveringOfAnotherFileThatContradictsItselfIsAFinding(String name, boolean found) {
    List<MepModel> models = join(PIPE, BODY_ONLY + covering(2, name, ring(120.3, 30), 0, 2500));

    assertThat(mm(of(models.get(0), 1))).isCloseTo(30, within(0.01));
    assertThat(codes(models.get(0)).contains("INSULATION_CONFLICT")).isEqualTo(found);
    assertThat(models.get(0).findings().toString().contains("by the name of #200 in inline.ifc"))
        .isEqualTo(found);
  }

  /** What its own file told of the pipe is told once, beside what the covering shows. */
  @Test
  void pipeThatContradictsItselfIsComparedWithTheCoveringOfAnotherFileOnly() {
    String stated =
        properties(
            500,
            1,
            "Set",
            "Insulation Thickness",
            "IFCLENGTHMEASURE(50.)",
            "Insulation Type",
            "IFCLABEL('Wool 40 mm')");
    List<MepModel> models =
        join(PIPE + stated, BODY_ONLY + covering(2, "Wool", ring(120.3, 30), 0, 2500));
    MepModel one = read(PIPE + stated + covering(2, "Wool", ring(120.3, 30), 0, 2500));

    assertThat(mm(of(models.get(0), 1))).isCloseTo(30, within(0.01));
    assertThat(codes(models.get(0))).containsOnlyOnce("INSULATION_CONFLICT");
    assertThat(codes(one)).containsOnlyOnce("INSULATION_CONFLICT");
    assertThat(models.get(0).findings().toString()).contains("Thickness = 50", "Wool 40 mm");
  }

  /**
   * Both from the pipe on, a second layer around the first, one drawn twice, and its sheet, which
   * is no insulation.
   */
  @ParameterizedTest
  @CsvSource({
    "140.3,40,40,true",
    "100.3,20,30,true",
    "160.3,20,50,false",
    "120.3,30,30,false",
    "122.3,1,30,false",
    "122.3,31,31,false"
  })
  void coveringsOfTwoThicknessesAtTheSamePlaceAreAFinding(
      double diameterMm, double wallMm, double thicknessMm, boolean found) {
    String one = covering(2, "Wool", ring(120.3, 30), 0, 2500);
    String other = covering(3, "Wool", ring(diameterMm, wallMm), 0, 2500);
    MepModel inOneFile = read(PIPE + one + other);
    MepModel ofTwoFiles = join(PIPE + one, BODY_ONLY + other).get(0);
    MepModel ofThreeFiles = join(PIPE, BODY_ONLY + one, BODY_ONLY + other).get(0);

    for (MepModel model : List.of(inOneFile, ofTwoFiles, ofThreeFiles)) {
      assertThat(mm(of(model, 1))).isCloseTo(thicknessMm, within(0.01));
      assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
    }
    if (found) {
      assertThat(InlineModel.message(ofTwoFiles, "INSULATION_CONFLICT"))
          .contains(" mm by #300", "30.0 mm by #200", "in inline.ifc", "drawn at the same place");
    }
  }

  /** Nothing in the model says 70 mm. */
  @Test
  void statedThicknessesOfCoveringsAtTheSamePlaceAreNotAddedUp() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool", ring(120.3, 30), 0, 2500)
                + properties(250, 200, "Set", "Thickness", "IFCLENGTHMEASURE(30.)")
                + covering(3, "Wool", ring(140.3, 40), 0, 2500)
                + properties(350, 300, "Set", "Thickness", "IFCLENGTHMEASURE(40.)"));

    assertThat(mm(of(model, 1))).isCloseTo(40, within(0.01));
    assertThat(codes(model)).containsOnlyOnce("INSULATION_CONFLICT");
    assertThat(InlineModel.message(model, "INSULATION_CONFLICT"))
        .contains("drawn at the same place")
        .doesNotContain("70");
  }

  /** Pieces of two thicknesses one after the other are told as such. */
  @Test
  void coveringsBesideEachOtherAreNotAtTheSamePlace() {
    MepModel model =
        read(
            PIPE
                + covering(2, "Wool", ring(120.3, 30), 0, 1250)
                + covering(3, "Wool", ring(140.3, 40), 1250, 1250));

    assertThat(InlineModel.message(model, "INSULATION_CONFLICT"))
        .contains("on another part")
        .doesNotContain("same place");
  }

  /** Nobody draws the layers of one pipe in two files, or one layer of two. */
  @ParameterizedTest
  @CsvSource({"40,true", "30,false"})
  void coveringWithoutABodyThatDiffersFromThatOfAnotherFileIsAFinding(
      double otherMm, boolean found) {
    String drawn = PIPE + covering(2, "Wool", ring(120.3, 30), 0, 2500) + RELATED;
    MepModel undrawn = join(undrawn(30), undrawn(otherMm)).get(0);
    MepModel half = join(drawn, undrawn(otherMm)).get(0);

    assertThat(codes(half).contains("INSULATION_CONFLICT")).isEqualTo(found);
    assertThat(codes(undrawn).contains("INSULATION_CONFLICT")).isEqualTo(found);
    assertThat(undrawn.findings().toString().contains("by #200 and 40.0 mm by #200 in inline.ifc"))
        .isEqualTo(found);
  }

  private static String undrawn(double thicknessMm) {
    return PIPE
        + "#200=IFCCOVERING('of%s',$,'Wool',$,$,$,$,$,.INSULATION.);\n".formatted(thicknessMm)
        + RELATED
        + properties(250, 200, "Set", "Thickness", "IFCLENGTHMEASURE(%s)".formatted(thicknessMm));
  }
}
