package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** Forms, angles and sizes of fittings that have no body: ports and neighbours tell. */
class FittingFormTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);

  private static double[] towards(double degrees) {
    return at(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)), 0);
  }

  /** Two pipes joined by fitting 9 that turns by some degrees with a centre-line radius. */
  private static Network bend(double degrees, double radiusMm, String predefined) {
    double turn = Math.toRadians(degrees);
    double[] end = at(radiusMm * Math.sin(turn), radiusMm * (1 - Math.cos(turn)), 0);
    double[] out = towards(degrees);
    return new Network()
        .fitting(9, "IFCPIPEFITTING", "Fitting", predefined)
        .port(9, 1, at(0, 0, 0), WEST)
        .port(9, 2, end, out)
        .pipe(1, at(-1000, 0, 0), EAST, 1000, 60.3)
        .port(1, 1, at(0, 0, 0), EAST)
        .connect(1, 1, 9, 1)
        .pipe(2, end, out, 1000, 60.3)
        .port(2, 1, end, towards(degrees + 180))
        .connect(9, 2, 2, 1);
  }

  @ParameterizedTest
  @CsvSource({"90,76,$", "45,114.3,.NOTDEFINED.", "30,60,.USERDEFINED.", "12.5,200,.CONNECTOR."})
  void bendIsKnownByTheAxesOfItsNeighbours(double degrees, double radiusMm, String predefined) {
    MepElement bend = bend(degrees, radiusMm, predefined).element(9);

    assertThat(bend.form()).isEqualTo(Form.BEND);
    assertThat(value(bend.angleDeg())).isCloseTo(degrees, within(0.01));
    assertThat(value(bend.bendRadiusM())).isCloseTo(radiusMm / 1000, within(1e-5));
    assertThat(Objects.requireNonNull(bend.angleDeg()).how()).isEqualTo(How.PORTS);
    assertThat(value(bend.section())).isEqualTo(new Section.Round(0.0603));
    assertThat(value(bend.lengthM()))
        .isCloseTo(radiusMm / 1000 * Math.toRadians(degrees), within(1e-4));
  }

  @Test
  void enumerationThatTheJointsContradictIsNotBelievedAndReported() {
    MepModel model = bend(90, 76, ".TRANSITION.").read();

    assertThat(element(model, 9000).form()).isEqualTo(Form.BEND);
    assertThat(codes(model)).contains("FORM_CONFLICT");
  }

  @Test
  void wordsWinOverTheJoints() {
    MepModel model =
        new Network()
            .fitting(9, "IFCPIPEFITTING", "Union", "$")
            .port(9, 1, at(0, 0, 0), WEST)
            .port(9, 2, at(50, 0, 0), EAST)
            .pipe(1, at(-1000, 0, 0), EAST, 1000, 26.9)
            .pipe(2, at(50, 0, 0), EAST, 1000, 26.9)
            .read();

    assertThat(element(model, 9000).form()).isEqualTo(Form.UNION);
    assertThat(codes(model)).doesNotContain("FORM_CONFLICT");
  }

  /** Fitting 9 with a run from west to east and a branch of another size. */
  private static Network branched(double degrees, double branchMm, String name) {
    double[] mouth = at(100 + 100 * towards(degrees)[0], 100 * towards(degrees)[1], 0);
    return new Network()
        .fitting(9, "IFCPIPEFITTING", name, ".JUNCTION.")
        // the branch comes first, so that the order of the ports cannot be what tells
        .port(9, 1, mouth, towards(degrees))
        .port(9, 2, at(0, 0, 0), WEST)
        .port(9, 3, at(200, 0, 0), EAST)
        .pipe(1, at(-1000, 0, 0), EAST, 1000, 60.3)
        .pipe(2, at(200, 0, 0), EAST, 1000, 60.3)
        .pipe(3, mouth, towards(degrees), 1000, branchMm);
  }

  @ParameterizedTest
  @CsvSource({"90,60.3,TEE", "90,33.7,TEE", "45,33.7,LATERAL", "120,33.7,LATERAL"})
  void runAndBranchAreToldApart(double degrees, double branchMm, Form form) {
    MepElement tee = branched(degrees, branchMm, "Fitting").element(9);

    assertThat(tee.form()).isEqualTo(form);
    assertThat(tee.ends())
        .containsExactly(
            new Section.Round(0.0603),
            new Section.Round(0.0603),
            new Section.Round(branchMm / 1000));
    assertThat(value(tee.section())).isEqualTo(new Section.Round(0.0603));
    assertThat(value(tee.lengthM())).isCloseTo(0.2, within(1e-9));
  }

  @Test
  void lateralHasTheAngleBetweenBranchAndRun() {
    assertThat(value(branched(135, 33.7, "T-piece").element(9).angleDeg()))
        .isCloseTo(45, within(0.01));
  }

  /** Public files call the leg of the branch so, and the figure may be the one of a catalogue. */
  @ParameterizedTest
  @CsvSource({"125.,true", "100.,false"})
  void branchIsAsLongAsDrawnAndThePropertyIsKeptBesideIt(String stated, boolean conflict) {
    MepModel model =
        branched(90, 33.7, "Tee")
            .record(
                InlineModel.properties(
                    700, 9000, "Set", "L\\X\\E4nge Abgang", "IFCREAL(" + stated + ")"))
            .read();
    Measured<Double> branch = Objects.requireNonNull(element(model, 9000).branchLengthM());

    assertThat(branch.value()).isCloseTo(0.1, within(1e-9));
    assertThat(branch.how()).isEqualTo(How.PORTS);
    assertThat(branch.lost()).extracting(Candidate::how).containsExactly(How.PROPERTY);
    assertThat(codes(model).contains("LENGTH_CONFLICT")).isEqualTo(conflict);
    assertThat(!conflict || InlineModel.message(model, "LENGTH_CONFLICT").contains("of the branch"))
        .isTrue();
  }

  @ParameterizedTest
  @ValueSource(doubles = {90, 60, 45})
  void branchIsMeasuredAlongItsOwnAxis(double degrees) {
    assertThat(value(branched(degrees, 33.7, "Tee").element(9).branchLengthM()))
        .isCloseTo(0.1, within(1e-6));
  }

  /** Flat at the side away from the branch: 60.3 goes on as 33.7, whose axis lies 13.3 mm lower. */
  @Test
  void branchOfATeeThatLosesSizeAtOneSideIsMeasuredFromTheAxisOfItsLargerEnd() {
    MepElement tee =
        new Network()
            .fitting(9, "IFCPIPEFITTING", "Fitting", "$")
            .port(9, 1, at(200, -13.3, 0), EAST)
            .port(9, 2, at(0, 0, 0), WEST)
            .port(9, 3, at(100, 80, 0), NORTH)
            .pipe(1, at(200, -13.3, 0), EAST, 1000, 33.7)
            .pipe(2, at(-1000, 0, 0), EAST, 1000, 60.3)
            .pipe(3, at(100, 80, 0), NORTH, 1000, 33.7)
            .element(9);

    assertThat(tee.form()).isEqualTo(Form.TEE);
    assertThat(value(tee.lengthM())).isCloseTo(0.2, within(1e-9));
    assertThat(value(tee.branchLengthM())).isCloseTo(0.08, within(1e-9));
  }

  @Test
  void threeEndsOfWhichNoTwoMakeARunAreAWye() {
    MepElement wye =
        new Network()
            .fitting(9, "IFCPIPEFITTING", "Fitting", "$")
            .port(9, 1, at(0, 0, 0), WEST)
            .port(9, 2, at(100, 60, 0), towards(30))
            .port(9, 3, at(100, -60, 0), towards(-30))
            .pipe(1, at(-1000, 0, 0), EAST, 1000, 60.3)
            .pipe(2, at(100, 60, 0), towards(30), 1000, 60.3)
            .pipe(3, at(100, -60, 0), towards(-30), 1000, 60.3)
            .element(9);

    assertThat(wye.form()).isEqualTo(Form.WYE);
  }

  @Test
  void fourEndsInPairsAreACross() {
    MepElement cross =
        new Network()
            .fitting(9, "IFCPIPEFITTING", "Fitting", "$")
            .port(9, 1, at(-100, 0, 0), WEST)
            .port(9, 2, at(0, 100, 0), NORTH)
            .port(9, 3, at(100, 0, 0), EAST)
            .port(9, 4, at(0, -100, 0), at(0, -1, 0))
            .pipe(1, at(-1000, 0, 0), EAST, 900, 60.3)
            .pipe(2, at(0, 100, 0), NORTH, 900, 33.7)
            .pipe(3, at(100, 0, 0), EAST, 900, 60.3)
            .pipe(4, at(0, -1000, 0), NORTH, 900, 33.7)
            .element(9);

    assertThat(cross.form()).isEqualTo(Form.CROSS);
    assertThat(cross.ends())
        .containsExactly(
            new Section.Round(0.0603),
            new Section.Round(0.0603),
            new Section.Round(0.0337),
            new Section.Round(0.0337));
  }

  @ParameterizedTest
  @CsvSource({"0,0", "14.3,0.0143"})
  void reducerIsConcentricOrEccentric(double shiftMm, double eccentricityM) {
    MepElement reducer =
        new Network()
            .fitting(9, "IFCPIPEFITTING", "Fitting", "$")
            .port(9, 1, at(0, 0, 0), WEST)
            .port(9, 2, at(90, 0, shiftMm), EAST)
            .pipe(1, at(-1000, 0, 0), EAST, 1000, 88.9)
            .pipe(2, at(90, 0, shiftMm), EAST, 1000, 60.3)
            .element(9);

    assertThat(reducer.form()).isEqualTo(Form.REDUCER);
    assertThat(reducer.ends())
        .containsExactlyInAnyOrder(new Section.Round(0.0889), new Section.Round(0.0603));
    assertThat(value(reducer.eccentricityM())).isCloseTo(eccentricityM, within(1e-6));
    assertThat(value(reducer.lengthM())).isCloseTo(0.09, within(1e-6));
  }

  @Test
  void parallelEndsOfOneSizeThatAreShiftedAreAnOffset() {
    MepElement offset =
        new Network()
            .fitting(9, "IFCPIPEFITTING", "Fitting", "$")
            .port(9, 1, at(0, 0, 0), WEST)
            .port(9, 2, at(200, 80, 0), EAST)
            .pipe(1, at(-1000, 0, 0), EAST, 1000, 60.3)
            .pipe(2, at(200, 80, 0), EAST, 1000, 60.3)
            .element(9);

    assertThat(offset.form()).isEqualTo(Form.OFFSET);
    assertThat(value(offset.eccentricityM())).isCloseTo(0.08, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "Reduzier-T-Stück,PIPE_FITTING,TEE",
    "Reducing elbow,PIPE_FITTING,BEND",
    "Flanged reducer,PIPE_FITTING,REDUCER",
    "Y-Stück 45,PIPE_FITTING,WYE",
    "Schrägabzweig,PIPE_FITTING,LATERAL",
    "Kreuzstück,PIPE_FITTING,CROSS",
    "Kappe DN50,PIPE_FITTING,CAP",
    "SocketCap:DN50,PIPE_FITTING,CAP",
    "Muffe,PIPE_FITTING,COUPLING",
    "Verschraubung,PIPE_FITTING,UNION",
    "Vorschweissflansch,PIPE_FITTING,FLANGE",
    "Etagenbogen,PIPE_FITTING,OFFSET",
    "Kugelhahn,VALVE,VALVE_BODY",
    "Schmutzfänger,INLINE,STRAINER",
    "Wärmezähler,INLINE,METER",
    "Brandschutzklappe,INLINE,DAMPER",
    "Schalldämpfer,INLINE,SILENCER",
    "Wärmetauscher,EQUIPMENT,APPARATUS"
  })
  void generalFittingIsWhatItsNameSays(String name, Kind kind, Form form) {
    MepElement fitting = new Network().fitting(9, "IFCFLOWFITTING", name, "$").element(9);

    assertThat(fitting.kind()).isEqualTo(kind);
    assertThat(fitting.form()).isEqualTo(form);
  }

  @ParameterizedTest
  @CsvSource({
    "Fire damper,INLINE,DAMPER",
    "Water meter,INLINE,METER",
    "Wärmemengenzähler,INLINE,METER",
    "Durchflusssensor,INLINE,METER",
    "Calorimètre,INLINE,METER",
    "Ball valve,VALVE,VALVE_BODY",
    "Controller,VALVE,VALVE_BODY"
  })
  void generalControllerIsAValveUnlessItsNameSaysOtherwise(String name, Kind kind, Form form) {
    MepElement controller = new Network().fitting(9, "IFCFLOWCONTROLLER", name, "$").element(9);

    assertThat(controller.kind()).isEqualTo(kind);
    assertThat(controller.form()).isEqualTo(form);
  }

  @ParameterizedTest
  @CsvSource({
    "IFCBUILDINGELEMENTPROXY,Pipe DN50,1",
    "IFCBUILDINGELEMENTPROXY,Stahlrohr 60.3,1",
    "IFCBUILDINGELEMENTPROXY,Table,0",
    "IFCBUILDINGELEMENTPROXY,Kabelrinne 200,0",
    "IFCBUILDINGELEMENTPROXY,Pipe support DN50,0",
    "IFCDISTRIBUTIONELEMENT,Pipe DN50,1",
    "IFCDISTRIBUTIONELEMENT,Sensor,0",
    "IFCDISTRIBUTIONFLOWELEMENT,Duct 400x200,1"
  })
  void whatOnlySoundsLikeAPipeIsLeftOutAndReported(String keyword, String name, int reported) {
    MepModel model = new Network().fitting(9, keyword, name, "$").read();

    assertThat(element(model, 9000).kind()).isEqualTo(Kind.OTHER);
    assertThat(codes(model).stream().filter("PROXY_LOOKS_LIKE_SERVICE"::equals)).hasSize(reported);
  }

  /** Fitting 9 from which a number of pipes go north, each joined by a port. */
  private static Network joinedBy(int pipes, String keyword, String name, String predefined) {
    Network network = new Network().fitting(9, keyword, name, predefined);
    for (int i = 1; i <= pipes; i++) {
      network
          .port(9, i, at(100 * i, 0, 0), NORTH)
          .pipe(i, at(100 * i, 0, 0), NORTH, 500, 26.9)
          .port(i, 1, at(100 * i, 0, 0), at(0, -1, 0))
          .connect(9, i, i, 1);
    }
    return network;
  }

  @ParameterizedTest
  @CsvSource({"5,.NOTDEFINED.", "8,.NOTDEFINED.", "6,.JUNCTION."})
  void pipeFittingThatMoreThanFourPipesJoinIsApparatus(int pipes, String predefined) {
    MepModel model = joinedBy(pipes, "IFCPIPEFITTING", "M", predefined).read();

    assertThat(element(model, 9000).form()).isEqualTo(Form.APPARATUS);
    assertThat(element(model, 9000).kind()).isEqualTo(Kind.EQUIPMENT);
    assertThat(codes(model)).containsOnlyOnce("FORM_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({"IFCPIPEFITTING,Tee,TEE", "IFCDUCTFITTING,M,UNKNOWN"})
  void wordsAndDuctsAreNotMadeApparatusByTheirJoints(String keyword, String name, Form form) {
    MepElement fitting = joinedBy(5, keyword, name, "$").element(9);

    assertThat(fitting.form()).isEqualTo(form);
    assertThat(fitting.kind().isFitting()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"CROSS,CROSS", "TEE,TEE", "OTHER,TEE"})
  void junctionIsACrossIfItsPropertySaysSo(String stated, Form form) {
    MepModel model =
        new Network()
            .fitting(9, "IFCPIPEFITTING", "J", ".JUNCTION.")
            .record(
                """
                #700=IFCPROPERTYENUMERATEDVALUE('JunctionType',$,(IFCLABEL('%s')),$);
                #701=IFCPROPERTYSET('701',$,'Pset_PipeFittingTypeJunction',$,(#700));
                #702=IFCRELDEFINESBYPROPERTIES('702',$,$,$,(#9000),#701);
                """
                    .formatted(stated))
            .read();

    assertThat(element(model, 9000).form()).isEqualTo(form);
  }

  @Test
  void typeOfTheUsersOwnIsWhatItIsCalled() {
    MepModel model =
        new Network()
            .fitting(9, "IFCPIPEFITTING", "F", ".USERDEFINED.")
            .record(
                """
                #700=IFCPIPEFITTINGTYPE('700',$,'Standard',$,$,$,$,$,'Reducer',.USERDEFINED.);
                #701=IFCRELDEFINESBYTYPE('701',$,$,$,(#9000),#700);
                """)
            .read();

    assertThat(element(model, 9000).form()).isEqualTo(Form.REDUCER);
  }

  /** The enumeration of fittings has one word for all that changes the section. */
  @ParameterizedTest
  @CsvSource({"200,TRANSITION", "0,REDUCER"})
  void enumeratedTransitionThatIsDrawnSoIsNoConflict(double roundMm, Form form) {
    Network network =
        new Network()
            .record("#2000=IFCDUCTFITTING('2',$,'Part',$,$,#2010,#2001,$,.TRANSITION.);")
            .record(InlineModel.placed(2010, 0, 0, 0))
            .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
            .record("#2002=IFCSHAPEREPRESENTATION($,'Body','AdvancedSweptSolid',(#2003));")
            .record("#2003=IFCEXTRUDEDAREASOLIDTAPERED(#2004,$,#2006,400.,#2005);")
            .record("#2004=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,400.,300.);")
            .record(
                roundMm > 0
                    ? "#2005=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);".formatted(roundMm / 2)
                    : "#2005=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,300.,300.);")
            .record("#2006=IFCDIRECTION((0.,0.,1.));");
    MepModel model = network.read();

    assertThat(element(model, 2000).form()).isEqualTo(form);
    assertThat(codes(model)).doesNotContain("FORM_CONFLICT");
  }

  /** Wider across and shorter around than the other end: which is larger is a matter of taste. */
  @Test
  void sizesOfBothEndsInOneTextAreNoConflictWithARectangularToRoundPiece() {
    MepModel model =
        new Network()
            .record(
                "#2000=IFCDUCTFITTING('2',$,'315\\X2\\00F8\\X0\\-250x250',$,$,#2010,#2001,$,$);")
            .record(InlineModel.placed(2010, 0, 0, 0))
            .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
            .record("#2002=IFCSHAPEREPRESENTATION($,'Body','AdvancedSweptSolid',(#2003));")
            .record("#2003=IFCEXTRUDEDAREASOLIDTAPERED(#2004,$,#2006,400.,#2005);")
            .record("#2004=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,250.,250.);")
            .record("#2005=IFCCIRCLEPROFILEDEF(.AREA.,$,$,157.5);")
            .record("#2006=IFCDIRECTION((0.,0.,1.));")
            .read();

    assertThat(value(element(model, 2000).section()))
        .isEqualTo(new Section.Rectangular(0.25, 0.25));
    assertThat(codes(model)).doesNotContain("SECTION_CONFLICT");
  }
}
