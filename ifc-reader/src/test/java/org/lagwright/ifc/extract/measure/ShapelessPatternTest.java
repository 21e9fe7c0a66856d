package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Elements without body or placement, with several bodies, and those that bend. */
class ShapelessPatternTest {

  @Test
  void pipeOfPropertiesOnlyIsKeptAndReported() {
    MepModel model =
        read(
            "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,$,$,$,$);\n"
                + properties(
                    "OuterDiameter",
                    "IFCLENGTHMEASURE(60.3)",
                    "Length",
                    "IFCLENGTHMEASURE(2000.)"));

    assertThat(diameterMm(element(model, 1))).isEqualTo(60.3);
    assertThat(value(element(model, 1).lengthM())).isCloseTo(2, within(1e-9));
    assertThat(codes(model)).containsExactly("NO_GEOMETRY");
  }

  @Test
  void bodyWithoutPlacementStillGivesItsSizes() {
    MepElement pipe =
        first(
            "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,$,#10,$,$);\n"
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)"));

    assertThat(diameterMm(pipe)).isEqualTo(60.3);
    assertThat(value(pipe.lengthM())).isCloseTo(2.5, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"(#30|#11|#40)", "(#40|#30|#11)", "(#11|#40|#30)"})
  void ofSeveralRepresentationsTheMeasurableBodyCounts(String representations) {
    MepElement pipe =
        first(
            "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
                    .replace("$,$,(#11)", "$,$," + representations.replace('|', ','))
                + """
                #30=IFCSHAPEREPRESENTATION($,'Axis','Curve3D',(#31));
                #31=IFCPOLYLINE((#16,#32));
                #32=IFCCARTESIANPOINT((0.,0.,9999.));
                #40=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#41));
                #41=IFCEXTRUDEDAREASOLID($,$,#13,$);
                """);

    assertThat(diameterMm(pipe)).isEqualTo(60.3);
    assertThat(value(pipe.lengthM())).isCloseTo(2.5, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "IFCDUCTSEGMENT('1'|$|'Duct'|$|$|$|$|$|.FLEXIBLESEGMENT.),DUCT_SEGMENT",
    "IFCDUCTFITTING('1'|$|'Fitting'|$|'Flex Duct - Round'|$|$|$|$),DUCT_SEGMENT",
    "IFCPIPEFITTING('1'|$|'Fitting'|$|'Panzerschlauch'|$|$|$|$),PIPE_SEGMENT"
  })
  void flexiblePiecesAreSegmentsHoweverTheyAreClassed(String record, Kind kind) {
    MepElement flex = first("#1=" + record.replace('|', ',') + ";\n");

    assertThat(flex.kind()).isEqualTo(kind);
    assertThat(flex.form()).isEqualTo(Form.FLEXIBLE);
  }

  @ParameterizedTest
  @CsvSource({
    "IFCCABLESEGMENTTYPE,Cable,OTHER",
    "IFCDUCTSEGMENTTYPE,Kabelkanal 60x40,OTHER",
    "IFCPIPESEGMENTTYPE,Leerrohr M25,OTHER",
    "IFCPIPESEGMENTTYPE,Futterrohr 139.7,OTHER",
    "IFCPIPESEGMENTTYPE,PEX-Rohr 16 im Schutzrohr,PIPE_SEGMENT",
    "IFCPIPESEGMENTTYPE,Steel pipe,PIPE_SEGMENT"
  })
  void flowSegmentsOfAnIfc2x3FileAreWhatTheirTypeSays(String type, String name, Kind kind) {
    MepModel model =
        read(
            "IFC2X3",
            InlineModel.MILLIMETRES
                + """
                #1=IFCFLOWSEGMENT('1',$,'Segment',$,$,$,$,$);
                #2=%s('2',$,'%s',$,$,$,$,$,$,.NOTDEFINED.);
                #3=IFCRELDEFINESBYTYPE('3',$,$,$,(#1),#2);
                """
                    .formatted(type, name));

    assertThat(element(model, 1).kind()).isEqualTo(kind);
  }

  /** One exporter writes no type, no name and no body it could be told by: a set of five texts. */
  @ParameterizedTest
  @CsvSource({
    "Schedule 40 PVC pipe,50.8,PIPE_SEGMENT,50.8 mm",
    "Schedule 40 PVC DWV,50.8,PIPE_SEGMENT,50.8 mm",
    "Rectangular,101.6,DUCT_SEGMENT,50.8 x 101.6 mm"
  })
  void itemWithoutAnyWordIsRoundWhereItsWidthIsItsDepth(
      String item, double depthMm, Kind kind, String inWords) {
    MepModel model =
        read(
            "IFC2X3",
            InlineModel.MILLIMETRES
                + "#1=IFCFLOWSEGMENT('1',$,'','',$,$,$,$);\n"
                + properties(
                    "Source", "IFCTEXT('" + item + "')",
                    "Service", "IFCTEXT('Vent')",
                    "Width", "IFCPOSITIVELENGTHMEASURE(50.8)",
                    "Depth", "IFCPOSITIVELENGTHMEASURE(" + depthMm + ")",
                    "Length", "IFCPOSITIVELENGTHMEASURE(3630.5469)"));
    MepElement segment = element(model, 1);

    assertThat(segment.kind()).isEqualTo(kind);
    assertThat(InWords.section(value(segment.section()))).isEqualTo(inWords);
    assertThat(value(segment.lengthM())).isCloseTo(3.6305469, within(1e-9));
    assertThat(codes(model)).contains("KIND_ASSUMED", "NO_GEOMETRY");
  }
}
