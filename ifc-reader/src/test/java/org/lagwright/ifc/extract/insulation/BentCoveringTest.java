package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.join;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.MepModel;

/**
 * One covering that names nothing and follows an upright pipe (2500 mm), a bend of 90 degrees on
 * top of it and a level pipe (1000 mm), all of 60.3 mm.
 */
class BentCoveringTest {

  private static final double RADIUS_MM = 76.2;

  private static final double TOP_MM = 2500;

  private static final double LEVEL_MM = 1000;

  private static final String BEND =
      """
      #7=IFCPIPEFITTING('7',$,'Bend',$,$,#70,#73,$,.BEND.);
      #73=IFCPRODUCTDEFINITIONSHAPE($,$,(#74));
      #74=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#75));
      #75=IFCREVOLVEDAREASOLID(#20,$,#76,1.5707963267948966);
      #76=IFCAXIS1PLACEMENT(#77,#78);
      #77=IFCCARTESIANPOINT((76.2,0.,0.));
      #78=IFCDIRECTION((0.,1.,0.));
      """
          + placed(70, 0, 0, TOP_MM);

  private static String levelPipe(double asideMm) {
    return """
        #8=IFCPIPESEGMENT('8',$,'Pipe 2',$,$,#80,#84,$,$);
        #80=IFCLOCALPLACEMENT($,#81);
        #81=IFCAXIS2PLACEMENT3D(#82,#83,#13);
        #82=IFCCARTESIANPOINT((%s,%s,%s));
        #83=IFCDIRECTION((1.,0.,0.));
        #84=IFCPRODUCTDEFINITIONSHAPE($,$,(#85));
        #85=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#86));
        #86=IFCEXTRUDEDAREASOLID(#20,$,#13,%s);
        """
        .formatted(RADIUS_MM, asideMm, TOP_MM + RADIUS_MM, LEVEL_MM);
  }

  /** A disk swept along straight, arc, straight; a leg of nothing is left out. */
  private static String covering(double legMm, double nextLegMm, double radiusMm, double innerMm) {
    double sideMm = radiusMm * Math.sqrt(0.5);
    String arc = "IFCARCINDEX((2,3,4))";
    String parts = legMm > 0 ? "IFCLINEINDEX((1,2)),%s,IFCLINEINDEX((4,5))".formatted(arc) : arc;
    return """
        #200=IFCCOVERING('c',$,'Wool',$,$,#201,#210,$,.INSULATION.);
        #210=IFCPRODUCTDEFINITIONSHAPE($,$,(#211));
        #211=IFCSHAPEREPRESENTATION($,'Body','AdvancedSweptSolid',(#212));
        #212=IFCSWEPTDISKSOLID(#213,60.15,%s,$,$);
        #213=IFCINDEXEDPOLYCURVE(#214,(%s),.F.);
        #214=IFCCARTESIANPOINTLIST3D(((0.,0.,%s),(0.,0.,0.),(%s,0.,%s),(%s,0.,%s),(%s,0.,%s)));
        """
            .formatted(
                innerMm > 0 ? innerMm / 2 : "$",
                parts,
                -legMm,
                radiusMm - sideMm,
                sideMm,
                radiusMm,
                radiusMm,
                radiusMm + nextLegMm,
                radiusMm)
        + placed(201, 0, 0, TOP_MM);
  }

  @ParameterizedTest
  @ValueSource(doubles = {60.3, 0})
  void eachPieceThatItFollowsIsInsulated(double innerMm) {
    MepModel model =
        read(PIPE + BEND + levelPipe(0) + covering(TOP_MM, LEVEL_MM, RADIUS_MM, innerMm));

    for (long piece : new long[] {1, 7, 8}) {
      assertThat(mm(of(model, piece))).isCloseTo(30, within(0.01));
      assertThat(of(model, piece).share()).isCloseTo(1, within(1e-6));
    }
    assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST", "INSULATION_CONFLICT");
  }

  @Test
  void collarsOfTheCoveringOfABendLieOnTheEndsOfItsPipes() {
    MepModel model = read(PIPE + BEND + levelPipe(0) + covering(50, 50, RADIUS_MM, 60.3));

    assertThat(mm(of(model, 7))).isCloseTo(30, within(0.01));
    assertThat(of(model, 7).share()).isCloseTo(1, within(1e-6));
    assertThat(of(model, 1).share()).isCloseTo(50 / TOP_MM, within(1e-6));
    assertThat(of(model, 8).share()).isCloseTo(50 / LEVEL_MM, within(1e-6));
  }

  @Test
  void pipeBesideTheLegIsBare() {
    MepModel model =
        read(PIPE + BEND + levelPipe(40) + covering(TOP_MM, LEVEL_MM, RADIUS_MM, 60.3));

    assertThat(of(model, 1)).isNotNull();
    assertThat(element(model, 8).existingInsulation()).isNull();
  }

  /** The covering bends away from the pipe at once. */
  @Test
  void pipeThatGoesStraightOnFromTheArcIsBare() {
    String above = PIPE.replace("((0.,0.,0.))", "((0.,0.,2500.))");
    MepModel model = read(above + covering(0, 0, 3000, 60.3));

    assertThat(above).contains("2500.))");
    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).containsOnlyOnce("COVERING_WITHOUT_HOST");
  }

  @Test
  void otherBendBetweenOtherPipesIsBare() {
    String turned =
        BEND.replace("((76.2,0.,0.))", "((-76.2,0.,0.))").replace("(0.,1.,0.)", "(0.,-1.,0.)");
    MepModel model = read(PIPE + turned + covering(TOP_MM, LEVEL_MM, RADIUS_MM, 60.3));

    assertThat(of(model, 1)).isNotNull();
    assertThat(element(model, 7).existingInsulation()).isNull();
  }

  /** The binary digits say which of pipe, bend, pipe and covering stand in a second file. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7})
  void eachPieceIsInsulatedWhicheverFileItStandsIn(int digits) {
    String[] pieces = {
      PIPE.substring(0, PIPE.indexOf('\n') + 1),
      BEND,
      levelPipe(0),
      covering(TOP_MM, LEVEL_MM, RADIUS_MM, 60.3)
    };
    String[] files = {InsulationTest.BODY_ONLY, InsulationTest.BODY_ONLY};
    for (int i = 0; i < pieces.length; i++) {
      files[digits >> i & 1] += pieces[i];
    }
    List<MepModel> models = join(files);

    long[] steps = {1, 7, 8};
    for (int i = 0; i < steps.length; i++) {
      MepModel model = models.get(digits >> i & 1);
      assertThat(mm(of(model, steps[i]))).isCloseTo(30, within(0.01));
      assertThat(of(model, steps[i]).share()).isCloseTo(1, within(1e-6));
      assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST", "INSULATION_CONFLICT");
    }
  }
}
