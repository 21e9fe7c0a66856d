package org.lagwright.ifc.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.geometry.TinyModel;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Bodies of several items in buildings that stand at an angle to the axes of the world. */
class LoftTest {

  private static final Vec DOWN = Vec.Z.times(-1);
  private static final Section SECTION = new Section.Rectangular(0.4, 0.2);

  private static Vec turned(double degrees) {
    double rad = Math.toRadians(degrees);
    return new Vec(Math.cos(rad), Math.sin(rad), 0);
  }

  private static ShapeEnd end(double zM, Vec out, Section section, Vec width) {
    return new ShapeEnd(new Point(0, 0, zM), out.point(), section, width.point());
  }

  private static Mesh loft(ShapeEnd from, ShapeEnd to) {
    Mesh.Builder builder = new Mesh.Builder();
    Loft.add(from, to, builder);
    return Objects.requireNonNull(builder.build());
  }

  /** Two faces of 0.4 x 0.2 m, two of 0.4 x 1 m and two of 0.2 x 1 m: 1.36 m2. */
  private static void assertIsTheBox(Mesh mesh, Vec width) {
    Vec height = Vec.Z.cross(width);
    for (Vec corner : mesh.vertices()) {
      Vec atM = corner.plus(mesh.origin());
      assertThat(Math.abs(atM.dot(width))).isCloseTo(0.2, within(1e-9));
      assertThat(Math.abs(atM.dot(height))).isCloseTo(0.1, within(1e-9));
    }
    MeshTopology topology = new MeshTopology(mesh);
    double areaM2 = 0;
    for (int face = 0; face < mesh.faces().size(); face++) {
      areaM2 += topology.area(face);
    }
    assertThat(areaM2).isCloseTo(1.36, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 30, 45, 80, 90})
  void cornersOfAVerticalDuctLieWhereItWasDrawn(double degrees) {
    Vec width = turned(degrees);

    assertIsTheBox(loft(end(0, DOWN, SECTION, width), end(1, Vec.Z, SECTION, width)), width);
  }

  @Test
  void sidesAreFlatWhereTheEndsCallTheOtherSideWidth() {
    Vec width = turned(30);
    ShapeEnd top = end(1, Vec.Z, new Section.Rectangular(0.2, 0.4), turned(-60));

    assertIsTheBox(loft(end(0, DOWN, SECTION, width), top), width);
  }

  /** A frame of 457 x 406 mm, 76 mm deep, and a plate in it, as a filter is drawn. */
  @ParameterizedTest
  @ValueSource(doubles = {10, 30, 60})
  void frameWithAPlateIsReadAlikeHoweverItsBuildingStands(double degrees) {
    Shape straight = frame(0);
    Shape turned = frame(degrees);

    assertThat(turned.form()).isEqualTo(straight.form());
    assertThat(Ends.same(section(turned).value(), section(straight).value())).isTrue();
    assertThat(lengthM(turned).value()).isCloseTo(lengthM(straight).value(), within(1e-9));
    assertThat(turned.problems()).isEqualTo(straight.problems());
  }

  private static Shape frame(double degrees) {
    Vec x = turned(degrees);
    String placement =
        """
        #2=IFCLOCALPLACEMENT($,#5);
        #5=IFCAXIS2PLACEMENT3D(#10,#13,#6);
        #6=IFCDIRECTION((%s,%s,0.));
        """
            .formatted(x.x(), x.y());
    String records =
        """
        #100=IFCBLOCK(#101,457.2,76.2,406.4);
        #101=IFCAXIS2PLACEMENT3D(#10,$,$);
        #110=IFCBLOCK(#111,381.,76.2,330.2);
        #111=IFCAXIS2PLACEMENT3D(#112,$,$);
        #112=IFCCARTESIANPOINT((38.1,0.,38.1));
        #120=IFCBLOCK(#121,381.,19.05,330.2);
        #121=IFCAXIS2PLACEMENT3D(#122,$,$);
        #122=IFCCARTESIANPOINT((38.1,9.525,38.1));
        #130=IFCBOOLEANRESULT(.DIFFERENCE.,#100,#110);
        #131=IFCBOOLEANRESULT(.UNION.,#130,#120);
        #132=IFCCSGSOLID(#131);
        """;
    return TinyModel.measure(
        TinyModel.body(placement, "#132", records), TinyModel.MM_RAD, ShapeHints.NONE);
  }
}
