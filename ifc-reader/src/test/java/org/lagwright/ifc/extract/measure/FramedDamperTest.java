package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/**
 * A fire damper 400 mm long in the middle of a wider frame, which goes into the wall, with its
 * motor beside it: a union of three blocks. The frame is shorter than any side of the duct.
 */
class FramedDamperTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);

  @ParameterizedTest
  @CsvSource({"300,200,true", "300,200,false", "400,300,true", "250,400,false", "600,600,true"})
  void casingGoesThroughTheFrameAndIsItsSize(double widthMm, double heightMm, boolean both) {
    Network network = damper(widthMm, heightMm);
    network.box(1, "IFCDUCTSEGMENT", at(0, 0, 0), WEST, 1000, heightMm, widthMm);
    if (both) {
      network.box(3, "IFCDUCTSEGMENT", at(400, 0, 0), EAST, 1000, heightMm, widthMm);
    }
    MepElement damper = network.element(2);

    Section duct = new Section.Rectangular(widthMm / 1000, heightMm / 1000);
    assertThat(Tolerances.sameSection(value(damper.section()), duct)).isTrue();
  }

  /** Blocks may run along any of their edges, and the motor is one too. */
  @Test
  void aloneItHasNoSizeRatherThanThatOfTheFrame() {
    MepModel model = damper(300, 200).read();

    assertThat(InlineModel.element(model, 2000).section()).isNull();
    assertThat(InlineModel.codes(model)).containsOnlyOnce("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  /** Along another of its edges such a block has no ends. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-297, 1e-9, 1e300})
  void motorOfNoPossibleHeightChangesNoSizeInSilence(double motorMm) {
    MepModel model = damper(300, 200, motorMm).read();
    Measured<Section> section = InlineModel.element(model, 2000).section();

    boolean told = InlineModel.codes(model).contains("GEOMETRY_ONLY_PARTLY_MEASURED");
    Section casing = new Section.Rectangular(0.3, 0.2);
    assertThat(told || (section != null && section.value().equals(casing))).isTrue();
  }

  private static Network damper(double widthMm, double heightMm) {
    return damper(widthMm, heightMm, 120);
  }

  private static Network damper(double widthMm, double heightMm, double motorMm) {
    Network network =
        new Network()
            .record("#2000=IFCDAMPER('2',$,'Damper',$,$,#2003,#2001,$,.FIREDAMPER.);")
            .record(InlineModel.placed(2003, 0, 0, 0))
            .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
            .record("#2002=IFCSHAPEREPRESENTATION($,'Body','CSG',(#2006));")
            .record("#2006=IFCCSGSOLID(#2007);")
            .record("#2007=IFCBOOLEANRESULT(.UNION.,#2008,#2030);")
            .record("#2008=IFCBOOLEANRESULT(.UNION.,#2010,#2020);");
    block(network, 2010, at(0, -widthMm / 2, -heightMm / 2), 400, widthMm, heightMm);
    double frameMm = widthMm + 100;
    block(network, 2020, at(120, -frameMm / 2, -heightMm / 2 - 50), 160, frameMm, heightMm + 100);
    return block(network, 2030, at(315, widthMm / 2, -60), 50, 80, motorMm);
  }

  private static Network block(
      Network network, int id, double[] cornerMm, double xMm, double yMm, double zMm) {
    return network
        .record("#%d=IFCBLOCK(#%d,%s,%s,%s);".formatted(id, id + 1, xMm, yMm, zMm))
        .record("#%d=IFCAXIS2PLACEMENT3D(#%d,$,$);".formatted(id + 1, id + 2))
        .record(
            "#%d=IFCCARTESIANPOINT((%s,%s,%s));"
                .formatted(id + 2, cornerMm[0], cornerMm[1], cornerMm[2]));
  }
}
