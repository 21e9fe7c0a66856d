package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ring;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.MepModel;

/** What a model shows of insulation against what else it says of it. */
class InsulationConflictTest {

  @ParameterizedTest
  @CsvSource({"30,false", "50,true"})
  void layerThatDiffersFromTheCoveringIsAFinding(double thicknessMm, boolean found) {
    MepModel model =
        read(
            PIPE
                + InsulationInMaterialTest.layers("Insulation", thicknessMm)
                + covering(2, "Wool", ring(120.3, 30), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
  }

  /** What may be there against fire, sound or damage alone; wool against fire insulates as well. */
  @ParameterizedTest
  @CsvSource({
    "Brandschutz 30 mm,true",
    "Fire wrap,true",
    "Fire protection wool,true",
    "Acoustic lagging,true",
    "Betonummantelung,true",
    "PE coating,true",
    "Wool with alu coating,false",
    "Frost protection,false",
    "Wool,false"
  })
  void coveringThatMayServeAnotherPurposeIsAFinding(String name, boolean found) {
    MepModel model = read(PIPE + covering(2, name, ring(120.3, 30), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
  }

  @ParameterizedTest
  @CsvSource({
    "Wool 50 mm,true",
    "None,true",
    "No insulation,true",
    "Wool 30 mm,false",
    "Wool,false",
    "Unknown,false",
    "Non-combustible wool,false"
  })
  void textThatContradictsTheThicknessIsAFinding(String text, boolean found) {
    MepModel model =
        read(
            PIPE
                + properties(
                    "Insulation Thickness",
                    "IFCLENGTHMEASURE(30.)",
                    "Insulation Type",
                    "IFCLABEL('" + text + "')"));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
  }

  @ParameterizedTest
  @CsvSource({
    "Pipe insulated 50 mm,true",
    "Pipe insulated 30 mm,false",
    "Pipe 50 mm,false",
    "Pipe insulated 2 x 15 mm,false"
  })
  void nameThatContradictsTheThicknessIsAFinding(String name, boolean found) {
    MepModel model =
        read(
            PIPE.replace("'Pipe'", "'" + name + "'")
                + properties("Insulation Thickness", "IFCLENGTHMEASURE(30.)"));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
  }

  @ParameterizedTest
  @CsvSource({"F,true", "T,false", "U,false"})
  void noThatContradictsTheThicknessIsAFinding(String insulated, boolean found) {
    MepModel model =
        read(
            PIPE
                + properties("Insulated", "IFCLOGICAL(." + insulated + ".)")
                + covering(2, "Wool", ring(120.3, 30), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
  }

  /** The sets of type and element have different names, so the zero does not replace the figure. */
  @ParameterizedTest
  @CsvSource({"0.,true", "30.,false"})
  void zeroOfAnElementWhoseTypeStatesAThicknessIsAFinding(String own, boolean found) {
    String type =
        """
        #600=IFCPROPERTYSINGLEVALUE('Insulation Thickness',$,IFCLENGTHMEASURE(30.),$);
        #601=IFCPROPERTYSET('601',$,'Type data',$,(#600));
        #602=IFCPIPESEGMENTTYPE('602',$,'Steel pipe',$,$,(#601),$,$,$,.RIGIDSEGMENT.);
        #603=IFCRELDEFINESBYTYPE('603',$,$,$,(#1),#602);
        """;
    MepModel model =
        read(PIPE + type + properties("Insulation Thickness", "IFCLENGTHMEASURE(" + own + ")"));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(found);
  }
}
