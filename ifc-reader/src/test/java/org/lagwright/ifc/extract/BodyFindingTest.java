package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.codes;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.MepModel;

/** What was measured of a body in part, or not at all, is told. */
class BodyFindingTest {

  private static final String PARTLY = "GEOMETRY_ONLY_PARTLY_MEASURED";

  /** A pipe with a swept disk along some points. */
  private static MepModel pipe(String points) {
    return InlineModel.read(
        """
        #1=IFCPIPESEGMENT('g',$,'Pipe',$,$,#14,#10,$,$);
        #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
        #11=IFCSHAPEREPRESENTATION($,'Body','AdvancedSweptSolid',(#12));
        #12=IFCSWEPTDISKSOLID(#13,30.15,$,$,$);
        #13=IFCPOLYLINE((%s));
        #14=IFCLOCALPLACEMENT($,#15);
        #15=IFCAXIS2PLACEMENT3D(#20,$,$);
        #20=IFCCARTESIANPOINT((0.,0.,0.));
        #21=IFCCARTESIANPOINT((1000.,0.,0.));
        #22=IFCCARTESIANPOINT((1000.,1000.,0.));
        #23=IFCCARTESIANPOINT((2000.,1000.,0.));
        """
            .formatted(points));
  }

  @Test
  void pipeWithSeveralBendsIsTold() {
    assertThat(codes(pipe("#20,#21,#22,#23"))).contains(PARTLY);
  }

  @Test
  void plainPipeIsNot() {
    assertThat(codes(pipe("#20,#21"))).doesNotContain(PARTLY);
  }

  @Test
  void pipeWhoseBodyGivesNothingIsTold() {
    assertThat(codes(pipe("#20"))).contains(PARTLY);
  }

  @Test
  void pipeWithoutAnyBodyIsNot() {
    assertThat(codes(InlineModel.read("#1=IFCPIPESEGMENT('g',$,'Pipe',$,$,$,$,$,$);\n")))
        .doesNotContain(PARTLY);
  }
}
