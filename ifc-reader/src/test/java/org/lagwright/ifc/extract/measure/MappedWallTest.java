package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.properties;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepModel;

/** Hollow profiles of library objects in another unit than the file, which are mapped to size. */
class MappedWallTest {

  /**
   * A hollow body at the origin, upwards, mapped with a scale from where it is drawn smaller or
   * larger.
   *
   * @param id its shape; the records behind it follow
   */
  private static String mapped(int id, double scale, double radius, double wall, double length) {
    return """
        #%1$d=IFCPRODUCTDEFINITIONSHAPE($,$,(#%1$d1));
        #%1$d1=IFCSHAPEREPRESENTATION($,'Body','MappedRepresentation',(#%1$d2));
        #%1$d2=IFCMAPPEDITEM(#%1$d3,#%1$d4);
        #%1$d3=IFCREPRESENTATIONMAP(#%1$d5,#%1$d6);
        #%1$d4=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#16,%2$s,$);
        #%1$d5=IFCAXIS2PLACEMENT3D(#16,$,$);
        #%1$d6=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#%1$d7));
        #%1$d7=IFCEXTRUDEDAREASOLID(#%1$d8,$,#13,%5$s);
        #%1$d8=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,%3$s,%4$s);
        """
        .formatted(id, scale, radius / scale, wall / scale, length / scale);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 0.001, 1000, 25.4})
  void wallAroundADrawnBoreIsScaledAsTheBodyIs(double scale) {
    MepModel model =
        InlineModel.read(
            "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#70,$,$);\n"
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,1.)")
                + mapped(70, scale, 200, 60, 2500)
                + properties("InnerDiameter", "IFCPOSITIVELENGTHMEASURE(400.)"));

    assertThat(diameterMm(element(model, 1))).isEqualTo(520);
    assertThat(codes(model)).containsExactly("SECTION_CONFLICT");
  }

  /** 60.3 in a shell from 60.3 to 120.3. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 0.001, 1000, 25.4})
  void insulationIsAsThickAsTheWallOfItsMappedBody(double scale) {
    MepModel model =
        InlineModel.read(
            "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
                + "#6=IFCCOVERING('6',$,'Part',$,$,#60,#70,$,.INSULATION.);\n"
                + "#7=IFCRELCOVERSBLDGELEMENTS('7',$,$,$,#1,(#6));\n"
                + placed(60, 0, 0, 0)
                + mapped(70, scale, 60.15, 30, 2500));
    Double thicknessM = Objects.requireNonNull(element(model, 1).existingInsulation()).thicknessM();

    assertThat(Objects.requireNonNull(thicknessM)).isCloseTo(0.03, within(1e-9));
  }
}
