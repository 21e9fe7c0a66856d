package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.properties;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.ReadOptions;
import org.lagwright.ifc.model.MepModel;

/** What contradicts in the figures of a pipe that two files hold. */
class RepeatedConflictTest {

  private static final String LONGER = properties("Length", "IFCLENGTHMEASURE(3000.)");

  @Test
  void contradictionThatBothFilesShowIsToldOnce() {
    List<MepModel> models = join(pipe() + LONGER, pipe() + LONGER);

    assertThat(InlineModel.codes(models.get(0))).containsOnlyOnce("LENGTH_CONFLICT");
    assertThat(InlineModel.codes(models.get(1))).doesNotContain("LENGTH_CONFLICT");
  }

  @Test
  void contradictionThatOnlyTheLaterFileShowsIsToldThere() {
    List<MepModel> models = join(pipe(), pipe() + LONGER);

    assertThat(InlineModel.codes(models.get(1))).containsOnlyOnce("LENGTH_CONFLICT");
  }

  /** 2.5 m up. */
  private static String pipe() {
    return body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
        + "#1=IFCPIPESEGMENT('a',$,'Pipe',$,$,#30,#10,$,$);\n"
        + placed(30, 0, 0, 0);
  }

  private static List<MepModel> join(String first, String second) {
    return ModelJoiner.join(
        List.of(InlineModel.read(0, first), InlineModel.read(1, second)),
        ReadOptions.DEFAULT.joinToleranceM());
  }
}
