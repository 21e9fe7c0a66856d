package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/**
 * Boxes in a duct line with a round inlet 120 mm long at x = 0 and an outlet with sides at x = 900:
 * each end has its own size, whichever of them is met.
 */
class ShapeChangingBoxTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final Section INLET = new Section.Round(0.25);
  private static final Section OUTLET = new Section.Rectangular(0.4, 0.3);

  @ParameterizedTest
  @CsvSource({
    "IFCAIRTERMINALBOX,false,false",
    "IFCAIRTERMINALBOX,true,false",
    "IFCAIRTERMINALBOX,false,true",
    "IFCAIRTERMINALBOX,true,true",
    "IFCDUCTSILENCER,true,false",
    "IFCDUCTSILENCER,false,true",
    "IFCFILTER,true,false",
    "IFCDAMPER,true,false",
  })
  void eachEndHasItsOwnSize(String keyword, boolean inlet, boolean outlet) {
    MepElement box = met(item(keyword, 780), inlet, outlet).element(2);

    assertThat(box.ends()).containsExactlyInAnyOrder(INLET, OUTLET);
    assertThat(value(box.section())).isEqualTo(OUTLET);
  }

  /** The port at the outlet leads nowhere. */
  @Test
  void portThatLeadsNowhereDoesNotGiveItTheSizeOfTheInlet() {
    MepElement box =
        met(item("IFCAIRTERMINALBOX", 780), true, false)
            .port(1, 1, at(0, 0, 0), EAST)
            .port(2, 1, at(0, 0, 0), WEST)
            .port(2, 2, at(900, 0, 0), EAST)
            .connect(1, 1, 2, 1)
            .element(2);

    assertThat(box.ends()).containsExactlyInAnyOrder(INLET, OUTLET);
    assertThat(value(box.section())).isEqualTo(OUTLET);
  }

  /** Its motor is in line with the only pipe that it meets. */
  @Test
  void motorAcrossFromThePipeIsNoEndOfAValve() {
    MepElement valve = item("IFCVALVE", 780).pipe(1, at(0, 0, 0), WEST, 1000, 250).element(2);

    assertThat(valve.ends()).containsOnly(INLET);
    assertThat(value(valve.section())).isEqualTo(INLET);
  }

  /** A case wider than both its ends is none of them. */
  @ParameterizedTest
  @CsvSource({"false,false", "true,false", "false,true", "true,true"})
  void spigotBehindAWiderCaseIsAnEnd(boolean inlet, boolean outlet) {
    Network network = item("IFCDUCTSILENCER", 720, 500, 400);
    MepElement silencer = met(network, inlet, outlet).element(2);

    assertThat(silencer.ends()).containsExactlyInAnyOrder(INLET, OUTLET);
    assertThat(value(silencer.section())).isEqualTo(OUTLET);
  }

  /** Two feet below a case of which the ends cannot be told. */
  @Test
  void caseThatHadToBeTheSizeIsTold() {
    Network network = item("IFCDUCTSILENCER", "#2010,#2020,#2030,#2040");
    extrusion(network, 2020, 120, 0, profile("RECTANGLE", "400.,500."), 780);
    extrusion(network, 2030, 200, -230, profile("RECTANGLE", "60.,100."), 100);
    extrusion(network, 2040, 700, -230, profile("RECTANGLE", "60.,100."), 100);
    MepModel model = network.read();

    assertThat(InlineModel.codes(model)).containsOnlyOnce("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  private static Network met(Network network, boolean inlet, boolean outlet) {
    if (inlet) {
      network.straight(1, "IFCDUCTSEGMENT", at(0, 0, 0), WEST, 1000, 250);
    }
    if (outlet) {
      network.box(3, "IFCDUCTSEGMENT", at(900, 0, 0), EAST, 1000, 300, 400);
    }
    return network;
  }

  /** Item 2, its case as wide as the outlet. */
  private static Network item(String keyword, double lengthMm) {
    Network network = item(keyword, "#2010,#2020");
    return extrusion(network, 2020, 120, 0, profile("RECTANGLE", "300.,400."), lengthMm);
  }

  /** Item 2, its case of other sides than the outlet, which is as long as it lacks. */
  private static Network item(String keyword, double lengthMm, double widthMm, double heightMm) {
    Network network = item(keyword, "#2010,#2020,#2030");
    String sides = heightMm + "," + widthMm;
    extrusion(network, 2020, 120, 0, profile("RECTANGLE", sides), lengthMm);
    double fromMm = 120 + lengthMm;
    return extrusion(network, 2030, fromMm, 0, profile("RECTANGLE", "300.,400."), 900 - fromMm);
  }

  private static Network item(String keyword, String items) {
    return extrusion(itemOf(keyword, items), 2010, 0, 0, profile("CIRCLE", "125."), 120);
  }

  /** Item 2 at the origin, its body still to be written. */
  static Network itemOf(String keyword, String items) {
    return new Network()
        .record("#2000=%s('2',$,'X 1',$,$,#2003,#2001,$,$);".formatted(keyword))
        .record(InlineModel.placed(2003, 0, 0, 0))
        .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
        .record("#2002=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(%s));".formatted(items))
        .record("#2006=IFCDIRECTION((1.,0.,0.));")
        .record("#2007=IFCDIRECTION((0.,0.,1.));");
  }

  static String profile(String kind, String figures) {
    return "IFC%sPROFILEDEF(.AREA.,$,$,%s)".formatted(kind, figures);
  }

  /** A body along x whose x of the profile is upright. */
  static Network extrusion(
      Network network, int id, double xMm, double zMm, String profile, double lengthMm) {
    return network
        .record(
            "#%d=IFCEXTRUDEDAREASOLID(#%d,#%d,#2007,%s);".formatted(id, id + 1, id + 2, lengthMm))
        .record("#%d=%s;".formatted(id + 1, profile))
        .record("#%d=IFCAXIS2PLACEMENT3D(#%d,#2006,#2007);".formatted(id + 2, id + 3))
        .record("#%d=IFCCARTESIANPOINT((%s,0.,%s));".formatted(id + 3, xMm, zMm));
  }
}
