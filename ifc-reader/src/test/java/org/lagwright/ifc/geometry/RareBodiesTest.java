package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.shape.StatedSizes;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;

/** Bodies that few exporters write, each with its closed form. */
class RareBodiesTest {

  private static final String PIPE =
      """
      #101=IFCEXTRUDEDAREASOLID(#102,#14,#13,2000.);
      #102=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
      """;

  private static Shape item(String records) {
    IfcFile file = TinyModel.body("IFC4X3_ADD2", TinyModel.AT_ORIGIN, "#100", records);
    return TinyModel.measure(file, TinyModel.MM_RAD, ShapeHints.NONE);
  }

  @Test
  void axisWithoutABodyGivesTheLength() {
    IfcFile file =
        TinyModel.withCommon(
            TinyModel.AT_ORIGIN
                + """
                #3=IFCPRODUCTDEFINITIONSHAPE($,$,(#4));
                #4=IFCSHAPEREPRESENTATION($,'Axis','Curve3D',(#100));
                #100=IFCPOLYLINE((#10,#101));
                #101=IFCCARTESIANPOINT((300.,400.,0.));
                """);
    Shape shape = TinyModel.measure(file, TinyModel.MM_RAD, ShapeHints.NONE);
    assertThat(lengthM(shape).value()).isCloseTo(0.5, within(1e-9));
    assertThat(shape.section()).isNull();
    assertThat(shape.problems()).containsExactly("only an axis is drawn, no body");
  }

  @ParameterizedTest
  @CsvSource({"-200, 1.5", "0, 2.0"})
  void polygonalHalfSpaceShortensOnlyWhatItTakesAllAround(double left, double expectedM) {
    Shape shape =
        item(
            PIPE
                + """
                #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#101,#120);
                #120=IFCPOLYGONALBOUNDEDHALFSPACE(#121,.F.,#14,#130);
                #121=IFCPLANE(#122);
                #122=IFCAXIS2PLACEMENT3D(#123,$,$);
                #123=IFCCARTESIANPOINT((0.,0.,1500.));
                #130=IFCPOLYLINE((#131,#132,#133,#134,#131));
                #131=IFCCARTESIANPOINT((%1$s,-200.));
                #132=IFCCARTESIANPOINT((200.,-200.));
                #133=IFCCARTESIANPOINT((200.,200.));
                #134=IFCCARTESIANPOINT((%1$s,200.));
                """
                    .formatted(left));
    assertThat(lengthM(shape).value()).isCloseTo(expectedM, within(1e-9));
  }

  @Test
  void blockThatTakesAnEndShortensThePipeAndABoreDoesNot() {
    Shape cut =
        item(
            PIPE
                + """
                #100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);
                #110=IFCBLOCK(#111,400.,400.,1000.);
                #111=IFCAXIS2PLACEMENT3D(#112,$,$);
                #112=IFCCARTESIANPOINT((-200.,-200.,1200.));
                """);
    assertThat(lengthM(cut).value()).isCloseTo(1.2, within(1e-9));
    Shape bored =
        item(
            PIPE
                + """
                #100=IFCBOOLEANRESULT(.DIFFERENCE.,#101,#110);
                #110=IFCRIGHTCIRCULARCYLINDER(#14,2000.,45.);
                """);
    assertThat(lengthM(bored).value()).isCloseTo(2, within(1e-9));
    assertThat(section(bored).value()).isEqualTo(new Section.Round(0.1));
  }

