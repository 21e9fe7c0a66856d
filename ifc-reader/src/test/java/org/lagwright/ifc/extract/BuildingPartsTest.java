package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.UprightBox;
import org.lagwright.ifc.source.ModelReader;
import org.lagwright.ifc.source.ProgressListener;

/** Walls, slabs and columns as upright boxes, in millimetres in the file. */
class BuildingPartsTest {

  @TempDir Path folder;

  private MepModel model(String schema, String records) throws IOException {
    Path file = folder.resolve("model.ifc");
    Files.writeString(
        file,
        "ISO-10303-21;\nHEADER;\nFILE_SCHEMA(('"
            + schema
            + "'));\nENDSEC;\nDATA;\n"
            + """
            #1=IFCPROJECT('0AlderQuay0Project0001',$,'Alder Quay',$,$,$,$,(#2),#3);
            #2=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-05,#4,$);
            #3=IFCUNITASSIGNMENT((#5,#6));
            #4=IFCAXIS2PLACEMENT3D(#7,$,$);
            #5=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
            #6=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
            #7=IFCCARTESIANPOINT((0.,0.,0.));
            #8=IFCDIRECTION((0.,0.,1.));
            #9=IFCLOCALPLACEMENT($,#4);
            #10=IFCBUILDINGSTOREY('0AlderQuay0Storey00001',$,'Ground floor',$,$,#9,$,$,.ELEMENT.,0.);
            #11=IFCRELCONTAINEDINSPATIALSTRUCTURE('0AlderQuay0Contents001',$,$,$,(#20),#10);
            #12=IFCAXIS2PLACEMENT2D(#13,$);
            #13=IFCCARTESIANPOINT((0.,0.));
            """
            + records
            + "ENDSEC;\nEND-ISO-10303-21;\n");
    return ModelReader.read(file, 0, ProgressListener.SILENT);
  }

  private BuildingPart only(String records) throws IOException {
    List<BuildingPart> parts = model("IFC4", records).surroundings();
    assertThat(parts).hasSize(1);
    return parts.get(0);
  }

  /** A wall of 4 x 0.2 x 3 m about the middle of its profile, placed at a point and an angle. */
  private static String wall(double degrees) {
    double turnRad = Math.toRadians(degrees);
    return String.format(
        Locale.ROOT,
        """
        #20=IFCWALL('0AlderQuay0Wall0000001',$,'Quay wall',$,$,#21,#22,$,.NOTDEFINED.);
        #21=IFCLOCALPLACEMENT(#9,#23);
        #22=IFCPRODUCTDEFINITIONSHAPE($,$,(#27));
        #23=IFCAXIS2PLACEMENT3D(#24,#8,#25);
        #24=IFCCARTESIANPOINT((10000.,20000.,500.));
        #25=IFCDIRECTION((%f,%f,0.));
        #27=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#28));
        #28=IFCEXTRUDEDAREASOLID(#29,#4,#8,3000.);
        #29=IFCRECTANGLEPROFILEDEF(.AREA.,$,#12,4000.,200.);
        """,
        Math.cos(turnRad),
        Math.sin(turnRad));
  }

  private static void assertBox(
      UprightBox box, Point centre, double longM, double shortM, double heightM) {
    assertThat(box.centre().distanceM(centre)).isLessThan(1e-6);
    assertThat(Math.max(box.lengthM(), box.widthM())).isCloseTo(longM, within(1e-6));
    assertThat(Math.min(box.lengthM(), box.widthM())).isCloseTo(shortM, within(1e-6));
    assertThat(box.heightM()).isCloseTo(heightM, within(1e-6));
  }

