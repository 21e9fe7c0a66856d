package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.Network.at;

import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** What sits in a pipe has the size of the pipe, however thick its body is drawn. */
class InlineBodyTest {

  private static final double[] EAST = {1, 0, 0};
  private static final double[] WEST = {-1, 0, 0};

  @ParameterizedTest(name = "{0} ''{1}'', both ends in pipes {3}, ports {4}")
  @CsvSource({
    "IFCVALVE, Valve, .ISOLATING., true, connected",
    "IFCVALVE, V 17, $, true, connected",
    "IFCVALVE, V 17, $, false, connected",
    "IFCVALVE, V 17, $, true, touching",
    "IFCVALVE, V 17, $, true, none",
    "IFCFLOWMETER, Meter, $, true, connected",
    "IFCFILTER, Strainer, .STRAINER., true, connected",
    "IFCFLOWCONTROLLER, Part, , true, connected",
    "IFCPIPEFITTING, Ball valve, $, true, connected",
    "IFCPIPEFITTING, Part 7, $, true, connected",
    "IFCPIPEFITTING, Part 7, $, true, touching",
    "IFCPIPEFITTING, Union, .CONNECTOR., false, connected",
  })
  void bodyThickerThanItsPipesIsALosingCandidate(
      String keyword, String name, @Nullable String predefined, boolean both, String ports) {
    Network network =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 60.3)
            .body(2, keyword, name, predefined, at(1000, 0, 0), EAST, 150, 84.4);
    if (!ports.equals("none")) {
      network.port(1, 2, at(1000, 0, 0), EAST).port(2, 1, at(1000, 0, 0), WEST);
      network.port(2, 2, at(1150, 0, 0), EAST);
    }
    if (both) {
      network.pipe(3, at(1150, 0, 0), EAST, 1000, 60.3);
    }
    if (ports.equals("connected")) {
      network.connect(1, 2, 2, 1);
    }
    if (both && ports.equals("connected")) {
      network.port(3, 1, at(1150, 0, 0), WEST).connect(2, 2, 3, 1);
    }

    MepElement valve = network.element(2);
    Measured<Section> section = Objects.requireNonNull(valve.section());

