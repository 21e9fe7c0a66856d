package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.ReadOptions;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Fittings and valves that a later export moved by some millimetres, under other GlobalIds. */
class OverlaidFittingsTest {

  /** Along x, and across; a tee of 160 mm. */
  @ParameterizedTest(name = "{0} mm along and {1} mm across: {2}")
  @CsvSource({"5,0,true", "0,5,true", "11,11,false", "0,15,true", "16,0,false", "160,0,false"})
  void teeThatLiesInAnotherOneIsAFindingAndBothCount(double xMm, double yMm, boolean told) {
    Network one = tee(new Network(), 1, 0, 0);
    Network other = tee(new Network(), 2, xMm, yMm);

    assertTold(one.read(0), other.read(1), told);
    assertTold(tee(one, 2, xMm, yMm).read(0), told);
  }

  /** 20 mm thick: they stand behind each other, as two that are bolted together do. */
  @ParameterizedTest(name = "{0} mm along: {1}")
  @CsvSource({"4,true", "10,true", "12,false", "20,false", "23,false"})
  void flangesThatStandBehindEachOtherAreTwo(double xMm, boolean told) {
    Network one = flange(new Network(), 1, 0);
    Network other = flange(new Network(), 2, xMm);

    assertTold(one.read(0), other.read(1), told);
    assertTold(flange(one, 2, xMm).read(0), told);
  }

  @ParameterizedTest(name = "{0} mm wide: {1}")
  @CsvSource({"60.3,true", "48.3,false"})
  void valveOfAnotherSizeIsAnotherOne(double diameterMm, boolean told) {
    MepModel one = valve(1, 0, 60.3).read(0);

    assertTold(one, valve(2, 8, diameterMm).read(1), told);
  }

  /** Without a body, ports and length; the name tells the size, the placement where it is. */
  @ParameterizedTest(name = "{0} mm along, {1}: {2}")
  @CsvSource({"0,Bend DN50,true", "50,Bend DN50,false", "0,Bend DN 50 left,false"})
  void fittingsWithoutBodyAtOnePointUnderOneNameAreTold(double xMm, String name, boolean told) {
    MepModel one = InlineModel.read(0, undrawn(1, 0, "Bend DN50"));
    MepModel other = InlineModel.read(1, undrawn(2, xMm, name));

    assertTold(one, other, told);
    assertTold(InlineModel.read(0, undrawn(1, 0, "Bend DN50") + undrawn(2, xMm, name)), told);
  }

  private static String undrawn(int n, double xMm, String name) {
    return "#%d=IFCPIPEFITTING('%d',$,'%s',$,$,#%d,$,$,.BEND.);%n".formatted(n, n, name, 30 * n)
        + InlineModel.placed(30 * n, 1000 + xMm, 2000, 0);
  }

  private static void assertTold(MepModel one, MepModel other, boolean told) {
    List<MepModel> models = join(one, other);

    assertThat(models.get(1).elements()).extracting(MepElement::repeats).containsOnlyNulls();
    assertThat(InlineModel.codes(models.get(1)).contains("DRAWN_TWICE")).isEqualTo(told);
  }

  private static void assertTold(MepModel both, boolean told) {
    assertThat(InlineModel.codes(join(both).get(0)).contains("DRAWN_TWICE")).isEqualTo(told);
  }

  private static List<MepModel> join(MepModel... models) {
    return ModelJoiner.join(List.of(models), ReadOptions.DEFAULT.joinToleranceM());
  }

  private static Network tee(Network network, int n, double xMm, double yMm) {
    return network
        .fitting(n, "IFCPIPEFITTING", "Tee DN50", "JUNCTION")
        .port(n, 1, at(3000 + xMm, yMm, 0), at(-1, 0, 0))
        .port(n, 2, at(3160 + xMm, yMm, 0), at(1, 0, 0))
        .port(n, 3, at(3080 + xMm, 80 + yMm, 0), at(0, 1, 0));
  }

  private static Network flange(Network network, int n, double xMm) {
    return network.drum(n, "Flange", "CONNECTOR", at(xMm, 0, 0), at(1, 0, 0), 20, 165);
  }

  private static Network valve(int n, double xMm, double diameterMm) {
    return new Network()
        .body(n, "IFCVALVE", "Valve", ".ISOLATING.", at(xMm, 0, 0), at(1, 0, 0), 150, diameterMm);
  }
}
