package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Volume and surface of curved bodies that half spaces and other bodies cut, against closed forms,
 * each in random units, placements and mirrors; the seed stands in the name of the test.
 */
class CutBodyTest {

  /** Facets of one degree with their corners on the surface. */
  private static final double SHARE = 3e-4;

  private static final double[] UP = {0, 0, 1};
  private static final double[] EAST = {1, 0, 0};
  private static final double R = 0.05;

  static List<Integer> seeds() {
    return IntStream.range(0, 4).boxed().toList();
  }

  private static void check(
      RandomSetting setting, String records, double volumeM3, double surfaceM2) {
    BodyFigures figures = setting.figures(records);
    assertThat(figures.problems()).isEmpty();
    assertThat(Objects.requireNonNull(figures.volumeM3()))
        .isCloseTo(volumeM3, Percentage.withPercentage(100 * SHARE));
    assertThat(Objects.requireNonNull(figures.surfaceAreaM2()))
        .isCloseTo(surfaceM2, Percentage.withPercentage(100 * SHARE));
  }

  /** The body #100 is now #70, and what lies along a normal from a point is taken off it. */
  private static String cut(RandomSetting s, String body, double[] at, double[] normal) {
    return body.replace("#100=", "#70=")
        + """
        #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#70,#71);
        #71=IFCHALFSPACESOLID(#72,.F.);
        #72=IFCPLANE(#73);
        #73=IFCAXIS2PLACEMENT3D(#74,#75,$);
        #74=IFCCARTESIANPOINT(%s);
        #75=IFCDIRECTION((%s,%s,%s));
        """
            .formatted(
                s.at(at),
                RandomSetting.number(normal[0]),
                RandomSetting.number(normal[1]),
                RandomSetting.number(normal[2]));
  }

  private static AdvancedText cylinder(RandomSetting setting, boolean seam, double length) {
    AdvancedText t = new AdvancedText(setting);
    int a = t.vertex(R, 0, 0);
    int b = t.vertex(R, 0, length);
    int top = t.placement(new double[] {0, 0, length}, UP, EAST);
    int low = t.edge(a, a, t.circle(14, R));
    int high = t.edge(b, b, t.circle(top, R));
    int surface = t.add("IFCCYLINDRICALSURFACE(#14,%s)".formatted(t.n(R)));
    if (seam) {
      int line = t.line(a, b, new double[] {R, 0, 0}, UP);
      t.face(surface, true, t.bound(true, true, low, line, -high, -line));
    } else {
      t.face(surface, true, t.bound(true, true, low), t.bound(false, true, -high));
    }
    t.face(t.plane(14), false, t.bound(true, true, -low));
    t.face(t.plane(top), true, t.bound(true, true, high));
    return t;
  }

  /** Area times mean height; the cut is an ellipse. */
  @ParameterizedTest
  @MethodSource("seeds")
  void cylinderCutObliquely(int seed) {
    RandomSetting setting = new RandomSetting(seed);
    double slope = Math.tan(Math.toRadians(10 + 8 * seed));
    String records =
        cut(
            setting,
            cylinder(setting, seed % 2 == 0, 1).text(),
            new double[] {0, 0, 0.4},
            new double[] {slope, 0, 1});
    double end = Math.PI * R * R;
    check(
        setting,
        records,
        end * 0.4,
        end + 2 * Math.PI * R * 0.4 + end * Math.sqrt(1 + slope * slope));
  }

  /** Once more by a plane across, so that a piece of two slanted ends is left. */
  @ParameterizedTest
  @MethodSource("seeds")
  void cylinderCutTwice(int seed) {
    RandomSetting setting = new RandomSetting(seed);
    String once =
        cut(
            setting,
            cylinder(setting, true, 1).text(),
            new double[] {0, 0, 0.7},
            new double[] {0.5, 0, 1});
    String records =
        once.replace("#100=", "#60=")
            + """
            #100=IFCBOOLEANRESULT(.DIFFERENCE.,#60,#61);
            #61=IFCHALFSPACESOLID(#62,.T.);
            #62=IFCPLANE(#63);
            #63=IFCAXIS2PLACEMENT3D(#64,#65,$);
            #64=IFCCARTESIANPOINT(%s);
            #65=IFCDIRECTION((0.,1.,2.));
            """
                .formatted(setting.at(0, 0, 0.3));
    double end = Math.PI * R * R * Math.sqrt(1.25);
    check(setting, records, Math.PI * R * R * 0.4, 2 * end + 2 * Math.PI * R * 0.4);
  }

