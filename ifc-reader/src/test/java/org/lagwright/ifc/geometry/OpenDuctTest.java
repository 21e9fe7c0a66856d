package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;
import static org.lagwright.ifc.geometry.TinyModel.METRES;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Rectangular ducts drawn with their openings run from opening to opening, however short. */
class OpenDuctTest {

  private static final ShapeHints SEGMENT = new ShapeHints(List.of(), null, true);
  private static final double WIDTH_M = 2;
  private static final double HEIGHT_M = 0.6;
  private static final double LENGTH_M = 1.2;

  private static final String HOLLOW =
      """
      #100=IFCEXTRUDEDAREASOLID(#101,#14,#13,1.2);
      #101=IFCRECTANGLEHOLLOWPROFILEDEF(.AREA.,$,#16,2.,0.6,0.001,$,$);
      """;

  /** A plate 2 x 0.6 with a hole between these half sides, pushed 1.2 upwards. */
  private static final String FREE =
      """
      #100=IFCEXTRUDEDAREASOLID(#101,#14,#13,1.2);
      #101=IFCARBITRARYPROFILEDEFWITHVOIDS(.AREA.,$,#102,(#103));
      #102=IFCINDEXEDPOLYCURVE(#104,$,.F.);
      #103=IFCINDEXEDPOLYCURVE(#105,$,.F.);
      #104=IFCCARTESIANPOINTLIST2D(((-1.,-0.3),(1.,-0.3),(1.,0.3),(-1.,0.3),(-1.,-0.3)));
      #105=IFCCARTESIANPOINTLIST2D(((-x,-y),(x,-y),(x,y),(-x,y),(-x,-y)));
      """;

  /** A box 2 x 0.6 x 1.2 upwards, and what is taken out of it in its middle from a height on. */
  private static final String BORED =
      """
      #100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);
      #101=IFCEXTRUDEDAREASOLID(#102,#14,#13,1.2);
      #102=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,2.,0.6);
      #110=IFCEXTRUDEDAREASOLID(#111,#112,#13,depth);
      #111=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,width,height);
      #112=IFCAXIS2PLACEMENT3D(#113,$,$);
      #113=IFCCARTESIANPOINT((0.,0.,from));
      """;

  private final MeshText mesh = new MeshText();

  private static Shape bored(double width, double height, double from, double depth) {
    return TinyModel.item(
        METRES,
        SEGMENT,
        BORED
            .replace("width", "" + width)
            .replace("height", "" + height)
            .replace("from", "" + from)
            .replace("depth", "" + depth));
  }

  private int[] rectangle(double x, double z, double width, double height) {
    return mesh.rectangle(
        new double[] {x, 0, z}, new double[] {0, width / 2, 0}, new double[] {0, 0, height / 2});
  }

  /** A closed body with sheet walls between two rectangles. */
  private void walled(int[] from, int[] to, int[] innerFrom, int[] innerTo) {
    mesh.wall(from, to).wall(innerTo, innerFrom).wall(innerFrom, from).wall(to, innerTo);
  }

