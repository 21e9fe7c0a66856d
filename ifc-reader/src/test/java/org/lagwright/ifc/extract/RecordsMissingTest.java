package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Bodies of which the file has only a part are measured by that part, which must be told. */
class RecordsMissingTest {

  /** A pipe of two pieces of a metre, the one drawn behind the other. */
  private static final String PIPE =
      """
      #1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#30,#10,$,$);
      #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
      #11=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#12,#22));
      #12=IFCEXTRUDEDAREASOLID(#13,#14,#16,1000.);
      #13=IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15);
      #14=IFCAXIS2PLACEMENT3D(#15,$,$);
      #15=IFCCARTESIANPOINT((0.,0.,0.));
      #16=IFCDIRECTION((0.,0.,1.));
      #30=IFCLOCALPLACEMENT($,#14);
      """;

  private static final String SECOND_PIECE =
      """
      #22=IFCEXTRUDEDAREASOLID(#13,#24,#16,1000.);
      #24=IFCAXIS2PLACEMENT3D(#25,$,$);
      #25=IFCCARTESIANPOINT((0.,0.,1000.));
      """;

  @Test
  void wholeBodyTellsNothing() {
    MepModel model = InlineModel.read(PIPE + SECOND_PIECE);

    assertThat(lengthM(model)).isCloseTo(2, within(1e-6));
    assertThat(InlineModel.codes(model)).doesNotContain("RECORDS_MISSING");
  }

  @ParameterizedTest
  @CsvSource({"an item of the body,#22=,#22", "the place of an item,#24=,#24"})
  void missingPartIsTold(String what, String dropped, String named) {
    String second =
        SECOND_PIECE.lines().filter(line -> !line.startsWith(dropped)).reduce("", (a, b) -> a + b);
    MepModel model = InlineModel.read(PIPE + second);

    assertThat(InlineModel.message(model, "RECORDS_MISSING"))
        .as(what)
        .startsWith("Bodies refer to 1 record that the file does not have: " + named + ".");
  }

  @Test
  void whatNoBodyNeedsMayBeMissing() {
    MepModel model =
        InlineModel.read(
            PIPE.replace("'1',$,'Pipe'", "'1',#99,'Pipe'")
                + SECOND_PIECE
                + "#98=IFCSTYLEDITEM(#12,(#97),$);\n");

    assertThat(InlineModel.codes(model)).doesNotContain("RECORDS_MISSING");
  }

  private static double lengthM(MepModel model) {
    MepElement pipe = InlineModel.element(model, 1);
    return Objects.requireNonNull(pipe.lengthM()).value();
  }
}
