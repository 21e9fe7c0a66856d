package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.read;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.ReadFinding;

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
    assertThat(circles(model)).containsExactly("1", "IfcLocalPlacement #14 #34");
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
    assertThat(circles(model)).containsExactly("2", "IfcSystem #40 #41; IfcSystem #41");
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
    assertThat(circles(model)).containsExactly("1", "IfcElementAssembly #40 #41");
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
    assertThat(circles(model)).containsExactly("1", "IfcShapeRepresentation #11 #12 #40");
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
    assertThat(circles(model)).containsExactly("1", "IfcBooleanClippingResult #43");
  }

  @Test
  void propertyThatConsistsOfItselfAndCoveringsOfEachOtherAreNamed() {
    MepModel model =
        read(
            PIPE
                + """
                #40=IFCCOMPLEXPROPERTY('C',$,'c',(#40));
                #41=IFCPROPERTYSET('41',$,'Set',$,(#40));
                #42=IFCRELDEFINESBYPROPERTIES('42',$,$,$,(#1),#41);
                #43=IFCCOVERING('43',$,'A',$,$,$,$,$,$);
                #44=IFCCOVERING('44',$,'B',$,$,$,$,$,$);
                #45=IFCRELCOVERSBLDGELEMENTS('45',$,$,$,#43,(#44));
                #46=IFCRELCOVERSBLDGELEMENTS('46',$,$,$,#44,(#43));
                """);

    assertThat(circles(model)).containsExactly("2", "IfcComplexProperty #40; IfcCovering #43 #44");
  }

  @Test
  void materialThatConsistsOfItselfIsNamed() {
    MepModel model =
        read(
            PIPE
                + """
                #40=IFCMATERIALLIST((#41,#42));
                #41=IFCMATERIAL('Steel',$,$);
                #42=IFCMATERIALLIST((#41,#40));
                #43=IFCRELASSOCIATESMATERIAL('43',$,$,$,(#1),#40);
                """);

    assertThat(element(model, 1).materials()).containsExactly("Steel");
    assertThat(circles(model)).containsExactly("1", "IfcMaterialList #40 #42");
  }

  /** A layer that two sets share is no circle. */
  @Test
  void materialThatIsUsedTwiceIsNoCircle() {
    MepModel model =
        read(
            PIPE
                + """
                #40=IFCMATERIALLAYERSET((#42,#42,#43),$,$);
                #41=IFCMATERIAL('Steel',$,$);
                #42=IFCMATERIALLAYER(#41,1.,$,$,$,$,$);
                #43=IFCMATERIALLAYER(#41,2.,$,$,$,$,$);
                #44=IFCRELASSOCIATESMATERIAL('44',$,$,$,(#1),#40);
                """);

    assertThat(element(model, 1).materials()).containsExactly("Steel");
    assertThat(circles(model)).isEmpty();
  }

  @Test
  void unitThatIsMeasuredInItselfIsNamedAndMetresAssumed() {
    MepModel model =
        read(
            "IFC4",
            PIPE
                + """
                #900=IFCPROJECT('p',$,$,$,$,$,$,$,#901);
                #901=IFCUNITASSIGNMENT((#902,#905));
                #902=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'FOOT',#903);
                #903=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(0.3048),#902);
                #905=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
                """);

    assertThat(InlineModel.codes(model)).contains("UNITS_ASSUMED");
    assertThat(circles(model)).containsExactly("1", "IfcConversionBasedUnit #902 #903");
  }

  @Test
  void typesOfEachOtherAndAnElementThatIsItsOwnTypeAreNamed() {
    MepModel model =
        read(
            PIPE
                + """
                #40=IFCPIPESEGMENTTYPE('40',$,'A',$,$,$,$,$,$,.RIGIDSEGMENT.);
                #41=IFCPIPESEGMENTTYPE('41',$,'B',$,$,$,$,$,$,.RIGIDSEGMENT.);
                #42=IFCRELDEFINESBYTYPE('42',$,$,$,(#1,#41),#40);
                #43=IFCRELDEFINESBYTYPE('43',$,$,$,(#40),#41);
                #44=IFCPIPESEGMENT('44',$,'Pipe 2',$,$,$,$,$,$);
                #45=IFCRELDEFINESBYTYPE('45',$,$,$,(#44),#44);
                """);

    assertThat(InlineModel.diameterMm(element(model, 1))).isEqualTo(60.3);
    assertThat(element(model, 1).typeName()).isEqualTo("A");
    assertThat(circles(model))
        .containsExactly("2", "IfcPipeSegmentType #40 #41; IfcPipeSegment #44");
  }

  /** What several share, what is missing and a long chain are no circles. */
  @Test
  void whatEndsIsNoCircle() {
    StringBuilder records = new StringBuilder(PIPE.replace("T($,#15)", "T(#1001,#15)"));
    for (int i = 1001; i < 1500; i++) {
      records.append("#%d=IFCLOCALPLACEMENT(#%d,#15);\n".formatted(i, i + 1));
    }
    records.append("#1500=IFCLOCALPLACEMENT(#9999,#15);\n");
    records.append("#40=IFCSYSTEM('40',$,'A',$,$);\n#41=IFCSYSTEM('41',$,'B',$,$);\n");
    records.append("#42=IFCRELASSIGNSTOGROUP('42',$,$,$,(#1,#41),$,#40);\n");
    records.append("#43=IFCRELASSIGNSTOGROUP('43',$,$,$,(#1),$,#41);\n");

    MepModel model = read(records.toString());

    assertThat(element(model, 1).place().positionM()).isNull();
    assertThat(circles(model)).isEmpty();
  }

  @Test
  void circleOfManyRecordsIsFoundFromOutside() {
    StringBuilder records = new StringBuilder(PIPE.replace("T($,#15)", "T(#1300,#15)"));
    for (int i = 1001; i <= 1400; i++) {
      int next = i == 1400 ? 1001 : i + 1;
      records.append("#%d=IFCLOCALPLACEMENT(#%d,#15);\n".formatted(i, next));
    }

    assertThat(circles(read(records.toString())))
        .containsExactly("1", "IfcLocalPlacement #1001 #1002 #1003 #1004 #1005 #1006 and 394");
  }

  /** Values of the one finding about circles; empty if there is none. */
  private static List<String> circles(MepModel model) {
    List<Finding> circles =
        model.findings().stream().filter(f -> f.code() == ReadFinding.CIRCULAR_REFERENCES).toList();
    assertThat(circles).hasSizeLessThan(2);
    return circles.stream().flatMap(f -> f.values().stream()).toList();
  }
}
