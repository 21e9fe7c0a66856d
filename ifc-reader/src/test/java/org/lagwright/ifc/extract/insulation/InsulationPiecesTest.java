package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.join;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.Network.at;
import static org.lagwright.ifc.extract.insulation.InsulationTest.BODY_ONLY;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;
import static org.lagwright.ifc.extract.insulation.InsulationTest.thickness;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.MepModel;

/** Insulation that is drawn in pieces beside the axis: boards on ducts, half shells on pipes. */
class InsulationPiecesTest {

  /** 500 x 300 mm. */
  private static final String DUCT =
      "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
          + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,500.,300.)");

  private static final int STEPS_OF_A_HALF_CIRCLE = 12;

  /** A board with its middle beside the axis. */
  private static String board(int id, double widthMm, double heightMm, double xMm, double yMm) {
    String profile =
        "IFCRECTANGLEPROFILEDEF(.AREA.,$,#%d40,%s,%s)".formatted(id, widthMm, heightMm);
    return covering(id, "Board", profile, 0, 2500)
        + "#%1$d40=IFCAXIS2PLACEMENT2D(#%1$d41,$);\n#%1$d41=IFCCARTESIANPOINT((%2$s,%3$s));\n"
            .formatted(id, xMm, yMm);
  }

  /** On top and below a duct over its corners, and on both sides between them. */
  private static String boards(double topMm, double sideMm) {
    return board(2, 500 + 2 * sideMm, topMm, 0, 150 + topMm / 2)
        + board(3, 500 + 2 * sideMm, topMm, 0, -150 - topMm / 2)
        + board(4, sideMm, 300, 250 + sideMm / 2, 0)
        + board(5, sideMm, 300, -250 - sideMm / 2, 0);
  }

  private static String related(String coverings) {
    return "#9=IFCRELCOVERSBLDGELEMENTS('9',$,$,$,#1,(%s));\n".formatted(coverings);
  }

  /** Half a ring above or below the axis, as a polygon. */
  private static String halfShell(int id, double innerMm, double wallMm, boolean above) {
    StringBuilder points = new StringBuilder();
    StringBuilder ids = new StringBuilder();
    for (int i = 0; i <= 2 * STEPS_OF_A_HALF_CIRCLE + 2; i++) {
      int along = i % (2 * STEPS_OF_A_HALF_CIRCLE + 2);
      boolean outer = along <= STEPS_OF_A_HALF_CIRCLE;
      int step = outer ? along : 2 * STEPS_OF_A_HALF_CIRCLE + 1 - along;
      double angle = Math.PI * step / STEPS_OF_A_HALF_CIRCLE;
      double radiusMm = innerMm / 2 + (outer ? wallMm : 0);
      double y = (above ? 1 : -1) * radiusMm * Math.sin(angle);
      points.append(
          String.format(
              Locale.ROOT,
              "#%d=IFCCARTESIANPOINT((%.9f,%.9f));%n",
              id * 100 + 60 + i,
              radiusMm * Math.cos(angle),
              y));
      ids.append(i == 0 ? "" : ",").append('#').append(id * 100 + 60 + i);
    }
    String profile = "IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#%d59)".formatted(id);
    return covering(id, "Shell", profile, 0, 2500)
        + "#%d59=IFCPOLYLINE((%s));\n".formatted(id, ids)
        + points;
  }

  @Test
  void boardsAroundADuctAreItsInsulationAndNotItsLining() {
    MepModel model = read(DUCT + boards(40, 40) + related("#200,#300,#400,#500"));

    assertThat(mm(of(model, 1))).isCloseTo(40, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(1, within(1e-9));
    assertThat(element(model, 1).lining()).isNull();
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @Test
  void boardsThatStateTheirThicknessAreNotAddedUp() {
    MepModel model =
        read(
            DUCT
                + boards(40, 40)
                + thickness(2, 40)
                + thickness(3, 40)
                + thickness(4, 40)
                + thickness(5, 40)
                + related("#200,#300,#400,#500"));

    assertThat(mm(of(model, 1))).isCloseTo(40, within(0.01));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @Test
  void boardsInOneCoveringAreReadLikeSeveral() {
    String first = board(2, 580, 40, 0, 170);
    String items = first.replace("(#212)", "(#212,#312,#412,#512)");
    MepModel model =
        read(
            DUCT
                + items
                + boards(40, 40).substring(first.length()).replaceAll("#.00=IFCCOVERING[^;]*;", "")
                + related("#200"));

    assertThat(items).contains("#512");
    assertThat(mm(of(model, 1))).isCloseTo(40, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(1, within(1e-9));
  }

  private static String withoutTheLower(String boards) {
    return boards.replaceFirst("#300=IFCCOVERING[^;]*;\n", "");
  }

  /** Top and both sides: 500 + 2 x 300 of the 1600 mm around the duct. */
  @Test
  void sideWithoutABoardIsBare() {
    MepModel model = read(DUCT + withoutTheLower(boards(40, 40)) + related("#200,#400,#500"));

    assertThat(mm(of(model, 1))).isCloseTo(40, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(1100. / 1600, within(1e-9));
  }

  @Test
  void boardsThatNameNoDuctLieOnTheOneThatTheyTouch() {
    MepModel model = read(DUCT + boards(40, 40));

    assertThat(mm(of(model, 1))).isCloseTo(40, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(1, within(1e-9));
    assertThat(of(model, 1).coverings()).hasSize(4);
    assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST", "INSULATION_CONFLICT");
  }

  /** Insulation of a floor under a duct, and a board that hangs 20 mm below it. */
  @ParameterizedTest
  @CsvSource({"580,0,true", "4000,0,false", "580,20,false"})
  void boardThatReachesFarBeyondTheDuctOrKeepsOffIsNotOnIt(
      double widthMm, double gapMm, boolean on) {
    MepModel model = read(DUCT + board(2, widthMm, 40, 0, -170 - gapMm));

    assertThat(element(model, 1).existingInsulation() != null).isEqualTo(on);
    assertThat(codes(model).contains("COVERING_WITHOUT_HOST")).isEqualTo(!on);
  }

  @Test
  void boardsOfDifferentThicknessLeaveItUnknown() {
    MepModel model = read(DUCT + boards(40, 60) + related("#200,#300,#400,#500"));

    assertThat(of(model, 1).thicknessM()).isNull();
    assertThat(element(model, 1).lining()).isNull();
  }

  @Test
  void boardInsideADuctIsItsLining() {
    MepModel model = read(DUCT + board(2, 500, 25, 0, 137.5) + related("#200"));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(element(model, 1).lining()).isNotNull();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void halfShellsAreAsThickAsTheirWall(boolean related) {
    MepModel model =
        read(
            PIPE
                + halfShell(2, 60.3, 30, true)
                + halfShell(3, 60.3, 30, false)
                + (related ? related("#200,#300") : ""));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(1, within(1e-6));
    assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST", "INSULATION_CONFLICT");
  }

  @Test
  void halfShellsAroundOthersAreASecondLayer() {
    MepModel model =
        read(
            PIPE
                + halfShell(2, 60.3, 30, true)
                + halfShell(3, 60.3, 30, false)
                + halfShell(4, 120.3, 20, true)
                + halfShell(5, 120.3, 20, false)
                + related("#200,#300,#400,#500"));

    assertThat(mm(of(model, 1))).isCloseTo(50, within(0.01));
  }

  @Test
  void oneHalfShellCoversHalfOfThePipe() {
    MepModel model = read(PIPE + halfShell(2, 60.3, 30, true) + related("#200"));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(of(model, 1).share()).isCloseTo(0.5, within(1e-6));
  }

  @Test
  void halfShellBesideAnotherPipeHasNoHost() {
    String beside = halfShell(2, 60.3, 30, true).replace("((0.0,0.0,0.0))", "((40.,0.,0.))");
    MepModel model = read(PIPE + beside);

    assertThat(beside).contains("((40.");
    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).containsOnlyOnce("COVERING_WITHOUT_HOST");
  }

  /** One box around two pipes: its corners lie at two distances from each of them. */
  @Test
  void boxAroundPipesIsNoShellAndTellsNoThickness() {
    String box =
        covering(2, "Box", "IFCRECTANGLEPROFILEDEF(.AREA.,$,$,300.,200.)", 0, 2500)
            .replace("((0.0,0.0,0.0))", "((50.,0.,0.))");
    MepModel model = read(PIPE + box + "#5=IFCRELCOVERSBLDGELEMENTS('5',$,$,$,#1,(#200));\n");

    assertThat(box).contains("((50.");
    assertThat(of(model, 1).thicknessM()).isNull();
  }

  @Test
  void piecesOfAnotherFileLieOnThePipeAndTheDuct() {
    List<MepModel> pipes =
        join(PIPE, BODY_ONLY + halfShell(2, 60.3, 30, true) + halfShell(3, 60.3, 30, false));
    List<MepModel> ducts = join(DUCT, BODY_ONLY + boards(40, 40));

    assertThat(mm(of(pipes.get(0), 1))).isCloseTo(30, within(0.01));
    assertThat(of(pipes.get(0), 1).share()).isCloseTo(1, within(1e-9));
    assertThat(mm(of(ducts.get(0), 1))).isCloseTo(40, within(0.01));
    assertThat(of(ducts.get(0), 1).share()).isCloseTo(1, within(1e-9));
    assertThat(element(ducts.get(0), 1).lining()).isNull();
    assertThat(codes(pipes.get(1))).doesNotContain("COVERING_WITHOUT_HOST");
    assertThat(codes(ducts.get(1))).doesNotContain("COVERING_WITHOUT_HOST");
  }

  /** All its corners are nearly as far from the axis of the pipe, as those of a shell are. */
  @Test
  void coveringThatCrossesThePipeAtItsMiddleIsNoShellOnIt() {
    Network crossing =
        new Network()
            .pipe(1, at(-1000, 0, 0), at(1, 0, 0), 2000, 60.3)
            .body(
                2,
                "IFCCOVERING",
                "Wool",
                ".INSULATION.",
                at(0, -1000, 0),
                at(0, 1, 0),
                2000,
                120.3);

    assertThat(element(crossing.read(0), 1000).existingInsulation()).isNull();
    assertThat(codes(crossing.read(0))).contains("COVERING_WITHOUT_HOST");
  }
}
