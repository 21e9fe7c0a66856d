package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.geometry.MeshText;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** Flexible pieces drawn as faces: a bend of 60 degrees to the left and one to the right. */
class WoundPieceTest {

  private static final double RADIUS_MM = 50;
  private static final double ARC_MM = 300;
  private static final double TURN = Math.PI / 3;
  private static final double LENGTH_M = 2 * ARC_MM * TURN / 1000;

  private static final double END_X = 2 * ARC_MM * Math.sin(TURN);
  private static final double END_Y = 2 * ARC_MM * (1 - Math.cos(TURN));

  /** Ring on the way; the second bend is the first one turned about its end. */
  private static int[] ring(MeshText mesh, int step, int steps) {
    boolean second = step > steps;
    double turned = TURN * (second ? 2 * steps - step : step) / steps;
    double x = ARC_MM * Math.sin(turned);
    double y = ARC_MM * (1 - Math.cos(turned));
    double[] centre = second ? at(END_X - x, END_Y - y, 0) : at(x, y, 0);
    double[] across = at(-Math.sin(turned), Math.cos(turned), 0);
    return mesh.ring(centre, across, at(0, 0, 1), RADIUS_MM, 24);
  }

  /**
   * @param steps of each bend
   */
  private static MeshText wound(boolean isOpen, int steps) {
    MeshText mesh = new MeshText();
    int[] last = ring(mesh, 0, steps);
    if (!isOpen) {
      mesh.cap(last);
    }
    for (int step = 1; step <= 2 * steps; step++) {
      int[] next = ring(mesh, step, steps);
      mesh.wall(last, next);
      last = next;
    }
    return isOpen ? mesh : mesh.cap(last);
  }

  private static Network segment(String name, MeshText mesh) {
    return new Network()
        .record("#2000=IFCDUCTSEGMENT('2',$,'%s',$,$,#2010,#2001,$,$);".formatted(name))
        .record(InlineModel.placed(2010, 0, 0, 0))
        .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
        .record("#2002=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#2100));")
        .record(mesh.triangulated(2100));
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void pieceOfTwoBendsIsAsLongAsItsMiddleLine(boolean hasPorts) {
    Network network = segment("Flexrohr", wound(false, 12));
    if (hasPorts) {
      network.port(2, 0, at(0, 0, 0), at(-1, 0, 0)).port(2, 1, at(END_X, END_Y, 0), at(1, 0, 0));
    }
    MepModel model = network.read();
    MepElement piece = InlineModel.element(model, 2000);

    assertThat(piece.form()).isEqualTo(Form.FLEXIBLE);
    assertThat(value(piece.section())).isEqualTo(new Section.Round(2 * RADIUS_MM / 1000));
    assertThat(value(piece.lengthM())).isCloseTo(LENGTH_M, within(0.01 * LENGTH_M));
    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
    assertThat(InlineModel.codes(model)).doesNotContain("LENGTH_CONFLICT");
  }

  /** Steps of 20, 15 and 7.5 degrees lack 2, 1.1 and 0.3 % of the volume. */
  @ParameterizedTest
  @ValueSource(ints = {3, 4, 8})
  void pieceOfCoarseBendsIsAsLongAsThoseThatTheyStandFor(int steps) {
    MepElement piece = segment("Flexrohr", wound(false, steps)).element(2);

    assertThat(value(piece.lengthM())).isCloseTo(LENGTH_M, within(0.001 * LENGTH_M));
  }

  /** Without a volume only the way across is known, and it is said to be no more. */
  @Test
  void openSkinHasNoVolume() {
    MepModel model = segment("Duct", wound(true, 12)).read();

    assertThat(value(InlineModel.element(model, 2000).lengthM()))
        .isCloseTo(Math.hypot(END_X, END_Y) / 1000, within(1e-3));
    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }
}
