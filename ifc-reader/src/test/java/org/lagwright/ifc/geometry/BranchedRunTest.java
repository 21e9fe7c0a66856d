package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;

/** Rectangular tees that are drawn as two extrusions: the run along x, the branch along y. */
class BranchedRunTest {

  private static final Section RUN = new Section.Rectangular(0.5, 0.3);

  /** A run of 500 x 300 and a branch that starts and ends at some distance from its axis. */
  private static Shape tee(String branch, double runMm, double fromMm, double toMm) {
    String records =
        """
        #100=IFCEXTRUDEDAREASOLID(#101,#102,#13,%1$s);
        #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,500.,300.);
        #102=IFCAXIS2PLACEMENT3D(#103,#11,#12);
        #103=IFCCARTESIANPOINT((%2$s,0.,0.));
        #110=IFCEXTRUDEDAREASOLID(#111,#112,#13,%3$s);
        #111=%5$s;
        #112=IFCAXIS2PLACEMENT3D(#113,#12,#11);
        #113=IFCCARTESIANPOINT((0.,%4$s,0.));
        """
            .formatted(runMm, -runMm / 2, toMm - fromMm, fromMm, branch);
    return TinyModel.measure(
        TinyModel.body(TinyModel.AT_ORIGIN, "#100,#110", records),
        TinyModel.MM_RAD,
        ShapeHints.NONE);
  }

  private static String box(double widthMm, double heightMm) {
    return "IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,%s,%s)".formatted(widthMm, heightMm);
  }

  @ParameterizedTest(name = "branch {0} x {1}, run {2} mm long, from {3} to {4} mm")
  @CsvSource({
    "300, 200, 600, 0, 400",
    "300, 200, 600, 250, 400",
    "300, 200, 1200, 0, 400",
    "500, 300, 600, 0, 400",
    "300, 200, 400, 250, 2000"
  })
  void boxThatStartsInTheRunOrOnItsSideIsItsBranch(
      double widthMm, double heightMm, double runMm, double fromMm, double toMm) {
    Shape shape = tee(box(widthMm, heightMm), runMm, fromMm, toMm);
    assertThat(shape.form()).isEqualTo(Form.TEE);
    assertThat(shape.ends())
        .extracting(ShapeEnd::section)
        .containsExactly(RUN, RUN, new Section.Rectangular(widthMm / 1000, heightMm / 1000));
    assertThat(shape.ends().get(2).centre().y()).isCloseTo(toMm / 1000, within(1e-9));
    assertThat(lengthM(shape).value()).isCloseTo(runMm / 1000, within(1e-9));
  }

  @Test
  void roundTapOnARectangularDuctIsItsBranch() {
    Shape shape = tee("IFCCIRCLEPROFILEDEF(.AREA.,$,#16,80.)", 600, 250, 350);
    assertThat(shape.form()).isEqualTo(Form.TEE);
    assertThat(shape.ends())
        .extracting(ShapeEnd::section)
        .containsExactly(RUN, RUN, new Section.Round(0.16));
  }

  @Test
  void boxBesideTheRunIsNoBranch() {
    assertThat(tee(box(300, 200), 600, 260, 400).form()).isNotEqualTo(Form.TEE);
  }
}
