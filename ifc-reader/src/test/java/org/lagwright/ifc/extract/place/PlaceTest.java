package org.lagwright.ifc.extract.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Point;

/** Storey, space, height and outdoors, by relation and by geometry. */
class PlaceTest {

  /** Two rooms in plan: an L of 6 m x 6 m without its upper right quarter, and that quarter. */
  private static final String L_SHAPE =
      """
      #40=IFCSPACE('40',$,'1',$,$,#14,#41,'Hall',$,$,$);
      #41=IFCPRODUCTDEFINITIONSHAPE($,$,(#42));
      #42=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#43));
      #43=IFCEXTRUDEDAREASOLID(#44,$,#13,3000.);
      #44=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#45);
      #45=IFCPOLYLINE((#50,#51,#52,#53,#54,#55,#50));
      #50=IFCCARTESIANPOINT((0.,0.));
      #51=IFCCARTESIANPOINT((6000.,0.));
      #52=IFCCARTESIANPOINT((6000.,3000.));
      #53=IFCCARTESIANPOINT((3000.,3000.));
      #54=IFCCARTESIANPOINT((3000.,6000.));
      #55=IFCCARTESIANPOINT((0.,6000.));
      #60=IFCSPACE('60',$,'2',$,$,#63,#61,'Store',$,$,$);
      #61=IFCPRODUCTDEFINITIONSHAPE($,$,(#62));
      #62=IFCSHAPEREPRESENTATION($,'Box','BoundingBox',(#66));
      #63=IFCLOCALPLACEMENT(#14,#64);
      #64=IFCAXIS2PLACEMENT3D(#65,$,$);
      #65=IFCCARTESIANPOINT((3000.,3000.,0.));
      #66=IFCBOUNDINGBOX(#16,3000.,3000.,3000.);
      """;

  /** A steel pipe, 2.5 m up from a point. */
  private static String pipe(double xMm, double yMm, double zMm) {
    return body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
        + "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#30,#10,$,$);\n"
        + placed(30, xMm, yMm, zMm);
  }

  @ParameterizedTest
  @CsvSource({
    "1000,1000,0,1 Hall",
    "1000,5000,0,1 Hall",
    "5000,1000,0,1 Hall",
    "4000,4000,0,2 Store",
    "4000,4000,5000,",
    "7000,1000,0,"
  })
  void spaceIsTheOneWhoseBodyHoldsTheMiddleOfTheElement(
      double xMm, double yMm, double zMm, String space) {
    assertThat(first(pipe(xMm, yMm, zMm) + L_SHAPE).place().space()).isEqualTo(space);
  }

  @Test
  void spaceThatWasReferencedWinsOverGeometryAndTheStoreyStaysTheContainingOne() {
    Place place =
        first(
                pipe(1000, 1000, 0)
                    + L_SHAPE
                    + """
                    #70=IFCBUILDINGSTOREY('70',$,'Level 1',$,$,$,$,$,$,0.);
                    #71=IFCRELCONTAINEDINSPATIALSTRUCTURE('71',$,$,$,(#1),#70);
                    #72=IFCRELREFERENCEDINSPATIALSTRUCTURE('72',$,$,$,(#1),#60);
                    """)
            .place();

    assertThat(place.space()).isEqualTo("2 Store");
    assertThat(place.storey()).isEqualTo("Level 1");
    assertThat(place.basis())
        .extracting(e -> e.path())
        .containsExactly("referenced in IfcSpace", "contained in IfcBuildingStorey");
  }

  @Test
  void smallestOfSpacesWithinEachOtherIsTaken() {
    String inner =
        """
        #80=IFCSPACE('80',$,'3',$,$,#14,#81,'Shaft',$,$,$);
        #81=IFCPRODUCTDEFINITIONSHAPE($,$,(#82));
        #82=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#83));
        #83=IFCEXTRUDEDAREASOLID(#84,$,#13,3000.);
        #84=IFCRECTANGLEPROFILEDEF(.AREA.,$,#85,1000.,1000.);
        #85=IFCAXIS2PLACEMENT2D(#86,$);
        #86=IFCCARTESIANPOINT((1000.,1000.));
        """;
    assertThat(first(pipe(1000, 1000, 0) + L_SHAPE + inner).place().space()).isEqualTo("3 Shaft");
    assertThat(first(pipe(1600, 1000, 0) + L_SHAPE + inner).place().space()).isEqualTo("1 Hall");
  }

