package org.lagwright.ifc.extract.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.properties;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spaces whose bodies have holes, are cut, or are put together of others. */
class CutSpaceTest {

  /** A room of 6 m x 4 m x 3 m, item #43 with the profile #44, drawn as item {@code #%d}. */
  private static final String ROOM =
      """
      #40=IFCSPACE('40',$,'1',$,$,#14,#41,'Hall',$,$,$);
      #41=IFCPRODUCTDEFINITIONSHAPE($,$,(#42));
      #42=IFCSHAPEREPRESENTATION($,'Body','CSG',(#%d));
      #43=IFCEXTRUDEDAREASOLID(#44,$,#13,3000.);
      #45=IFCPOLYLINE((#50,#51,#52,#53,#50));
      #50=IFCCARTESIANPOINT((0.,0.));
      #51=IFCCARTESIANPOINT((6000.,0.));
      #52=IFCCARTESIANPOINT((6000.,4000.));
      #53=IFCCARTESIANPOINT((0.,4000.));
      """;

  private static final String FULL = "#44=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#45);\n";

  /** A column of 1 m x 1 m with its middle at (x, 2 m), and what it does to the room. */
  private static String combined(String operator, double columnXMm) {
    return FULL
        + """
        #60=IFCBOOLEANRESULT(.%s.,#43,#61);
        #61=IFCEXTRUDEDAREASOLID(#62,$,#13,3000.);
        #62=IFCRECTANGLEPROFILEDEF(.AREA.,$,#63,1000.,1000.);
        #63=IFCAXIS2PLACEMENT2D(#64,$);
        #64=IFCCARTESIANPOINT((%s,2000.));
        """
            .formatted(operator, columnXMm);
  }

  /** The space of a pipe that ends 1.25 m above and below its middle. */
  private static @Nullable String spaceAt(
      double xMm, double yMm, double zMm, int item, String body) {
    return first(
            body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
                + "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#30,#10,$,$);\n"
                + placed(30, xMm, yMm, zMm - 1250)
                + ROOM.formatted(item)
                + body)
        .place()
        .space();
  }

  @ParameterizedTest
  @CsvSource({"1000,2000,1 Hall", "3000,2000,", "3000,3500,1 Hall"})
  void holeInTheFootprintIsNoPartOfTheRoom(double xMm, double yMm, String space) {
    String ring =
        """
        #44=IFCARBITRARYPROFILEDEFWITHVOIDS(.AREA.,$,#45,(#46));
        #46=IFCPOLYLINE((#54,#55,#56,#57,#54));
        #54=IFCCARTESIANPOINT((2500.,1500.));
        #55=IFCCARTESIANPOINT((3500.,1500.));
        #56=IFCCARTESIANPOINT((3500.,2500.));
        #57=IFCCARTESIANPOINT((2500.,2500.));
        """;
    assertThat(spaceAt(xMm, yMm, 1500, 43, ring)).isEqualTo(space);
  }

  @ParameterizedTest
  @CsvSource({
    "DIFFERENCE,3000,3000,",
    "DIFFERENCE,3000,1000,1 Hall",
    "INTERSECTION,3000,3000,1 Hall",
    "INTERSECTION,3000,1000,",
    "UNION,6500,6800,1 Hall",
    "UNION,6500,1000,1 Hall",
    "UNION,6500,7100,"
  })
  void bodiesAddToTheRoomOrTakeFromIt(String operator, double columnXMm, double xMm, String space) {
    assertThat(spaceAt(xMm, 2000, 1500, 60, combined(operator, columnXMm))).isEqualTo(space);
  }

  /** A ceiling that rises from 1 m at x = 0 by half, over the front 2 m of the room only. */
  @ParameterizedTest
  @CsvSource({
    "1000,1000,1400,F,1 Hall",
    "1000,1000,1600,F,",
    "1000,3000,1600,F,1 Hall",
    "3000,1000,2400,F,1 Hall",
    "1000,1000,1600,T,1 Hall",
    "1000,1000,1400,T,"
  })
  void slopingCeilingCutsWhereItsPolygonReaches(
      double xMm, double yMm, double zMm, String agreement, String space) {
    String ceiling =
        FULL
            + """
            #60=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#43,#61);
            #61=IFCPOLYGONALBOUNDEDHALFSPACE(#62,.%s.,#15,#66);
            #62=IFCPLANE(#63);
            #63=IFCAXIS2PLACEMENT3D(#64,#65,#67);
            #64=IFCCARTESIANPOINT((0.,0.,1000.));
            #65=IFCDIRECTION((-1.,0.,2.));
            #67=IFCDIRECTION((0.,1.,0.));
            #66=IFCPOLYLINE((#70,#71,#72,#73,#70));
            #70=IFCCARTESIANPOINT((-100.,-100.));
            #71=IFCCARTESIANPOINT((7000.,-100.));
            #72=IFCCARTESIANPOINT((7000.,2000.));
            #73=IFCCARTESIANPOINT((-100.,2000.));
            """
                .formatted(agreement);
    assertThat(spaceAt(xMm, yMm, zMm, 60, ceiling)).isEqualTo(space);
  }

  /** A result that cuts itself would never end. */
  @Test
  void combinationOfItselfEnds() {
    String circle = FULL + "#60=IFCBOOLEANRESULT(.UNION.,#60,#60);\n";

    assertThat(spaceAt(1000, 2000, 1500, 60, circle)).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "IFCLABEL('Yes'),true",
    "IFCLABEL('Nein'),false",
    "IFCINTEGER(1),true",
    "IFCREAL(0.),false",
    "IFCLABEL('partly'),"
  })
  void whetherItIsOutdoorsIsSaidInWordsAndFiguresToo(String value, Boolean outdoors) {
    String pipe =
        body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
            + "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n";

    assertThat(first(pipe + properties("IsExternal", value)).place().external())
        .isEqualTo(outdoors);
  }
}
