package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.join;
import static org.lagwright.ifc.extract.InlineModel.message;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.insulation.InsulationTest.BODY_ONLY;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ring;
import static org.lagwright.ifc.extract.insulation.InsulationTest.thickness;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepModel;

/** What insulates an element that two files hold: its coverings count, whichever holds them. */
class RepeatedInsulationTest {

  private static final String RELATED = "#9=IFCRELCOVERSBLDGELEMENTS('9',$,$,$,#1,(#200));\n";

  private static final String WOOL = covering(2, "Wool", ring(120.3, 30), 0, 2500) + RELATED;

  @Test
  void coveringThatOnlyTheLaterFileNamesComesBeforeWhatThePipeStates() {
    String stated = properties("Insulation Thickness", "IFCLENGTHMEASURE(50.)");
    List<MepModel> models = join(PIPE + stated, PIPE + WOOL);

    assertThat(element(models.get(1), 1).repeats()).isEqualTo(new ElementKey(0, 1));
    assertThat(mm(of(models.get(0), 1))).isCloseTo(30, within(0.01));
    assertThat(of(models.get(0), 1).coverings()).containsExactly(new ElementKey(1, 200));
    assertThat(codes(models.get(0))).containsOnlyOnce("INSULATION_CONFLICT");
  }

  /** How thick it is shows beside the body of the pipe only. */
  @Test
  void coveringOfThePipeWithoutBodyIsMeasuredOnThatOfAnotherFile() {
    String solid = WOOL.replace(ring(120.3, 30), "IFCCIRCLEPROFILEDEF(.AREA.,$,$,60.15)");
    String bare = "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,$,$,$);\n" + BODY_ONLY;
    List<MepModel> models = join(bare + solid, PIPE);

    assertThat(element(models.get(0), 1).repeats()).isEqualTo(new ElementKey(1, 1));
    assertThat(mm(of(models.get(1), 1))).isCloseTo(30, within(0.01));
  }

  @Test
  void coveringThatBothFilesHoldIsOneLayer() {
    String undrawn =
        "#200=IFCCOVERING('c',$,'Wool',$,$,$,$,$,.INSULATION.);\n" + RELATED + thickness(2, 30);
    for (String each : new String[] {WOOL, undrawn}) {
      List<MepModel> models = join(PIPE + each, PIPE + each);

      assertThat(mm(of(models.get(0), 1))).isCloseTo(30, within(0.01));
      assertThat(of(models.get(0), 1).coverings()).containsExactly(new ElementKey(0, 200));
      assertThat(codes(models.get(0))).doesNotContain("INSULATION_CONFLICT");
    }
  }

  /** Its file holds the inner layer, and the other one the outer. */
  @Test
  void layersThatTwoFilesNameAddUp() {
    String outer = covering(3, "Foam", ring(160.3, 20), 0, 2500) + RELATED.replace("200", "300");
    List<MepModel> models = join(PIPE + WOOL, PIPE + outer);

    assertThat(mm(of(models.get(0), 1))).isCloseTo(50, within(0.01));
    assertThat(of(models.get(0), 1).coverings())
        .containsExactly(new ElementKey(0, 200), new ElementKey(1, 300));
  }

  /** Layers of one file lie in one another so; another file rather shows the insulation again. */
  @Test
  void fullBodiesOfTwoFilesThatDifferAreTold() {
    String wool = covering(2, "Wool", "IFCCIRCLEPROFILEDEF(.AREA.,$,$,60.15)", 0, 2500);
    String thicker = covering(3, "Wool", "IFCCIRCLEPROFILEDEF(.AREA.,$,$,70.15)", 0, 2500);
    List<MepModel> models =
        join(PIPE + wool + RELATED, PIPE + thicker + RELATED.replace("200", "300"));

    assertThat(mm(of(models.get(0), 1))).isCloseTo(40, within(0.01));
    assertThat(message(models.get(0), "INSULATION_CONFLICT")).contains("30.0 mm", "40.0 mm");
  }

  @Test
  void liningThatOnlyTheLaterFileShowsBelongsToTheDuctThatCounts() {
    String duct =
        "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
            + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,500.,300.)");
    String lined = properties("Lining Thickness", "IFCLENGTHMEASURE(25.)");

