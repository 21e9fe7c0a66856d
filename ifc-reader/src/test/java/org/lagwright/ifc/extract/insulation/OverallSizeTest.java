package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** A size over the insulation is no size of the duct: 460 x 260 is 400 x 200 and twice 30. */
class OverallSizeTest {

  private static final String UNDRAWN = "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,$,$,$,$);\n";

  private static final String[] OVERALL = {"Overall Size", "IFCTEXT('460x260')"};
  private static final String[] SIZE = {"Size", "IFCTEXT('400x200')"};
  private static final String[] THICKNESS = {"Insulation Thickness", "IFCLENGTHMEASURE(30.)"};
  private static final String[] SIDES = {
    "Width", "IFCLENGTHMEASURE(400.)", "Height", "IFCLENGTHMEASURE(200.)"
  };
  private static final String[] UNLINED = {"Lining Thickness", "IFCLENGTHMEASURE(0.)"};

  private static String drawn(double widthMm, double heightMm) {
    return "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
        + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s)".formatted(widthMm, heightMm));
  }

  private static String stated(String[]... each) {
    return properties(Arrays.stream(each).flatMap(Arrays::stream).toArray(String[]::new));
  }

  private static void isInsulatedBy30Mm(MepModel model) {
    assertThat(value(element(model, 1).section())).isEqualTo(new Section.Rectangular(0.4, 0.2));
    assertThat(InsulationTest.mm(InsulationTest.of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(codes(model)).doesNotContain("SECTION_CONFLICT", "INSULATION_CONFLICT");
    assertThat(Objects.requireNonNull(element(model, 1).section()).lost())
        .anySatisfy(
            lost -> {
              assertThat(lost.value()).isEqualTo(new Section.Rectangular(0.46, 0.26));
              assertThat(lost.why()).isEqualTo("size over the insulation");
            });
  }

  @Test
  void sizeIsThatOfTheDuctInWhateverOrderTheyStand() {
    isInsulatedBy30Mm(read(UNDRAWN + stated(OVERALL, SIZE, THICKNESS)));
    isInsulatedBy30Mm(read(UNDRAWN + stated(SIZE, OVERALL, THICKNESS)));
  }

  @Test
  void bareBodyDoesNotContradictIt() {
    isInsulatedBy30Mm(read(drawn(400, 200) + stated(OVERALL, SIZE, SIDES, THICKNESS)));
  }

  /** A lining of 0 mm is none. */
  @Test
  void insulationIsTakenOffTheBodyThatIsDrawnAsWide() {
    MepModel all = read(drawn(460, 260) + stated(OVERALL, SIZE, SIDES, THICKNESS, UNLINED));
    MepModel sidesOnly = read(drawn(460, 260) + stated(OVERALL, SIDES));

    isInsulatedBy30Mm(all);
    assertThat(value(element(sidesOnly, 1).section())).isEqualTo(new Section.Rectangular(0.4, 0.2));
    assertThat(InsulationTest.mm(InsulationTest.of(sidesOnly, 1))).isCloseTo(30, within(0.01));
  }

  @Test
  void whereNothingElseGivesTheSizeItIsThatLessTheInsulation() {
    isInsulatedBy30Mm(read(UNDRAWN + stated(OVERALL, THICKNESS)));
  }

  @Test
  void aloneItTellsNoSize() {
    assertThat(element(read(UNDRAWN + stated(OVERALL)), 1).section()).isNull();
  }
}