  /** A tetrahedron with its corners at 0 and at 9 m along each axis. */
  @ParameterizedTest
  @CsvSource({"1000,1000,1000,true", "4000,4000,1000,false", "-1000,1000,1000,false"})
  void spaceDrawnAsFacesHoldsWhatLiesBehindAllOfThem(
      double xMm, double yMm, double zMm, boolean inside) {
    String faces =
        """
        #40=IFCSPACE('40',$,'Attic',$,$,#14,#41,$,$,$,$);
        #41=IFCPRODUCTDEFINITIONSHAPE($,$,(#42));
        #42=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#43));
        #43=IFCTRIANGULATEDFACESET(#44,$,.T.,((1,3,2),(1,2,4),(1,4,3),(2,3,4)),$);
        #44=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(9000.,0.,0.),(0.,9000.,0.),(0.,0.,9000.)));
        """;
    assertThat(first(pipe(xMm, yMm, zMm) + faces).place().space())
        .isEqualTo(inside ? "Attic" : null);
  }

  /** The pipe's middle lies 1.25 m above its lower end; the plane slopes at 45 degrees. */
  @ParameterizedTest
  @CsvSource({"1000,true", "4000,false"})
  void slopingCeilingCutsTheSpace(double xMm, boolean inside) {
    String cut =
        """
        #40=IFCSPACE('40',$,'Attic',$,$,#14,#41,$,$,$,$);
        #41=IFCPRODUCTDEFINITIONSHAPE($,$,(#42));
        #42=IFCSHAPEREPRESENTATION($,'Body','Clipping',(#43));
        #43=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#44,#46);
        #44=IFCEXTRUDEDAREASOLID(#45,$,#13,5000.);
        #45=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,20000.,20000.);
        #46=IFCHALFSPACESOLID(#47,.F.);
        #47=IFCPLANE(#48);
        #48=IFCAXIS2PLACEMENT3D(#49,#57,$);
        #49=IFCCARTESIANPOINT((0.,0.,5000.));
        #57=IFCDIRECTION((1.,0.,1.));
        """;
    assertThat(first(pipe(xMm, 0, 0) + cut).place().space()).isEqualTo(inside ? "Attic" : null);
  }

  @Test
  void heightAboveTheFloorComesFromThePlacementOfTheStorey() {
    Place place = first(pipe(0, 0, 6500) + storey(6000, 6000)).place();

    assertThat(place.storey()).isEqualTo("Level 2");
    assertThat(Objects.requireNonNull(place.heightAboveFloorM())).isCloseTo(1.75, within(1e-9));
  }

