package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;
import static org.lagwright.ifc.extract.measure.ShapeChangingBoxTest.extrusion;
import static org.lagwright.ifc.extract.measure.ShapeChangingBoxTest.itemOf;
import static org.lagwright.ifc.extract.measure.ShapeChangingBoxTest.profile;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** Items of a line that are drawn as pieces one behind the other, from x = 0 on. */
class PiecesInLineTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final Section ROUND = new Section.Round(0.25);
  private static final Section DUCT = new Section.Rectangular(0.4, 0.3);

  @Test
  void silencerAloneHasTheSizeAndLengthFromSpigotToSpigot() {
    MepElement silencer = silencer().element(2);

    assertThat(value(silencer.section())).isEqualTo(DUCT);
    assertThat(silencer.ends()).containsOnly(DUCT);
    assertThat(lengthM(silencer)).isCloseTo(1.2, within(1e-6));
  }

  @Test
  void silencerOfWhichOneSpigotIsMetHasItsWholeLength() {
    MepElement silencer =
        silencer().box(1, "IFCDUCTSEGMENT", at(0, 0, 0), WEST, 1000, 300, 400).element(2);

    assertThat(silencer.ends()).containsOnly(DUCT);
    assertThat(lengthM(silencer)).isCloseTo(1.2, within(1e-6));
  }

  /** The box and the motor on it lie on an axis too. */
  @Test
  void boxOfFacesWithMotorHasTheSizesOfBothLinesThatItMeets() {
    MepElement box =
        boxWithMotor()
            .straight(1, "IFCDUCTSEGMENT", at(0, 0, 0), WEST, 1000, 250)
            .box(3, "IFCDUCTSEGMENT", at(900, 0, 0), EAST, 1000, 300, 400)
            .element(2);

    assertThat(box.ends()).containsExactlyInAnyOrder(ROUND, DUCT);
    assertThat(value(box.section())).isEqualTo(DUCT);
    assertThat(lengthM(box)).isCloseTo(0.9, within(1e-6));
  }

  @Test
  void boxOfFacesWithMotorHasTheSizeOfItsOtherEndWhereOneIsMet() {
    MepElement box =
        boxWithMotor().straight(1, "IFCDUCTSEGMENT", at(0, 0, 0), WEST, 1000, 250).element(2);

    assertThat(box.ends()).containsExactlyInAnyOrder(ROUND, DUCT);
  }

  /** Nothing tells that the motor is none of its ends. */
  @Test
  void boxOfFacesWithMotorAloneHasNoSize() {
    assertThat(boxWithMotor().element(2).section()).isNull();
  }

  /** It may be a cross as well, unless two ports say how many ends there are. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void unnamedFittingOfTwoSpigotsOnAWiderBoxSaysThatItMayHaveMoreEnds(boolean hasPorts) {
    Network network = spigots("IFCDUCTFITTING");
    if (hasPorts) {
      network.port(2, 0, at(0, 0, 0), WEST).port(2, 1, at(1200, 0, 0), EAST);
    }
    MepModel model = network.read();

    assertThat(InlineModel.element(model, 2000).form()).isEqualTo(Form.COUPLING);
    assertThat(InlineModel.element(model, 2000).ends()).containsOnly(DUCT);
    assertThat(InlineModel.codes(model).contains("GEOMETRY_ONLY_PARTLY_MEASURED"))
        .isNotEqualTo(hasPorts);
  }

  /** Three boxes of 800 x 300 along x, and one of 250 x 200 through their middle. */
  @Test
  void crossOfBoxesIsNoCouplingThroughItsBranches() {
    Network network = itemOf("IFCDUCTFITTING", "#2010,#2020,#2030,#2040,#2050");
    faces(network, 2010, at(0, -400, -150), at(100, 400, 150));
    faces(network, 2020, at(100, -400, -150), at(350, 400, 150));
    faces(network, 2030, at(350, -400, -150), at(450, 400, 150));
    faces(network, 2040, at(100, 0, -100), at(350, 500, 100));
    faces(network, 2050, at(100, -500, -100), at(350, 0, 100));
    MepModel model = network.read();

    assertThat(InlineModel.element(model, 2000).form()).isNotEqualTo(Form.COUPLING);
    assertThat(InlineModel.codes(model)).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  private static Network silencer() {
    return spigots("IFCDUCTSILENCER");
  }

  private static Network spigots(String keyword) {
    Network network = itemOf(keyword, "#2020,#2030,#2040");
    extrusion(network, 2020, 0, 0, profile("RECTANGLE", "300.,400."), 50);
    extrusion(network, 2030, 50, 0, profile("RECTANGLE", "300.,600."), 1100);
    return extrusion(network, 2040, 1150, 0, profile("RECTANGLE", "300.,400."), 50);
  }

  private static Network boxWithMotor() {
    Network network = itemOf("IFCAIRTERMINALBOX", "#2010,#2020,#2030");
    extrusion(network, 2010, 0, 0, profile("CIRCLE", "125."), 120);
    faces(network, 2020, at(120, -200, -150), at(900, 200, 150));
    return faces(network, 2030, at(200, 200, -75), at(400, 290, 75));
  }

  /** A box between two corners. */
  static Network faces(Network network, int id, double[] from, double[] to) {
    StringBuilder corners = new StringBuilder();
    for (int corner = 0; corner < 8; corner++) {
      corners
          .append(corner == 0 ? "" : ",")
          .append("(%s,".formatted((corner & 1) == 0 ? from[0] : to[0]))
          .append("%s,".formatted((corner & 2) == 0 ? from[1] : to[1]))
          .append("%s)".formatted((corner & 4) == 0 ? from[2] : to[2]));
    }
    String sides =
        "(1,3,2),(2,3,4),(5,6,7),(6,8,7),(1,2,5),(2,6,5),(3,7,4),(4,7,8),(1,5,3),(3,5,7),(2,4,6),"
            + "(4,8,6)";
    return network
        .record("#%d=IFCTRIANGULATEDFACESET(#%d,$,.T.,(%s),$);".formatted(id, id + 1, sides))
        .record("#%d=IFCCARTESIANPOINTLIST3D((%s));".formatted(id + 1, corners));
  }

  static double lengthM(MepElement element) {
    return Objects.requireNonNull(element.lengthM()).value();
  }
}
