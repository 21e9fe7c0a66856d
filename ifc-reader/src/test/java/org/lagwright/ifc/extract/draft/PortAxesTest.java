package org.lagwright.ifc.extract.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/** An elbow of 45 degrees from the origin, which lies to the west of it, to the north-east. */
class PortAxesTest {

  private static final double HALF = Math.sqrt(0.5);

  private static String port(int id, String flow, double x, double y, double axisX, double axisY) {
    return """
        #%1$d=IFCDISTRIBUTIONPORT('p%1$d',$,$,$,$,#%2$d,$,.%3$s.,.PIPE.,$);
        #%2$d=IFCLOCALPLACEMENT($,#%4$d);
        #%4$d=IFCAXIS2PLACEMENT3D(#%5$d,#%6$d,#60);
        #%5$d=IFCCARTESIANPOINT((%7$s,%8$s,0.));
        #%6$d=IFCDIRECTION((%9$s,%10$s,0.));
        """
        .formatted(id, id + 1, flow, id + 2, id + 3, id + 4, x, y, axisX, axisY);
  }

  /** The elbow with its ports, axes as many times 1 or -1 outward as given. */
  private static MepModel elbow(String flow, int first, String otherFlow, int second) {
    return InlineModel.read(
        """
        #1=IFCPIPEFITTING('g',$,'Elbow DN50 45°',$,$,$,$,$,.BEND.);
        #2=IFCRELNESTS('n',$,$,$,#1,(#20,#40));
        #60=IFCDIRECTION((0.,0.,1.));
        """
            + port(20, flow, 0, 0, -first, 0)
            + port(40, otherFlow, 50 * HALF, 50 - 50 * HALF, second * HALF, second * HALF));
  }

  @ParameterizedTest
  @CsvSource({
    "SINK,-1,SOURCE,1",
    "SINK,1,SOURCE,1",
    "SINK,-1,SOURCE,-1",
    "SINK,1,SINK,1",
    "SOURCEANDSINK,-1,SOURCEANDSINK,-1",
    "NOTDEFINED,1,NOTDEFINED,1",
  })
  void portsFaceOutwardsHoweverTheirAxesAreWritten(
      String flow, int first, String otherFlow, int second) {
    MepModel model = elbow(flow, first, otherFlow, second);
    MepElement elbow = element(model, 1);

    assertThat(elbow.ports())
        .extracting(Port::direction)
        .allSatisfy(out -> assertThat(out).isNotNull())
        .satisfies(
            both -> {
              assertThat(((Point) both.get(0)).x()).isCloseTo(-1, within(1e-9));
              assertThat(((Point) both.get(1)).y()).isCloseTo(HALF, within(1e-9));
            });
    assertThat(value(elbow.angleDeg())).isCloseTo(45, within(1e-6));
    assertThat(codes(model)).doesNotContain("ANGLE_CONFLICT");
  }

  /** By the schema the axis of a sink points in; where places contradict each other it holds. */
  @Test
  void axesThatDisagreeWithEachOtherAreReadByTheSchema() {
    MepElement elbow = element(elbow("SINK", 1, "SOURCE", -1), 1);

    assertThat(elbow.ports().get(0).direction()).isEqualTo(new Point(1, -0.0, -0.0));
  }
}
