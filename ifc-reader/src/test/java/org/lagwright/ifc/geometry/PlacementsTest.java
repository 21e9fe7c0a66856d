package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.schema.IfcFile;

class PlacementsTest {

  private static @Nullable Frame broken(String records) {
    IfcFile file = TinyModel.withCommon(records);
    return new Placements(file, TinyModel.MM_RAD).of(TinyModel.product(file));
  }

  private static Frame frame(String records) {
    Frame frame = broken(records);
    assertThat(frame).isNotNull();
    return Objects.requireNonNull(frame);
  }

  @Test
  void chainIsComposedFromTheOutsideIn() {
    Frame frame =
        frame(
            """
            #2=IFCLOCALPLACEMENT(#20,#21);
            #20=IFCLOCALPLACEMENT($,#22);
            #21=IFCAXIS2PLACEMENT3D(#23,$,$);
            #22=IFCAXIS2PLACEMENT3D(#24,#13,#12);
            #23=IFCCARTESIANPOINT((1000.,0.,0.));
            #24=IFCCARTESIANPOINT((0.,0.,3000.));
            """);
    // the outer frame turns x to y, so one metre along the inner x is one along the world's y
    near(frame.origin(), new Point(0, 1, 3));
    near(frame.point(0, 1, 0), new Point(-1, 1, 3));
    near(frame.direction(2, 0, 0), new Point(0, 1, 0));
  }

  @Test
  void axisWinsOverASlantedReferenceDirection() {
    Frame frame =
        frame(
            """
            #2=IFCLOCALPLACEMENT($,#20);
            #20=IFCAXIS2PLACEMENT3D(#10,#13,#21);
            #21=IFCDIRECTION((1.,0.,5.));
            """);
    near(frame.direction(1, 0, 0), new Point(1, 0, 0));
    near(frame.direction(0, 1, 0), new Point(0, 1, 0));
  }

  @Test
  void sharedParentIsRememberedAndServesTheSecondProduct() {
    IfcFile file =
        TinyModel.withCommon(
            """
            #2=IFCLOCALPLACEMENT(#20,#14);
            #5=IFCLOCALPLACEMENT(#20,#14);
            #6=IFCDISTRIBUTIONPORT('0123456789012345678902',$,$,$,$,#5,$,$,$,$);
            #20=IFCLOCALPLACEMENT($,#22);
            #22=IFCAXIS2PLACEMENT3D(#24,$,$);
            #24=IFCCARTESIANPOINT((0.,2000.,0.));
            """);
    Placements placements = new Placements(file, TinyModel.MM_RAD);
    Frame first = placements.of(TinyModel.product(file));
    Frame port = placements.of(file.all("IfcPort").get(0));
    assertThat(port).isEqualTo(first);
    near(Objects.requireNonNull(port).origin(), new Point(0, 2, 0));
  }

  @Test
  void cycleGivesNoFrame() {
    assertThat(broken("#2=IFCLOCALPLACEMENT(#20,#14);\n#20=IFCLOCALPLACEMENT(#2,#14);\n")).isNull();
  }

  @Test
  void missingParentMissingPointAndMissingPlacementGiveNoFrame() {
    assertThat(broken("#2=IFCLOCALPLACEMENT(#999,#14);\n")).isNull();
    assertThat(broken("#2=IFCLOCALPLACEMENT($,#20);\n#20=IFCAXIS2PLACEMENT3D(#999,$,$);\n"))
        .isNull();
    assertThat(broken("")).isNull();
  }

  @Test
  void chainDeeperThanTheLimitGivesNoFrameButOneWithinItDoes() {
    assertThat(broken(chain(201))).isNull();
    near(frame(chain(199)).origin(), new Point(0, 0, 0.199));
  }

  /** So many placements, each a millimetre above its parent. */
  private static String chain(int length) {
    StringBuilder records =
        new StringBuilder(
            "#98=IFCCARTESIANPOINT((0.,0.,1.));\n#99=IFCAXIS2PLACEMENT3D(#98,$,$);\n");
    for (int i = 0; i < length; i++) {
      String id = i == 0 ? "#2" : "#" + (100 + i);
      String parent = i == length - 1 ? "$" : "#" + (101 + i);
      records.append(id).append("=IFCLOCALPLACEMENT(").append(parent).append(",#99);\n");
    }
    return records.toString();
  }

  private static void near(Point found, Point expected) {
    assertThat(found.distanceM(expected)).isCloseTo(0, within(1e-12));
  }
}
