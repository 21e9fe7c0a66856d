package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.join.ModelJoinerTest.codes;
import static org.lagwright.ifc.extract.join.ModelJoinerTest.join;
import static org.lagwright.ifc.extract.join.ModelJoinerTest.pipe;
import static org.lagwright.ifc.extract.join.ModelJoinerTest.wool;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.MepModel;

/** Coverings in one file around straight pipes of another. */
class CrossCoveringsTest {

  @ParameterizedTest
  @CsvSource({"0,2500,1.0", "0,1250,0.5", "-500,3500,1.0"})
  void coveringLiesAroundThePipeOfAnotherFile(double zMm, double lengthMm, double share) {
    List<MepModel> models = join(pipe("a", 0, 0), wool(zMm, lengthMm, 120.3));
    ExistingInsulation shown =
        Objects.requireNonNull(element(models.get(0), 1).existingInsulation());

    assertThat(shown.thicknessM()).isCloseTo(0.03, within(1e-6));
    assertThat(shown.share()).isCloseTo(share, within(1e-6));
    assertThat(shown.coverings()).containsExactly(new ElementKey(1, 1));
    assertThat(codes(models)).doesNotContain("COVERING_WITHOUT_HOST", "FILES_CONNECTED");
  }

  @Test
  void coveringBesideAllPipesOfTheOtherFileStaysWithoutHost() {
    List<MepModel> models = join(pipe("a", 80, 0), wool(0, 2500, 120.3));

    assertThat(element(models.get(0), 1).existingInsulation()).isNull();
    assertThat(codes(models)).containsOnlyOnce("COVERING_WITHOUT_HOST");
  }

  /** 30 mm are drawn: what the pipe states is held against that, as in one file. */
  @ParameterizedTest
  @CsvSource({
    "Insulation Thickness,IFCLENGTHMEASURE(50.),true",
    "Insulation Thickness,IFCLENGTHMEASURE(30.),false",
    "Insulated,IFCBOOLEAN(.T.),false"
  })
  void coveringThatTheOtherFileDrawsComesBeforeWhatThePipeStates(
      String name, String value, boolean conflict) {
    List<MepModel> models = join(pipe("a", 0, 0) + properties(name, value), wool(0, 2500, 120.3));
    ExistingInsulation shown =
        Objects.requireNonNull(element(models.get(0), 1).existingInsulation());

    assertThat(shown.thicknessM()).isCloseTo(0.03, within(1e-6));
    assertThat(shown.coverings()).containsExactly(new ElementKey(1, 1));
    assertThat(codes(models).contains("INSULATION_CONFLICT")).isEqualTo(conflict);
  }

  /** A skin of 1 mm is too thin for insulation. */
  @Test
  void coatOfAnotherFileIsNoInsulationBesideWhatThePipeStates() {
    List<MepModel> models =
        join(
            pipe("a", 0, 0) + properties("Insulation Thickness", "IFCLENGTHMEASURE(50.)"),
            wool(0, 2500, 62.3));
    ExistingInsulation shown =
        Objects.requireNonNull(element(models.get(0), 1).existingInsulation());

    assertThat(shown.thicknessM()).isEqualTo(0.05);
    assertThat(shown.coverings()).isEmpty();
    assertThat(codes(models)).doesNotContain("COVERING_WITHOUT_HOST", "INSULATION_CONFLICT");
  }

  /** 30 mm by a covering of its own file, 50 mm up to the surface of that of another one. */
  @Test
  void coveringsOfItsOwnAndOfAnotherFileAreLayers() {
    String own =
        "#2=IFCCOVERING('v',$,'Wool',$,$,#30,#40,$,.INSULATION.);\n"
            + """
            #40=IFCPRODUCTDEFINITIONSHAPE($,$,(#41));
            #41=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#42));
            #42=IFCEXTRUDEDAREASOLID(#43,$,#13,2500.);
            #43=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,60.15,30.);
            """;
    String outer = wool(0, 2500, 160.3).replaceFirst("80.15,[0-9.]+", "80.15,20.");
    List<MepModel> models = join(pipe("a", 0, 0) + own, outer);
    ExistingInsulation shown =
        Objects.requireNonNull(element(models.get(0), 1).existingInsulation());

    assertThat(shown.thicknessM()).isCloseTo(0.05, within(1e-6));
    assertThat(shown.coverings()).containsExactly(new ElementKey(0, 2), new ElementKey(1, 1));
    assertThat(outer).contains("80.15,20.)");
    assertThat(codes(models)).doesNotContain("INSULATION_CONFLICT");
  }

  @Test
  void coveringIsFoundAroundAPipeThatIsJoinedAtBothEnds() {
    String three =
        pipe("a", 0, 0)
            + "#2=IFCPIPESEGMENT('a2',$,'Pipe 2',$,$,#40,#10,$,$);\n"
            + placed(40, 0, 0, 2500)
            + "#3=IFCPIPESEGMENT('a3',$,'Pipe 3',$,$,#50,#10,$,$);\n"
            + placed(50, 0, 0, 5000);
    List<MepModel> models = join(three, wool(2500, 2500, 120.3));

    assertThat(element(models.get(0), 2).existingInsulation()).isNotNull();
    assertThat(element(models.get(0), 1).existingInsulation()).isNull();
    assertThat(element(models.get(0), 3).existingInsulation()).isNull();
  }
}
