package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;
import static org.lagwright.ifc.geometry.TinyModel.METRES;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Corners lie on the true section, so sizes come out exactly; the target was 0.5 %. */
class MeshTest {

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};
  private static final double[] Z = {0, 0, 1};

  private static MeshText cylinder(double radius, double length, int corners) {
    MeshText mesh = new MeshText();
    return mesh.tube(
        mesh.ring(new double[] {0, 0, 0}, X, Y, radius, corners),
        mesh.ring(new double[] {0, 0, length}, X, Y, radius, corners));
  }

  private static MeshText box(double x, double y, double z) {
    MeshText mesh = new MeshText();
    double[] u = {x / 2, 0, 0};
    double[] v = {0, y / 2, 0};
    return mesh.tube(
        mesh.rectangle(new double[] {0, 0, 0}, u, v), mesh.rectangle(new double[] {0, 0, z}, u, v));
  }

  private static void straight(Shape shape, double odM, double lengthM) {
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    assertThat(section(shape).value()).isInstanceOf(Section.Round.class);
    assertThat(section(shape).value().largestSideM()).isCloseTo(odM, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(lengthM, within(1e-6));
    assertThat(section(shape).how()).isEqualTo(How.MESH);
  }

  @Test
  void cylinderIsMeasuredInEveryWayItCanBeWritten() {
    for (int corners : List.of(8, 12, 24, 48, 90)) {
      MeshText mesh = cylinder(0.05, 1.25, corners);
      straight(TinyModel.item(METRES, mesh.triangulated(100)), 0.1, 1.25);
      straight(TinyModel.item(METRES, mesh.polygonal(100)), 0.1, 1.25);
      straight(TinyModel.item(METRES, mesh.faceted(100)), 0.1, 1.25);
      straight(TinyModel.item(METRES, mesh.surface(100)), 0.1, 1.25);
    }
  }

  @Test
  void shortWideCylinderIsMeasuredAlongItsAxisToo() {
    straight(TinyModel.item(METRES, cylinder(0.2, 0.03, 24).faceted(100)), 0.4, 0.03);
  }

  @Test
  void cylinderInAnyPositionFarFromZeroAndInsideOutGivesTheSame() {
    long seed = 20260714;
    System.out.println("seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 50; i++) {
      double radius = 0.005 + random.nextDouble();
      double length = 0.02 + 5 * random.nextDouble();
      Vec axis =
          new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
      MeshText mesh =
          cylinder(radius, length, 8 + random.nextInt(40))
              .placed(
                  new double[] {axis.x(), axis.y(), axis.z()},
                  random.nextDouble() * 6,
                  new double[] {24525622.89, -5123456.7, 12});
      Shape shape =
          TinyModel.item(METRES, (i % 2 == 0 ? mesh : mesh.insideOut()).triangulated(100));
      straight(shape, 2 * radius, length);
      double apart = shape.ends().get(0).centreM().distanceM(shape.ends().get(1).centreM());
      assertThat(apart).isCloseTo(length, within(1e-6));
    }
  }

  @Test
  void openTubeIsMeasuredByItsEdges() {
    MeshText mesh = new MeshText();
    int[] from = mesh.ring(new double[] {0, 0, 0}, X, Y, 0.1, 20);
    int[] to = mesh.ring(new double[] {0, 0, 2}, X, Y, 0.1, 20);
    straight(TinyModel.item(METRES, mesh.wall(from, to).surface(100)), 0.2, 2);
  }

  @Test
  void pipeWithItsBoreGivesTheOuterDiameter() {
    MeshText mesh = new MeshText();
    int[] outer0 = mesh.ring(new double[] {0, 0, 0}, X, Y, 0.1, 24);
    int[] outer1 = mesh.ring(new double[] {0, 0, 1}, X, Y, 0.1, 24);
    int[] inner0 = mesh.ring(new double[] {0, 0, 0}, X, Y, 0.09, 24);
    int[] inner1 = mesh.ring(new double[] {0, 0, 1}, X, Y, 0.09, 24);
    mesh.wall(outer0, outer1).wall(inner0, inner1).wall(outer0, inner0).wall(outer1, inner1);
    straight(TinyModel.item(METRES, mesh.triangulated(100)), 0.2, 1);
  }

  @Test
  void pipeCutAtASlantIsStraightAndRound() {
    MeshText mesh = new MeshText();
    // the far end is cut at 30 degrees: an ellipse, longer by 1 / cos 30
    double[] slant = {1, 0, Math.tan(Math.toRadians(30))};
    mesh.tube(
        mesh.ring(new double[] {0, 0, 0}, X, Y, 0.05, 24),
        mesh.ring(new double[] {0, 0, 1}, slant, Y, 0.05, 24));
    straight(TinyModel.item(METRES, mesh.triangulated(100)), 0.1, 1);
  }

  @Test
  void bendGivesAngleRadiusAndArc() {
    for (double angle : new double[] {30, 45, 60, 90}) {
      for (int corners : new int[] {12, 13, 24}) {
        MeshText mesh = new MeshText().bend(0.03, 0.0875, Math.toRadians(angle), corners, 8);
        Shape shape = TinyModel.item(METRES, mesh.faceted(100));
        assertThat(shape.form()).isEqualTo(Form.BEND);
        assertThat(angleDeg(shape).value()).isCloseTo(angle, within(1e-4));
        assertThat(bendRadiusM(shape).value()).isCloseTo(0.0875, within(1e-6));
        assertThat(lengthM(shape).value()).isCloseTo(0.0875 * Math.toRadians(angle), within(1e-6));
        assertThat(section(shape).value().largestSideM()).isCloseTo(0.06, within(1e-6));
      }
    }
  }

  @Test
  void bendWithUnequalTangentsKeepsTheRadiusOfItsArc() {
    MeshText mesh = new MeshText();
    int[][] rings = new int[13][];
    for (int i = 0; i < rings.length; i++) {
      double t = Math.PI / 2 * Math.min(10, Math.max(0, i - 1)) / 10;
      double straight = i == 0 ? -0.1 : 0;
      double[] centre = {
        0.15 * Math.sin(t) + straight, 0.15 * (1 - Math.cos(t)) + (i == 12 ? 0.04 : 0), 0
      };
      rings[i] = mesh.ring(centre, new double[] {-Math.sin(t), Math.cos(t), 0}, Z, 0.05, 20);
    }
    Shape shape = TinyModel.item(METRES, mesh.tube(rings).faceted(100));
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.15, within(1e-5));
    assertThat(lengthM(shape).value()).isCloseTo(0.15 * Math.PI / 2 + 0.14, within(1e-5));
  }

  @Test
  void frustumIsAReducerAlsoWhenItIsEccentric() {
    for (double eccentricity : new double[] {0, 0.02}) {
      MeshText mesh = new MeshText();
      mesh.tube(
          mesh.ring(new double[] {0, 0, 0}, X, Y, 0.06, 24),
          mesh.ring(new double[] {eccentricity, 0, 0.1}, X, Y, 0.04, 24));
      Shape shape = TinyModel.item(METRES, mesh.triangulated(100));
      assertThat(shape.form()).isEqualTo(Form.REDUCER);
      assertThat(lengthM(shape).value()).isCloseTo(0.1, within(1e-9));
      assertThat(shape.ends())
          .extracting(e -> Math.round(e.section().largestSideM() * 1e6))
          .containsExactlyInAnyOrder(120000L, 80000L);
    }
  }

  @Test
  void rectangleDoesNotPassForACircle() {
    Shape shape =
        TinyModel.item(
            METRES, new ShapeHints(List.of(), null, true), box(1, 0.4, 2).triangulated(100));
    Section.Rectangular section = (Section.Rectangular) section(shape).value();
    assertThat(section.perimeterM()).isCloseTo(2.8, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(2, within(1e-9));
  }

  @Test
  void boxFollowsItsPortsAndTellsWidthFromHeight() {
    // 0.6 along x between the ports, 1.5 along y, 0.3 high
    Shape shape =
        TinyModel.item(
            METRES,
            TinyModel.segmentWithPorts(new Point(-0.3, 0, 0.15), new Point(0.3, 0, 0.15)),
            box(0.6, 1.5, 0.3).faceted(100));
    assertThat(lengthM(shape).value()).isCloseTo(0.6, within(1e-9));
    Section.Rectangular section = (Section.Rectangular) section(shape).value();
    assertThat(section.widthM()).isCloseTo(1.5, within(1e-9));
    assertThat(section.heightM()).isCloseTo(0.3, within(1e-9));
  }

  @Test
  void rectangularBendIsMeasuredByItsTwoSquareCutEnds() {
    MeshText mesh = new MeshText();
    int[][] rings = new int[10][];
    for (int i = 0; i < rings.length; i++) {
      double t = Math.PI / 2 * i / (rings.length - 1);
      double[] centre = {0.5 * Math.sin(t), 0.5 * (1 - Math.cos(t)), 0};
      double[] radial = {-0.2 * Math.sin(t), 0.2 * Math.cos(t), 0};
      rings[i] = mesh.rectangle(centre, radial, new double[] {0, 0, 0.1});
    }
    Shape shape = TinyModel.item(METRES, mesh.tube(rings).triangulated(100));
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.5, within(1e-6));
    Section.Rectangular section = (Section.Rectangular) section(shape).value();
    assertThat(section.widthM()).isCloseTo(0.4, within(1e-6));
    assertThat(section.heightM()).isCloseTo(0.2, within(1e-6));
  }

  @Test
  void mitredRectangularElbowIsABendWithoutARadius() {
    MeshText mesh = new MeshText();
    mesh.tube(
        mesh.rectangle(new double[] {0, 0, 0}, new double[] {0, 0.1, 0}, new double[] {0, 0, 0.05}),
        mesh.rectangle(
            new double[] {0.5, 0, 0}, new double[] {-0.1, 0.1, 0}, new double[] {0, 0, 0.05}),
        mesh.rectangle(
            new double[] {0.5, 0.5, 0}, new double[] {-0.1, 0, 0}, new double[] {0, 0, 0.05}));
    Shape shape =
        TinyModel.item(
            METRES,
            new ShapeHints(List.of(new Point(0, 0, 0), new Point(0.5, 0.5, 0)), null, false),
            mesh.triangulated(100));
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(shape.bendRadiusM()).isNull();
    assertThat(shape.problems())
        .containsExactly("body does not follow an arc between its ends, its radius is not known");
  }

  @Test
  void domedCapHasOneEnd() {
    MeshText mesh = new MeshText();
    int[] rim = mesh.ring(new double[] {0, 0, 0}, X, Y, 0.03, 24);
    int[] dome = mesh.ring(new double[] {0, 0, 0.012}, X, Y, 0.018, 24);
    int top = mesh.points.size();
    mesh.points.add(new double[] {0, 0, 0.016});
    mesh.cap(rim).wall(rim, dome);
    for (int i = 0; i < dome.length; i++) {
      mesh.faces.add(new int[] {dome[i], dome[(i + 1) % dome.length], top});
    }
    Shape shape = TinyModel.item(METRES, mesh.triangulated(100));
    assertThat(shape.form()).isEqualTo(Form.CAP);
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.06, within(1e-6));
  }

  /** A plug has one port, and a length all the same. */
  @Test
  void bodyOfTwoEndsWithOnePortHasItsLength() {
    ShapeHints hints = new ShapeHints(List.of(new Point(0, 0, 0)), null, false);
    straight(TinyModel.item(METRES, hints, cylinder(0.03, 0.04, 24).triangulated(100)), 0.06, 0.04);
  }

  /** A run of two metres along x and a branch up, each a capped cylinder. */
  private static Shape tee(String sleeve, ShapeHints hints) {
    MeshText run = new MeshText();
    run.tube(
        run.ring(new double[] {-1, 0, 0}, Y, Z, 0.1, 24),
        run.ring(new double[] {1, 0, 0}, Y, Z, 0.1, 24));
    MeshText branch = new MeshText();
    branch.tube(
        branch.ring(new double[] {0, 0, 0}, X, Y, 0.05, 24),
        branch.ring(new double[] {0, 0, 0.6}, X, Y, 0.05, 24));
    String items = sleeve.isEmpty() ? "#100,#1000" : "#100,#1000,#3000";
    return TinyModel.measure(
        TinyModel.body(
            TinyModel.AT_ORIGIN, items, run.faceted(100) + branch.triangulated(1000) + sleeve),
        METRES,
        hints);
  }

  private static void isTee(Shape shape, double branchEndM) {
    assertThat(shape.form()).isEqualTo(Form.TEE);
    assertThat(lengthM(shape).value()).isCloseTo(2, within(1e-6));
    assertThat(shape.ends())
        .extracting(e -> Math.round(e.section().largestSideM() * 1e6))
        .containsExactly(200000L, 200000L, 100000L);
    assertThat(shape.ends().get(2).centreM().z()).isCloseTo(branchEndM, within(1e-6));
  }

  @Test
  void branchEndInsideTheRunIsNoEnd() {
    isTee(tee("", ShapeHints.NONE), 0.6);
  }

  @Test
  void sleeveAtTheBranchDoesNotChangeItsSize() {
    MeshText sleeve = new MeshText();
    sleeve.tube(
        sleeve.ring(new double[] {0, 0, 0.5}, X, Y, 0.07, 24),
        sleeve.ring(new double[] {0, 0, 0.62}, X, Y, 0.07, 24));
    isTee(tee(sleeve.faceted(3000), ShapeHints.NONE), 0.62);
  }

  @Test
  void teeOfTwoExtrusionsIsMeasuredAsOneBody() {
    Shape shape =
        TinyModel.measure(
            TinyModel.body(
                TinyModel.AT_ORIGIN,
                "#100,#110",
                """
                #100=IFCEXTRUDEDAREASOLID(#101,#102,#13,2.);
                #101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,0.1);
                #102=IFCAXIS2PLACEMENT3D(#103,#11,#12);
                #103=IFCCARTESIANPOINT((-1.,0.,0.));
                #110=IFCEXTRUDEDAREASOLID(#111,#14,#13,0.6);
                #111=IFCCIRCLEPROFILEDEF(.AREA.,$,$,0.05);
                """),
            METRES,
            ShapeHints.NONE);
    isTee(shape, 0.6);
    assertThat(section(shape).how()).isEqualTo(How.SOLID);
  }

  @Test
  void meshWithoutAnyEndSaysSo() {
    MeshText mesh = new MeshText();
    mesh.points.addAll(List.of(new double[] {0, 0, 0}, X.clone(), Y.clone(), Z.clone()));
    mesh.faces.addAll(
        List.of(
            new int[] {0, 1, 2}, new int[] {0, 1, 3}, new int[] {1, 2, 3}, new int[] {0, 2, 3}));
    Shape shape = TinyModel.item(METRES, mesh.triangulated(100));
    assertThat(shape.section()).isNull();
    assertThat(shape.problems()).containsExactly("no open end recognised");
  }

  @Test
  void brokenFacesAreStandOffAndEmptyBodiesAreReported() {
    Shape shape =
        TinyModel.item(
            METRES,
            """
            #100=IFCTRIANGULATEDFACESET(#101,$,.T.,((1,2,99),(0,-1,2)),$);
            #101=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(1.,0.,0.),(1.#INF,0.,0.)));
            """);
    assertThat(shape.section()).isNull();
    assertThat(shape.problems()).containsExactly("#100=IFCTRIANGULATEDFACESET is not measured");
  }

  /** From the origin along z to 1 m, swinging out along x and back. */
  private static Shape curvedSegment(double swingM) {
    MeshText mesh = new MeshText();
    int[][] rings = new int[25][];
    for (int i = 0; i < rings.length; i++) {
      double turn = 2 * Math.PI * i / (rings.length - 1);
      double slope = Math.PI * swingM * Math.sin(turn);
      double[] across = {1 / Math.hypot(1, slope), 0, -slope / Math.hypot(1, slope)};
      double[] centre = {swingM * (1 - Math.cos(turn)) / 2, 0, i / (rings.length - 1.0)};
      rings[i] = mesh.ring(centre, across, Y, 0.05, 12);
    }
    return TinyModel.item(METRES, TinyModel.segmentWithPorts(), mesh.tube(rings).triangulated(100));
  }

  /** 1.194 m along its middle line (summed up); the volume between coarse rings lacks a little. */
  @Test
  void segmentThatSwingsOutAndBackTellsThatItsLengthIsThatOfItsVolume() {
    Shape curved = curvedSegment(0.3);
    assertThat(lengthM(curved).value()).isCloseTo(1.194, within(0.012));
    assertThat(curved.problems()).singleElement().asString().contains("winds between its ends");
    assertThat(curvedSegment(0).problems()).isEmpty();
  }

  @Test
  void flangesAndPlatesInAPipeDoNotMakeItCurved() {
    MeshText mesh = cylinder(0.05, 1, 24);
    mesh.tube(
        mesh.ring(new double[] {0, 0, 0.02}, X, Y, 0.09, 24),
        mesh.ring(new double[] {0, 0, 0.04}, X, Y, 0.09, 24));
    Shape shape = TinyModel.item(METRES, TinyModel.segmentWithPorts(), mesh.triangulated(100));
    straight(shape, 0.1, 1);
    assertThat(shape.problems()).isEmpty();
  }

  /**
   * A ring of corners and of what lies in the middle between two of them, {@code cos(pi / n)} out.
   */
  private static int[] ringWithMiddles(MeshText mesh, double z, double radius, int corners) {
    int[] ring = mesh.ring(new double[] {0, 0, z}, X, Y, radius, 2 * corners);
    for (int i = 1; i < ring.length; i += 2) {
      mesh.points.get(ring[i])[0] *= Math.cos(Math.PI / corners);
      mesh.points.get(ring[i])[1] *= Math.cos(Math.PI / corners);
    }
    return ring;
  }

  @Test
  void cornersInTheMiddleOfEdgesDoNotMakeAPipeThinner() {
    for (int corners : List.of(8, 12, 16)) {
      MeshText pipe = new MeshText();
      pipe.tube(
          ringWithMiddles(pipe, 0, 0.05715, corners), ringWithMiddles(pipe, 2, 0.05715, corners));
      straight(TinyModel.item(METRES, pipe.faceted(100)), 0.1143, 2);
      MeshText reducer = new MeshText();
      reducer.tube(
          ringWithMiddles(reducer, 0, 0.05715, corners),
          ringWithMiddles(reducer, 0.12, 0.03015, corners));
      Shape shape = TinyModel.item(METRES, reducer.faceted(100));
      assertThat(shape.form()).isEqualTo(Form.REDUCER);
      assertThat(shape.ends().get(0).section().largestSideM()).isCloseTo(0.1143, within(1e-6));
      assertThat(shape.ends().get(1).section().largestSideM()).isCloseTo(0.0603, within(1e-6));
    }
  }
}