  /** A bend of 90 degrees cut in its plane, off its middle: Pappus for the segment of a circle. */
  @ParameterizedTest
  @MethodSource("seeds")
  void torusCutParallelToItsPlane(int seed) {
    RandomSetting setting = new RandomSetting(seed);
    double major = 0.3;
    double r = 0.1;
    double level = 0.01 * (seed - 2);
    String records = cut(setting, torus(setting, major, r).text(), new double[] {0, 0, level}, UP);
    double half = Math.sqrt(r * r - level * level);
    double below = Math.PI - Math.acos(level / r);
    double segment = r * r * below + level * half;
    double tube = 2 * r * below * major * Math.PI / 2;
    double slice = 2 * half * major * Math.PI / 2;
    check(setting, records, segment * major * Math.PI / 2, tube + slice + 2 * segment);
  }

  /** And through its axis, which leaves a third of it. */
  @ParameterizedTest
  @MethodSource("seeds")
  void torusCutThroughItsAxis(int seed) {
    RandomSetting setting = new RandomSetting(seed);
    double major = 0.3;
    double r = 0.1;
    double turn = Math.PI / 6;
    double[] along = {-Math.sin(turn), Math.cos(turn), 0};
    String records = cut(setting, torus(setting, major, r).text(), new double[3], along);
    double end = Math.PI * r * r;
    check(setting, records, end * major * turn, 2 * Math.PI * r * major * turn + 2 * end);
  }

  private static AdvancedText torus(RandomSetting setting, double major, double r) {
    AdvancedText t = new AdvancedText(setting);
    int a = t.vertex(major + r, 0, 0);
    int b = t.vertex(0, major + r, 0);
    int from = t.placement(new double[] {major, 0, 0}, new double[] {0, -1, 0}, EAST);
    int to = t.placement(new double[] {0, major, 0}, EAST, new double[] {0, 1, 0});
    int start = t.edge(a, a, t.circle(from, r));
    int end = t.edge(b, b, t.circle(to, r));
    int torus = t.add("IFCTOROIDALSURFACE(#14,%s,%s)".formatted(t.n(major), t.n(r)));
    t.face(torus, true, t.bound(true, true, -start), t.bound(false, true, end));
    t.face(t.plane(from), true, t.bound(true, true, start));
    t.face(t.plane(to), false, t.bound(true, true, -end));
    return t;
  }

  /** A domed end cut off: the cap of a sphere goes. */
  @ParameterizedTest
  @MethodSource("seeds")
  void domeWithoutTheCapOfItsSphere(int seed) {
    RandomSetting setting = new RandomSetting(seed);
    AdvancedText t = new AdvancedText(setting);
    int a = t.vertex(R, 0, 0);
    int b = t.vertex(R, 0, 1);
    int top = t.placement(new double[] {0, 0, 1}, UP, EAST);
    int low = t.edge(a, a, t.circle(14, R));
    int high = t.edge(b, b, t.circle(top, R));
    int line = t.line(a, b, new double[] {R, 0, 0}, UP);
    int cylinder = t.add("IFCCYLINDRICALSURFACE(#14,%s)".formatted(t.n(R)));
    int sphere = t.add("IFCSPHERICALSURFACE(#%d,%s)".formatted(top, t.n(R)));
    t.face(cylinder, true, t.bound(true, true, low, line, -high, -line));
    t.face(t.plane(14), false, t.bound(true, true, -low));
    t.face(sphere, true, t.bound(true, true, high));
    double cap = R * (0.2 + 0.1 * seed);
    String records = cut(setting, t.text(), new double[] {0, 0, 1 + R - cap}, UP);
    double end = Math.PI * R * R;
    double gone = Math.PI * cap * cap * (3 * R - cap) / 3;
    double rim = Math.PI * (2 * R * cap - cap * cap);
    double dome = 2 * end - 2 * Math.PI * R * cap;
    check(setting, records, end + 2.0 / 3 * end * R - gone, end + 2 * Math.PI * R + dome + rim);
  }