  @Test
  void filletOfAPolygonalDiskIsTheBendRadius() {
    Shape shape =
        item(
            """
            #100=IFCSWEPTDISKSOLIDPOLYGONAL(#101,20.,16.,$,$,200.);
            #101=IFCPOLYLINE((#10,#102,#103));
            #102=IFCCARTESIANPOINT((1000.,0.,0.));
            #103=IFCCARTESIANPOINT((1000.,1000.,0.));
            """);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-9));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.2, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(1.6 + 0.1 * Math.PI, within(1e-9));
  }

  @Test
  void taperedRevolutionHasTwoSizes() {
    Shape shape =
        item(
            """
            #100=IFCREVOLVEDAREASOLIDTAPERED(#101,#14,#103,1.5707963267948966,#102);
            #101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,50.);
            #102=IFCCIRCLEPROFILEDEF(.AREA.,$,$,40.);
            #103=IFCAXIS1PLACEMENT(#104,#12);
            #104=IFCCARTESIANPOINT((300.,0.,0.));
            """);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(shape.ends())
        .extracting(end -> Math.round(end.section().largestSideM() * 1e9) / 1e9)
        .containsExactly(0.1, 0.08);
    assertThat(shape.problems()).containsExactly("ends of the bend differ in size");
  }

  /** Straight 1 m, a quarter turn of 0.5 m to the left, straight 1 m. */
  @Test
  void segmentsOfAnAlignmentMakeADirectrix() {
    Shape shape =
        item(
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,$,$);
            #101=IFCCOMPOSITECURVE((#110,#120,#130),.F.);
            #110=IFCCURVESEGMENT(.CONTINUOUS.,#14,IFCLENGTHMEASURE(0.),IFCLENGTHMEASURE(1000.),#140);
            #120=IFCCURVESEGMENT(.CONTINUOUS.,#121,IFCLENGTHMEASURE(0.),IFCLENGTHMEASURE(785.3981633974483),#150);
            #121=IFCAXIS2PLACEMENT3D(#122,$,$);
            #122=IFCCARTESIANPOINT((1000.,0.,0.));
            #130=IFCCURVESEGMENT(.CONTINUOUS.,#131,IFCLENGTHMEASURE(0.),IFCLENGTHMEASURE(1000.),#140);
            #131=IFCAXIS2PLACEMENT3D(#132,$,#12);
            #132=IFCCARTESIANPOINT((1500.,500.,0.));
            #140=IFCLINE(#10,#141);
            #141=IFCVECTOR(#11,1.);
            #150=IFCCIRCLE(#14,500.);
            """);
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(shape).value()).isCloseTo(90, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.5, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(2 + Math.PI / 4, within(1e-9));
    assertThat(shape.ends().get(1).centreM().distanceM(new Point(1.5, 1.5, 0)))
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void lengthsAlongTheDirectrixAndUnboundedLinesAreCutWhereTheParametersSay() {
    Shape part =
        item(
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,IFCLENGTHMEASURE(250.),IFCLENGTHMEASURE(1750.));
            #101=IFCPOLYLINE((#10,#102,#103));
            #102=IFCCARTESIANPOINT((1000.,0.,0.));
            #103=IFCCARTESIANPOINT((2000.,0.,0.));
            """);
    assertThat(lengthM(part).value()).isCloseTo(1.5, within(1e-9));
    Shape line =
        item(
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,IFCPARAMETERVALUE(0.),IFCPARAMETERVALUE(3.));
            #101=IFCLINE(#10,#102);
            #102=IFCVECTOR(#12,400.);
            """);
    assertThat(lengthM(line).value()).isCloseTo(1.2, within(1e-9));
  }

  /**
   * A line whose vector is 400 mm long: lengths along it count as they stand, parameters do not.
   */
  @ParameterizedTest
  @CsvSource({
    "IFCLENGTHMEASURE(300.), IFCLENGTHMEASURE(1200.), 0.9",
    "IFCPARAMETERVALUE(0.5), IFCPARAMETERVALUE(3.), 1.0"
  })
  void unboundedLineIsCutAtLengthsOrParameters(String from, String to, double expectedM) {
    Shape line =
        item(
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,%s,%s);
            #101=IFCLINE(#10,#102);
            #102=IFCVECTOR(#12,400.);
            """
                .formatted(from, to));
    assertThat(lengthM(line).value()).isCloseTo(expectedM, within(1e-9));
  }

  /** Two legs of a metre; where only one end is told, the other one is that of the curve. */
  @ParameterizedTest
  @CsvSource({
    "IFCLENGTHMEASURE(300.), $, 1.7",
    "$, IFCLENGTHMEASURE(1200.), 1.2",
    "IFCPARAMETERVALUE(0.5), $, 1.5",
    "$, IFCPARAMETERVALUE(1.25), 1.25"
  })
  void directrixIsCutWhereOnlyOneEndIsTold(String from, String to, double expectedM) {
    Shape part =
        item(
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,%s,%s);
            #101=IFCPOLYLINE((#10,#102,#103));
            #102=IFCCARTESIANPOINT((1000.,0.,0.));
            #103=IFCCARTESIANPOINT((2000.,0.,0.));
            """
                .formatted(from, to));
    assertThat(lengthM(part).value()).isCloseTo(expectedM, within(1e-9));
  }

  /** A circle of 1 m in radians: what is left behind pi / 2 of it, or before. */
  @ParameterizedTest
  @CsvSource({
    "IFCPARAMETERVALUE(1.5707963267948966), $, 4.71238898038469",
    "$, IFCPARAMETERVALUE(1.5707963267948966), 1.5707963267948966"
  })
  void circleIsCutWhereOnlyOneEndIsTold(String from, String to, double expectedM) {
    Shape part =
        item(
            "#100=IFCSWEPTDISKSOLID(#101,30.,$,%s,%s);\n#101=IFCCIRCLE(#14,1000.);\n"
                .formatted(from, to));
    assertThat(lengthM(part).value()).isCloseTo(expectedM, within(1e-9));
  }

  @Test
  void sectionedSolidReachesFromItsFirstToItsLastSection() {
    Shape shape =
        item(
            """
            #100=IFCSECTIONEDSOLIDHORIZONTAL(#101,(#110,#110),(#120,#130));
            #101=IFCPOLYLINE((#10,#102));
            #102=IFCCARTESIANPOINT((5000.,0.,0.));
            #110=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,600.,300.);
            #120=IFCAXIS2PLACEMENTLINEAR(#121,$,$);
            #121=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(500.),$,$,$,#101);
            #130=IFCAXIS2PLACEMENTLINEAR(#131,$,$);
            #131=IFCPOINTBYDISTANCEEXPRESSION(IFCLENGTHMEASURE(4000.),$,$,$,#101);
            """);
    assertThat(lengthM(shape).value()).isCloseTo(3.5, within(1e-9));
    assertThat(section(shape).value()).isEqualTo(new Section.Rectangular(0.6, 0.3));
    assertThat(shape.problems()).isEmpty();
  }

  @Test
  void spineCarriesItsSectionsFromEndToEnd() {
    Shape shape =
        item(
            """
            #100=IFCSECTIONEDSPINE(#101,(#110,#110),(#14,#120));
            #101=IFCCOMPOSITECURVE((#102),.F.);
            #102=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#103);
            #103=IFCPOLYLINE((#10,#104));
            #104=IFCCARTESIANPOINT((0.,0.,2500.));
            #110=IFCCIRCLEPROFILEDEF(.AREA.,$,$,50.);
            #120=IFCAXIS2PLACEMENT3D(#104,$,$);
            """);
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    assertThat(lengthM(shape).value()).isCloseTo(2.5, within(1e-9));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.1));
    assertThat(shape.problems()).isEmpty();
  }

  /**
   * A clothoid of A = 60 m from straight on, 40 m long. Its end by the series of the Fresnel
   * integrals, {@code x = L (1 - t^2 / 10 + t^4 / 216)}, {@code y = L (t / 3 - t^3 / 42)} with t =
   * L^2 / (2 A^2); textbook, from memory.
   */
  @ParameterizedTest
  @CsvSource({"60000., 1", "-60000., -1"})
  void clothoidOfAnAlignmentEndsWhereItsSeriesSays(String constant, double side) {
    Shape shape =
        item(
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,$,$);
            #101=IFCCOMPOSITECURVE((#110),.F.);
            #110=IFCCURVESEGMENT(.CONTINUOUS.,#14,IFCLENGTHMEASURE(0.),IFCLENGTHMEASURE(40000.),#120);
            #120=IFCCLOTHOID(#14,%s);
            """
                .formatted(constant));
    double t = 40.0 * 40.0 / (2 * 60.0 * 60.0);
    double x = 40 * (1 - t * t / 10 + Math.pow(t, 4) / 216);
    double y = side * 40 * (t / 3 - Math.pow(t, 3) / 42);
    assertThat(lengthM(shape).value()).isCloseTo(40, within(1e-4));
    assertThat(shape.ends().get(1).centreM().distanceM(new Point(x, y, 0)))
        .isCloseTo(0, within(1e-3));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.06));
  }

  /** From the curved end back to the straight one it is the same curve. */
  @Test
  void clothoidThatIsEnteredAtItsCurvedEndRunsStraight() {
    Shape shape =
        item(
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,$,$);
            #101=IFCCOMPOSITECURVE((#110),.F.);
            #110=IFCCURVESEGMENT(.CONTINUOUS.,#14,IFCLENGTHMEASURE(-40000.),IFCLENGTHMEASURE(40000.),#120);
            #120=IFCCLOTHOID(#14,60000.);
            """);
    double t = 40.0 * 40.0 / (2 * 60.0 * 60.0);
    Point end = shape.ends().get(1).outward();
    assertThat(lengthM(shape).value()).isCloseTo(40, within(1e-4));
    // it begins along x and has turned by -t at its end
    assertThat(Math.atan2(end.y(), end.x())).isCloseTo(-t, within(2e-3));
  }

  /** 30 m in plan, rising 3 in 4: 37.5 m. */
  @Test
  void gradientOverAPlanIsAsLongAsItsSlope() {
    Shape shape =
        item(
            """
            #100=IFCSWEPTDISKSOLID(#101,30.,$,$,$);
            #101=IFCGRADIENTCURVE((#110),.F.,#130,$);
            #110=IFCCURVESEGMENT(.CONTINUOUS.,#111,IFCLENGTHMEASURE(0.),IFCLENGTHMEASURE(37500.),#140);
            #111=IFCAXIS2PLACEMENT2D(#112,#113);
            #112=IFCCARTESIANPOINT((0.,1000.));
            #113=IFCDIRECTION((0.8,0.6));
            #130=IFCCOMPOSITECURVE((#131),.F.);
            #131=IFCCURVESEGMENT(.CONTINUOUS.,#14,IFCLENGTHMEASURE(0.),IFCLENGTHMEASURE(30000.),#140);
            #140=IFCLINE(#10,#141);
            #141=IFCVECTOR(#11,1.);
            """);
    assertThat(lengthM(shape).value()).isCloseTo(37.5, within(1e-6));
    assertThat(shape.form()).isEqualTo(Form.STRAIGHT);
    assertThat(shape.ends().get(1).centreM().distanceM(new Point(30, 0, 23.5)))
        .isCloseTo(0, within(1e-6));
  }

  @Test
  void surfacesOfAGeometricSetAreMeasuredAsWalls() {
    Shape pipe =
        item(
            """
            #100=IFCGEOMETRICSET((#101));
            #101=IFCRECTANGULARTRIMMEDSURFACE(#102,0.,0.,6.283185307179586,1500.,.T.,.T.);
            #102=IFCCYLINDRICALSURFACE(#14,50.);
            """);
    assertThat(pipe.form()).isEqualTo(Form.STRAIGHT);
    assertThat(lengthM(pipe).value()).isCloseTo(1.5, within(1e-6));
    assertThat(section(pipe).value().largestSideM()).isCloseTo(0.1, within(1e-6));
    Shape bend =
        item(
            """
            #100=IFCGEOMETRICSET((#101));
            #101=IFCRECTANGULARTRIMMEDSURFACE(#102,0.,0.,1.5707963267948966,6.283185307179586,.T.,.T.);
            #102=IFCTOROIDALSURFACE(#14,300.,50.);
            """);
    assertThat(bend.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(bend).value()).isCloseTo(90, within(0.1));
    assertThat(bendRadiusM(bend).value()).isCloseTo(0.3, within(0.0005));
    Shape duct =
        item(
            """
            #100=IFCGEOMETRICSET((#101));
            #101=IFCSURFACEOFLINEAREXTRUSION(#102,#14,#13,1200.);
            #102=IFCARBITRARYCLOSEDPROFILEDEF(.CURVE.,$,#103);
            #103=IFCCIRCLE(#16,125.);
            """);
    assertThat(duct.form()).isEqualTo(Form.STRAIGHT);
    assertThat(lengthM(duct).value()).isCloseTo(1.2, within(1e-6));
    assertThat(section(duct).value().largestSideM()).isCloseTo(0.25, within(1e-5));
  }

  @Test
  void mirroredProfileLiesOnTheOtherSide() {
    Shape shape =
        item(
            """
            #100=IFCEXTRUDEDAREASOLID(#101,#14,#13,1000.);
            #101=IFCMIRROREDPROFILEDEF(.AREA.,$,#102,*,$);
            #102=IFCCIRCLEPROFILEDEF(.AREA.,$,#103,50.);
            #103=IFCAXIS2PLACEMENT2D(#104,$);
            #104=IFCCARTESIANPOINT((300.,100.));
            """);
    assertThat(shape.ends().get(0).centreM().distanceM(new Point(-0.3, 0.1, 0)))
        .isCloseTo(0, within(1e-9));
    assertThat(section(shape).value()).isEqualTo(new Section.Round(0.1));
  }

  /** Twelve corners: on the circle, around it, or of equal area; the known diameter tells. */
  @ParameterizedTest
  @CsvSource({"0.1", "0.09659258262890683", "0.09771994", "0.07"})
  void knownDiameterTellsWhichCircleAPolygonStandsFor(double knownM) {
    MeshText mesh = new MeshText();
    double[] up = {0, 0, 1};
    double[] y = {0, 1, 0};
    mesh.tube(
        mesh.ring(new double[3], y, up, 0.05, 12),
        mesh.ring(new double[] {1, 0, 0}, y, up, 0.05, 12));
    StatedSizes known = new StatedSizes.Known(Optional.empty(), List.of(knownM));
    ShapeHints hints = new ShapeHints(List.of(), null, true, known);
    Shape shape = TinyModel.item(TinyModel.METRES, hints, mesh.faceted(100));
    double expectedM = knownM < 0.08 ? 0.1 : knownM;
    assertThat(section(shape).value().largestSideM()).isCloseTo(expectedM, within(5e-6));
  }
}
