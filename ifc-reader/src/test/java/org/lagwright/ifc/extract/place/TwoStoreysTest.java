package org.lagwright.ifc.extract.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.placed;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepModel;

/** Two relations that contain one element, of which the schemas allow one. */
class TwoStoreysTest {

  private static final String MODEL =
      body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
          + "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#30,#10,$,$);\n"
          + placed(30, 0, 0, 0)
          + """
          #40=IFCBUILDINGSTOREY('40',$,'Ground floor',$,$,$,$,$,$,0.);
          #41=IFCBUILDINGSTOREY('41',$,'First floor',$,$,$,$,$,$,3000.);
          #42=IFCSPACE('42',$,'Hall',$,$,$,$,$,$,$,$);
          #43=IFCRELAGGREGATES('43',$,$,$,#40,(#42));
          """;

  @Test
  void elementThatTwoStoreysContainIsAFinding() {
    MepModel model = InlineModel.read(MODEL + containedIn(50, 40) + containedIn(51, 41));

    assertThat(InlineModel.element(model, 1).place().storey()).isEqualTo("First floor");
    assertThat(InlineModel.message(model, "STOREY_CONFLICT"))
        .contains("in storey First floor and in Ground floor; it counts in First floor");
  }

  @Test
  void elementThatAStoreyAndASpaceOnItContainIsNone() {
    MepModel model = InlineModel.read(MODEL + containedIn(50, 40) + containedIn(51, 42));

    assertThat(InlineModel.codes(model)).doesNotContain("STOREY_CONFLICT");
  }

  private static String containedIn(int id, int container) {
    return "#%d=IFCRELCONTAINEDINSPATIALSTRUCTURE('%d',$,$,$,(#1),#%d);%n"
        .formatted(id, id, container);
  }
}
