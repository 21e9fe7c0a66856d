package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;

/**
 * Pieces of curved faces whose edges alone look like those of a straight piece: a bend of one face
 * has none but the circles at its ends.
 */
class AdvancedBendTest {

  private static final double MAJOR = 0.171;
  private static final double MINOR = 0.05715;
  private static final double[] UP = {0, 0, 1};
  private static final double[] MINUS_Y = {0, -1, 0};
  private static final double[] EAST = {1, 0, 0};

  private final RandomSetting setting = new RandomSetting(7);
  private final AdvancedText text = new AdvancedText(setting);

  /** A circle about the centre line: where it stands, its edge and its vertex. */
  private record Ring(int placement, int edge, int vertex) {}

  private Ring ring(double[] centre, double[] out, double[] across, double radius) {
    int placement = text.placement(centre, out, across);
    int vertex =
        text.vertex(
            centre[0] + radius * across[0],
            centre[1] + radius * across[1],
            centre[2] + radius * across[2]);
    return new Ring(placement, text.edge(vertex, vertex, text.circle(placement, radius)), vertex);
  }

  /** At an angle round the z axis. */
  private Ring at(double angle) {
    double[] across = {Math.cos(angle), Math.sin(angle), 0};
    double[] out = {Math.sin(angle), -Math.cos(angle), 0};
    return ring(new double[] {MAJOR * across[0], MAJOR * across[1], 0}, out, across, MINOR);
  }

  private void torus(Ring from, Ring to, boolean seam) {
    int torus = text.add("IFCTOROIDALSURFACE(#14,%s,%s)".formatted(text.n(MAJOR), text.n(MINOR)));
    if (seam) {
      int edge = text.edge(from.vertex, to.vertex, text.circle(14, MAJOR + MINOR));
      text.face(torus, true, text.bound(true, true, -from.edge, edge, to.edge, -edge));
    } else {
      text.face(torus, true, text.bound(true, true, -from.edge), text.bound(false, true, to.edge));
    }
  }

  private void caps(Ring from, Ring to) {
    text.face(text.plane(from.placement), true, text.bound(true, true, from.edge));
    text.face(text.plane(to.placement), false, text.bound(true, true, -to.edge));
  }

  private Shape measured() {
    IfcFile file = setting.around("IFC4", text.text());
    return TinyModel.measure(file, setting.units(), ShapeHints.NONE);
  }

  private void isBend(double angle, double lengthM) {
    Shape shape = measured();
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(Math.toDegrees(angle), within(0.01));
    assertThat(bendRadiusM(shape).value()).isCloseTo(MAJOR, within(1e-4));
    assertThat(lengthM(shape).value()).isCloseTo(lengthM, within(1e-4));
    assertThat(section(shape).value()).isInstanceOf(Section.Round.class);
    assertThat(section(shape).value().largestSideM()).isCloseTo(2 * MINOR, within(1e-5));
  }

  @ParameterizedTest
  @ValueSource(ints = {15, 45, 90, 135})
  void torusWithASeamIsABend(int degrees) {
    double angle = Math.toRadians(degrees);
    Ring from = at(0);
    Ring to = at(angle);
    torus(from, to, true);
    caps(from, to);
    isBend(angle, MAJOR * angle);
  }

  @ParameterizedTest
  @ValueSource(ints = {15, 45, 90, 135})
  void torusWithoutASeamIsABend(int degrees) {
    double angle = Math.toRadians(degrees);
    Ring from = at(0);
    Ring to = at(angle);
    torus(from, to, false);
    caps(from, to);
    isBend(angle, MAJOR * angle);
  }

  /** The rings between arc and tangents fit every smaller arc too. */
  @Test
  void torusBetweenTwoTangentsKeepsItsRadius() {
    Ring from = at(0);
    Ring to = at(Math.PI / 2);
    Ring start = ring(new double[] {MAJOR, -0.06, 0}, MINUS_Y, EAST, MINOR);
    Ring end = ring(new double[] {-0.06, MAJOR, 0}, EAST, new double[] {0, 1, 0}, MINOR);
    torus(from, to, false);
    cylinder(start, from);
    cylinder(to, end);
    caps(start, end);
    isBend(Math.PI / 2, MAJOR * Math.PI / 2 + 0.12);
  }

  private void cylinder(Ring from, Ring to) {
    int surface =
        text.add("IFCCYLINDRICALSURFACE(#%d,%s)".formatted(from.placement, text.n(MINOR)));
    text.face(surface, true, text.bound(true, true, -from.edge), text.bound(false, true, to.edge));
  }

  /** One ruled face between two circles of which one stands aside. */
  @Test
  void eccentricReducerOfOneSplineFaceKeepsBothSizes() {
    double large = 0.05715;
    double small = 0.03805;
    double aside = large - small;
    Ring from = ring(new double[] {0, 0, 0}, UP, EAST, large);
    Ring to = ring(new double[] {aside, 0, 0.15}, UP, EAST, small);
    text.face(
        ruled(large, small, aside, 0.15),
        true,
        text.bound(true, true, from.edge),
        text.bound(false, true, -to.edge));
    caps(from, to);
    Shape shape = measured();
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(lengthM(shape).value()).isCloseTo(0.15, within(1e-5));
    assertThat(shape.ends())
        .extracting(end -> Math.round(1e5 * end.section().largestSideM()))
        .containsExactlyInAnyOrder(11430L, 7610L);
  }

  /** The circle of four rational arcs below and above, straight lines between. */
  private int ruled(double low, double high, double aside, double heightM) {
    double[][] corners = {{1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}, {0, -1}, {1, -1}};
    StringBuilder control = new StringBuilder();
    StringBuilder weights = new StringBuilder();
    for (int i = 0; i <= corners.length; i++) {
      double[] c = corners[i % corners.length];
      int bottom = text.point(low * c[0], low * c[1], 0);
      int top = text.point(aside + high * c[0], high * c[1], heightM);
      String w = RandomSetting.number(i % 2 == 0 ? 1 : Math.sqrt(0.5));
      control.append(i == 0 ? "" : ",").append("(#%d,#%d)".formatted(bottom, top));
      weights.append(i == 0 ? "" : ",").append("(%s,%s)".formatted(w, w));
    }
    return text.add(
        ("IFCRATIONALBSPLINESURFACEWITHKNOTS(2,1,(%s),.RULED_SURF.,.T.,.F.,.F.,(3,2,2,2,3),(2,2),"
                + "(0.,1.,2.,3.,4.),(0.,1.),.UNSPECIFIED.,(%s))")
            .formatted(control, weights));
  }
}
