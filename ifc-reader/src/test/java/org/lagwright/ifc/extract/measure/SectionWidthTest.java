package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.read;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Where the width of a rectangular duct points, upright ones above all. */
class SectionWidthTest {

  private static MepElement duct(String profile, String placement) {
    String text =
        "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
            + body(profile).replace("#15=IFCAXIS2PLACEMENT3D(#16,$,$);", placement);
    return element(read(text), 1);
  }

  @ParameterizedTest
  @CsvSource({"0", "30", "90", "135"})
  void widthOfARiserPointsWhereItsLongerSideDoes(double degrees) {
    double x = Math.cos(Math.toRadians(degrees));
    double y = Math.sin(Math.toRadians(degrees));
    MepElement duct =
        duct(
            "IFCRECTANGLEPROFILEDEF(.AREA.,$,$,200.,400.)",
            "#15=IFCAXIS2PLACEMENT3D(#16,#13,#17);\n#17=IFCDIRECTION((" + x + "," + y + ",0.));");
    Point width = Objects.requireNonNull(duct.width());

    assertThat(InlineModel.value(duct.section())).isEqualTo(new Section.Rectangular(0.4, 0.2));
    // along the profile's y axis, which lies a quarter turn on
    assertThat(Math.abs(-y * width.x() + x * width.y())).isCloseTo(1, within(1e-9));
    assertThat(width.z()).isCloseTo(0, within(1e-9));
  }

  @Test
  void widthOfALevelDuctLiesLevel() {
    MepElement duct =
        duct(
            "IFCRECTANGLEPROFILEDEF(.AREA.,$,$,200.,400.)",
            "#15=IFCAXIS2PLACEMENT3D(#16,#17,#13);\n#17=IFCDIRECTION((1.,0.,0.));");

    assertThat(InlineModel.value(duct.section())).isEqualTo(new Section.Rectangular(0.4, 0.2));
    assertThat(Math.abs(Objects.requireNonNull(duct.width()).y())).isCloseTo(1, within(1e-9));
  }

  @Test
  void roundDuctHasNone() {
    assertThat(
            duct("IFCCIRCLEPROFILEDEF(.AREA.,$,$,100.)", "#15=IFCAXIS2PLACEMENT3D(#16,$,$);")
                .width())
        .isNull();
  }
}