  /** A room on the first floor, 3 m up; a shaft on the ground floor, as high as the house. */
  @ParameterizedTest(name = "on floor {0} in {1}, middle at {2} mm")
  @CsvSource({"70,room,5500,2.5", "71,shaft,5500,2.5", "71,shaft,2500,2.5", "71,none,2500,-0.5"})
  void heightIsAboveTheNextFloorBelowOfTheStoreyAndOfThatOfItsSpace(
      int storey, String space, double middleMm, double heightM) {
    String house =
        """
        #70=IFCBUILDINGSTOREY('70',$,'Ground floor',$,$,#80,$,$,$,0.);
        #71=IFCBUILDINGSTOREY('71',$,'First floor',$,$,#86,$,$,$,3000.);
        #72=IFCRELCONTAINEDINSPATIALSTRUCTURE('72',$,$,$,(#1),#%d);
        #73=IFCSPACE('73',$,'Space',$,$,#%d,#74,$,$,$,$);
        #74=IFCPRODUCTDEFINITIONSHAPE($,$,(#75));
        #75=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#76));
        #76=IFCEXTRUDEDAREASOLID(#77,$,#13,%s);
        #77=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,4000.,4000.);
        #78=IFCRELAGGREGATES('78',$,$,$,#%d,(#73));
        """
            .formatted(
                storey,
                space.equals("room") ? 86 : 80,
                space.equals("none") ? 100. : 6000.,
                space.equals("room") ? 71 : 70);
    String floors = placed(80, 0, 0, 0) + placed(86, 0, 0, 3000);

    Place place = first(pipe(1000, 1000, middleMm - 1250) + house + floors).place();

    assertThat(place.space()).isEqualTo(space.equals("none") ? null : "Space");
    assertThat(place.storey()).isEqualTo(storey == 70 ? "Ground floor" : "First floor");
    assertThat(Objects.requireNonNull(place.heightAboveFloorM())).isCloseTo(heightM, within(1e-9));
  }

  @Test
  void storeyThatIsOnlyStatedAndNotPlacedHasItsFloorAtTheElevation() {
    Place place = first(pipe(0, 0, 6500) + storey(0, 6000)).place();

    assertThat(Objects.requireNonNull(place.heightAboveFloorM())).isCloseTo(1.75, within(1e-9));
  }

  private static String storey(double placedMm, double statedMm) {
    return """
        #70=IFCBUILDINGSTOREY('70',$,'Level 2',$,$,#71,$,$,$,%s);
        #74=IFCRELCONTAINEDINSPATIALSTRUCTURE('74',$,$,$,(#1),#70);
        """
            .formatted(statedMm)
        + placed(71, 0, 0, placedMm);
  }

  @ParameterizedTest
  @CsvSource({"-4000,Ground", "1000,Ground", "2960,Upper", "9000,Upper"})
  void elementWithoutStoreyStandsOnTheFloorBelowIt(double middleMm, String storey) {
    Place place =
        first(
                pipe(0, 0, middleMm - 1250)
                    + """
                    #70=IFCBUILDINGSTOREY('70',$,'Ground',$,$,$,$,$,$,0.);
                    #71=IFCBUILDINGSTOREY('71',$,'Upper',$,$,$,$,$,$,3000.);
                    """)
            .place();

    assertThat(place.storey()).isEqualTo(storey);
  }

  @Test
  void whatLiesInAnExternalSpatialElementIsOutdoors() {
    Place place =
        first(
                pipe(0, 0, 0)
                    + """
                    #70=IFCEXTERNALSPATIALELEMENT('70',$,'Yard',$,$,$,$,$,.EXTERNAL.);
                    #71=IFCRELCONTAINEDINSPATIALSTRUCTURE('71',$,$,$,(#1),#70);
                    """)
            .place();

    assertThat(place.external()).isTrue();
    assertThat(place.space()).isEqualTo("Yard");
  }

  /** Without axes, ports at one place tell no ends; the zero of a file is no place of anything. */
  @ParameterizedTest
  @CsvSource({"0,4", "7000,7"})
  void elementPlacedAtTheZeroOfTheFileLiesWhereAllItsPortsDo(double placedMm, double middleM) {
    MepElement chamber =
        first(
            "#1=IFCPIPEFITTING('1',$,'Node',$,$,#30,$,$,$);\n"
                + placed(30, placedMm, 0, 0)
                + placed(40, 4000, 0, 0)
                + """
                #50=IFCDISTRIBUTIONPORT('50',$,$,$,$,#40,$,.SOURCE.,.PIPE.,$);
                #51=IFCDISTRIBUTIONPORT('51',$,$,$,$,#40,$,.SINK.,.PIPE.,$);
                #52=IFCRELNESTS('52',$,$,$,#1,(#50,#51));
                """);

    assertThat(chamber.place().positionM()).isEqualTo(new Point(middleM, 0, 0));
    assertThat(chamber.ports()).allMatch(port -> port.positionM() == null);
    assertThat(chamber.openEnds()).isEmpty();
  }

