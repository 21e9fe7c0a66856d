package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.join;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.read;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.MepModel;

/** One covering that is drawn as several items, each around a pipe of its own. */
class CoveringOfSeveralItemsTest {

  /** 60.3 mm. */
  private static final String PIPE = InsulationTest.PIPE;

  /** A pipe of 33.7 mm, as long as the other one. */
  private static String thinPipe(double xMm, double zMm) {
    return """
           #8=IFCPIPESEGMENT('8',$,'Pipe 2',$,$,#30,#40,$,$);
           #40=IFCPRODUCTDEFINITIONSHAPE($,$,(#41));
           #41=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#42));
           #42=IFCEXTRUDEDAREASOLID(#43,$,#13,2500.);
           #43=IFCCIRCLEPROFILEDEF(.AREA.,$,$,16.85);
           """
        + placed(30, xMm, 0, zMm);
  }

  /** 30 mm around the first pipe and 20 mm around the second one. */
  private static String covering(double xMm, double zMm, boolean hollow) {
    String first = hollow ? InsulationTest.ring(120.3, 30) : disc(120.3);
    String second = hollow ? InsulationTest.ring(73.7, 20) : disc(73.7);
    return """
           #200=IFCCOVERING('c',$,'Wool',$,$,#14,#210,$,.INSULATION.);
           #210=IFCPRODUCTDEFINITIONSHAPE($,$,(#211));
           #211=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#212,#213));
           #212=IFCEXTRUDEDAREASOLID(#220,$,#13,2500.);
           #213=IFCEXTRUDEDAREASOLID(#221,#231,#13,2500.);
           #220=%s;
           #221=%s;
           """
            .formatted(first, second)
        + placed(230, xMm, 0, zMm);
  }

  private static String disc(double diameterMm) {
    return "IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s)".formatted(diameterMm / 2);
  }

  @ParameterizedTest(name = "second at {0} / {1}, hollow {2}, related {3}")
  @CsvSource({
    "200, 0, true, true",
    "200, 0, true, false",
    "200, 0, false, true",
    "200, 0, false, false",
    "0, 2500, true, true",
    "0, 2500, true, false",
    "0, 2500, false, true",
    "0, 2500, false, false"
  })
  void eachPipeIsInsulatedByTheItemAroundIt(
      double xMm, double zMm, boolean hollow, boolean related) {
    String relations =
        """
        #5=IFCRELCOVERSBLDGELEMENTS('5',$,$,$,#1,(#200));
        #6=IFCRELCOVERSBLDGELEMENTS('6',$,$,$,#8,(#200));
        """;
    MepModel model =
        read(PIPE + thinPipe(xMm, zMm) + covering(xMm, zMm, hollow) + (related ? relations : ""));

    assertThat(InsulationTest.mm(InsulationTest.of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(InsulationTest.mm(InsulationTest.of(model, 8))).isCloseTo(20, within(0.01));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT", "COVERING_WITHOUT_HOST");
  }

  @ParameterizedTest(name = "second at {0} / {1}, hollow {2}")
  @CsvSource({"200, 0, true", "200, 0, false", "0, 2500, true", "0, 2500, false"})
  void eachPipeOfAnotherFileIsInsulatedByTheItemAroundIt(double xMm, double zMm, boolean hollow) {
    List<MepModel> models =
        join(PIPE + thinPipe(xMm, zMm), InsulationTest.BODY_ONLY + covering(xMm, zMm, hollow));

    assertThat(InsulationTest.mm(InsulationTest.of(models.get(0), 1))).isCloseTo(30, within(0.01));
    assertThat(InsulationTest.mm(InsulationTest.of(models.get(0), 8))).isCloseTo(20, within(0.01));
    assertThat(codes(models.get(0))).doesNotContain("INSULATION_CONFLICT");
    assertThat(codes(models.get(1))).doesNotContain("COVERING_WITHOUT_HOST");
  }
}
