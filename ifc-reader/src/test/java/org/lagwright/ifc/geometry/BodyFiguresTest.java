package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.schema.IfcFile;

/**
 * Volumes and outer surfaces against closed forms (Pappus for bends, frustum, prisms), each body in
 * random units, placements and mirrors. The seed stands in the name of the test.
 */
class BodyFiguresTest {

  /** Steps of one degree both ways lose 0.015 % of a sphere, less of all else. */
  private static final double STEP_SHARE = 2e-4;

  /**
   * @param records body item #100, lengths through the setting
   * @param volumeM3 of the material
   * @param lateralM2 outside without open ends; NaN where it is not compared
   */
  record Case(
      String name,
      long seed,
      RandomSetting setting,
      String records,
      double volumeM3,
      double lateralM2) {
    @Override
    public String toString() {
      return name + ", seed " + seed;
    }
  }

  private static BodyFigures figures(IfcFile file, GeometryUnits units) {
    Placements placements = new Placements(file, units);
    return new BodyMeasurer(file, units, placements)
        .figures(TinyModel.product(file), ShapeHints.NONE);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("org.lagwright.ifc.geometry.BodyCases#all")
  void bodyHasTheVolumeAndOuterSurfaceOfItsClosedForm(Case body) {
    BodyFigures figures =
        figures(body.setting.around("IFC4X3_ADD2", body.records), body.setting.units());
    assertThat(figures.problems()).isEmpty();
    assertThat(Objects.requireNonNull(figures.volumeM3()))
        .isCloseTo(body.volumeM3, Percentage.withPercentage(100 * STEP_SHARE));
    if (Double.isNaN(body.lateralM2)) {
      return;
    }
    assertThat(Objects.requireNonNull(figures.lateralAreaM2()))
        .isCloseTo(body.lateralM2, Percentage.withPercentage(100 * STEP_SHARE));
  }

  @Test
  void boxOfASlantedPipeReachesAsFarAsItsEnds() {
    IfcFile file =
        TinyModel.body(
            "#2=IFCLOCALPLACEMENT($,#90);\n#90=IFCAXIS2PLACEMENT3D(#91,#92,#11);\n"
                + "#91=IFCCARTESIANPOINT((1000.,2000.,3000.));\n#92=IFCDIRECTION((3.,0.,4.));\n",
            "#100",
            """
            #100=IFCEXTRUDEDAREASOLID(#101,#14,#13,500.);
            #101=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
            """);
    Box box = Objects.requireNonNull(figures(file, TinyModel.MM_RAD).box());
    // axis (0.6, 0, 0.8): the rim reaches r sqrt(1 - n^2) beyond the centre of each end
    assertThat(box.low().x()).isCloseTo(1 - 0.05 * 0.8, within(5e-6));
    assertThat(box.high().x()).isCloseTo(1 + 0.3 + 0.05 * 0.8, within(5e-6));
    assertThat(box.low().y()).isCloseTo(2 - 0.05, within(5e-6));
    assertThat(box.high().z()).isCloseTo(3 + 0.4 + 0.05 * 0.6, within(5e-6));
  }

  @Test
  void openShellHasASurfaceButNoVolume() {
    MeshText text = new MeshText();
    int[] from = text.ring(new double[3], new double[] {1, 0, 0}, new double[] {0, 1, 0}, 0.05, 24);
    int[] to =
        text.ring(new double[] {0, 0, 1}, new double[] {1, 0, 0}, new double[] {0, 1, 0}, 0.05, 24);
    text.wall(from, to);
    IfcFile file = TinyModel.body(TinyModel.AT_ORIGIN, "#100", text.surface(100));
    BodyFigures figures = figures(file, TinyModel.METRES);
    assertThat(figures.volumeM3()).isNull();
    double side = 2 * 0.05 * Math.sin(Math.PI / 24);
    assertThat(Objects.requireNonNull(figures.lateralAreaM2())).isCloseTo(24 * side, within(1e-6));
    assertThat(figures.problems()).isEqualTo(List.of("body is open, no volume"));
  }
}