  /** A block of 1 x 0.6 x 1.8 m that stands in the coordinates of the whole. */
  @ParameterizedTest
  @CsvSource({"0, 5.5, 2.3, 1.9", "7000, 7, 0, 0"})
  void elementPlacedAtTheZeroOfTheFileLiesWhereItsBodyDoes(
      double placedMm, double xM, double yM, double zM) {
    MepElement boiler =
        first(
            "#1=IFCBOILER('1',$,'Boiler',$,$,#30,#10,$,$);\n"
                + placed(30, placedMm, 0, 0)
                + """
                #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
                #11=IFCSHAPEREPRESENTATION($,'Body','CSG',(#12));
                #12=IFCBLOCK(#13,1000.,600.,1800.);
                #13=IFCAXIS2PLACEMENT3D(#14,$,$);
                #14=IFCCARTESIANPOINT((5000.,2000.,1000.));
                """);

    assertThat(boiler.place().positionM()).isEqualTo(new Point(xM, yM, zM));
  }

  /** Where nothing is drawn, exporters write the zero of the file or of the storey. */
  @ParameterizedTest
  @CsvSource({"$,0,", "#40,0,", "#40,500,6.5"})
  void elementWithoutBodyAtTheZeroOfFileOrStoreyHasNoPlace(
      String storey, double placedMm, @Nullable Double middleM) {
    MepModel model =
        InlineModel.read(
            "#1=IFCVALVE('1',$,'Valve DN50',$,$,#30,$,$,$);\n"
                + placed(30, placedMm, 0, 0).replace("PLACEMENT($", "PLACEMENT(" + storey)
                + "#2=IFCBUILDINGSTOREY('2',$,'Upper',$,$,#40,$,$,$,3000.);\n"
                + placed(40, 6000, 0, 3000)
                + "#3=IFCRELCONTAINEDINSPATIALSTRUCTURE('3',$,$,$,(#1),#2);\n");
    Point atM = InlineModel.element(model, 1).place().positionM();

    assertThat(atM).isEqualTo(middleM == null ? null : new Point(middleM, 0, 3));
    assertThat(InlineModel.codes(model)).doesNotContain("PLACE_UNKNOWN");
  }

  @ParameterizedTest
  @ValueSource(ints = {30, 60})
  void placementOnAGridOrRelativeToOneIsAFinding(int placement) {
    MepModel model =
        InlineModel.read(
            body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
                + "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#%d,#10,$,$);\n".formatted(placement)
                + "#30=IFCGRIDPLACEMENT(#31,$);\n"
                + placed(60, 0, 0, 0).replace("PLACEMENT($", "PLACEMENT(#30"));

    assertThat(InlineModel.message(model, "PLACE_UNKNOWN")).startsWith("Its IfcGridPlacement is");
    assertThat(InlineModel.diameterMm(InlineModel.element(model, 1))).isEqualTo(60.3);
    assertThat(InlineModel.codes(InlineModel.read(pipe(0, 0, 0)))).doesNotContain("PLACE_UNKNOWN");
  }

  /** The class alone tells that; its name need not. */
  @Test
  void whatLiesInTheEarthAroundABuildingIsNotOutdoors() {
    Place place =
        first(
                pipe(0, 0, 0)
                    + """
                    #70=IFCEXTERNALSPATIALELEMENT('70',$,'E1',$,$,$,$,'North',.EXTERNAL_EARTH.);
                    #71=IFCRELCONTAINEDINSPATIALSTRUCTURE('71',$,$,$,(#1),#70);
                    """)
            .place();

    assertThat(place.external()).isNull();
    assertThat(place.space()).isEqualTo("E1 North, external earth");
  }