    assertThat(diameterMm(valve)).isEqualTo(60.3);
    assertThat(section.how()).isEqualTo(How.NEIGHBOUR);
    assertThat(section.lost()).extracting(Candidate::value).contains(new Section.Round(0.0844));
    assertThat(valve.ends()).containsOnly(new Section.Round(0.0603));
  }

  /**
   * Bodies in a row that touch, each as long as the others; drawn widths in millimetres.
   *
   * @param pipeMm of a pipe before the first of them, 0 for none
   */
  @ParameterizedTest
  @CsvSource({
    "IFCPIPEFITTING, Coupling, 70, IFCPIPEFITTING, Cap, 90, 0",
    "IFCVALVE, Valve, 76, IFCPIPEFITTING, Union, 85, 0",
    "IFCVALVE, Valve, 185, IFCPIPEFITTING, Flange, 200, 0",
    "IFCPIPEFITTING, Nipple, 48, IFCPIPEFITTING, Union, 65, 0",
    "IFCPIPEFITTING, Coupling, 70, IFCPIPEFITTING, Union, 85, 60.3",
    "IFCVALVE, Valve, 76, IFCPIPEFITTING, Union, 85, 60.3",
  })
  void bodiesThatTouchEachOtherKeepTheirSizesUnlessAPipeGivesThem(
      String a, String nameOfA, double aMm, String b, String nameOfB, double bMm, double pipeMm) {
    Network network =
        new Network()
            .body(2, a, nameOfA, "$", at(1000, 0, 0), EAST, 100, aMm)
            .body(3, b, nameOfB, "$", at(1100, 0, 0), EAST, 100, bMm)
            .body(4, a, nameOfA, "$", at(1200, 0, 0), EAST, 100, aMm);
    if (pipeMm > 0) {
      network.pipe(1, at(0, 0, 0), EAST, 1000, pipeMm);
    }
    MepModel model = network.read();

    for (int n = 2; n <= 4; n++) {
      MepElement each = InlineModel.element(model, n * 1000L);
      double expectedMm = pipeMm > 0 ? pipeMm : n == 3 ? bMm : aMm;
      assertThat(each.ports()).isNotEmpty();
      assertThat(diameterMm(each)).isEqualTo(expectedMm);
      assertThat(each.ends()).containsOnly(new Section.Round(expectedMm / 1000));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "IFCVALVE, Valve",
    "IFCPUMP, Pump",
    "IFCFLOWMETER, Meter",
    "IFCFILTER, Strainer",
    "IFCFLOWCONTROLLER, Valve"
  })
  void boxOfWhatSitsInAPipeIsNoSize(String keyword, String name) {
    MepElement alone = new Network().box(1, keyword, at(0, 0, 0), EAST, 230, 200, 160).element(1);
    MepElement named =
        InlineModel.first(
            "#1=%s('1',$,'%s DN50',$,$,#14,#10,$,$);\n".formatted(keyword, name)
                + InlineModel.body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,200.,160.)"));

    assertThat(alone.section()).isNull();
    assertThat(alone.ends()).isEmpty();
    // DN50 by table
    assertThat(diameterMm(named)).isEqualTo(60.3);
  }

  /** Flanges of 102 mm, 260 mm apart, and out of their middle a motor of 113 mm. */
  @Test
  void motorOfAPumpIsNoEndOfIt() {
    MepElement pump =
        InlineModel.first(
            """
            #1=IFCPUMP('1',$,'Pump',$,$,#14,#10,$,$);
            #14=IFCLOCALPLACEMENT($,#15);
            #15=IFCAXIS2PLACEMENT3D(#16,$,$);
            #16=IFCCARTESIANPOINT((0.,0.,0.));
            #17=IFCDIRECTION((0.,0.,1.));
            #18=IFCDIRECTION((0.,1.,0.));
            #19=IFCDIRECTION((1.,0.,0.));
            #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
            #11=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#20,#30));
            #20=IFCEXTRUDEDAREASOLID(#21,#22,#17,260.);
            #21=IFCCIRCLEPROFILEDEF(.AREA.,$,$,51.);
            #22=IFCAXIS2PLACEMENT3D(#23,$,$);
            #23=IFCCARTESIANPOINT((0.,0.,-130.));
            #30=IFCEXTRUDEDAREASOLID(#31,#32,#17,500.);
            #31=IFCCIRCLEPROFILEDEF(.AREA.,$,$,56.5);
            #32=IFCAXIS2PLACEMENT3D(#16,#18,#19);
            """);

    assertThat(diameterMm(pump)).isEqualTo(102);
    assertThat(pump.ends()).containsExactly(new Section.Round(0.102), new Section.Round(0.102));
    assertThat(InlineModel.value(pump.lengthM())).isCloseTo(0.26, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"IFCDUCTSEGMENT, INLINE, DAMPER", "IFCPIPESEGMENT, VALVE, VALVE_BODY"})
  void generalControllerBetweenDuctsIsADamper(String line, Kind kind, Form form) {
    MepElement controller =
        new Network()
            .box(1, line, at(0, 0, 0), EAST, 1000, 400, 200)
            .box(2, "IFCFLOWCONTROLLER", at(1000, 0, 0), EAST, 230, 440, 240)
            .box(3, line, at(1230, 0, 0), EAST, 1000, 400, 200)
            .port(1, 2, at(1000, 0, 0), EAST)
            .port(2, 1, at(1000, 0, 0), WEST)
            .port(2, 2, at(1230, 0, 0), EAST)
            .port(3, 1, at(1230, 0, 0), WEST)
            .connect(1, 2, 2, 1)
            .connect(2, 2, 3, 1)
            .element(2);

    assertThat(controller.kind()).isEqualTo(kind);
    assertThat(controller.form()).isEqualTo(form);
  }

  /** What is drawn so small on the body of a valve is a screw or a slot, no end of it. */
  @ParameterizedTest
  @CsvSource({"0.2,", "3,", "6,0.006"})
  void detailOfABodyIsNoSize(double detailMm, @Nullable Double diameterM) {
    Measured<Section> size = lump(detailMm).element(2).section();

    assertThat(size == null ? null : size.value())
        .isEqualTo(diameterM == null ? null : new Section.Round(diameterM));
    assertThat(InlineModel.codes(lump(detailMm).read())).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  /** Valve 2, a lump with a flat place whose eight corners lie on a circle. */
  private static Network lump(double endMm) {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < 8; i++) {
      double turn = Math.PI * i / 4;
      double x = endMm / 2 * Math.cos(turn);
      double y = endMm / 2 * Math.sin(turn);
      points.append(String.format(Locale.ROOT, "(%.6f,%.6f,0.),", x, y));
    }
    return new Network()
        .record("#2000=IFCVALVE('2',$,'Valve',$,$,#2010,#2001,$,$);")
        .record(InlineModel.placed(2010, 0, 0, 0))
        .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
        .record("#2002=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#2003));")
        .record("#2003=IFCPOLYGONALFACESET(#2004,.T.,(#2020,#2021,#2022,#2023,#2024,#2025,#2026,")
        .record("#2027,#2028,#2029,#2030,#2031,#2032),$);")
        .record("#2004=IFCCARTESIANPOINTLIST3D((%s".formatted(points))
        .record("(50.,0.,40.),(-30.,40.,55.),(-20.,-45.,35.)));")
        .record("#2020=IFCINDEXEDPOLYGONALFACE((8,7,6,5,4,3,2,1));")
        .record("#2021=IFCINDEXEDPOLYGONALFACE((1,2,9));")
        .record("#2022=IFCINDEXEDPOLYGONALFACE((2,10,9));")
        .record("#2023=IFCINDEXEDPOLYGONALFACE((2,3,10));")
        .record("#2024=IFCINDEXEDPOLYGONALFACE((3,4,10));")
        .record("#2025=IFCINDEXEDPOLYGONALFACE((4,5,10));")
        .record("#2026=IFCINDEXEDPOLYGONALFACE((5,11,10));")
        .record("#2027=IFCINDEXEDPOLYGONALFACE((5,6,11));")
        .record("#2028=IFCINDEXEDPOLYGONALFACE((6,7,11));")
        .record("#2029=IFCINDEXEDPOLYGONALFACE((7,8,11));")
        .record("#2030=IFCINDEXEDPOLYGONALFACE((8,9,11));")
        .record("#2031=IFCINDEXEDPOLYGONALFACE((8,1,9));")
        .record("#2032=IFCINDEXEDPOLYGONALFACE((9,10,11));");
  }

  /** A tee drawn as a block with round pipes at all its ports is not rectangular. */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void blockBetweenRoundPipesHasTheirSize(boolean allMet) {
    Network network =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 20)
            .box(2, "IFCPIPEFITTING", at(1000, 0, 0), EAST, 60, 25, 25)
            .record("#2500=IFCPIPEFITTINGTYPE('t',$,'Part',$,$,$,$,$,$,.JUNCTION.);")
            .record("#2501=IFCRELDEFINESBYTYPE('u',$,$,$,(#2000),#2500);")
            .pipe(3, at(1060, 0, 0), EAST, 1000, 20)
            .port(1, 1, at(1000, 0, 0), EAST)
            .port(3, 1, at(1060, 0, 0), WEST)
            .port(2, 1, at(1000, 0, 0), WEST)
            .port(2, 2, at(1060, 0, 0), EAST)
            .port(2, 3, at(1030, 12.5, 0), at(0, 1, 0))
            .connect(1, 1, 2, 1)
            .connect(2, 2, 3, 1);
    if (allMet) {
      network
          .pipe(4, at(1030, 12.5, 0), at(0, 1, 0), 1000, 20)
          .port(4, 1, at(1030, 12.5, 0), at(0, -1, 0))
          .connect(2, 3, 4, 1);
    }
    MepElement tee = network.element(2);

    assertThat(tee.form()).isEqualTo(Form.TEE);
    assertThat(InlineModel.value(tee.section()) instanceof Section.Round).isEqualTo(allMet);
    assertThat(tee.ends()).isNotEmpty().allMatch(end -> end instanceof Section.Round == allMet);
  }

  /** The way straight across an angle valve is no length of it. */
  @ParameterizedTest
  @CsvSource({"90,false", "0,true", "30,true"})
  void lengthOfAnUndrawnValveIsThatBetweenFacesThatLookApart(double turnDegrees, boolean told) {
    double turn = Math.toRadians(turnDegrees);
    double[] out = {Math.cos(turn), Math.sin(turn), 0};
    double[] end = {100 + 100 * out[0], 100 * out[1], 0};
    MepElement valve =
        new Network()
            .record("#2000=IFCVALVE('2',$,'Valve DN50',$,$,$,$,$,.ISOLATING.);")
            .port(2, 1, at(0, 0, 0), WEST)
            .port(2, 2, end, out)
            .element(2);

    assertThat(valve.form()).isEqualTo(Form.VALVE_BODY);
    assertThat(valve.lengthM() != null).isEqualTo(told);
  }

  @Test
  void sizeOfAnUndrawnPipeThatIsOnlyThatOfAValveIsTold() {
    MepModel model =
        new Network()
            .body(2, "IFCVALVE", "4711", ".ISOLATING.", at(0, 0, 0), EAST, 150, 84.4)
            .port(2, 1, at(150, 0, 0), EAST)
            .record("#1000=IFCPIPESEGMENT('1',$,'4712',$,$,$,$,$,$);")
            .port(1, 1, at(150, 0, 0), WEST)
            .port(1, 2, at(1150, 0, 0), EAST)
            .connect(2, 1, 1, 1)
            .read();

    assertThat(diameterMm(InlineModel.element(model, 1000))).isEqualTo(84.4);
    assertThat(model.findings())
        .anySatisfy(finding -> assertThat(finding.message()).contains("wider than the pipe in it"));
  }
}