  private static UprightBox box(BuildingPart part) {
    return Objects.requireNonNull(part.box());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 17, 45, 90, 133})
  void aWallIsABoxAtItsOwnAngle(double degrees) throws IOException {
    BuildingPart wall = only(wall(degrees));

    assertThat(wall.ifcClass()).isEqualTo("IfcWall");
    assertThat(wall.globalId()).isEqualTo("0AlderQuay0Wall0000001");
    assertThat(wall.name()).isEqualTo("Quay wall");
    assertThat(wall.storey()).isEqualTo("Ground floor");
    assertBox(box(wall), new Point(10, 20, 2), 4, 0.2, 3);
    double along =
        box(wall).lengthM() > 1 ? box(wall).turnRad() : box(wall).turnRad() + Math.PI / 2;
    assertThat(Math.abs(Math.sin(along - Math.toRadians(degrees)))).isLessThan(1e-6);
  }

  /** What is hung below pipes or stands beside them; coverings of pipes are no part of it. */
  @ParameterizedTest
  @CsvSource({
    "'IFCCOVERING(',.CEILING.,IfcCovering",
    "'IFCFURNITURE(',.NOTDEFINED.,IfcFurniture",
    "'IFCTRANSPORTELEMENT(',.ELEVATOR.,IfcTransportElement",
    "'IFCCOVERING(',.INSULATION.,"
  })
  void ceilingsFurnitureAndLiftsCountToo(String keyword, String type, @Nullable String ifcClass)
      throws IOException {
    String records =
        wall(0).replace("IFCWALL(", keyword).replace(".NOTDEFINED.);\n#21", type + ");\n#21");

    assertThat(model("IFC4", records).surroundings())
        .extracting(BuildingPart::ifcClass)
        .isEqualTo(ifcClass == null ? List.of() : List.of(ifcClass));
  }

  @Test
  void aWallWhoseProfileIsTurnedInWorldCoordinatesIsABoxAtThatAngle() throws IOException {
    BuildingPart wall =
        only(
            """
            #20=IFCWALL('0AlderQuay0Wall0000001',$,'',$,$,#9,#22,$,.NOTDEFINED.);
            #22=IFCPRODUCTDEFINITIONSHAPE($,$,(#27));
            #27=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#28));
            #28=IFCEXTRUDEDAREASOLID(#29,#4,#8,3000.);
            #29=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#30);
            #30=IFCPOLYLINE((#31,#32,#33,#34,#31));
            #31=IFCCARTESIANPOINT((0.,0.));
            #32=IFCCARTESIANPOINT((4000.,3000.));
            #33=IFCCARTESIANPOINT((3880.,3160.));
            #34=IFCCARTESIANPOINT((-120.,160.));
            """);

    assertBox(box(wall), new Point(1.94, 1.58, 1.5), 5, 0.2, 3);
  }

  @Test
  void aCutByAHalfSpaceMakesTheBoxSmaller() throws IOException {
    String cut =
        wall(0).replace("(#28));", "(#40));").replace("'SweptSolid'", "'Clipping'")
            + """
            #40=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#28,#41);
            #41=IFCHALFSPACESOLID(#42,.F.);
            #42=IFCPLANE(#43);
            #43=IFCAXIS2PLACEMENT3D(#44,$,$);
            #44=IFCCARTESIANPOINT((0.,0.,2500.));
            """;

    assertBox(box(only(cut)), new Point(10, 20, 1.75), 4, 0.2, 2.5);
  }

  @Test
  void aFacetedWallIsABoxToo() throws IOException {
    BuildingPart slab =
        only(
            """
            #20=IFCSLAB('0AlderQuay0Slab0000001',$,'',$,$,#9,#22,$,.FLOOR.);
            #22=IFCPRODUCTDEFINITIONSHAPE($,$,(#27));
            #27=IFCSHAPEREPRESENTATION(#2,'Body','Tessellation',(#28));
            #28=IFCPOLYGONALFACESET(#30,.T.,(#31,#32,#33,#34,#35,#36),$);
            #30=IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(6000.,0.,0.),(6000.,5000.,0.),(0.,5000.,0.),(0.,0.,-300.),(6000.,0.,-300.),(6000.,5000.,-300.),(0.,5000.,-300.)));
            #31=IFCINDEXEDPOLYGONALFACE((1,2,3,4));
            #32=IFCINDEXEDPOLYGONALFACE((8,7,6,5));
            #33=IFCINDEXEDPOLYGONALFACE((1,5,6,2));
            #34=IFCINDEXEDPOLYGONALFACE((2,6,7,3));
            #35=IFCINDEXEDPOLYGONALFACE((3,7,8,4));
            #36=IFCINDEXEDPOLYGONALFACE((4,8,5,1));
            """);

    assertBox(box(slab), new Point(3, 2.5, -0.15), 6, 5, 0.3);
  }

  @Test
  void aRoundColumnIsASquareBox() throws IOException {
    BuildingPart column =
        only(
            wall(0)
                .replace("IFCWALL(", "IFCCOLUMN(")
                .replace(
                    "IFCRECTANGLEPROFILEDEF(.AREA.,$,#12,4000.,200.)",
                    "IFCCIRCLEPROFILEDEF(.AREA.,$,#12,200.)"));

    assertThat(column.ifcClass()).isEqualTo("IfcColumn");
    assertThat(box(column).lengthM()).isCloseTo(0.4, within(0.4 * 0.002));
    assertThat(box(column).widthM()).isCloseTo(0.4, within(0.4 * 0.002));
  }

  @Test
  void anOpeningBelongsToTheWallThatItIsCutOutOf() throws IOException {
    BuildingPart wall =
        only(
            wall(0)
                + """
                #50=IFCOPENINGELEMENT('0AlderQuay0Opening0001',$,'',$,$,#51,#52,$,.OPENING.);
                #51=IFCLOCALPLACEMENT(#21,#53);
                #52=IFCPRODUCTDEFINITIONSHAPE($,$,(#57));
                #53=IFCAXIS2PLACEMENT3D(#54,$,$);
                #54=IFCCARTESIANPOINT((1000.,0.,2000.));
                #57=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#58));
                #58=IFCEXTRUDEDAREASOLID(#59,#4,#8,300.);
                #59=IFCRECTANGLEPROFILEDEF(.AREA.,$,#12,400.,250.);
                #60=IFCRELVOIDSELEMENT('0AlderQuay0Voids000001',$,$,$,#20,#50);
                """);

    assertThat(wall.openings()).hasSize(1);
    assertBox(wall.openings().get(0), new Point(11, 20, 2.65), 0.4, 0.25, 0.3);
  }

  @Test
  void aWallWithoutBodyIsThereWithoutABox() throws IOException {
    assertThat(only(wall(0).replace("#21,#22", "#21,$")).box()).isNull();
    assertThat(only(wall(0).replace("#21,#22", "$,#22")).box()).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "IFC2X3, IFCWALLSTANDARDCASE, 1",
    "IFC2X3, IFCBEAM, 1",
    "IFC4, IFCBEAM, 1",
    "IFC4, IFCMEMBER, 1",
    "IFC4X3_ADD2, IFCWALL, 1",
    "IFC4X3_ADD2, IFCBUILDINGELEMENTPART, 1",
    "IFC4, IFCBUILDINGELEMENTPROXY, 0",
    "IFC4, IFCCOVERING, 0",
    "IFC4, IFCFURNISHINGELEMENT, 1",
    "IFC4, IFCOPENINGELEMENT, 0"
  })
  void whatIsBuiltCountsInEverySchema(String schema, String keyword, int parts) throws IOException {
    assertThat(model(schema, wall(0).replace("IFCWALL(", keyword + "(")).surroundings())
        .hasSize(parts);
  }
}