  /** A storey of a building 100 m up, at that height; it states its own or that above the sea. */
  @ParameterizedTest
  @CsvSource({"0,0,100", "3000,0,103", "100000,0,100", "103000,3000,103"})
  void floorIsWhereTheStoreyIsPlacedOrStatesItIs(double statedMm, double placedMm, double floorM) {
    Place place =
        first(
                pipe(0, 0, 105_000)
                    + placed(80, 0, 0, 100_000)
                    + placed(90, 0, 0, 100_000 + placedMm)
                    + """
                    #70=IFCBUILDING('70',$,'House',$,$,#80,$,$,$,$,$,$);
                    #71=IFCBUILDINGSTOREY('71',$,'Floor',$,$,#90,$,$,$,%s);
                    #72=IFCRELAGGREGATES('72',$,$,$,#70,(#71));
                    #73=IFCRELCONTAINEDINSPATIALSTRUCTURE('73',$,$,$,(#1),#71);
                    """
                        .formatted(exact(statedMm)))
            .place();

    assertThat(place.heightAboveFloorM()).isCloseTo(106.25 - floorM, within(1e-9));
  }

  /**
   * Stated 412 m above the sea and placed from zero; a storey at zero is placed there all right.
   */
  @ParameterizedTest(name = "{0} mm, the other storey placed {1} and stated {2}: {3} m")
  @CsvSource({"2500,3000,415000,2.5", "2500,3000,3000,", "2500,0,415000,"})
  void storeyAtZeroIsPlacedWhereTheOthersAreStatedAsFarAboveTheirPlacements(
      double middleMm, double placedMm, double statedMm, @Nullable Double heightM) {
    String storeys =
        """
        #70=IFCBUILDINGSTOREY('70',$,'Ground floor',$,$,#80,$,$,$,412000.);
        #71=IFCBUILDINGSTOREY('71',$,'Upper floor',$,$,#90,$,$,$,%s);
        #72=IFCBUILDING('72',$,'House',$,$,$,$,$,$,$,$,$);
        #73=IFCRELAGGREGATES('73',$,$,$,#72,(#70,#71));
        #74=IFCRELCONTAINEDINSPATIALSTRUCTURE('74',$,$,$,(#1),#70);
        """
            .formatted(exact(statedMm));
    String floors = placed(80, 0, 0, 0) + placed(90, 0, 0, placedMm);

    Place place = first(pipe(0, 0, middleMm - 1250) + storeys + floors).place();

    assertThat(place.storey()).isEqualTo("Ground floor");
    assertThat(place.heightAboveFloorM()).isEqualTo(heightM);
  }

  @Test
  void partOfAStoreyHasTheFloorThatItsPlacementTells() {
    Place place =
        first(
                pipe(0, 0, 5000)
                    + placed(90, 0, 0, 3000)
                    + """
                    #70=IFCBUILDING('70',$,'House',$,$,#14,$,$,$,$,$,$);
                    #71=IFCBUILDINGSTOREY('71',$,'First',$,$,#90,$,$,$,3000.);
                    #72=IFCBUILDINGSTOREY('72',$,'First, east',$,$,#90,$,$,.PARTIAL.,3000.);
                    #73=IFCRELAGGREGATES('73',$,$,$,#70,(#71));
                    #74=IFCRELAGGREGATES('74',$,$,$,#71,(#72));
                    #75=IFCRELCONTAINEDINSPATIALSTRUCTURE('75',$,$,$,(#1),#72);
                    """)
            .place();

    assertThat(place.storey()).isEqualTo("First, east");
    assertThat(place.heightAboveFloorM()).isCloseTo(3.25, within(1e-9));
  }

