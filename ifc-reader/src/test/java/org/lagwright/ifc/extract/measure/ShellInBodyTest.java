package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** Pipes and ducts whose body shows a shell around them, or flanges at their ends. */
class ShellInBodyTest {

  /** A pipe of 2 m as two items: what is inside, and a ring around it of some length. */
  private static MepModel pipe(String name, double innerMm, double outerMm, double ringMm) {
    return InlineModel.read(
        """
        #1=IFCPIPESEGMENT('g',$,'%s',$,$,#14,#10,$,$);
        #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
        #11=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#20,#22));
        #13=IFCDIRECTION((0.,0.,1.));
        #14=IFCLOCALPLACEMENT($,#15);
        #15=IFCAXIS2PLACEMENT3D(#16,$,$);
        #16=IFCCARTESIANPOINT((0.,0.,0.));
        #20=IFCEXTRUDEDAREASOLID(#21,$,#13,2000.);
        #21=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
        #22=IFCEXTRUDEDAREASOLID(#23,$,#13,%s);
        #23=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,%s,%s);
        """
            .formatted(name, innerMm / 2, ringMm, outerMm / 2, (outerMm - innerMm) / 2));
  }

  @Test
  void shellAroundThePipeIsItsInsulation() {
    MepModel model = pipe("Pipe", 60.3, 120.3, 2000);
    MepElement pipe = element(model, 1);
    ExistingInsulation insulation = Objects.requireNonNull(pipe.existingInsulation());

    assertThat(diameterMm(pipe)).isEqualTo(60.3);
    assertThat(insulation.thicknessM()).isCloseTo(0.03, within(1e-9));
    assertThat(insulation.share()).isCloseTo(1, within(1e-9));
    assertThat(codes(model)).contains("INSULATION_IN_BODY");
  }

  @Test
  void shellThatEndsBeforeThePipeCoversItsShare() {
    MepElement pipe = element(pipe("Pipe", 60.3, 120.3, 1800), 1);
    ExistingInsulation insulation = Objects.requireNonNull(pipe.existingInsulation());

    assertThat(diameterMm(pipe)).isEqualTo(60.3);
    assertThat(insulation.thicknessM()).isCloseTo(0.03, within(1e-9));
    assertThat(insulation.share()).isCloseTo(0.9, within(1e-9));
  }

  @Test
  void tabulatedPipeAroundItsContentsIsThePipe() {
    MepElement pipe = element(pipe("Pipe", 309.1, 323.9, 2000), 1);

    assertThat(diameterMm(pipe)).isEqualTo(323.9);
    assertThat(pipe.existingInsulation()).isNull();
  }

  @Test
  void flangeOfAPipeWithANominalSizeIsNotInsulation() {
    MepModel model = pipe("Pipe DN100", 114.3, 220, 20);
    MepElement pipe = element(model, 1);

    assertThat(diameterMm(pipe)).isEqualTo(114.3);
    assertThat(pipe.existingInsulation()).isNull();
    assertThat(codes(model)).doesNotContain("INSULATION_IN_BODY");
  }

  /** The corners of a box that is open or hollow, in the order of both ends. */
  private static String corners(double widthMm, double heightMm, double fromMm, double toMm) {
    StringBuilder corners = new StringBuilder();
    for (double z : new double[] {fromMm, toMm}) {
      corners.append(
          "(%2$s,%3$s,%1$s),(-%2$s,%3$s,%1$s),(-%2$s,-%3$s,%1$s),(%2$s,-%3$s,%1$s),"
              .formatted(z, widthMm / 2, heightMm / 2));
    }
    return corners.substring(0, corners.length() - 1);
  }

  /** Four sides without thickness. */
  private static String tube(int id, double widthMm, double heightMm, double fromMm, double toMm) {
    return """
        #%1$d=IFCPOLYGONALFACESET(#%2$d,.F.,(#%3$d,#%4$d,#%5$d,#%6$d),$);
        #%2$d=IFCCARTESIANPOINTLIST3D((%7$s));
        #%3$d=IFCINDEXEDPOLYGONALFACE((1,2,6,5));
        #%4$d=IFCINDEXEDPOLYGONALFACE((2,3,7,6));
        #%5$d=IFCINDEXEDPOLYGONALFACE((3,4,8,7));
        #%6$d=IFCINDEXEDPOLYGONALFACE((4,1,5,8));
        """
        .formatted(
            id, id + 1, id + 2, id + 3, id + 4, id + 5, corners(widthMm, heightMm, fromMm, toMm));
  }

