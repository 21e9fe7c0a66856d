package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Which of three or four ends make a run: inlet 500 x 300 at 0 that looks west, height along z. */
class BranchedEndsTest {

  private static final Point WEST = new Point(-1, 0, 0);
  private static final Point EAST = new Point(1, 0, 0);
  private static final ShapeEnd INLET = end(0, 0, WEST, 500);

  /** An end in the plane z = 0, its width in that plane. */
  private static ShapeEnd end(double xMm, double yMm, Point outward, double widthMm) {
    return new ShapeEnd(
        new Point(xMm / 1000, yMm / 1000, 0),
        outward,
        new Section.Rectangular(widthMm / 1000, 0.3),
        new Point(-outward.y(), outward.x(), 0));
  }

  private static Point towards(double degrees) {
    double rad = Math.toRadians(degrees);
    return new Point(Math.cos(rad), Math.sin(rad), 0);
  }

  private static Shape shape(ShapeEnd... ends) {
    return Shape.ofEnds(List.of(ends), How.SOLID, new Evidence(1, "ends", ""));
  }

  @ParameterizedTest(name = "from 500 to {0}, flat on the side away from the branch")
  @CsvSource({"480", "450", "400", "300", "150"})
  void teeThatLosesSizeAtOneSideHasARunAsLongAsItsAxis(double widthMm) {
    ShapeEnd branch = end(300, 400, towards(90), 200);
    Shape tee = shape(branch, end(600, (widthMm - 500) / 2, EAST, widthMm), INLET);

    assertThat(tee.form()).isEqualTo(Form.TEE);
    assertThat(tee.ends().get(2)).isEqualTo(branch);
    assertThat(lengthM(tee).value()).isCloseTo(0.6, within(1e-12));
  }

  @Test
  void lateralThatLosesSizeAtOneSideHasTheAngleOfItsBranch() {
    Shape lateral = shape(INLET, end(900, -100, EAST, 300), end(700, 500, towards(45), 200));

    assertThat(lateral.form()).isEqualTo(Form.LATERAL);
    assertThat(angleDeg(lateral).value()).isCloseTo(45, within(1e-9));
  }

  @Test
  void crossThatLosesSizeAtOneSideIsACross() {
    Shape cross =
        shape(
            INLET,
            end(350, 450, towards(90), 300),
            end(700, -50, EAST, 400),
            end(350, -400, towards(-90), 300));

    assertThat(cross.form()).isEqualTo(Form.CROSS);
    assertThat(lengthM(cross).value()).isCloseTo(0.85, within(1e-12));
  }

  @Test
  void legBesideTheInletMakesNoRunWithIt() {
    // its middle lies 260 mm off the axis of an inlet that reaches 250 mm
    Shape fork = shape(INLET, end(600, -260, EAST, 200), end(300, 400, towards(90), 200));

    assertThat(fork.form()).isEqualTo(Form.WYE);
    assertThat(fork.lengthM()).isNull();
  }

  @Test
  void parallelLegsThatBothLieBeforeTheInletAreAWye() {
    Shape breeches = shape(INLET, end(600, 200, EAST, 250), end(600, -200, EAST, 250));

    assertThat(breeches.form()).isEqualTo(Form.WYE);
    assertThat(breeches.lengthM()).isNull();
  }

  /** As the places of a port in the corner of an elbow and of the pipe at its end make them. */
  @Test
  void endsBehindOneAnotherThatLookTheSameWayAreNoBend() {
    assertThat(shape(INLET, end(9, 0, WEST, 500)).form()).isEqualTo(Form.UNKNOWN);
    assertThat(shape(INLET, end(0, 600, WEST, 500)).form()).isEqualTo(Form.BEND);
  }
}
