package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** What is said of a fitting against what is drawn and met: a finding, or a reason for none. */
class FittingConflictTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);
  private static final double RADIUS_MM = 114;

  private static String mm(double value) {
    return "IFCPOSITIVELENGTHMEASURE(" + value + ")";
  }

  /** A bend of 90 degrees from the origin, between two pipes if they have a diameter. */
  private static Network bend(String name, double bendMm, double pipeMm) {
    return bend(name, bendMm, pipeMm, Math.PI / 2);
  }

  private static Network bend(String name, double bendMm, double pipeMm, double turnRad) {
    Network network =
        new Network()
            .record(
                """
                #2000=IFCPIPEFITTING('2',$,'%s',$,$,#2004,#2001,$,.BEND.);
                #2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));
                #2002=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#2003));
                #2003=IFCREVOLVEDAREASOLID(#2008,$,#2009,%s);
                #2004=IFCLOCALPLACEMENT($,#2005);
                #2005=IFCAXIS2PLACEMENT3D(#2006,#2007,#2011);
                #2006=IFCCARTESIANPOINT((0.,0.,0.));
                #2007=IFCDIRECTION((1.,0.,0.));
                #2008=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
                #2009=IFCAXIS1PLACEMENT(#2010,#2011);
                #2010=IFCCARTESIANPOINT((%s,0.,0.));
                #2011=IFCDIRECTION((0.,1.,0.));"""
                    .formatted(name, turnRad, bendMm / 2, RADIUS_MM));
    return pipeMm == 0
        ? network
        : network
            .pipe(1, at(-1000, 0, 0), EAST, 1000, pipeMm)
            .pipe(3, at(RADIUS_MM, RADIUS_MM, 0), NORTH, 1000, pipeMm)
            .port(1, 0, at(0, 0, 0), EAST)
            .port(2, 0, at(0, 0, 0), at(-1, 0, 0))
            .port(2, 1, at(RADIUS_MM, RADIUS_MM, 0), NORTH)
            .port(3, 0, at(RADIUS_MM, RADIUS_MM, 0), at(0, -1, 0))
            .connect(1, 0, 2, 0)
            .connect(2, 1, 3, 0);
  }

  private static MepModel stating(String name, String property, String value) {
    return bend(name, 60.3, 0).record(properties(2500, 2000, "Set", property, value)).read();
  }

  @Test
  void bendDrawnWiderThanThePipesThatItJoinsIsToldOf() {
    MepModel model = bend("Part", 88.9, 60.3).read();

    assertThat(diameterMm(element(model, 2000))).isEqualTo(88.9);
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT");
  }

  @Test
  void bendDrawnAsWideAsThePipesThatItJoinsIsNoContradiction() {
    assertThat(codes(bend("Part", 60.3, 60.3).read())).isEmpty();
  }

  /** An arc of 114 mm between tangents of 40 mm; from port to port it could be one of 154 mm. */
  @Test
  void bendWithTangentsBetweenItsPortsIsNoContradiction() {
    MepModel model =
        new Network()
            .record(
                """
                #2000=IFCPIPEFITTING('2',$,'Part',$,$,#2004,#2001,$,.BEND.);
                #2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));
                #2002=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#2012,#2003,#2013));
                #2003=IFCREVOLVEDAREASOLID(#2008,$,#2009,1.5707963267948966);
                #2004=IFCLOCALPLACEMENT($,#2005);
                #2005=IFCAXIS2PLACEMENT3D(#2006,#2007,#2011);
                #2006=IFCCARTESIANPOINT((0.,0.,0.));
                #2007=IFCDIRECTION((1.,0.,0.));
                #2008=IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15);
                #2009=IFCAXIS1PLACEMENT(#2010,#2011);
                #2010=IFCCARTESIANPOINT((114.,0.,0.));
                #2011=IFCDIRECTION((0.,1.,0.));
                #2012=IFCEXTRUDEDAREASOLID(#2008,#2014,#2016,40.);
                #2013=IFCEXTRUDEDAREASOLID(#2008,#2015,#2016,40.);
                #2014=IFCAXIS2PLACEMENT3D(#2017,$,$);
                #2015=IFCAXIS2PLACEMENT3D(#2018,#2007,#2011);
                #2016=IFCDIRECTION((0.,0.,1.));
                #2017=IFCCARTESIANPOINT((0.,0.,-40.));
                #2018=IFCCARTESIANPOINT((114.,0.,114.));""")
            .pipe(1, at(-1040, 0, 0), EAST, 1000, 60.3)
            .pipe(3, at(114, 154, 0), NORTH, 1000, 60.3)
            .port(1, 0, at(-40, 0, 0), EAST)
            .port(2, 0, at(-40, 0, 0), at(-1, 0, 0))
            .port(2, 1, at(114, 154, 0), NORTH)
            .port(3, 0, at(114, 154, 0), at(0, -1, 0))
            .connect(1, 0, 2, 0)
            .connect(2, 1, 3, 0)
            .read();
    MepElement bend = element(model, 2000);

    assertThat(InlineModel.value(bend.bendRadiusM())).isCloseTo(0.114, within(1e-6));
    assertThat(InlineModel.value(bend.lengthM())).isCloseTo(0.259071, within(1e-6));
    assertThat(codes(model)).isEmpty();
  }

  @Test
  void bendDrawnTheLongWayRoundTurnsAsItsPortsDoAndIsToldOf() {
    MepModel model = bend("Part", 60.3, 60.3, -1.5 * Math.PI).read();
    MepElement bend = element(model, 2000);

    assertThat(InlineModel.value(bend.angleDeg())).isCloseTo(90, within(1e-6));
    assertThat(InlineModel.value(bend.lengthM()))
        .isCloseTo(RADIUS_MM / 1000 * Math.PI / 2, within(1e-6));
    assertThat(codes(model)).containsExactlyInAnyOrder("LENGTH_CONFLICT", "ANGLE_CONFLICT");
  }

  @Test
  void bendDrawnWithTheNominalSizeOfItsPipesHasTheirSizeAndIsToldOf() {
    MepModel model = bend("Part", 50, 60.3).read();
    MepElement bend = element(model, 2000);

    assertThat(diameterMm(bend)).isEqualTo(60.3);
    assertThat(bend.ends()).containsExactly(new Section.Round(0.0603), new Section.Round(0.0603));
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "OuterDiameter|IFCPOSITIVELENGTHMEASURE(88.9)|SECTION_CONFLICT",
        "OuterDiameter|IFCPOSITIVELENGTHMEASURE(60.3)|",
        "NominalDiameter|IFCPOSITIVELENGTHMEASURE(80.)|SECTION_CONFLICT",
        "NominalDiameter|IFCPOSITIVELENGTHMEASURE(50.)|",
        "Nennweite|IFCTEXT('2')|",
        "Diameter|IFCPOSITIVELENGTHMEASURE(50.)|",
        "BendAngle|IFCREAL(45.)|ANGLE_CONFLICT",
        "BendAngle|IFCREAL(90.)|",
        "BendRadius|IFCPOSITIVELENGTHMEASURE(152.)|RADIUS_CONFLICT",
        "BendRadius|IFCPOSITIVELENGTHMEASURE(114.)|",
        "BendRadius|IFCPOSITIVELENGTHMEASURE(83.85)|"
      })
  void whatIsStatedOfABendIsHeldAgainstItsBody(String property, String value, String code) {
    MepModel model = stating("Part", property, value);

    assertThat(codes(model)).isEqualTo(code == null ? List.of() : List.of(code));
    assertThat(diameterMm(element(model, 2000))).isEqualTo(60.3);
  }

  @ParameterizedTest
  @CsvSource({"Bend DN80,SECTION_CONFLICT", "Bend DN50,", "Bend 45\u00B0,ANGLE_CONFLICT"})
  void whatTheNameOfABendSaysIsHeldAgainstItsBody(String name, String code) {
    assertThat(codes(bend(name, 60.3, 0).read()))
        .isEqualTo(code == null ? List.of() : List.of(code));
  }

  @Test
  void bendDrawnWithTheNominalSizeHasTheOutsideThatIsStated() {
    MepModel model =
        bend("Part", 50, 0).record(properties(2500, 2000, "Set", "OuterDiameter", mm(60.3))).read();
    MepElement bend = element(model, 2000);

    assertThat(diameterMm(bend)).isEqualTo(60.3);
    assertThat(bend.ends()).containsExactly(new Section.Round(0.0603), new Section.Round(0.0603));
  }

  /** A valve of 140 mm in a line of 60.3 mm: neither its body nor its own diameter is a size. */
  @ParameterizedTest
  @CsvSource({"OuterDiameter,140.", "NominalDiameter,50.", "Diameter,140."})
  void whatIsStatedOfTheBodyOfAValveDoesNotContradictItsPipe(String property, double value) {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .body(2, "IFCVALVE", "Valve", "$", at(1000, 0, 0), EAST, 150, 140)
            .pipe(3, at(1150, 0, 0), EAST, 1000, 60.3)
            .record(properties(2500, 2000, "Set", property, mm(value)))
            .read();

    assertThat(diameterMm(element(model, 2000))).isEqualTo(60.3);
    assertThat(codes(model)).containsExactly("ENDS_JOINED");
  }

  @Test
  void valveByItselfHasTheSizeOfItsNominalDiameterAndNotOfItsBody() {
    MepElement valve =
        new Network()
            .body(2, "IFCVALVE", "Valve DN50", "$", at(0, 0, 0), EAST, 150, 140)
            .element(2);

    assertThat(diameterMm(valve)).isEqualTo(60.3);
    assertThat(Objects.requireNonNull(valve.section()).lost())
        .extracting(Candidate::why)
        .containsExactly(FittingMeasurer.BODY);
  }
}
