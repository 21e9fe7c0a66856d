package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.shape.Sheath;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;

/** Straight pieces with flanges, sockets and shells: as several solids, and as one mesh. */
class CoaxialBodyTest {

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};
  private static final ShapeHints SEGMENT = new ShapeHints(List.of(), null, true);

  /** An extrusion along z of a profile, from a height on; millimetres. */
  private static String item(int id, String profile, double fromMm, double lengthMm) {
    return """
        #%1$d=IFCEXTRUDEDAREASOLID(#%2$d,#%3$d,#13,%6$s);
        #%2$d=%4$s;
        #%3$d=IFCAXIS2PLACEMENT3D(#%5$d,$,$);
        #%5$d=IFCCARTESIANPOINT((0.,0.,%7$s));
        """
        .formatted(id, id + 1, id + 2, profile, id + 3, lengthMm, fromMm);
  }

  private static String round(double diameterMm) {
    return "IFCCIRCLEPROFILEDEF(.AREA.,$,#16,%s)".formatted(diameterMm / 2);
  }

  private static String hollow(double diameterMm, double boreMm) {
    return "IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,#16,%s,%s)"
        .formatted(diameterMm / 2, (diameterMm - boreMm) / 2);
  }

  private static Shape segment(String items, String... records) {
    return TinyModel.measure(
        TinyModel.body(TinyModel.AT_ORIGIN, items, String.join("", records)),
        TinyModel.MM_RAD,
        SEGMENT);
  }

  @Test
  void flangesAtTheEndsAreNotTheSizeOfThePipe() {
    Shape shape =
        segment(
            "#100,#110,#120",
            item(100, round(114.3), 0, 3000),
            item(110, hollow(220, 114.3), 0, 20),
            item(120, hollow(220, 114.3), 2980, 20));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.1143));
    assertThat(section(shape).lost())
        .extracting(lost -> lost.value())
        .contains(new Section.Round(0.22));
    assertThat(lengthM(shape).value()).isCloseTo(3, within(1e-9));
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    assertThat(shape.sheath()).isNull();
  }

  @ParameterizedTest(name = "socket from {0} mm on: {1} m")
  @CsvSource({"0, 2.0", "-40, 2.04"})
  void socketIsNotTheSizeOfThePipeAndCountsAsLength(double fromMm, double expectedM) {
    Shape shape =
        segment(
            "#100,#110",
            item(100, hollow(110, 104), 0, 2000),
            item(110, hollow(130, 110), fromMm, 80));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.11));
    assertThat(lengthM(shape).value()).isCloseTo(expectedM, within(1e-9));
    assertThat(shape.sheath()).isNull();
  }

  @Test
  void framesOfADuctAreNotItsSize() {
    String duct = "IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,400.,250.)";
    String frame = "IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,460.,310.)";
    Shape shape =
        segment(
            "#100,#110,#120",
            item(100, duct, 0, 1500),
            item(110, frame, 0, 30),
            item(120, frame, 1470, 30));
    assertThat(section(shape).value()).isEqualTo(new Section.Rectangular(0.4, 0.25));
    assertThat(lengthM(shape).value()).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void collarInTheMiddleChangesNothing() {
    Shape shape =
        segment("#100,#110", item(100, round(60.3), 0, 1000), item(110, hollow(90, 60.3), 400, 50));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.0603));
    assertThat(section(shape).lost()).isEmpty();
  }

  @ParameterizedTest(name = "shell of {0} mm from {1} mm on")
  @CsvSource({"1000, 0, 1.0, 60.3", "900, 50, 0.9, 60.3", "600, 0, 0.6, 60.3", "1000, 0, 1, 62"})
  void shellThatFitsThePipeIsToldWithItsShare(
      double lengthMm, double fromMm, double share, double boreMm) {
    Shape shape =
        segment(
            "#100,#110",
            item(100, hollow(60.3, 54.5), 0, 1000),
            item(110, hollow(120.3, boreMm), fromMm, lengthMm));
    Sheath sheath = Objects.requireNonNull(shape.sheath());
    assertThat(sheath.inner().value()).isEqualTo(new Section.Round(0.0603));
    assertThat(sheath.outer()).isEqualTo(new Section.Round(0.1203));
    assertThat(sheath.share()).isCloseTo(share, within(1e-9));
  }

  @ParameterizedTest(name = "{0} in {1} with a bore of {2} mm over {3} mm")
  @CsvSource({"60.3, 120.3, 64, 1000", "60.3, 64.3, 60.3, 1000", "60.3, 120.3, 60.3, 400"})
  void sleeveWithAGapThinCoatAndShortShellAreNoInsulation(
      double pipeMm, double outerMm, double boreMm, double lengthMm) {
    Shape shape =
        segment(
            "#100,#110",
            item(100, round(pipeMm), 0, 1000),
            item(110, hollow(outerMm, boreMm), 0, lengthMm));
    assertThat(shape.sheath()).isNull();
  }

  @Test
  void wallOfThePipeAroundWhatItHoldsBelongsToThePipe() {
    Shape shape =
        segment(
            "#100,#110,#120",
            item(100, round(54.5), 0, 1000),
            item(110, hollow(60.3, 54.5), 0, 1000),
            item(120, hollow(120.3, 60.3), 0, 1000));
    assertThat(Objects.requireNonNull(shape.sheath()).inner().value())
        .isEqualTo(new Section.Round(0.0603));
  }

  @Test
  void shellsOfDuctsDisksAndCompositeProfilesAreToldToo() {
    Shape duct =
        segment(
            "#100,#110",
            item(100, "IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,400.,250.)", 0, 1500),
            item(110, "IFCRECTANGLEHOLLOWPROFILEDEF(.AREA.,$,#16,460.,310.,30.,$,$)", 0, 1500));
    assertThat(Objects.requireNonNull(duct.sheath()).inner().value())
        .isEqualTo(new Section.Rectangular(0.4, 0.25));

    Shape disks =
        segment(
            "#100,#101",
            """
            #100=IFCSWEPTDISKSOLID(#102,30.15,$,$,$);
            #101=IFCSWEPTDISKSOLID(#102,60.15,30.15,$,$);
            #102=IFCPOLYLINE((#10,#103));
            #103=IFCCARTESIANPOINT((1000.,0.,0.));
            """);
    assertThat(Objects.requireNonNull(disks.sheath()).inner().value())
        .isEqualTo(new Section.Round(0.0603));

    Shape composite =
        segment(
            "#100",
            item(100, "IFCCOMPOSITEPROFILEDEF(.AREA.,$,(#110,#111),$)", 0, 1000),
            "#110=%s;\n#111=%s;\n".formatted(hollow(60.3, 54.5), hollow(120.3, 60.3)));
    assertThat(Objects.requireNonNull(composite.sheath()).inner().value())
        .isEqualTo(new Section.Round(0.0603));
  }

  /** A wall of rings along x, closed at its ends: each of a radius at a place, in metres. */
  private static MeshText turned(double[]... radiusAndPlace) {
    MeshText mesh = new MeshText();
    int[][] rings = new int[radiusAndPlace.length][];
    for (int i = 0; i < rings.length; i++) {
      double[] centre = {0, 0, radiusAndPlace[i][1]};
      rings[i] = mesh.ring(centre, X, Y, radiusAndPlace[i][0], 24);
    }
    return mesh.tube(rings);
  }

  private static Shape mesh(MeshText mesh) {
    return TinyModel.item(TinyModel.METRES, SEGMENT, mesh.triangulated(100));
  }

  @ParameterizedTest(name = "wall of {0} m between wider ends")
  @ValueSource(doubles = {1.96, 1.2})
  void wallBetweenFlangesOfAMeshIsTheSizeOfThePipe(double wallM) {
    double flangeM = (2 - wallM) / 2;
    Shape shape =
        mesh(
            turned(
                new double[] {0.11, 0},
                new double[] {0.11, flangeM},
                new double[] {0.05715, flangeM},
                new double[] {0.05715, 2 - flangeM},
                new double[] {0.11, 2 - flangeM},
                new double[] {0.11, 2}));
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.1143, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(2, within(1e-6));
  }

  @Test
  void shellOfFacesAroundAPipeOfFacesIsToldToo() {
    MeshText pipe = turned(new double[] {0.03, 0}, new double[] {0.03, 2});
    MeshText shell = new MeshText();
    int[][] rings = new int[4][];
    double[][] corners = {{0.03, 0}, {0.06, 0}, {0.06, 2}, {0.03, 2}};
    for (int i = 0; i < rings.length; i++) {
      rings[i] = shell.ring(new double[] {0, 0, corners[i][1]}, X, Y, corners[i][0], 24);
    }
    for (int i = 0; i < rings.length; i++) {
      shell.wall(rings[i], rings[(i + 1) % rings.length]);
    }
    Shape shape =
        TinyModel.measure(
            TinyModel.body(
                TinyModel.AT_ORIGIN, "#100,#200", pipe.triangulated(100) + shell.triangulated(200)),
            TinyModel.METRES,
            SEGMENT);
    Sheath sheath = Objects.requireNonNull(shape.sheath());
    assertThat(sheath.inner().value().largestSideM()).isCloseTo(0.06, within(1e-6));
    assertThat(sheath.outer().largestSideM()).isCloseTo(0.12, within(1e-6));
    assertThat(sheath.share()).isCloseTo(1, within(1e-6));
  }

  @Test
  void socketOfAMeshIsNotTheSizeOfThePipe() {
    Shape shape =
        mesh(
            turned(
                new double[] {0.065, 0},
                new double[] {0.065, 0.08},
                new double[] {0.055, 0.08},
                new double[] {0.055, 2}));
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    assertThat(section(shape).value().largestSideM()).isCloseTo(0.11, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(2, within(1e-6));
  }

  @Test
  void boreWithinAnUnevenOutsideIsNotTheSize() {
    MeshText hose = new MeshText();
    int[][] outside = new int[41][];
    for (int i = 0; i < outside.length; i++) {
      // ridges of a hose, as wide as its ends
      outside[i] = hose.ring(new double[] {0, 0, 0.05 * i}, X, Y, i % 2 == 0 ? 0.1 : 0.09, 24);
      if (i > 0) {
        hose.wall(outside[i - 1], outside[i]);
      }
    }
    int[] start = hose.ring(new double[] {0, 0, 0}, X, Y, 0.08, 24);
    int[] end = hose.ring(new double[] {0, 0, 2}, X, Y, 0.08, 24);
    hose.wall(start, outside[0]).wall(end, start).wall(outside[40], end);
    assertThat(section(mesh(hose)).value().largestSideM()).isCloseTo(0.2, within(1e-3));
  }

  /** A flat oval 0.2 m high with flat sides of 0.3 m, wider all around by some metres. */
  private static int[] oval(MeshText mesh, double widerM, double zM) {
    int[] left =
        mesh.ring(new double[] {-0.15, 0, zM}, Y, new double[] {-1, 0, 0}, 0.1 + widerM, 24);
    int[] right =
        mesh.ring(new double[] {0.15, 0, zM}, new double[] {0, -1, 0}, X, 0.1 + widerM, 24);
    int[] ring = new int[26];
    System.arraycopy(left, 0, ring, 0, 13);
    System.arraycopy(right, 0, ring, 13, 13);
    return ring;
  }

  @Test
  void shellOfFacesAroundAnOvalDuctIsToldToo() {
    MeshText duct = new MeshText();
    duct.tube(oval(duct, 0, 0), oval(duct, 0, 2));
    MeshText shell = new MeshText();
    int[] near = oval(shell, 0.03, 0);
    int[] far = oval(shell, 0.03, 2);
    int[] bore = oval(shell, 0, 0);
    int[] farBore = oval(shell, 0, 2);
    shell.wall(near, far).wall(far, farBore).wall(farBore, bore).wall(bore, near);
    Shape shape =
        TinyModel.measure(
            TinyModel.body(
                TinyModel.AT_ORIGIN, "#100,#200", duct.triangulated(100) + shell.triangulated(200)),
            TinyModel.METRES,
            SEGMENT);
    Sheath sheath = Objects.requireNonNull(shape.sheath());

    assertThat(sheath.inner().value()).isInstanceOf(Section.Oval.class);
    assertThat(sheath.inner().value().largestSideM()).isCloseTo(0.5, within(1e-6));
    assertThat(sheath.outer().smallestSideM()).isCloseTo(0.26, within(1e-6));
  }

  /** What cannot be read was missing from the length, and nothing said so. */
  @Test
  void itemThatCannotBeReadIsToldBesideTheOthers() {
    String broken = item(120, round(60.3), 2000, 1000).replace("#123=", "#999=");
    Shape shape =
        segment(
            "#100,#110,#120",
            item(100, round(60.3), 0, 1000),
            item(110, round(60.3), 1000, 1000),
            broken);

    assertThat(lengthM(shape).value()).isCloseTo(2, within(1e-6));
    assertThat(shape.problems()).containsExactly("1 of 3 items in the body cannot be read");
  }
}
