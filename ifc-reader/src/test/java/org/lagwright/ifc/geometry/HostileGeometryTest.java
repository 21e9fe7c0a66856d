package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Measured;

/** Whatever stands in a geometry record, measuring ends in figures or in problems. */
class HostileGeometryTest {

  private static final Duration LONGEST = Duration.ofMinutes(1);

  private static final Pattern TOKEN =
      Pattern.compile("(?<=[,(])(#\\d+|[-+]?\\d+\\.\\d*(E-?\\d+)?|\\d+|\\$)(?=[,)])");

  private static final List<String> NASTY =
      List.of(
          "$",
          "*",
          "()",
          "0.",
          "-1.",
          "1.E308",
          "-1.E308",
          "1.E-320",
          "1.#INF",
          "1",
          "99",
          "#1",
          "#100",
          "#101",
          "#102",
          "#14",
          "#13",
          "#16",
          "#999",
          "'x'",
          ".T.",
          "((1.,2.))");

  private static final List<String> MODELS =
      List.of(
          "#100=IFCEXTRUDEDAREASOLID(#101,#14,#13,2500.);\n"
              + "#101=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,300.,200.);\n",
          "#100=IFCEXTRUDEDAREASOLIDTAPERED(#101,#14,#13,2500.,#102);\n"
              + "#101=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,300.);\n"
              + "#102=IFCDERIVEDPROFILEDEF(.AREA.,$,#101,#103,$);\n"
              + "#103=IFCCARTESIANTRANSFORMATIONOPERATOR2D($,$,#15,2.);\n",
          "#100=IFCREVOLVEDAREASOLID(#101,#14,#103,1.5);\n"
              + "#101=IFCELLIPSEPROFILEDEF(.AREA.,$,#16,57.,58.);\n"
              + "#103=IFCAXIS1PLACEMENT(#104,#12);\n#104=IFCCARTESIANPOINT((152.5,0.,40.));\n",
          "#100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#101,#110);\n"
              + "#101=IFCEXTRUDEDAREASOLID(#102,#14,#13,2000.);\n"
              + "#102=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);\n"
              + "#110=IFCHALFSPACESOLID(#111,.F.);\n#111=IFCPLANE(#112);\n"
              + "#112=IFCAXIS2PLACEMENT3D(#113,#114,$);\n"
              + "#113=IFCCARTESIANPOINT((0.,0.,1500.));\n#114=IFCDIRECTION((1.,0.,1.));\n",
          "#100=IFCSWEPTDISKSOLID(#101,10.,8.,0.,1.);\n"
              + "#101=IFCINDEXEDPOLYCURVE(#102,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4))),.F.);\n"
              + "#102=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(100.,0.,0.),(170.,29.,0.),(200.,100.,0.)));\n",
          "#100=IFCSURFACECURVESWEPTAREASOLID(#101,#14,#102,0.,1.,#110);\n"
              + "#101=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,152.5);\n"
              + "#102=IFCTRIMMEDCURVE(#103,(IFCPARAMETERVALUE(2.)),(IFCPARAMETERVALUE(3.)),.T.,.PARAMETER.);\n"
              + "#103=IFCCIRCLE(#16,305.);\n#110=IFCSURFACEOFLINEAREXTRUSION(#111,$,#13,1.);\n",
          "#100=IFCSWEPTDISKSOLID(#101,10.,$,$,$);\n"
              + "#101=IFCRATIONALBSPLINECURVEWITHKNOTS(2,(#102,#103,#104),.UNSPECIFIED.,.F.,.F.,"
              + "(3,3),(0.,1.),.UNSPECIFIED.,(1.,0.7,1.));\n"
              + "#102=IFCCARTESIANPOINT((300.,0.,0.));\n#103=IFCCARTESIANPOINT((300.,300.,0.));\n"
              + "#104=IFCCARTESIANPOINT((0.,300.,0.));\n",
          "#100=IFCMAPPEDITEM(#101,#110);\n#101=IFCREPRESENTATIONMAP(#14,#102);\n"
              + "#102=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#103));\n"
              + "#103=IFCEXTRUDEDAREASOLID(#104,#14,#13,1000.);\n"
              + "#104=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);\n"
              + "#110=IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM($,$,#10,2.,$,1.,3.);\n",
          "#100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#101,#110);\n"
              + "#101=IFCREVOLVEDAREASOLID(#102,#14,#103,1.5);\n"
              + "#102=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);\n"
              + "#103=IFCAXIS1PLACEMENT(#104,#12);\n#104=IFCCARTESIANPOINT((300.,0.,0.));\n"
              + "#110=IFCHALFSPACESOLID(#111,.F.);\n#111=IFCPLANE(#112);\n"
              + "#112=IFCAXIS2PLACEMENT3D(#104,#113,#12);\n#113=IFCDIRECTION((-1.,0.,-1.));\n",
          "#100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#102);\n"
              + "#101=IFCRIGHTCIRCULARCONE(#14,300.,60.);\n#102=IFCBLOCK(#14,200.,200.,200.);\n",
          "#100=IFCREVOLVEDAREASOLID(#101,#14,#103,6.283185307179586);\n"
              + "#101=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#102);\n"
              + "#102=IFCPOLYLINE((#15,#104,#105,#106,#15));\n#103=IFCAXIS1PLACEMENT(#10,#12);\n"
              + "#104=IFCCARTESIANPOINT((57.,0.));\n#105=IFCCARTESIANPOINT((38.,150.));\n"
              + "#106=IFCCARTESIANPOINT((0.,150.));\n",
          "#100=IFCEXTRUDEDAREASOLID(#101,#14,#13,2500.);\n"
              + "#101=IFCCOMPOSITEPROFILEDEF(.AREA.,$,(#102,#103),$);\n"
              + "#102=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,#16,30.15,2.9);\n"
              + "#103=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,#16,60.15,30.);\n",
          "#100=IFCSWEPTDISKSOLIDPOLYGONAL(#101,10.,8.,$,$,100.);\n"
              + "#101=IFCPOLYLINE((#10,#102,#103));\n#102=IFCCARTESIANPOINT((100.,0.,0.));\n"
              + "#103=IFCCARTESIANPOINT((100.,100.,0.));\n",
          new MeshText().bend(30, 90, 1, 8, 3).polygonal(100),
          new MeshText().bend(30, 90, 1, 8, 3).faceted(100));