  private static void lies(Shape shape, double widthM, double heightM, double lengthM) {
    Section.Rectangular section = (Section.Rectangular) section(shape).value();
    assertThat(section.widthM()).isCloseTo(widthM, within(1e-9));
    assertThat(section.heightM()).isCloseTo(heightM, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(lengthM, within(1e-9));
  }

  @Test
  void hollowProfileIsAsLongAsItsDepth() {
    Shape shape = TinyModel.item(METRES, SEGMENT, HOLLOW);

    lies(shape, WIDTH_M, HEIGHT_M, LENGTH_M);
    assertThat(shape.problems()).isEmpty();
    assertThat(lengthM(shape).lost()).isEmpty();
  }

  @Test
  void freeProfileWithABoreIsAsLongAsItsDepth() {
    String free = FREE.replace("x", "0.999").replace("y", "0.299");

    lies(TinyModel.item(METRES, SEGMENT, free), WIDTH_M, HEIGHT_M, LENGTH_M);
  }

  /** A duct drawn as its plan, with the hole for a branch in it. */
  @Test
  void holeInASideIsNoBore() {
    String plan = FREE.replace("x", "0.2").replace("y", "0.2");

    lies(TinyModel.item(METRES, SEGMENT, plan), HEIGHT_M, LENGTH_M, WIDTH_M);
  }

  @Test
  void hollowProfileWithoutAWallIsABox() {
    String solid = HOLLOW.replace("0.001", "$");

    lies(TinyModel.item(METRES, SEGMENT, solid), HEIGHT_M, LENGTH_M, WIDTH_M);
  }

  /** The inner box as long as the outer one, and a little longer at both ends. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.05})
  void boxWithoutTheBoxInItIsAsLongAsItsBore(double longerM) {
    lies(bored(1.998, 0.598, -longerM, LENGTH_M + 2 * longerM), WIDTH_M, HEIGHT_M, LENGTH_M);
  }

  @Test
  void blockWithoutABlockAlongAnotherOfItsEdgesIsAsLongAsItsBore() {
    String blocks =
        """
        #100=IFCCSGSOLID(#101);
        #101=IFCBOOLEANRESULT(.DIFFERENCE.,#102,#103);
        #102=IFCBLOCK(#14,1.2,2.,0.6);
        #103=IFCBLOCK(#104,1.2,1.998,0.598);
        #104=IFCAXIS2PLACEMENT3D(#105,$,$);
        #105=IFCCARTESIANPOINT((0.,0.001,0.001));
        """;

    lies(TinyModel.item(METRES, SEGMENT, blocks), WIDTH_M, HEIGHT_M, LENGTH_M);
  }

  @Test
  void whatLeavesAnEndClosedOrNoWallAllAroundIsNoBoreOfABox() {
    lies(bored(1.998, 0.598, 0.001, LENGTH_M), HEIGHT_M, LENGTH_M, WIDTH_M);
    lies(bored(0.4, 0.4, 0, LENGTH_M), HEIGHT_M, LENGTH_M, WIDTH_M);
  }

  @Test
  void portsAtTheSidesOfAHollowProfileAreFollowedAndReported() {
    ShapeHints ports = TinyModel.segmentWithPorts(new Point(-1, 0, 0.6), new Point(1, 0, 0.6));
    Shape shape = TinyModel.item(METRES, ports, HOLLOW);

    lies(shape, HEIGHT_M, LENGTH_M, WIDTH_M);
    assertThat(shape.problems())
        .containsExactly("ports lie at sides of the duct, not at its open ends");
  }

  /** With walls of 1 mm and of 30 mm; the size is the outer one. */
  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.03})
  void meshWithSheetWallsRunsFromOpeningToOpening(double wallM) {
    walled(
        rectangle(0, 0, WIDTH_M, HEIGHT_M),
        rectangle(LENGTH_M, 0, WIDTH_M, HEIGHT_M),
        rectangle(0, 0, WIDTH_M - 2 * wallM, HEIGHT_M - 2 * wallM),
        rectangle(LENGTH_M, 0, WIDTH_M - 2 * wallM, HEIGHT_M - 2 * wallM));

    lies(TinyModel.item(METRES, SEGMENT, mesh.faceted(100)), WIDTH_M, HEIGHT_M, LENGTH_M);
  }

  @Test
  void shellWithoutEndFacesRunsFromOpeningToOpening() {
    mesh.wall(rectangle(0, 0, WIDTH_M, HEIGHT_M), rectangle(LENGTH_M, 0, WIDTH_M, HEIGHT_M));

    lies(TinyModel.item(METRES, SEGMENT, mesh.surface(100)), WIDTH_M, HEIGHT_M, LENGTH_M);
  }

  /** A ladder 2.5 long and 0.3 wide, of two rails 55 mm apart whose long edges are turned up. */
  @Test
  void railsWithTurnedUpEdgesAreNoOpenings() {
    rail(0, 0.022);
    rail(0.055, 0.033);

    lies(TinyModel.item(METRES, SEGMENT, mesh.surface(100)), 0.055, 0.3, 2.5);
  }

  private void rail(double y, double edgeY) {
    double[] alongM = {1.25, 0, 0};
    double[] acrossM = {0, 0, 0.15};
    int[] plate = mesh.rectangle(new double[] {0, y, 0}, alongM, acrossM);
    int[] edges = mesh.rectangle(new double[] {0, edgeY, 0}, alongM, acrossM);
    mesh.cap(plate);
    mesh.cap(new int[] {plate[0], plate[1], edges[1], edges[0]});
    mesh.cap(new int[] {plate[2], plate[3], edges[3], edges[2]});
  }

  /** Half circles of 0.2 at a middle part of 0.3: shorter than wide, with end faces. */
  @Test
  void shortFlatOvalDuctRunsFromEndToEnd() {
    mesh.tube(oval(0), oval(0.25));
    Shape shape = TinyModel.item(METRES, SEGMENT, mesh.faceted(100));

    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    Section.Oval section = (Section.Oval) section(shape).value();
    assertThat(section.widthM()).isCloseTo(0.5, within(1e-9));
    assertThat(section.heightM()).isCloseTo(0.2, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(0.25, within(1e-9));
  }

  private int[] oval(double x) {
    int[] ring = new int[18];
    for (int i = 0; i < ring.length; i++) {
      boolean left = i >= 9;
      double t = Math.PI * ((left ? i - 1 : i) / 8.0 - 0.5);
      ring[i] = mesh.points.size();
      mesh.points.add(
          new double[] {x, (left ? -0.15 : 0.15) + 0.1 * Math.cos(t), 0.1 * Math.sin(t)});
    }
    return ring;
  }

  /** Level on top, so that a flat side of it looks like an end too. */
  @Test
  void openEndsTellATransitionFromItsFlatSides() {
    walled(
        rectangle(0, 0, 0.4, 0.25),
        rectangle(0.5, 0.025, 0.4, 0.2),
        rectangle(0, 0, 0.394, 0.244),
        rectangle(0.5, 0.025, 0.394, 0.194));
    Shape shape = TinyModel.item(METRES, mesh.faceted(100));

    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    lies(shape, 0.4, 0.25, 0.5);
  }
}