    assertThat(element(join(duct, duct + lined).get(0), 1).lining()).isNotNull();
  }

  private static String stated(double mm) {
    return properties("Insulation Thickness", "IFCLENGTHMEASURE(%s)".formatted(mm));
  }

  @ParameterizedTest
  @CsvSource({"'1'", "'another'"})
  void thicknessesOfTwoFilesThatDifferAreToldAndTheEarlierCounts(String globalId) {
    String again = PIPE.replace("IFCPIPESEGMENT('1'", "IFCPIPESEGMENT('%s'".formatted(globalId));
    for (String first : new String[] {stated(30), WOOL}) {
      List<MepModel> models = join(PIPE + first, again + stated(50));

      assertThat(element(models.get(1), 1).repeats()).isEqualTo(new ElementKey(0, 1));
      assertThat(mm(of(models.get(0), 1))).isCloseTo(30, within(0.01));
      assertThat(message(models.get(0), "INSULATION_CONFLICT"))
          .contains("30.0 mm")
          .contains("50.0 mm (#510 Set.Insulation Thickness = 50.0) in inline.ifc");
    }
  }

  @Test
  void thicknessThatBothFilesTellIsNoContradiction() {
    List<MepModel> models = join(PIPE + stated(30), PIPE + stated(30.5));

    assertThat(codes(models.get(0))).doesNotContain("INSULATION_CONFLICT");
  }

  /** 30 mm of wool lie under 20 mm of foam, of which the other file knows one only. */
  @Test
  void fileThatHoldsOneOfTwoLayersDoesNotContradictBoth() {
    String outer =
        covering(3, "Foam", ring(160.3, 20), 0, 2500)
            + RELATED.replace("#9=", "#8=").replace("200", "300");
    for (String[] files :
        new String[][] {{PIPE + WOOL + outer, PIPE + WOOL}, {PIPE + WOOL, PIPE + WOOL + outer}}) {
      List<MepModel> models = join(files);

      assertThat(mm(of(models.get(0), 1))).isCloseTo(50, within(0.01));
      assertThat(codes(models.get(0))).doesNotContain("INSULATION_CONFLICT");
    }
  }

  /** One file holds the pipe that it covers; in the other one it lies around nothing. */
  @ParameterizedTest
  @CsvSource({"0,1,true", "1,0,true", "0,1,false", "1,0,false"})
  void coveringThatBothFilesHoldAndOneOfThemAPipeForIsListedOnce(
      int hosted, int orphan, boolean drawn) {
    String alone =
        drawn
            ? covering(2, "Wool", ring(120.3, 30), 0, 2500)
            : "#200=IFCCOVERING('c',$,'Wool',$,$,$,$,$,.INSULATION.);\n" + thickness(2, 30);
    String[] files = new String[2];
    files[hosted] = PIPE + alone + RELATED;
    files[orphan] = BODY_ONLY + alone;
    List<MepModel> models = join(files);

    assertThat(element(models.get(orphan), 200).repeats()).isEqualTo(new ElementKey(hosted, 200));
    assertThat(element(models.get(hosted), 200).repeats()).isNull();
    assertThat(mm(of(models.get(hosted), 1))).isCloseTo(30, within(0.01));
    assertThat(of(models.get(hosted), 1).coverings()).containsExactly(new ElementKey(hosted, 200));
    assertThat(codes(models.get(orphan))).containsExactly("REPEATED_ELEMENTS");
    assertThat(codes(models.get(hosted))).isEmpty();
  }

  /** What only one file holds a pipe for is drawn up to 2.5 m, and a metre further is elsewhere. */
  @ParameterizedTest
  @CsvSource({"3400,true", "3700,false"})
  void coveringOfOneGlobalIdElsewhereIsAnother(double placedMm, boolean same) {
    String alone = BODY_ONLY + covering(2, "Wool", ring(120.3, 30), 0, 2500);
    String hosted = PIPE + covering(2, "Wool", ring(120.3, 30), placedMm, 2500) + RELATED;

    assertThat(codes(join(alone, hosted).get(1)).contains("SAME_ID_ELSEWHERE")).isEqualTo(!same);
    assertThat(codes(join(hosted, alone).get(1)).contains("SAME_ID_ELSEWHERE")).isEqualTo(!same);
  }
}