  @Test
  void floorBelowAnElementIsOneOfItsOwnBuilding() {
    Place place =
        first(
                pipe(0, 0, 2250)
                    + """
                    #70=IFCBUILDING('70',$,'A',$,$,$,$,$,$,$,$,$);
                    #71=IFCBUILDING('71',$,'B',$,$,$,$,$,$,$,$,$);
                    #72=IFCBUILDINGSTOREY('72',$,'A ground',$,$,$,$,$,$,0.);
                    #73=IFCBUILDINGSTOREY('73',$,'A first',$,$,$,$,$,$,3000.);
                    #74=IFCBUILDINGSTOREY('74',$,'B ground',$,$,$,$,$,$,0.);
                    #75=IFCBUILDINGSTOREY('75',$,'B first',$,$,$,$,$,$,4000.);
                    #76=IFCRELAGGREGATES('76',$,$,$,#70,(#72,#73));
                    #77=IFCRELAGGREGATES('77',$,$,$,#71,(#74,#75));
                    #78=IFCRELCONTAINEDINSPATIALSTRUCTURE('78',$,$,$,(#1),#71);
                    """)
            .place();

    assertThat(place.building()).isEqualTo("B");
    assertThat(place.storey()).isEqualTo("B ground");
    assertThat(place.heightAboveFloorM()).isCloseTo(3.5, within(1e-9));
  }

  /** Floors 3.5 m above a building that stands at 400 m; the pipe's middle is at 406 m. */
  @ParameterizedTest
  @CsvSource({"400000.,403500.", "0.,3500.", "100.,3500."})
  void elevationsOfStoreysThatAreNotPlacedAreAboveTheSeaOrTheBuilding(
      String groundMm, String firstMm) {
    Place place =
        first(
                pipe(0, 0, 404750)
                    + placed(90, 0, 0, 400000)
                    + """
                    #70=IFCBUILDING('70',$,'House',$,$,#90,$,$,$,$,$,$);
                    #71=IFCBUILDINGSTOREY('71',$,'Ground',$,$,#90,$,$,$,%s);
                    #72=IFCBUILDINGSTOREY('72',$,'First',$,$,#90,$,$,$,%s);
                    #73=IFCRELAGGREGATES('73',$,$,$,#70,(#71,#72));
                    #75=IFCRELCONTAINEDINSPATIALSTRUCTURE('75',$,$,$,(#1),#72);
                    """
                        .formatted(groundMm, firstMm))
            .place();

    assertThat(place.heightAboveFloorM()).isCloseTo(2.5, within(1e-9));
  }

  /** National grid coordinates in millimetres, as public files have them. */
  @Test
  void falseOriginLosesNoDigits() {
    double eastMm = 24_525_622_890.0;
    double northMm = 6_675_431_120.5;
    String text =
        pipe(eastMm + 1000, northMm + 1000, 0)
            + L_SHAPE.replace("#14", "#75")
            + """
            #75=IFCLOCALPLACEMENT($,#76);
            #76=IFCAXIS2PLACEMENT3D(#77,$,$);
            #77=IFCCARTESIANPOINT((%s,%s,0.));
            """
                .formatted(exact(eastMm), exact(northMm));

    MepElement pipe = first(text);

    assertThat(value(pipe.lengthM())).isCloseTo(2.5, within(1e-9));
    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(60.3);
    assertThat(pipe.place().space()).isEqualTo("1 Hall");
    Point middle = Objects.requireNonNull(pipe.place().positionM());
    assertThat(middle.x()).isCloseTo(24_525_623.89, within(1e-7));
    assertThat(middle.y()).isCloseTo(6_675_432.1205, within(1e-7));
    assertThat(middle.z()).isCloseTo(1.25, within(1e-9));
  }

  private static String exact(double mm) {
    return String.format(Locale.ROOT, "%.3f", mm);
  }

  @Test
  void spatialStructureThatRunsInACircleEnds() {
    Place place =
        first(
                pipe(0, 0, 0)
                    + """
                    #70=IFCSPACE('70',$,'A',$,$,$,$,$,$,$,$);
                    #71=IFCSPACE('71',$,'B',$,$,$,$,$,$,$,$);
                    #72=IFCRELAGGREGATES('72',$,$,$,#70,(#71));
                    #73=IFCRELAGGREGATES('73',$,$,$,#71,(#70));
                    #74=IFCRELCONTAINEDINSPATIALSTRUCTURE('74',$,$,$,(#1),#70);
                    """)
            .place();

    assertThat(place.space()).isEqualTo("A");
    assertThat(place.storey()).isNull();
  }
}
