package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.placed;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.Place;

/** Spaces and storeys that the architect draws, around what others draw. */
class CrossPlacesTest {

  /** A plant room of 4 m x 4 m x 3 m on the first floor, 3 m up. */
  private static final String BUILDING =
      """
      #13=IFCDIRECTION((0.,0.,1.));
      #40=IFCSPACE('40',$,'201',$,$,#80,#41,'Plant room',$,$,$);
      #41=IFCPRODUCTDEFINITIONSHAPE($,$,(#42));
      #42=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#43));
      #43=IFCEXTRUDEDAREASOLID(#44,$,#13,3000.);
      #44=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,4000.,4000.);
      #70=IFCBUILDING('70',$,'Terminal',$,$,$,$,$,$,$,$,$);
      #71=IFCBUILDINGSTOREY('71',$,'First floor',$,$,#80,$,$,$,3000.);
      #72=IFCRELAGGREGATES('72',$,$,$,#70,(#71));
      #73=IFCRELAGGREGATES('73',$,$,$,#71,(#40));
      """
          + placed(80, 0, 0, 3000);

  /** A steel pipe, 2.5 m up from 3.2 m. */
  private static String pipe(double xMm) {
    return body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
        + "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#30,#10,$,$);\n"
        + placed(30, xMm, 0, 3200);
  }

  private static Place placeOf(String... files) {
    return element(InlineModel.join(files).get(0), 1).place();
  }

  @Test
  void elementsStandInTheSpacesOfAnotherFile() {
    Place place = placeOf(pipe(1000), BUILDING);

    assertThat(place.building()).isEqualTo("Terminal");
    assertThat(place.storey()).isEqualTo("First floor");
    assertThat(place.space()).isEqualTo("201 Plant room");
    assertThat(place.heightAboveFloorM()).isCloseTo(1.45, within(1e-9));
    assertThat(place.basis().get(0).path())
        .startsWith("its middle lies in the body of IfcSpace in ");
  }

  @Test
  void whatTheirOwnFileTellsStays() {
    String storey =
        """
        #90=IFCBUILDINGSTOREY('90',$,'Level 1',$,$,$,$,$,$,2900.);
        #91=IFCRELCONTAINEDINSPATIALSTRUCTURE('91',$,$,$,(#1),#90);
        """;
    Place place = placeOf(pipe(1000) + storey, BUILDING);

    assertThat(place.space()).isEqualTo("201 Plant room");
    assertThat(place.storey()).isEqualTo("Level 1");
    assertThat(place.heightAboveFloorM()).isCloseTo(1.45, within(1e-9));
  }

  /** As above a ceiling, where most pipes are. */
  @Test
  void outsideAllSpacesTheFloorBelowTellsTheStorey() {
    Place place = placeOf(pipe(2500), BUILDING);

    assertThat(place.space()).isNull();
    assertThat(place.storey()).isEqualTo("First floor");
    assertThat(place.building()).isEqualTo("Terminal");
    assertThat(place.heightAboveFloorM()).isCloseTo(1.45, within(1e-9));
    assertThat(place.basis().get(0).path())
        .startsWith("the floor below its middle IfcBuildingStorey in ");
  }

  @Test
  void floorsFarAwayTellNothing() {
    assertThat(placeOf(pipe(1100000), BUILDING).storey()).isNull();
  }

  /** That of the structural engineer, or another house. */
  @ParameterizedTest
  @CsvSource({"First floor,First floor", "Level 2,"})
  void storeyIsToldWhereAllFilesNameItTheSame(String name, @Nullable String storey) {
    String other = BUILDING.replace("'First floor'", "'" + name + "'");

    assertThat(placeOf(pipe(2500), BUILDING, other).storey()).isEqualTo(storey);
  }

  /** The engineer's floor lies under its finish; that of another house at another height. */
  @ParameterizedTest
  @CsvSource({"Terminal,2900,Terminal,1.45", "House,3000,,1.45", "House,2500,,"})
  void ofStoreysOfOneNameOnlyWhatAllFilesSayIsTold(
      String name, double zMm, @Nullable String building, @Nullable Double heightM) {
    String other = BUILDING.replace("'Terminal'", "'" + name + "'").replace("3000.0)", zMm + ")");
    Place place = placeOf(pipe(2500), BUILDING, other);

    assertThat(place.storey()).isEqualTo("First floor");
    assertThat(place.building()).isEqualTo(building);
    if (heightM == null) {
      assertThat(place.heightAboveFloorM()).isNull();
    } else {
      assertThat(place.heightAboveFloorM()).isCloseTo(heightM, within(1e-9));
    }
  }

  @Test
  void fileThatHasStoreysTellsThemItself() {
    String storey = "#90=IFCBUILDINGSTOREY('90',$,'Level 9',$,$,$,$,$,$,90000.);\n";

    assertThat(placeOf(pipe(2500) + storey, BUILDING).storey()).isNull();
  }
}
