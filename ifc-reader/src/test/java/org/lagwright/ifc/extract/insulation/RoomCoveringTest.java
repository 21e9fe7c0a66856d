package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepModel;

/** Coverings of floors, walls and ceilings, which lie around no pipe. */
class RoomCoveringTest {

  private static final String ROOM =
      "#70=IFCSPACE('7',$,'101',$,$,$,$,$,.ELEMENT.,.INTERNAL.,$);\n";

  private static final String PIPE_BESIDE =
      "#80=IFCPIPESEGMENT('8',$,'Pipe',$,$,$,$,$,.RIGIDSEGMENT.);\n";

  private static MepModel covering(String schema, String predefined, String more) {
    return InlineModel.read(
        schema,
        InlineModel.MILLIMETRES
            + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,4000.,300.)")
            + "#1=IFCCOVERING('1',$,'Covering',$,$,#14,#10,$,.%s.);\n".formatted(predefined)
            + more);
  }

  private static String typed(String predefined) {
    return "#60=IFCCOVERINGTYPE('6',$,'Type',$,$,$,$,$,$,.%s.);\n".formatted(predefined)
        + "#61=IFCRELDEFINESBYTYPE('61',$,$,$,(#1),#60);\n";
  }

  @ParameterizedTest
  @CsvSource({
    "CEILING, OTHER",
    "MOLDING, OTHER",
    "COPING, OTHER",
    "TOPPING, OTHER",
    "SKIRTINGBOARD, OTHER",
    "INSULATION, COVERING",
    "WRAPPING, COVERING",
    "NOTDEFINED, COVERING"
  })
  void whatItIsCalledTellsWhetherItIsOfARoom(String predefined, Kind kind) {
    MepModel model = covering("IFC4X3_ADD2", predefined, PIPE_BESIDE);

    assertThat(element(model, 1).kind()).isEqualTo(kind);
    assertThat(codes(model).contains("COVERING_WITHOUT_HOST")).isEqualTo(kind == Kind.COVERING);
  }

  /** An architect's file holds fascias, copings and the like that nothing tells apart. */
  @ParameterizedTest
  @CsvSource({
    "NOTDEFINED, NOTDEFINED, false",
    "USERDEFINED, NOTDEFINED, false",
    "INSULATION, NOTDEFINED, true",
    "NOTDEFINED, WRAPPING, true"
  })
  void onlyWhatIsCalledInsulationIsMissedWhereNothingCouldBeInsulated(
      String own, String ofType, boolean told) {
    MepModel model = covering("IFC4", own, typed(ofType));

    assertThat(element(model, 1).kind()).isEqualTo(Kind.COVERING);
    assertThat(codes(model).contains("COVERING_WITHOUT_HOST")).isEqualTo(told);
  }

  @Test
  void nameOfInsulationTellsItToo() {
    MepModel model =
        InlineModel.read("#1=IFCCOVERING('1',$,'Pipe insulation',$,$,$,$,$,.NOTDEFINED.);\n");

    assertThat(codes(model)).containsOnlyOnce("COVERING_WITHOUT_HOST");
  }

  @ParameterizedTest
  @CsvSource({
    "NOTDEFINED, CEILING, OTHER",
    "USERDEFINED, FLOORING, OTHER",
    "NOTDEFINED, INSULATION, COVERING",
    "NOTDEFINED, NOTDEFINED, COVERING",
    "INSULATION, CEILING, COVERING"
  })
  void typeTellsItWhereTheCoveringItselfDoesNot(String own, String ofType, Kind kind) {
    assertThat(element(covering("IFC4", own, typed(ofType)), 1).kind()).isEqualTo(kind);
  }

  @ParameterizedTest
  @CsvSource({"IFC2X3", "IFC4", "IFC4X3_ADD2"})
  void insulationOfAFloorNeedsNoPipe(String schema) {
    MepModel model =
        covering(schema, "INSULATION", ROOM + "#71=IFCRELCOVERSSPACES('71',$,$,$,#70,(#1));\n");

    assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST");
  }

  /** Exporters may also name the room of what lies around a pipe there. */
  @Test
  void insulationOfARoomThatLiesAroundAPipeIsThatOfThePipe() {
    MepModel model =
        InlineModel.read(
            InsulationTest.PIPE
                + InsulationTest.covering(2, "Wool", InsulationTest.ring(120.3, 30), 0, 2500)
                + ROOM
                + "#71=IFCRELCOVERSSPACES('71',$,$,$,#70,(#200));\n");

    assertThat(Objects.requireNonNull(element(model, 1).existingInsulation()).thicknessM())
        .isCloseTo(0.03, within(1e-6));
  }
}
