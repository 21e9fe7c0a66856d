package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Fittings that are drawn as boxes and cylinders which meet; millimetres in the file. */
class JoinedPiecesTest {

  private static final Section DUCT = new Section.Rectangular(0.4, 0.3);
  private static final String ALONG_X = "#11,#13";
  private static final String ALONG_Y = "#12,#13";

  private final List<String> items = new ArrayList<>();
  private final StringBuilder records = new StringBuilder();

  private JoinedPiecesTest extruded(String profile, String along, double[] from, double length) {
    int id = 100 + 10 * items.size();
    items.add("#" + id);
    records.append(
        """
        #%1$d=IFCEXTRUDEDAREASOLID(#%2$d,#%3$d,#13,%4$s);
        #%2$d=%5$s;
        #%3$d=IFCAXIS2PLACEMENT3D(#%6$d,%7$s);
        #%6$d=IFCCARTESIANPOINT((%8$s,%9$s,%10$s));
        """
            .formatted(
                id, id + 1, id + 2, length, profile, id + 3, along, from[0], from[1], from[2]));
    return this;
  }

  /** A duct along x, as wide along y as told and 300 mm high. */
  private JoinedPiecesTest ductAlongX(double width, double from, double to) {
    return extruded(box(300, width), ALONG_X, new double[] {from, 0, 0}, to - from);
  }

  private JoinedPiecesTest ductAlongY(double width, double from, double to) {
    return extruded(box(300, width), ALONG_Y, new double[] {0, from, 0}, to - from);
  }

  private JoinedPiecesTest pipe(double diameter, double[] from, double length, String along) {
    return extruded(circle(diameter), along, from, length);
  }

  private static String box(double width, double height) {
    return "IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,%s,%s)".formatted(width, height);
  }

  private static String circle(double diameter) {
    return "IFCCIRCLEPROFILEDEF(.AREA.,$,#16,%s)".formatted(diameter / 2);
  }

  private Shape measured(Point... ports) {
    return TinyModel.measure(
        TinyModel.body(TinyModel.AT_ORIGIN, String.join(",", items), records.toString()),
        TinyModel.MM_RAD,
        new ShapeHints(List.of(ports), null, false));
  }

  private static void assertElbow(Shape shape, double lengthM) {
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(shape.ends()).hasSize(2);
    assertThat(Ends.same(shape.ends().get(0).section(), DUCT)).isTrue();
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(lengthM, within(1e-9));
    assertThat(shape.bendRadiusM()).isNull();
  }

  /** Legs of 300 mm along x and of the rest along y, in one corner without an arc. */
  @ParameterizedTest(name = "along x to {0}, along y from {1} to {2}")
  @CsvSource({"200, -200, 300", "200, 200, 500", "0, 0, 300"})
  void twoDuctsThatMeetInACornerAreAnElbow(double toX, double fromY, double toY) {
    Shape shape = ductAlongX(400, -300, toX).ductAlongY(400, fromY, toY).measured();
    assertElbow(shape, (300 + toY) / 1000);
  }

  @Test
  void twoDuctsExtrudedUpwardsAreAnElbowToo() {
    Shape shape =
        extruded(box(500, 400), "#13,#11", new double[] {-50, 0, -150}, 300)
            .extruded(box(400, 500), "#13,#11", new double[] {0, 50, -150}, 300)
            .measured();
    assertElbow(shape, 0.6);
  }

  @Test
  void twoPipesThatMeetInACornerAreAnElbow() {
    Shape shape =
        pipe(60.3, new double[] {-80, 0, 0}, 80, ALONG_X)
            .pipe(60.3, new double[] {0, 0, 0}, 90, ALONG_Y)
            .measured();
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(lengthM(shape).value()).isCloseTo(0.17, within(1e-9));
  }

  @Test
  void runAsShortAsItsBranchIsWideIsATee() {
    Shape shape = ductAlongX(400, -150, 150).ductAlongY(300, 0, 400).measured();
    assertThat(shape.form()).isEqualTo(Form.TEE);
    assertThat(shape.ends()).hasSize(3);
  }

