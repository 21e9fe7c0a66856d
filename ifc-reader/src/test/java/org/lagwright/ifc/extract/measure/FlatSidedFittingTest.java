package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Fittings of ducts drawn as meshes without ports, whose flat sides look like ends too. */
class FlatSidedFittingTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);

  private static final double HEIGHT_MM = 300;

  /** A fitting #2000 of a height about z = 0, as a mesh, of its outline in plan. */
  private static Network fitting(String name, double... xyMm) {
    int corners = xyMm.length / 2;
    StringBuilder points = new StringBuilder();
    StringBuilder bottom = new StringBuilder();
    StringBuilder top = new StringBuilder();
    StringBuilder sides = new StringBuilder();
    Network network = new Network();
    for (int side = 0; side < 2; side++) {
      double zMm = (side - 0.5) * HEIGHT_MM;
      for (int i = 0; i < corners; i++) {
        points.append(points.isEmpty() ? "" : ",");
        points.append("(%s,%s,%s)".formatted(xyMm[2 * i], xyMm[2 * i + 1], zMm));
      }
    }
    for (int i = 0; i < corners; i++) {
      int next = (i + 1) % corners;
      bottom.append(i == 0 ? "" : ",").append(corners - i);
      top.append(i == 0 ? "" : ",").append(corners + i + 1);
      sides.append(",#").append(2030 + i);
      network.record(
          "#%d=IFCINDEXEDPOLYGONALFACE((%d,%d,%d,%d));"
              .formatted(2030 + i, i + 1, next + 1, corners + next + 1, corners + i + 1));
    }
    return network
        .record("#2000=IFCDUCTFITTING('2',$,'%s',$,$,#2010,#2001,$,$);".formatted(name))
        .record(InlineModel.placed(2010, 0, 0, 0))
        .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
        .record("#2002=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#2003));")
        .record("#2003=IFCPOLYGONALFACESET(#2004,.T.,(#2005,#2006%s),$);".formatted(sides))
        .record("#2004=IFCCARTESIANPOINTLIST3D((%s));".formatted(points))
        .record("#2005=IFCINDEXEDPOLYGONALFACE((%s));".formatted(bottom))
        .record("#2006=IFCINDEXEDPOLYGONALFACE((%s));".formatted(top));
  }

  private static Network duct(Network network, int n, double[] at, double[] along, double widthMm) {
    return network.box(n, "IFCDUCTSEGMENT", at, along, 1000, HEIGHT_MM, widthMm);
  }

  /** A sheet of 2 mm is no duct of 500 x 2 mm, 300 mm long. */
  @Test
  void plateClosesADuctOfItsOwnSides() {
    MepElement plate = fitting("End cap", 0, -250, 2, -250, 2, 250, 0, 250).element(2);

    assertThat(plate.form()).isEqualTo(Form.CAP);
    assertThat(Tolerances.sameSection(value(plate.section()), new Section.Rectangular(0.5, 0.3)))
        .isTrue();
    assertThat(value(plate.lengthM())).isCloseTo(0.002, within(1e-9));
  }

  /** 180 mm along the run: ducts tell that, and alone it may as well run along its width. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void boxOfFacesThatNothingTellsOfIsTold(boolean alone) {
    Network network = fitting("Damper", 0, -250, 180, -250, 180, 250, 0, 250);
    if (!alone) {
      duct(network, 3, at(0, 0, 0), WEST, 500);
    }
    MepModel model = network.read();
    MepElement damper = element(model, 2000);

    assertThat(damper.form()).isEqualTo(Form.DAMPER);
    assertThat(Tolerances.sameSection(value(damper.section()), new Section.Rectangular(0.5, 0.3)))
        .isEqualTo(!alone);
    assertThat(InlineModel.codes(model).contains("GEOMETRY_ONLY_PARTLY_MEASURED")).isEqualTo(alone);
  }

  /** One port tells where the box is entered, not where it is left. */
  @Test
  void boxOfFacesOfWhichTheFileHoldsOnePortIsTold() {
    Network network = fitting("Damper", 0, -250, 180, -250, 180, 250, 0, 250);

    MepModel model = network.port(2, 0, at(0, 0, 0), WEST).read();

    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  /** The back of the tee is longer than its ends, and was taken for one. */
  @Test
  void widthOfATeeIsThatOfItsRun() {
    Network network =
        fitting(
            "Tee", -350, -250, 350, -250, 350, 250, 125, 250, 125, 350, -125, 350, -125, 250, -350,
            250);
    duct(network, 3, at(-350, 0, 0), WEST, 500);
    duct(network, 4, at(350, 0, 0), EAST, 500);
    duct(network, 5, at(0, 350, 0), NORTH, 250);
    Point width = Objects.requireNonNull(network.element(2).width());

    assertThat(Math.abs(width.y())).isCloseTo(1, within(1e-9));
  }

  /** The slanted side of the shoe ends where the branch does, so there is no collar. */
  @Test
  void branchOfAShoeTeeIsJoinedAtItsMouth() {
    Network network =
        fitting(
            "Tee", -325, -250, 325, -250, 325, 250, 250, 250, 150, 350, -150, 350, -150, 250, -325,
            250);
    duct(network, 3, at(-325, 0, 0), WEST, 500);
    duct(network, 4, at(325, 0, 0), EAST, 500);
    duct(network, 5, at(0, 350, 0), NORTH, 300);
    MepElement tee = network.element(2);
    Section run = new Section.Rectangular(0.5, 0.3);

    assertThat(tee.form()).isEqualTo(Form.TEE);
    assertThat(tee.ends()).containsExactly(run, run, new Section.Rectangular(0.3, 0.3));
    assertThat(value(tee.lengthM())).isCloseTo(0.65, within(1e-9));
    assertThat(value(tee.branchLengthM())).isCloseTo(0.35, within(1e-9));
    assertThat(tee.ports()).hasSize(3);
  }

  /**
   * An elbow with a square heel and a rounded throat is no arc, whether its ends are told by ports
   * or by the ducts that touch it.
   *
   * @param legMm from the corner of the centre lines to each end
   */
  @ParameterizedTest
  @ValueSource(doubles = {300, 400, 500})
  void squareElbowHasNoRadius(double legMm) {
    double[] heel = {-legMm, -250, 250, -250, 250, legMm};
    double[] outline = Arrays.copyOf(heel, heel.length + 18);
    for (int i = 0; i <= 8; i++) {
      double turn = Math.toRadians(90 / 8.0 * i);
      outline[heel.length + 2 * i] = -legMm + (legMm - 250) * Math.cos(turn);
      outline[heel.length + 2 * i + 1] = legMm - (legMm - 250) * Math.sin(turn);
    }
    Network network = fitting("Elbow", outline);
    duct(network, 3, at(-legMm, 0, 0), WEST, 500);
    duct(network, 4, at(0, legMm, 0), NORTH, 500);
    MepModel model = network.read();
    MepElement elbow = element(model, 2000);

    assertThat(elbow.form()).isEqualTo(Form.BEND);
    assertThat(value(elbow.angleDeg())).isCloseTo(90, within(1e-6));
    assertThat(elbow.bendRadiusM()).isNull();
    assertThat(elbow.lengthM()).isNull();
    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  /** Frames at both ends are wider than the duct, and so is what they are drawn as. */
  @Test
  void elbowBetweenFramesKeepsItsOwnSize() {
    MepElement elbow =
        fitting("Elbow", 0, -250, 750, -250, 750, 500, 250, 500, 250, 250, 0, 250)
            .box(3, "IFCDUCTFITTING", at(0, 0, 0), WEST, 50, HEIGHT_MM + 60, 560)
            .box(4, "IFCDUCTFITTING", at(500, 500, 0), NORTH, 50, HEIGHT_MM + 60, 560)
            .element(2);
    Section own = new Section.Rectangular(0.5, 0.3);

    assertThat(elbow.ports()).hasSize(2);
    assertThat(value(elbow.section())).isEqualTo(own);
    assertThat(elbow.ends()).containsExactly(own, own);
  }
}
