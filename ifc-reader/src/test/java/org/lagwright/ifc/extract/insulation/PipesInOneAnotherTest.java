package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.read;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.MepModel;

/** A covering that names nothing lies on one of the pipes that run inside one another. */
class PipesInOneAnotherTest {

  /** 60.3 mm, 2.5 m. */
  private static final String PIPE = InsulationTest.PIPE;

  /** 30 mm on that pipe, hollow and solid. */
  private static final String HOLLOW =
      InsulationTest.covering(2, "Wool", InsulationTest.ring(120.3, 30), 0, 2500);

  private static final String SOLID =
      InsulationTest.covering(2, "Wool", "IFCCIRCLEPROFILEDEF(.AREA.,$,$,60.15)", 0, 2500);

  /** Another pipe on the same axis. */
  private static String other(double diameterMm, double fromMm, double longMm) {
    return """
           #8=IFCPIPESEGMENT('8',$,'Pipe 2',$,$,#30,#40,$,$);
           #40=IFCPRODUCTDEFINITIONSHAPE($,$,(#41));
           #41=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#42));
           #42=IFCEXTRUDEDAREASOLID(#43,$,#13,%s);
           #43=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
           """
            .formatted(longMm, diameterMm / 2)
        + placed(30, 0, 0, fromMm);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void sleeveInTheWallThatIsWiderThanTheCoveringIsNotInsulated(boolean hollow) {
    MepModel model = read(PIPE + other(168.3, 1000, 300) + (hollow ? HOLLOW : SOLID));

    assertThat(InsulationTest.mm(InsulationTest.of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(element(model, 8).existingInsulation()).isNull();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void pipeInsideTheInsulatedOneIsNotInsulated(boolean hollow) {
    MepModel model = read(PIPE + other(33.7, 0, 2500) + (hollow ? HOLLOW : SOLID));

    assertThat(InsulationTest.mm(InsulationTest.of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(element(model, 8).existingInsulation()).isNull();
  }

  /** A casing is as wide as the covering in it, and the covering is on the pipe. */
  @ParameterizedTest
  @ValueSource(doubles = {120.3, 125.3})
  void casingAroundTheCoveringIsNotInsulated(double casingMm) {
    MepModel model = read(PIPE + other(casingMm, 0, 2500) + SOLID);

    assertThat(InsulationTest.mm(InsulationTest.of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(element(model, 8).existingInsulation()).isNull();
  }

  @Test
  void shortPieceAroundAPipeLeavesThePipeItsInsulation() {
    MepModel model = read(PIPE + other(76.1, 1000, 100) + HOLLOW);

    assertThat(InsulationTest.mm(InsulationTest.of(model, 1))).isCloseTo(30, within(0.01));
  }

  @Test
  void coveringInsideTheOnlyPipeOnItsAxisHasNoHost() {
    String bodyOnly = PIPE.substring(PIPE.indexOf('\n') + 1);
    MepModel model = read(bodyOnly + other(168.3, 0, 2500) + HOLLOW);

    assertThat(element(model, 8).existingInsulation()).isNull();
    assertThat(codes(model)).containsOnlyOnce("COVERING_WITHOUT_HOST");
  }
}