  @Test
  void anyTokenReplacedByAnyOtherEndsInAShape() {
    long seed = 4711;
    System.out.println("seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 4000; i++) {
      String model = spoiled(MODELS.get(i % MODELS.size()), random);
      ShapeHints hints = new ShapeHints(List.of(), 1.0, i % 3 == 0);
      Shape shape = TinyModel.item(TinyModel.MM_RAD, hints, model);
      assertThat(isFinite(shape)).as(model).isTrue();
      boolean silent = shape.section() == null && shape.problems().isEmpty();
      assertThat(silent).as(model).isFalse();
    }
  }

  /** A rectangular tee, 600 mm x 500 mm x 300 mm, with one corner of its branch far away. */
  @Test
  void aCornerBeyondAllMeasureEndsInAShape() {
    String model =
        """
        #101=IFCCARTESIANPOINTLIST3D(((-300.,250.,-150.),(-300.,250.,150.),(300.,250.,150.),
        (300.,250.,-150.),(-300.,-250.,150.),(300.,-250.,150.),(-300.,-250.,-150.),
        (300.,-250.,-150.),(-150.,-250.,-150.),(-150.,-250.,-100.),(-300.,-250.,-100.),
        (-150.,-250.,100.),(-300.,-250.,100.),(-150.,-250.,150.),(150.,-250.,-150.),
        (150.,-250.,-100.),(150.,-250.,100.),(150.,-250.,150.),(300.,-250.,-100.),
        (300.,-250.,100.),(-150.,-400.,-100.),(-150.,-400.,100.),(150.,-400.,100.),
        (150.,1.E308,-100.)));
        #100=IFCTRIANGULATEDFACESET(#101,$,.T.,((1,2,3),(1,3,4),(5,6,3),(5,3,2),(7,1,4),
        (7,4,8),(7,9,10),(7,10,11),(11,10,12),(11,12,13),(13,12,14),(13,14,5),(9,15,16),
        (9,16,10),(12,17,18),(12,18,14),(15,8,19),(15,19,16),(16,19,20),(16,20,17),
        (17,20,6),(17,6,18),(21,22,12),(21,12,10),(16,17,23),(16,23,24),(22,23,17),
        (22,17,12),(10,16,24),(10,24,21)),$);
        """;
    ShapeHints hints = new ShapeHints(List.of(), null, false);

    assertThat(isFinite(TinyModel.item(TinyModel.MM_RAD, hints, model))).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"UNION", "DIFFERENCE", "INTERSECTION"})
  void resultsThatUseTheOneBeforeTwiceAreNotFollowedForEver(String operator) {
    StringBuilder model =
        new StringBuilder(
            "#200=IFCEXTRUDEDAREASOLID(#201,#14,#13,1000.);\n"
                + "#201=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);\n");
    for (int i = 101; i <= 140; i++) {
      int before = i == 101 ? 200 : i - 1;
      String result = "#%d=IFCBOOLEANRESULT(.%s.,#%d,#%d);%n";
      model.append(String.format(result, i == 140 ? 100 : i, operator, before, before));
    }

    Shape shape = measuredInTime(model.toString());

    assertThat(shape.section()).isNotNull();
  }

  @Test
  void aResultThatIsItsOwnOperandEndsInAProblem() {
    Shape shape = measuredInTime("#100=IFCBOOLEANRESULT(.UNION.,#100,#100);\n");

    assertThat(shape.section()).isNull();
    assertThat(shape.problems()).isNotEmpty();
  }

  /** Without the limit it would take longer than anybody lives. */
  private static Shape measuredInTime(String model) {
    ShapeHints hints = new ShapeHints(List.of(), null, true);
    return assertTimeoutPreemptively(LONGEST, () -> TinyModel.item(TinyModel.MM_RAD, hints, model));
  }

  /** What is asked once for each corner must not go through all faces again. */
  @Test
  void aTubeOfManyFacesIsMeasuredInTime() {
    MeshText tube = new MeshText();
    int[][] rings = new int[500][];
    for (int i = 0; i < rings.length; i++) {
      rings[i] =
          tube.ring(
              new double[] {0, 0, i * 10}, new double[] {1, 0, 0}, new double[] {0, 1, 0}, 50, 500);
    }

    Shape shape = measuredInTime(tube.tube(rings).triangulated(100));

    assertThat(lengthM(shape).value()).isCloseTo(4.99, within(1e-6));
  }

  private static String spoiled(String model, Random random) {
    List<MatchResult> tokens = new ArrayList<>(TOKEN.matcher(model).results().toList());
    StringBuilder text = new StringBuilder(model);
    int spots = 1 + random.nextInt(2);
    List<Integer> chosen = new ArrayList<>();
    for (int i = 0; i < spots; i++) {
      chosen.add(random.nextInt(tokens.size()));
    }
    chosen.stream()
        .distinct()
        .sorted((a, b) -> b - a)
        .forEach(
            k ->
                text.replace(
                    tokens.get(k).start(),
                    tokens.get(k).end(),
                    NASTY.get(random.nextInt(NASTY.size()))));
    return text.toString();
  }

  private static boolean isFinite(Shape shape) {
    return isFinite(shape.lengthM()) && isFinite(shape.angleDeg()) && isFinite(shape.bendRadiusM());
  }

  private static boolean isFinite(@Nullable Measured<Double> figure) {
    return figure == null || (Double.isFinite(figure.value()) && figure.value() > 0);
  }
}