  /** A plate of 1 mm, 562 x 362 mm, with a hole of 502 x 302 mm. */
  private static String ring(int id, double fromMm) {
    StringBuilder faces = new StringBuilder();
    StringBuilder ids = new StringBuilder();
    String[] loops = {
      "(1,2,6,5)", "(2,3,7,6)", "(3,4,8,7)", "(4,1,5,8)",
      "(10,9,13,14)", "(11,10,14,15)", "(12,11,15,16)", "(9,12,16,13)"
    };
    for (int i = 0; i < loops.length; i++) {
      faces.append("#%d=IFCINDEXEDPOLYGONALFACE(%s);\n".formatted(id + 2 + i, loops[i]));
      ids.append("#%d,".formatted(id + 2 + i));
    }
    return """
        #%1$d=IFCPOLYGONALFACESET(#%2$d,.T.,(%3$s#%4$d,#%5$d),$);
        #%2$d=IFCCARTESIANPOINTLIST3D((%6$s,%7$s));
        #%4$d=IFCINDEXEDPOLYGONALFACEWITHVOIDS((4,3,2,1),((9,10,11,12)));
        #%5$d=IFCINDEXEDPOLYGONALFACEWITHVOIDS((5,6,7,8),((16,15,14,13)));
        """
            .formatted(
                id,
                id + 1,
                ids,
                id + 10,
                id + 11,
                corners(562, 362, fromMm, fromMm + 1),
                corners(502, 302, fromMm, fromMm + 1))
        + faces;
  }

  private static MepModel duct(String items, String records) {
    return InlineModel.read(
        "IFC4",
        InlineModel.MILLIMETRES
            + """
              #1=IFCDUCTSEGMENT('g',$,'Duct',$,$,#14,#10,$,$);
              #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
              #11=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(%s));
              #14=IFCLOCALPLACEMENT($,#15);
              #15=IFCAXIS2PLACEMENT3D(#16,$,$);
              #16=IFCCARTESIANPOINT((0.,0.,0.));
              """
                .formatted(items)
            + records);
  }

  /** Sides of the insulation without thickness, which plates at the ends close. */
  @Test
  void shellOfFacesAroundADuctIsItsInsulation() {
    MepModel model =
        duct(
            "#100,#120,#140,#160",
            tube(100, 502, 302, 1, 1949)
                + ring(120, 0)
                + ring(140, 1949)
                + tube(160, 562, 362, 0, 1950));
    MepElement duct = element(model, 1);

    assertThat(InWords.section(InlineModel.value(duct.section()))).isEqualTo("502.0 x 302.0 mm");
    assertThat(Objects.requireNonNull(duct.existingInsulation()).thicknessM())
        .isCloseTo(0.03, within(1e-6));
    assertThat(InlineModel.value(duct.lengthM())).isCloseTo(1.95, within(1e-6));
    assertThat(codes(model)).contains("INSULATION_IN_BODY");
  }

  @Test
  void framesAtTheEndsOfADuctAreNoInsulation() {
    MepModel model =
        duct("#100,#120,#140", tube(100, 502, 302, 1, 1949) + ring(120, 0) + ring(140, 1949));
    MepElement duct = element(model, 1);

    assertThat(InWords.section(InlineModel.value(duct.section()))).isEqualTo("502.0 x 302.0 mm");
    assertThat(duct.existingInsulation()).isNull();
  }

  /** A duct of 500 x 300 that is 130 long, in insulation of 30 mm that is open at both ends. */
  @Test
  void insulationAroundADuctThatIsShorterThanWideTellsHowItRuns() {
    MepModel model =
        InlineModel.read(
            """
            #1=IFCDUCTSEGMENT('g',$,'Duct',$,$,#14,#10,$,$);
            #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
            #11=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#20,#40));
            #14=IFCLOCALPLACEMENT($,#15);
            #15=IFCAXIS2PLACEMENT3D(#16,$,$);
            #16=IFCCARTESIANPOINT((0.,0.,0.));
            """
                + faces(20, corners(500, 300, 0, 130), SIDES + ",(4,3,2,1),(5,6,7,8)")
                + faces(40, corners(560, 360, 0, 130) + "," + corners(500, 300, 0, 130), RING));
    MepElement duct = element(model, 1);

    assertThat(value(duct.section())).isEqualTo(new Section.Rectangular(0.5, 0.3));
    assertThat(value(duct.lengthM())).isCloseTo(0.13, within(1e-9));
    assertThat(Objects.requireNonNull(duct.existingInsulation()).thicknessM())
        .isCloseTo(0.03, within(1e-9));
  }

  private static final String SIDES = "(1,2,6,5),(2,3,7,6),(3,4,8,7),(4,1,5,8)";

  /** Sides outside and inside, and what joins them at both ends. */
  private static final String RING =
      SIDES
          + ",(13,14,10,9),(14,15,11,10),(15,16,12,11),(16,13,9,12)"
          + ",(9,10,2,1),(10,11,3,2),(11,12,4,3),(12,9,1,4)"
          + ",(5,6,14,13),(6,7,15,14),(7,8,16,15),(8,5,13,16)";

  private static String faces(int id, String corners, String loops) {
    StringBuilder records = new StringBuilder();
    StringBuilder list = new StringBuilder();
    int face = id + 2;
    for (String loop : loops.split("\\),\\(")) {
      list.append(list.length() == 0 ? "#" : ",#").append(face);
      records.append(
          "#%d=IFCINDEXEDPOLYGONALFACE((%s));%n".formatted(face++, loop.replaceAll("[()]", "")));
    }
    return "#%d=IFCPOLYGONALFACESET(#%d,.T.,(%s),$);%n#%d=IFCCARTESIANPOINTLIST3D((%s));%n"
            .formatted(id, id + 1, list, id + 1, corners)
        + records;
  }
}
