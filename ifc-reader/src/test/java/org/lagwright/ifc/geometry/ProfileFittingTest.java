package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;
import static org.lagwright.ifc.geometry.TinyModel.MM_RAD;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * Fittings of ducts 300 high that are drawn as their plan and extruded upwards. The inlet is 500
 * wide and looks west, with its middle at 0.
 */
class ProfileFittingTest {

  private static final Section DUCT = new Section.Rectangular(0.5, 0.3);

  /** The plan by its corners in millimetres. */
  private static Shape drawn(ShapeHints hints, double... xy) {
    return TinyModel.item(MM_RAD, hints, records(100, xy));
  }

  private static String records(int id, double... xy) {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i <= xy.length; i += 2) {
      int at = i % xy.length;
      points.append(i == 0 ? "" : ",").append("(%s,%s)".formatted(xy[at], xy[at + 1]));
    }
    return """
    #%d=IFCEXTRUDEDAREASOLID(#%d,#14,#13,300.);
    #%d=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#%d);
    #%d=IFCINDEXEDPOLYCURVE(#%d,$,.F.);
    #%d=IFCCARTESIANPOINTLIST2D((%s));
    """
        .formatted(id, id + 1, id + 1, id + 2, id + 2, id + 3, id + 3, points);
  }

  private static ShapeHints ports(Point... portsM) {
    return new ShapeHints(List.of(portsM), null, false);
  }

  private static final double[] SQUARE_ELBOW = {
    0, -250, 750, -250, 750, 500, 250, 500, 250, 250, 0, 250
  };

  @Test
  void squareElbowHasTwoEndsAndItsAngleButNoArc() {
    Shape elbow = drawn(ShapeHints.NONE, SQUARE_ELBOW);

    assertThat(elbow.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(elbow).value()).isCloseTo(90, within(1e-6));
    assertThat(section(elbow).value()).isEqualTo(DUCT);
    assertThat(section(elbow).how()).isEqualTo(How.SOLID);
    assertThat(elbow.ends())
        .extracting(ShapeEnd::centreM)
        .containsExactlyInAnyOrder(new Point(0, 0, 0.15), new Point(0.5, 0.5, 0.15));
    assertThat(elbow.bendRadiusM()).isNull();
    assertThat(elbow.lengthM()).isNull();
  }

  /** Straight from end to end it would be 0.354 wide: 0.5 seen at 45 degrees. */
  @Test
  void turningVanesInASquareElbowDoNotStraightenIt() {
    String lower = records(200, 450, -100, 500, -80, 502, -78, 451, -98);
    String upper = records(300, 550, 0, 600, 20, 602, 22, 551, 2);
    Shape elbow =
        TinyModel.measure(
            TinyModel.body(
                TinyModel.AT_ORIGIN, "#100,#200,#300", records(100, SQUARE_ELBOW) + lower + upper),
            MM_RAD,
            ShapeHints.NONE);

    assertThat(elbow.form()).isEqualTo(Form.BEND);
    assertThat(angleDeg(elbow).value()).isCloseTo(90, within(1e-6));
    assertThat(section(elbow).value()).isEqualTo(DUCT);
    assertThat(elbow.lengthM()).isNull();
    assertThat(elbow.problems()).contains("3 items in the body, the largest of them measured");
  }

  @Test
  void offsetIsAsLongAsItsEndsAreApart() {
    Shape offset =
        drawn(
            ShapeHints.NONE,
            0,
            -250,
            200,
            -250,
            600,
            -50,
            800,
            -50,
            800,
            450,
            600,
            450,
            200,
            250,
            0,
            250);

    assertThat(offset.form()).isEqualTo(Form.OFFSET);
    assertThat(section(offset).value()).isEqualTo(DUCT);
    assertThat(lengthM(offset).value()).isCloseTo(Math.hypot(0.8, 0.2), within(1e-9));
  }

  @Test
  void shearedOffsetHasTheSectionOfTheDuctsThatMeetItSquarely() {
    Shape offset =
        drawn(
            ports(new Point(0, 0, 0.15), new Point(0.5, 0.1, 0.15)),
            0,
            -250,
            500,
            -150,
            500,
            350,
            0,
            250);

    assertThat(offset.form()).isEqualTo(Form.OFFSET);
    assertThat(section(offset).value()).isEqualTo(DUCT);
    assertThat(lengthM(offset).value()).isCloseTo(Math.hypot(0.5, 0.1), within(1e-9));
  }

  @Test
  void teeWithAShoeHasRunAndBranch() {
    double[] plan = {
      0, -250, 650, -250, 650, 250, 475, 250, 475, 400, 175, 400, 175, 350, 75, 250, 0, 250
    };
    Shape tee =
        drawn(
            ports(new Point(0, 0, 0.15), new Point(0.65, 0, 0.15), new Point(0.325, 0.4, 0.15)),
            plan);

    assertThat(tee.form()).isEqualTo(Form.TEE);
    Section branch = tee.ends().get(2).section();
    assertThat(branch.largestSideM()).isCloseTo(0.3, within(1e-9));
    assertThat(branch.perimeterM()).isCloseTo(1.2, within(1e-9));
    assertThat(section(tee).value()).isEqualTo(DUCT);
    assertThat(lengthM(tee).value()).isCloseTo(0.65, within(1e-9));
  }

  @Test
  void breechesHaveThreeEndsAndNoRun() {
    Shape wye =
        drawn(
            ShapeHints.NONE,
            0,
            -250,
            500,
            -350,
            600,
            -350,
            600,
            -100,
            500,
            -100,
            350,
            0,
            500,
            100,
            600,
            100,
            600,
            350,
            500,
            350,
            0,
            250);

    assertThat(wye.form()).isEqualTo(Form.WYE);
    assertThat(wye.ends()).hasSize(3);
    assertThat(section(wye).value()).isEqualTo(DUCT);
    assertThat(wye.lengthM()).isNull();
  }

  /** It has the corners of a tee whose run is its collar; but its walls bend by 18 degrees only. */
  @Test
  void reducerBetweenCollarsIsNoTee() {
    double[] plan = {
      0, -250, 100, -250, 400, -150, 500, -150, 500, 150, 400, 150, 100, 250, 0, 250
    };
    Shape reducer = drawn(ShapeHints.NONE, plan);

    assertThat(reducer.form()).isEqualTo(Form.REDUCER);
    assertThat(section(reducer).value()).isEqualTo(DUCT);
    assertThat(lengthM(reducer).value()).isCloseTo(0.5, within(1e-9));
    assertThat(reducer.ends())
        .extracting(ShapeEnd::centreM)
        .containsExactlyInAnyOrder(new Point(0, 0, 0.15), new Point(0.5, 0, 0.15));
  }

  @Test
  void segmentOfAnUnknownSectionIsAsLongAsItsExtrusion() {
    Shape segment = drawn(new ShapeHints(List.of(), null, true), SQUARE_ELBOW);

    assertThat(segment.section()).isNull();
    assertThat(lengthM(segment).value()).isCloseTo(0.3, within(1e-9));
  }

  @Test
  void depthOfAFittingOfAnUnknownSectionIsNotItsLength() {
    // a plan with three corners is that of no duct
    Shape wedge = drawn(ShapeHints.NONE, 0, -250, 500, 0, 0, 250);

    assertThat(wedge.section()).isNull();
    assertThat(wedge.lengthM()).isNull();
    assertThat(wedge.problems()).singleElement().asString().contains("neither circle, rectangle");
  }
}