  /** A curved body drilled by another one. */
  @ParameterizedTest
  @MethodSource("seeds")
  void cylinderOfCurvedFacesWithoutItsBore(int seed) {
    RandomSetting setting = new RandomSetting(seed);
    String records =
        cylinder(setting, seed % 2 == 0, 1).text().replace("#100=", "#70=")
            + """
            #100=IFCBOOLEANRESULT(.DIFFERENCE.,#70,#71);
            #71=IFCEXTRUDEDAREASOLID(#72,#73,#13,%s);
            #72=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
            #73=IFCAXIS2PLACEMENT3D(#74,$,$);
            #74=IFCCARTESIANPOINT(%s);
            """
                .formatted(setting.n(3), setting.n(0.04), setting.at(0, 0, -1));
    double area = Math.PI * (R * R - 0.04 * 0.04);
    check(setting, records, area, 2 * area + 2 * Math.PI * (R + 0.04));
  }

  /** And the other way round: the tool has the curved faces. */
  @ParameterizedTest
  @MethodSource("seeds")
  void blockDrilledByACylinderOfCurvedFaces(int seed) {
    RandomSetting setting = new RandomSetting(seed);
    String records =
        cylinder(setting, seed % 2 == 0, 1).text().replace("#100=", "#70=")
            + """
            #100=IFCBOOLEANRESULT(.DIFFERENCE.,#71,#70);
            #71=IFCBLOCK(#73,%s,%s,%s);
            #73=IFCAXIS2PLACEMENT3D(#74,$,$);
            #74=IFCCARTESIANPOINT(%s);
            """
                .formatted(
                    setting.n(0.2), setting.n(0.2), setting.n(0.5), setting.at(-0.1, -0.1, 0.25));
    double hole = Math.PI * R * R;
    check(
        setting,
        records,
        (0.2 * 0.2 - hole) * 0.5,
        2 * (0.2 * 0.2 - hole) + 4 * 0.2 * 0.5 + 2 * Math.PI * R * 0.5);
  }

  /** Solids that are swept are polygons from the start. */
  @ParameterizedTest
  @MethodSource("seeds")
  void revolvedAndSweptBendsCutParallelToTheirPlane(int seed) {
    RandomSetting s = new RandomSetting(seed);
    double major = 0.3;
    double r = 0.1;
    String revolved =
        """
        #100=IFCREVOLVEDAREASOLID(#101,#102,#103,%s);
        #101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
        #102=IFCAXIS2PLACEMENT3D(#104,#12,#11);
        #103=IFCAXIS1PLACEMENT(#105,#12);
        #104=IFCCARTESIANPOINT(%s);
        #105=IFCCARTESIANPOINT(%s);
        """
            .formatted(s.angle(Math.PI / 2), s.n(r), s.at(0, 0, 0), s.at(major, 0, 0));
    String swept =
        """
        #100=IFCSWEPTDISKSOLID(#101,%s,$,$,$);
        #101=IFCINDEXEDPOLYCURVE(#102,(IFCARCINDEX((1,2,3))),.F.);
        #102=IFCCARTESIANPOINTLIST3D((%s,%s,%s),$);
        """
            .formatted(
                s.n(r),
                s.at(major, 0, 0),
                s.at(major * Math.sqrt(0.5), major * Math.sqrt(0.5), 0),
                s.at(0, major, 0));
    double end = Math.PI * r * r;
    double volume = end / 2 * major * Math.PI / 2;
    double surface = Math.PI * r * major * Math.PI / 2 + 2 * r * major * Math.PI / 2 + end;
    check(s, cut(s, swept, new double[3], UP), volume, surface);
    check(new RandomSetting(seed), cut(s, revolved, new double[3], UP), volume, surface);
  }
}
