package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;
import static org.lagwright.ifc.extract.measure.PiecesInLineTest.faces;
import static org.lagwright.ifc.extract.measure.PiecesInLineTest.lengthM;
import static org.lagwright.ifc.extract.measure.ShapeChangingBoxTest.extrusion;
import static org.lagwright.ifc.extract.measure.ShapeChangingBoxTest.itemOf;
import static org.lagwright.ifc.extract.measure.ShapeChangingBoxTest.profile;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** Items in line from x = 0 on, of which one end meets a line and the other nothing. */
class MetAtOneEndTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);

  /** Its motor lies across, is longer, and reaches as far at one side as at the other. */
  @Test
  void pumpOfWhichOneFaceIsMetIsAsLongAsFromFaceToFace() {
    Network network = itemOf("IFCPUMP", "#2010,#2020");
    extrusion(network, 2010, 0, 0, profile("CIRCLE", "50."), 300);
    upright(network, 2020, at(150, 0, -200), profile("CIRCLE", "75."), 400);
    MepElement pump = network.pipe(1, at(0, 0, 0), WEST, 1000, 60.3).element(2);

    assertThat(pump.ends()).containsOnly(new Section.Round(0.0603));
    assertThat(lengthM(pump)).isCloseTo(0.3, within(1e-6));
  }

  /** Its motor counts as an end where the file has no ports, so that its middle is another one. */
  @Test
  void pumpThatAnotherFileHasWithPortsIsTheSameOne() {
    Network drawn = itemOf("IFCPUMP", "#2010,#2020");
    extrusion(drawn, 2010, 0, 0, profile("CIRCLE", "50."), 300);
    upright(drawn, 2020, at(150, 0, 0), profile("CIRCLE", "30."), 400);
    Network joined = new Network().record(drawn.text()).pipe(1, at(0, 0, 0), WEST, 1000, 60.3);
    joined.pipe(3, at(300, 0, 0), EAST, 1000, 60.3);
    drawn.port(2, 1, at(0, 0, 0), WEST).port(2, 2, at(300, 0, 0), EAST);
    List<MepModel> models = InlineModel.join(joined.text(), drawn.text());

    assertThat(InlineModel.element(models.get(1), 2000).repeats()).isNotNull();
    assertThat(InlineModel.codes(models.get(1))).doesNotContain("SAME_ID_ELSEWHERE");
  }

  /** One end is drawn as wide as the pipe at it, so the other one is that of its own. */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void pumpWithEndsOfTwoPipesKeepsBoth(boolean atLargerEnd) {
    Network network = itemOf("IFCPUMP", "#2010,#2020,#2030");
    extrusion(network, 2010, 0, 0, profile("CIRCLE", "30.15"), 60);
    extrusion(network, 2020, 60, 0, profile("RECTANGLE", "140.,140."), 100);
    extrusion(network, 2030, 160, 0, profile("CIRCLE", "21.2"), 60);
    MepElement pump =
        (atLargerEnd
                ? network.pipe(1, at(0, 0, 0), WEST, 1000, 60.3)
                : network.pipe(1, at(220, 0, 0), EAST, 1000, 42.4))
            .element(2);

    assertThat(pump.ends())
        .containsExactlyInAnyOrder(new Section.Round(0.0603), new Section.Round(0.0424));
    assertThat(value(pump.section())).isEqualTo(new Section.Round(0.0603));
  }

  /** Its other end may be the larger one; a bend has one size. */
  @ParameterizedTest
  @CsvSource({"Reducer,true", "Tee,true", "Elbow 90,false"})
  void undrawnFittingMayBeLargerThanTheOnlyPipeThatIsMet(String name, boolean told) {
    Network network = new Network().fitting(2, "IFCPIPEFITTING", name, "$");
    network.pipe(1, at(0, 0, 0), WEST, 1000, 60.3).unplacedPort(1, 1).unplacedPort(2, 1);
    MepModel model = network.connect(1, 1, 2, 1).read();

    assertThat(value(InlineModel.element(model, 2000).section()))
        .isEqualTo(new Section.Round(0.0603));
    assertThat(InlineModel.codes(model).contains("GEOMETRY_ONLY_PARTLY_MEASURED")).isEqualTo(told);
  }

  /** A box whose longest edge lies across the duct that it meets at its only port. */
  private static Network connector() {
    Network network = itemOf("IFCDUCTFITTING", "#2020");
    faces(network, 2020, at(0, -150, -100), at(160, 150, 100));
    return network
        .box(1, "IFCDUCTSEGMENT", at(0, 0, 0), WEST, 1000, 200, 300)
        .port(1, 1, at(0, 0, 0), EAST)
        .connect(1, 1, 2, 1);
  }

  @Test
  void lengthOfABoxThatItsDuctDoesNotGoIntoIsNotUsed() {
    MepElement connector = connector().unplacedPort(2, 1).element(2);

    assertThat(value(connector.section())).isEqualTo(new Section.Rectangular(0.3, 0.2));
    assertThat(connector.lengthM()).isNull();
  }

  @Test
  void boxRunsFromItsOnlyPort() {
    MepElement connector = connector().port(2, 1, at(0, 0, 0), WEST).element(2);

    assertThat(value(connector.section())).isEqualTo(new Section.Rectangular(0.3, 0.2));
    assertThat(value(connector.lengthM())).isCloseTo(0.16, within(1e-9));
  }

  /** A body upwards from a place. */
  private static void upright(
      Network network, int id, double[] fromMm, String profile, double lengthMm) {
    network
        .record(
            "#%d=IFCEXTRUDEDAREASOLID(#%d,#%d,#2007,%s);".formatted(id, id + 1, id + 2, lengthMm))
        .record("#%d=%s;".formatted(id + 1, profile))
        .record("#%d=IFCAXIS2PLACEMENT3D(#%d,#2007,#2006);".formatted(id + 2, id + 3))
        .record(
            "#%d=IFCCARTESIANPOINT((%s,%s,%s));"
                .formatted(id + 3, fromMm[0], fromMm[1], fromMm[2]));
  }
}
