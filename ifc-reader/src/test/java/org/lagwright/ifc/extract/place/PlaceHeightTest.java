package org.lagwright.ifc.extract.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.placed;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Place;

/** Storeys by height alone, of elements that no storey contains. */
class PlaceHeightTest {

  private static final String BELOW = "the floor below its middle IfcBuildingStorey";
  private static final String LOWEST = "the lowest floor, above its middle, IfcBuildingStorey";

  /** Two sites with a house each, whose ground floors lie at 0 and at -3 m. */
  private static final String TWO_SITES =
      """
      #69=IFCSITE('69',$,'Land',$,$,$,$,$,.COMPLEX.,$,$,$,$,$);
      #70=IFCSITE('70',$,'Hill',$,$,$,$,$,.ELEMENT.,$,$,$,$,$);
      #71=IFCSITE('71',$,'Valley',$,$,$,$,$,.ELEMENT.,$,$,$,$,$);
      #72=IFCBUILDING('72',$,'Upper house',$,$,$,$,$,$,$,$,$);
      #73=IFCBUILDING('73',$,'Lower house',$,$,$,$,$,$,$,$,$);
      #74=IFCBUILDINGSTOREY('74',$,'Hill floor',$,$,$,$,$,$,0.);
      #75=IFCBUILDINGSTOREY('75',$,'Valley floor',$,$,$,$,$,$,-3000.);
      #76=IFCRELAGGREGATES('76',$,$,$,#70,(#72));
      #77=IFCRELAGGREGATES('77',$,$,$,#71,(#73));
      #78=IFCRELAGGREGATES('78',$,$,$,#72,(#74));
      #79=IFCRELAGGREGATES('79',$,$,$,#73,(#75));
      #80=IFCRELAGGREGATES('80',$,$,$,#69,(#70,#71));
      """;