  @Test
  void branchesAtBothSidesAreACross() {
    Shape shape =
        ductAlongX(400, -400, 400).ductAlongY(250, 0, 400).ductAlongY(250, -400, 0).measured();
    assertThat(shape.form()).isEqualTo(Form.CROSS);
    assertThat(shape.ends()).hasSize(4);
  }

  @Test
  void ductsOfTwoSizesSetOnOneAnotherAreAReducer() {
    Shape shape =
        ductAlongX(400, 0, 200)
            .extruded(box(200, 250), ALONG_X, new double[] {200, 0, 0}, 200)
            .measured();
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(lengthM(shape).value()).isCloseTo(0.4, within(1e-9));
    assertThat(shape.ends())
        .extracting(end -> Math.round(1000 * end.section().largestSideM()))
        .containsExactly(400L, 250L);
  }

  @Test
  void ductSetOnAWiderFrameIsNoReducer() {
    Shape shape =
        extruded(box(360, 460), ALONG_X, new double[] {-30, 0, 0}, 30)
            .ductAlongX(400, 0, 300)
            .measured();
    assertThat(shape.form()).isNotEqualTo(Form.REDUCER);
  }

  @Test
  void roundPipeSetOnADuctIsATransition() {
    Shape shape =
        ductAlongX(400, 0, 200).pipe(250, new double[] {200, 0, 0}, 100, ALONG_X).measured();
    assertThat(shape.form()).isEqualTo(Form.TRANSITION);
  }

  /** Plates of 5 mm that stand 50 mm off, their outer faces in the planes of both ends. */
  @Test
  void flangesAroundTheSleevesOfAReducerAreNotItsEnds() {
    Shape shape =
        ductAlongX(400, 0, 200)
            .extruded(box(200, 250), ALONG_X, new double[] {200, 0, 0}, 200)
            .extruded(box(400, 500), ALONG_X, new double[] {0, 0, 0}, 5)
            .extruded(box(300, 350), ALONG_X, new double[] {395, 0, 0}, 5)
            .measured();
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(lengthM(shape).value()).isCloseTo(0.4, within(1e-9));
    assertThat(shape.ends())
        .extracting(end -> Math.round(1000 * end.section().largestSideM()))
        .containsExactly(400L, 250L);
  }

  /** The axis of the larger pipe passes outside the smaller one. */
  @Test
  void pipesOnTwoAxesWithOneBottomLineAreAReducer() {
    Shape shape =
        pipe(114.3, new double[] {0, 0, 0}, 60, ALONG_X)
            .pipe(33.7, new double[] {60, 0, -40.3}, 60, ALONG_X)
            .measured();
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(shape.ends()).hasSize(2);
  }

  /** Either the two far faces are its ends, or those at the sides of the corner. */
  @Test
  void boxesThatMayMeetInTwoWaysAreNotTold() {
    MeshText mesh = new MeshText();
    double[] y = {0, 0.2, 0};
    double[] z = {0, 0, 0.15};
    mesh.tube(
        mesh.rectangle(new double[] {-0.3, 0, 0}, y, z),
        mesh.rectangle(new double[] {0, 0, 0}, y, z));
    items.add("#100");
    records.append(mesh.faceted(100));
    MeshText other = new MeshText();
    double[] x = {0.2, 0, 0};
    other.tube(
        other.rectangle(new double[] {0, 0, 0}, z, x),
        other.rectangle(new double[] {0, 0.3, 0}, z, x));
    items.add("#5000");
    records.append(other.faceted(5000));
    Shape shape =
        TinyModel.measure(
            TinyModel.body(TinyModel.AT_ORIGIN, "#100,#5000", records.toString()),
            TinyModel.METRES,
            ShapeHints.NONE);
    assertThat(shape.form()).isEqualTo(Form.UNKNOWN);
    assertThat(shape.ends()).hasSizeGreaterThan(2);
    assertThat(shape.problems()).isNotEmpty();
  }

  @Test
  void motorOnTheStemOfADamperIsNoSecondRun() {
    Shape shape =
        pipe(250, new double[] {-100, 0, 0}, 200, ALONG_X)
            .extruded(circle(20), "#13,#11", new double[] {0, 0, 100}, 80)
            .extruded(box(60, 60), "#13,#11", new double[] {0, 0, 150}, 80)
            .measured();
    assertThat(shape.form()).isNotEqualTo(Form.CROSS);
  }
}
