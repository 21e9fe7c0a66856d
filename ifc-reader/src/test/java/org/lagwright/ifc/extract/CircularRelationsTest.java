package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.read;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;

/** Relations that lead back to where they came from end in what could be read. */
@Timeout(60)
class CircularRelationsTest {

  private static final String PIPE =
      "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
          + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)");

  @Test
  void placementsInACircleLeaveTheSizeAndNoPosition() {
    MepModel model =
        read(
            PIPE.replace("#14=IFCLOCALPLACEMENT($,#15)", "#14=IFCLOCALPLACEMENT(#34,#15)")
                + "#34=IFCLOCALPLACEMENT(#14,#15);\n");

    assertThat(InlineModel.diameterMm(element(model, 1))).isEqualTo(60.3);
    assertThat(element(model, 1).place().positionM()).isNull();
  }

  @Test
  void systemsWithinEachOtherAreEachReadOnce() {
    MepModel model =
        read(
            PIPE
                + """
                #40=IFCSYSTEM('40',$,'A',$,$);
                #41=IFCSYSTEM('41',$,'B',$,$);
                #42=IFCRELASSIGNSTOGROUP('42',$,$,$,(#1,#41),$,#40);
                #43=IFCRELASSIGNSTOGROUP('43',$,$,$,(#40),$,#41);
                #44=IFCRELASSIGNSTOGROUP('44',$,$,$,(#41),$,#41);
                """);

    assertThat(element(model, 1).systems()).extracting(MepSystem::name).containsExactly("A", "B");
  }

  @Test
  void assembliesWithinEachOtherEnd() {
    MepModel model =
        read(
            PIPE
                + """
                #40=IFCELEMENTASSEMBLY('40',$,'A',$,$,$,$,$,$,$);
                #41=IFCELEMENTASSEMBLY('41',$,'B',$,$,$,$,$,$,$);
                #42=IFCRELAGGREGATES('42',$,$,$,#40,(#1,#41));
                #43=IFCRELAGGREGATES('43',$,$,$,#41,(#40));
                #44=IFCRELNESTS('44',$,$,$,#1,(#1));
                """);

    assertThat(element(model, 1).systems()).isEmpty();
    assertThat(element(model, 1).place().storey()).isNull();
  }

  @Test
  void mappedItemThatMapsItselfIsAnElementWithoutSizeAndLength() {
    MepModel model =
        read(
            PIPE.replace("#12=IFCEXTRUDEDAREASOLID(#20,$,#13,2500.)", "#12=IFCMAPPEDITEM(#40,#42)")
                + """
                #40=IFCREPRESENTATIONMAP(#15,#11);
                #42=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#16,$,$);
                """);

    assertThat(element(model, 1).section()).isNull();
    assertThat(element(model, 1).lengthM()).isNull();
  }

  @Test
  void spaceWhoseBodyIsCutByItselfHoldsNothing() {
    MepModel model =
        read(
            PIPE
                + """
                #40=IFCSPACE('40',$,'1',$,$,#14,#41,$,$,$,$);
                #41=IFCPRODUCTDEFINITIONSHAPE($,$,(#42));
                #42=IFCSHAPEREPRESENTATION($,'Body','Clipping',(#43));
                #43=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#43,#43);
                """);

    assertThat(element(model, 1).place().space()).isNull();
  }
}
