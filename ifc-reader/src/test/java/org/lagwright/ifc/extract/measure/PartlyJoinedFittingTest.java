package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.geometry.MeshText;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/**
 * Fittings without ports some of whose neighbours are in another file or not drawn: what is drawn
 * stays, whichever of their ends are met. They are 300 high about z = 0, drawn as their plan.
 */
class PartlyJoinedFittingTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);

  private static final double[] BREECHES = {
    0, -250, 500, -350, 600, -350, 600, -100, 500, -100, 350, 0, 500, 100, 600, 100, 600, 350, 500,
    350, 0, 250
  };

  private static final double[] ELBOW = {0, -250, 750, -250, 750, 500, 250, 500, 250, 250, 0, 250};

  private static final double[] REDUCER = {
    0, -250, 100, -250, 400, -150, 500, -150, 500, 150, 400, 150, 100, 250, 0, 250
  };

  private static final double[] CROSS = {
    -300, -150, -100, -150, -100, -300, 100, -300, 100, -150, 300, -150, 300, 150, 100, 150, 100,
    300, -100, 300, -100, 150, -300, 150
  };

  /** Its branch of 282.8 leaves at 45 degrees. */
  private static final double[] LATERAL = {
    0, -200, 1200, -200, 1200, 200, 800, 200, 1100, 500, 900, 700, 400, 200, 0, 200
  };

  private static final double[] BLOCK = {0, -250, 800, -250, 800, 250, 0, 250};

  private static final double[] FLAT_BOTTOMED = {0, -250, 400, -250, 400, 50, 0, 250};

  private static Section wide(double widthMm) {
    return new Section.Rectangular(widthMm / 1000, 0.3);
  }

  /** Fitting 2 by its plan in millimetres. */
  private static Network fitting(String predefined, double... xyMm) {
    return named("Part", predefined, xyMm);
  }

  private static Network named(String name, String predefined, double... xyMm) {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i <= xyMm.length; i += 2) {
      int at = i % xyMm.length;
      points.append(i == 0 ? "" : ",").append("(%s,%s)".formatted(xyMm[at], xyMm[at + 1]));
    }
    return new Network()
        .record(
            "#2000=IFCDUCTFITTING('2',$,'%s',$,$,#2010,#2001,$,%s);".formatted(name, predefined))
        .record(InlineModel.placed(2010, 0, 0, -150))
        .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
        .record("#2002=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#2003));")
        .record("#2003=IFCEXTRUDEDAREASOLID(#2004,$,#2007,300.);")
        .record("#2004=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#2005);")
        .record("#2005=IFCINDEXEDPOLYCURVE(#2006,$,.F.);")
        .record("#2006=IFCCARTESIANPOINTLIST2D((%s));".formatted(points))
        .record("#2007=IFCDIRECTION((0.,0.,1.));");
  }

  /** Fitting 2 by its faces. */
  private static Network drawn(MeshText mesh) {
    return new Network()
        .record("#2000=IFCDUCTFITTING('2',$,'Part',$,$,#2010,#2001,$,$);")
        .record(InlineModel.placed(2010, 0, 0, 0))
        .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
        .record("#2002=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#2700));")
        .record(mesh.triangulated(2700));
  }

  private static Network duct(Network network, int n, double[] at, double[] along, double widthMm) {
    return network.box(n, "IFCDUCTSEGMENT", at, along, 1000, 300, widthMm);
  }

  /**
   * One duct 500 wide that goes on as two.
   *
   * @param met its binary digits say which ends are met: the wide one, the two narrow ones
   */
  private static Network breeches(String predefined, int met) {
    Network network = fitting(predefined, BREECHES);
    if ((met & 1) != 0) {
      duct(network, 3, at(0, 0, 0), WEST, 500);
    }
    if ((met & 2) != 0) {
      duct(network, 4, at(600, -225, 0), EAST, 250);
    }
    if ((met & 4) != 0) {
      duct(network, 5, at(600, 225, 0), EAST, 250);
    }
    return network;
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void breechesHaveThreeEndsWhicheverOfThemAreMet(int met) {
    MepElement wye = breeches("$", met).element(2);

    assertThat(wye.form()).isEqualTo(Form.WYE);
    assertThat(wye.ends()).containsExactlyInAnyOrder(wide(500), wide(250), wide(250));
    assertThat(value(wye.section())).isEqualTo(wide(500));
  }

  /** Ports say how many ends there are; what else looks like an end is none. */
  @Test
  void twoPortsSayThatThereAreTwoEnds() {
    MepElement part =
        breeches("$", 0)
            .port(2, 0, at(0, 0, 0), WEST)
            .port(2, 1, at(600, -225, 0), EAST)
            .element(2);

    assertThat(part.form()).isNotEqualTo(Form.WYE);
  }

  /** Some exporters write only those ports at which something is joined. */
  @Test
  void twoPortsOfAJunctionLeaveItItsThirdEnd() {
    MepElement junction =
        breeches(".JUNCTION.", 0)
            .port(2, 0, at(0, 0, 0), WEST)
            .port(2, 1, at(600, -225, 0), EAST)
            .element(2);

    assertThat(junction.ends()).containsExactlyInAnyOrder(wide(500), wide(250), wide(250));
  }

  /** Words say that it branches, and the body how. */
  @Test
  void twoPortsOfWhatIsCalledATeeLeaveItTheFormThatIsDrawn() {
    MepElement wye =
        named("T-Stück", "$", BREECHES)
            .port(2, 0, at(0, 0, 0), WEST)
            .port(2, 1, at(600, -225, 0), EAST)
            .element(2);

    assertThat(wye.form()).isEqualTo(Form.WYE);
    assertThat(wye.ends()).containsExactlyInAnyOrder(wide(500), wide(250), wide(250));
  }

  /** Ports at both ends of a straight run tell nothing of its branch. */
  @ParameterizedTest
  @ValueSource(strings = {"$", ".JUNCTION."})
  void portsOfTheRunLeaveALateralItsAngle(String predefined) {
    MepElement lateral =
        named("T-Stück", predefined, LATERAL)
            .port(2, 0, at(0, 0, 0), WEST)
            .port(2, 1, at(1200, 0, 0), EAST)
            .element(2);

    assertThat(lateral.form()).isEqualTo(Form.LATERAL);
    assertThat(value(lateral.angleDeg())).isCloseTo(45, within(1e-6));
  }

  /** Its branch is not drawn, or drawn so that it is not recognised. */
  @Test
  void junctionOfWhichTwoEndsAreKnownSaysSo() {
    MepModel model = duct(fitting(".JUNCTION.", BLOCK), 3, at(0, 0, 0), WEST, 500).read();
    MepElement tee = InlineModel.element(model, 2000);

    assertThat(tee.form()).isEqualTo(Form.TEE);
    assertThat(tee.ends()).containsExactly(wide(500), wide(500));
    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  /** Two boxes of faces in one body, of which one end meets a duct. */
  @Test
  void fittingWhoseFlatSidesLookLikeEndsSaysSo() {
    MeshText mesh = new MeshText();
    double[] up = {0, 0, 150};
    mesh.tube(
        mesh.rectangle(at(0, 0, 0), at(0, 250, 0), up),
        mesh.rectangle(at(800, 0, 0), at(0, 250, 0), up));
    mesh.tube(
        mesh.rectangle(at(400, 250, 0), at(200, 0, 0), at(0, 0, 100)),
        mesh.rectangle(at(400, 400, 0), at(200, 0, 0), at(0, 0, 100)));
    MepModel model = duct(drawn(mesh), 3, at(0, 0, 0), WEST, 500).read();

    assertThat(InlineModel.element(model, 2000).form()).isEqualTo(Form.UNKNOWN);
    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  /** Two cones of triangles, which have no end; its size is that of the duct. */
  @Test
  void singlePortOfWhatIsNotRecognisedMayBeThatOfMoreThanACap() {
    MeshText mesh = new MeshText();
    int[] rim = mesh.ring(at(0, 0, 0), at(0, 1, 0), at(0, 0, 1), 50, 12);
    for (double x : new double[] {-60, 90}) {
      mesh.points.add(at(x, 30, 0));
      for (int i = 0; i < rim.length; i++) {
        mesh.faces.add(new int[] {rim[i], rim[(i + 1) % rim.length], mesh.points.size() - 1});
      }
    }
    Network network = drawn(mesh).port(2, 0, at(-60, 30, 0), WEST);
    MepModel model =
        duct(network, 3, at(-60, 30, 0), WEST, 500)
            .port(3, 0, at(-60, 30, 0), EAST)
            .connect(2, 0, 3, 0)
            .read();

    assertThat(InlineModel.element(model, 2000).form()).isEqualTo(Form.CAP);
    assertThat(value(InlineModel.element(model, 2000).section())).isEqualTo(wide(500));
    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  /** A bend by its ports, whose second end is drawn as a tip. */
  @Test
  void bendOfWhichOneEndIsRecognisedSaysSo() {
    MeshText mesh = new MeshText();
    int[] rim = mesh.ring(at(0, 0, 0), at(0, 1, 0), at(0, 0, 1), 50, 24);
    mesh.cap(rim);
    mesh.points.add(at(150, 150, 0));
    for (int i = 0; i < rim.length; i++) {
      mesh.faces.add(new int[] {rim[(i + 1) % rim.length], rim[i], mesh.points.size() - 1});
    }
    MepModel model =
        drawn(mesh).port(2, 0, at(0, 0, 0), WEST).port(2, 1, at(150, 150, 0), NORTH).read();

    assertThat(InlineModel.element(model, 2000).form()).isEqualTo(Form.BEND);
    assertThat(value(InlineModel.element(model, 2000).section())).isInstanceOf(Section.Round.class);
    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void reducerWithAPortAtOneOfItsEndsHasBothItsSizes(boolean west) {
    MepElement reducer =
        fitting(".TRANSITION.", REDUCER)
            .port(2, 0, at(west ? 0 : 500, 0, 0), west ? WEST : EAST)
            .element(2);

    assertThat(reducer.form()).isEqualTo(Form.REDUCER);
    assertThat(reducer.ends()).containsExactlyInAnyOrder(wide(500), wide(300));
    assertThat(value(reducer.section())).isEqualTo(wide(500));
  }

  /** No cap turns or branches. */
  @ParameterizedTest
  @ValueSource(strings = {"$", ".TRANSITION.", ".JUNCTION."})
  void singlePortMakesNoCapOfWhatIsDrawnAsAnElbow(String predefined) {
    MepModel model = fitting(predefined, ELBOW).port(2, 0, at(0, 0, 0), WEST).read();
    MepElement elbow = InlineModel.element(model, 2000);

    assertThat(elbow.form()).isEqualTo(Form.BEND);
    assertThat(value(elbow.angleDeg())).isCloseTo(90, within(1e-6));
    assertThat(elbow.ends()).containsExactly(wide(500), wide(500));
    assertThat(InlineModel.codes(model).contains("FORM_CONFLICT"))
        .isEqualTo(!predefined.equals("$"));
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void singlePortMakesNoCapOfWhatBranches(boolean placed) {
    Network breeches = breeches("$", 0);
    MepElement wye =
        (placed ? breeches.port(2, 0, at(0, 0, 0), WEST) : breeches.unplacedPort(2, 0)).element(2);

    assertThat(wye.form()).isEqualTo(Form.WYE);
    assertThat(wye.ends()).containsExactlyInAnyOrder(wide(500), wide(250), wide(250));
  }

  @Test
  void singlePortOfWhatTapersMayBeThatOfAReducer() {
    MepModel model = fitting("$", REDUCER).port(2, 0, at(0, 0, 0), WEST).read();

    assertThat(InlineModel.element(model, 2000).form()).isEqualTo(Form.CAP);
    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  @Test
  void enumerationAndNeighboursThatAgreeWinOverAnEndThatIsDrawn() {
    MepElement part = breeches(".TRANSITION.", 1 | 2).element(2);

    assertThat(part.form()).isEqualTo(Form.REDUCER);
  }

  @ParameterizedTest
  @CsvSource({"false,false", "true,false", "false,true", "true,true"})
  void reducerHasBothItsSizesWhicheverOfItsEndsAreMet(boolean west, boolean east) {
    Network network = fitting("$", REDUCER);
    if (west) {
      duct(network, 3, at(0, 0, 0), WEST, 500);
    }
    if (east) {
      duct(network, 4, at(500, 0, 0), EAST, 300);
    }
    MepElement reducer = network.element(2);

    assertThat(reducer.form()).isEqualTo(Form.REDUCER);
    assertThat(reducer.ends()).containsExactlyInAnyOrder(wide(500), wide(300));
    assertThat(value(reducer.section())).isEqualTo(wide(500));
  }

  @ParameterizedTest
  @CsvSource({"false,false", "true,false", "false,true", "true,true"})
  void elbowHasItsAngleWhicheverOfItsEndsAreMet(boolean west, boolean north) {
    Network network = fitting("$", ELBOW);
    if (west) {
      duct(network, 3, at(0, 0, 0), WEST, 500);
    }
    if (north) {
      duct(network, 4, at(500, 500, 0), NORTH, 500);
    }
    MepElement elbow = network.element(2);

    assertThat(elbow.form()).isEqualTo(Form.BEND);
    assertThat(value(elbow.angleDeg())).isCloseTo(90, within(1e-6));
    assertThat(elbow.bendRadiusM()).isNull();
  }

  /** Nothing calls it anything, and one port makes no cap of what is drawn with more ends. */
  @Test
  void onePortLeavesWhatIsDrawnWithMoreEndsItsForm() {
    MepElement wye = breeches("$", 0).port(2, 0, at(600, -225, 0), EAST).element(2);
    MepElement elbow = fitting("$", ELBOW).port(2, 0, at(0, 0, 0), WEST).element(2);

    assertThat(wye.form()).isEqualTo(Form.WYE);
    assertThat(wye.ends()).containsExactlyInAnyOrder(wide(500), wide(250), wide(250));
    assertThat(elbow.form()).isEqualTo(Form.BEND);
    assertThat(value(elbow.angleDeg())).isCloseTo(90, within(1e-6));
  }

  /** The enumeration has one word for tees and crosses. */
  @Test
  void junctionDrawnWithFourEndsIsACrossThoughThreeAreMet() {
    Network network = fitting(".JUNCTION.", CROSS);
    duct(network, 3, at(-300, 0, 0), WEST, 300);
    duct(network, 4, at(300, 0, 0), EAST, 300);
    duct(network, 5, at(0, 300, 0), NORTH, 200);
    MepElement cross = network.element(2);

    assertThat(cross.form()).isEqualTo(Form.CROSS);
    assertThat(cross.ends()).hasSize(4);
  }

  /** The ports of an eccentric reducer lie farther apart than it is long. */
  @Test
  void portsOfAnEccentricReducerContradictItsLengthNot() {
    MepModel model =
        fitting(".TRANSITION.", FLAT_BOTTOMED)
            .port(2, 0, at(0, 0, 0), WEST)
            .port(2, 1, at(400, -100, 0), EAST)
            .read();
    MepElement reducer = InlineModel.element(model, 2000);

    assertThat(value(reducer.lengthM())).isCloseTo(0.4, within(1e-9));
    assertThat(InlineModel.codes(model)).doesNotContain("LENGTH_CONFLICT");
  }

  /** A bend from 500 to 300 in width; a damper without a body at its narrow end is that wide. */
  @Test
  void narrowEndOfABendIsTheSizeOfWhatMeetsIt() {
    Network network =
        fitting(".BEND.", 0, -250, 650, -250, 650, 500, 350, 500, 350, 250, 0, 250)
            .record("#3000=IFCDAMPER('3',$,'Damper',$,$,$,$,$,$);")
            .port(2, 1, at(500, 500, 0), NORTH)
            .port(3, 1, at(500, 500, 0), at(0, -1, 0))
            .port(3, 2, at(500, 700, 0), NORTH)
            .port(2, 2, at(0, 0, 0), WEST)
            .connect(2, 1, 3, 1);
    MepModel model =
        duct(network, 1, at(0, 0, 0), WEST, 500)
            .port(1, 1, at(0, 0, 0), EAST)
            .connect(1, 1, 2, 2)
            .read();

    assertThat(InlineModel.element(model, 2000).ends())
        .containsExactlyInAnyOrder(wide(500), wide(300));
    assertThat(value(InlineModel.element(model, 3000).section())).isEqualTo(wide(300));
  }

  /** A body of sheet that narrows from 260, at a drawn fitting of 300: one of both is wrong. */
  @Test
  void sizeOfAFittingNextDoorThatContradictsTheBodyIsTold() {
    Network network =
        fitting(".TRANSITION.", REDUCER)
            .record("#3000=IFCDUCTFITTING('3',$,'Part',$,$,#3010,#3001,$,.TRANSITION.);")
            .record(InlineModel.placed(3010, 500, 0, 0))
            .record("#3001=IFCPRODUCTDEFINITIONSHAPE($,$,(#3002));")
            .record("#3002=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#3003));")
            .record(
                "#3003=IFCTRIANGULATEDFACESET(#3004,$,.T.,((1,3,2),(2,3,4),(5,6,7),(6,8,7),(1,2,5),"
                    + "(2,6,5),(3,7,4),(4,7,8),(1,5,3),(3,5,7),(2,4,6),(4,8,6)),$);")
            .record(
                "#3004=IFCCARTESIANPOINTLIST3D(((0.,-130.,-130.),(260.,-100.,-100.),"
                    + "(0.,130.,-130.),(260.,100.,-100.),(0.,-130.,130.),(260.,-100.,100.),"
                    + "(0.,130.,130.),(260.,100.,100.)));");
    MepModel model = network.box(4, "IFCDUCTSEGMENT", at(760, 0, 0), EAST, 1000, 200, 200).read();

    assertThat(InlineModel.codes(model)).contains("SECTION_CONFLICT");
  }
}
