package org.lagwright.ifc.extract.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.MILLIMETRES;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.read;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepModel;

/** Round pieces that only the air in them tells from pipes. */
class AirLineTest {

  private static final String ROUND = body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,100.)");

  private static MepModel inSystem(String element, String system) {
    return read(
        "IFC2X3",
        MILLIMETRES
            + ROUND
            + "#1=%s;\n".formatted(element)
            + "#60=IFCSYSTEM('60',$,'%s',$,$);\n".formatted(system)
            + "#61=IFCRELASSIGNSTOGROUP('61',$,$,$,(#1),$,#60);\n");
  }

  private static String segment(String name) {
    return "IFCFLOWSEGMENT('1',$,'%s',$,$,#14,#10,$)".formatted(name);
  }

  @ParameterizedTest(name = "{0} in {1}")
  @CsvSource({
    "Rohr DN200, Zuluft 1",
    "Leitung, RLT 01",
    "Teil 7, Supply Air 2",
    "Tubo 200, Aria di ripresa",
    "T-4711, 21.2 Poistoilma",
  })
  void tubeOfASystemOfAirIsADuct(String name, String system) {
    MepModel model = inSystem(segment(name), system);

    assertThat(element(model, 1).kind()).isEqualTo(Kind.DUCT_SEGMENT);
    assertThat(model.findings())
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.message())
                    .contains("duct segment is assumed because its system is " + system));
  }

  @ParameterizedTest(name = "{0} in {1}")
  @CsvSource({
    "Stahlrohr DN50, Zuluft 1",
    "Pipe 50, Supply Air 2",
    "Rohr DN50, Heizregister Zuluft",
    "Rohr DN50, Nachheizung Abluft",
    "Rohr DN50, Druckluft",
    "Rohr DN50, Heizung Vorlauf",
  })
  void pipeThatIsNamedSoOrServesTheAirStaysOne(String name, String system) {
    assertThat(element(inSystem(segment(name), system), 1).kind()).isEqualTo(Kind.PIPE_SEGMENT);
  }

  @Test
  void fittingThatNothingNamesIsADuctFittingThere() {
    String fitting = "IFCFLOWFITTING('1',$,'Bogen 90',$,$,#14,#10,$)";

    assertThat(element(inSystem(fitting, "Abluft"), 1).kind()).isEqualTo(Kind.DUCT_FITTING);
    assertThat(element(inSystem(fitting, "System 4"), 1).kind()).isEqualTo(Kind.PIPE_FITTING);
  }

  @ParameterizedTest
  @ValueSource(strings = {"TGA_RLT_ZU_E_SUP", "L-Fortluft"})
  void layerTellsWhereNoSystemDoes(String layer) {
    MepModel model =
        read(
            ROUND
                + "#1="
                + segment("Rohr")
                + ";\n#60=IFCPRESENTATIONLAYERASSIGNMENT('%s',$,(#11),$);\n".formatted(layer));

    assertThat(element(model, 1).kind()).isEqualTo(Kind.DUCT_SEGMENT);
    assertThat(codes(model)).containsExactly("KIND_ASSUMED");
  }

  @Test
  void typeOfTheSystemTells() {
    MepModel model =
        read(
            ROUND
                + "#1="
                + segment("Rohr")
                + ";\n#60=IFCDISTRIBUTIONSYSTEM('60',$,'S 1',$,$,$,.VENTILATION.);\n"
                + "#61=IFCRELASSIGNSTOGROUP('61',$,$,$,(#1),$,#60);\n");

    assertThat(element(model, 1).kind()).isEqualTo(Kind.DUCT_SEGMENT);
  }

  @ParameterizedTest
  @CsvSource({".DUCT.,DUCT_SEGMENT", ".PIPE.,PIPE_SEGMENT", "$,PIPE_SEGMENT"})
  void portTellsWhatItJoins(String predefined, Kind kind) {
    MepModel model =
        read(
            ROUND
                + "#1="
                + segment("Teil 7")
                + ";\n#60=IFCDISTRIBUTIONPORT('60',$,$,$,$,$,$,$,%s,$);\n".formatted(predefined)
                + "#61=IFCRELNESTS('61',$,$,$,#1,(#60));\n");

    assertThat(element(model, 1).kind()).isEqualTo(kind);
    assertThat(codes(model)).contains("KIND_ASSUMED");
  }

  @Test
  void classThatSaysPipeIsBelieved() {
    String pipe = "IFCPIPESEGMENT('1',$,'Rohr',$,$,#14,#10,$,$)";
    MepModel model =
        read(
            ROUND
                + "#1=%s;\n".formatted(pipe)
                + "#60=IFCSYSTEM('60',$,'Zuluft',$,$);\n"
                + "#61=IFCRELASSIGNSTOGROUP('61',$,$,$,(#1),$,#60);\n");

    assertThat(element(model, 1).kind()).isEqualTo(Kind.PIPE_SEGMENT);
  }
}