  /** A pipe of 2.5 m, upright, whose middle is at a height. */
  private static String pipe(double middleMm) {
    return body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,57.15)")
        + "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#30,#10,$,$);\n"
        + placed(30, 0, 0, middleMm - 1250);
  }

  private static String containedIn(int spatial) {
    return "#90=IFCRELCONTAINEDINSPATIALSTRUCTURE('90',$,$,$,(#1),#%d);\n".formatted(spatial);
  }

  @ParameterizedTest(name = "site #{0}, {1} mm: {3}")
  @CsvSource({
    "70, 1000, Upper house, Hill floor",
    "70, -1750, Upper house, Hill floor",
    "70, -6000, ,",
    "71, 1000, Lower house, Valley floor",
    "71, -1750, Lower house, Valley floor",
    "71, -9000, ,",
    "69, 1000, ,",
    "69, -1750, Lower house, Valley floor",
  })
  void whatASiteContainsStandsOnAFloorOfThatSite(
      int site, double middleMm, String building, String storey) {
    Place place = first(pipe(middleMm) + TWO_SITES + containedIn(site)).place();

    assertThat(place.building()).isEqualTo(building);
    assertThat(place.storey()).isEqualTo(storey);
    assertThat(place.heightAboveFloorM() == null).isEqualTo(storey == null);
  }

  /** Nothing tells in which of two houses a pipe of their site is. */
  @ParameterizedTest
  @CsvSource({"1000,", "-1750, Valley floor"})
  void siteOfAFileThatPutsNoStoreyOnASiteHasThemAll(double middleMm, String storey) {
    String apart = TWO_SITES.replace("#72));", "$));").replace("#73));", "$));");

    Place place = first(pipe(middleMm) + apart + containedIn(70)).place();

    assertThat(place.storey()).isEqualTo(storey);
    assertThat(place.basis()).extracting(Evidence::path).allMatch(BELOW::equals);
  }

  /** The height is known where both floors lie at one, the house is not. */
  @ParameterizedTest
  @CsvSource({"-3000.,", "0.,1"})
  void floorsOfOneNameInTwoHousesAreOneStorey(String valleyMm, @Nullable Double heightM) {
    String alike =
        TWO_SITES
            .replace("Hill floor", "Level 1")
            .replace("Valley floor", "Level 1")
            .replace("-3000.", valleyMm);

    Place place = first(pipe(1000) + alike + containedIn(69)).place();

    assertThat(place.storey()).isEqualTo("Level 1");
    assertThat(place.building()).isNull();
    assertThat(place.heightAboveFloorM()).isEqualTo(heightM);
  }

  /** The floors next below it differ by name, the lowest ones do not. */
  @Test
  void lowestFloorIsThatOfWhatLiesBelowIt() {
    String alike =
        TWO_SITES.replace("Hill floor", "Level 1").replace("Valley floor", "Ground")
            + """
            #92=IFCBUILDINGSTOREY('92',$,'Ground',$,$,$,$,$,$,-3500.);
            #93=IFCRELAGGREGATES('93',$,$,$,#72,(#92));
            """;

    assertThat(first(pipe(1000) + alike + containedIn(69)).place().storey()).isNull();
    assertThat(first(pipe(-4000) + alike + containedIn(69)).place().storey()).isEqualTo("Ground");
  }

  /** Pits and drains lie up to one more storey down; the zero of the file may lie anywhere. */
  @ParameterizedTest
  @CsvSource({"-1000, Hill floor", "-4900, Hill floor", "-100000,"})
  void drainsOfABuildingCountAsOnItsLowestStoreyAndTheirBasisSaysSo(
      double middleMm, String storey) {
    Place place = first(pipe(middleMm) + TWO_SITES + containedIn(72)).place();

    assertThat(place.building()).isEqualTo("Upper house");
    assertThat(place.storey()).isEqualTo(storey);
    assertThat(place.basis()).extracting(Evidence::path).allMatch(LOWEST::equals);
    assertThat(place.basis()).hasSize(storey == null ? 0 : 1);
  }

  @Test
  void buildingOfBuildingsHasTheStoreysOfAll() {
    String parts =
        """
        #95=IFCBUILDING('95',$,'Estate',$,$,$,$,$,.COMPLEX.,$,$,$);
        #96=IFCRELAGGREGATES('96',$,$,$,#95,(#97));
        #97=IFCBUILDING('97',$,'East wing',$,$,$,$,$,.PARTIAL.,$,$,$);
        #98=IFCRELAGGREGATES('98',$,$,$,#97,(#99));
        #99=IFCBUILDINGSTOREY('99',$,'East floor',$,$,$,$,$,$,1000.);
        """;

    Place place = first(pipe(3000) + TWO_SITES + parts + containedIn(95)).place();

    assertThat(place.building()).isEqualTo("Estate");
    assertThat(place.storey()).isEqualTo("East floor");
    assertThat(Objects.requireNonNull(place.heightAboveFloorM())).isEqualTo(2, within(1e-9));
  }

  /** A room of 10 m x 10 m x 10 m in the middle of the lower house, from 2 m below zero. */
  @Test
  void buildingIsThatOfTheSpaceFoundAndItsFloorsCount() {
    String room =
        """
        #40=IFCSPACE('40',$,'Shaft',$,$,#60,#41,$,$,$,$);
        #41=IFCPRODUCTDEFINITIONSHAPE($,$,(#42));
        #42=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#43));
        #43=IFCEXTRUDEDAREASOLID(#44,$,#13,10000.);
        #44=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,10000.,10000.);
        #91=IFCRELAGGREGATES('91',$,$,$,#73,(#40));
        """
            + placed(60, 0, 0, -2000);

    Place place = first(pipe(1500) + TWO_SITES + room).place();

    assertThat(place.space()).isEqualTo("Shaft");
    assertThat(place.building()).isEqualTo("Lower house");
    assertThat(place.storey()).isEqualTo("Valley floor");
    String withoutFloors = TWO_SITES.replace("#73,(#75)", "#73,($)");
    Place bare = first(pipe(1500) + withoutFloors + room + containedIn(71)).place();
    assertThat(bare.building()).isEqualTo("Lower house");
    assertThat(bare.storey()).isNull();
  }

  /** Of a storey that says 0 in a model that counts from elsewhere. */
  @ParameterizedTest(name = "{0} mm")
  @CsvSource({"29000, 29", "48000, ", "-48000, "})
  void heightThatNoStoreyHasIsNotTold(double middleMm, Double heightM) {
    String storey = "#50=IFCBUILDINGSTOREY('50',$,'2. UG',$,$,$,$,$,$,0.);\n";
    Place place = first(pipe(middleMm) + storey + containedIn(50)).place();

    assertThat(place.storey()).isEqualTo("2. UG");
    assertThat(place.heightAboveFloorM()).isEqualTo(heightM);
  }
}
