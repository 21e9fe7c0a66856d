package org.lagwright.testmodels.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class StepWriterTest {

  @Test
  void realsHaveADotAndNoExponent() {
    assertThat(StepText.encode(25.0)).isEqualTo("25.");
    assertThat(StepText.encode(60.3)).isEqualTo("60.3");
    assertThat(StepText.encode(0.00001)).isEqualTo("0.00001");
    assertThat(StepText.encode(-0.0)).isEqualTo("0.");
    assertThat(StepText.encode(1e9)).isEqualTo("1000000000.");
  }

  @Test
  void realsThatAreNotFiniteAreRefused() {
    assertThatThrownBy(() -> StepText.encode(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void integersHaveNoDot() {
    assertThat(StepText.encode(3)).isEqualTo("3");
  }

  @Test
  void quotesAndSolidusAreDoubled() {
    assertThat(StepText.encode("it's a\\b")).isEqualTo("'it''s a\\\\b'");
  }

  @Test
  void neighboursBeyondAsciiShareOneEscape() {
    assertThat(StepText.encode("Kälte Ø²!"))
        .isEqualTo("'K\\X2\\00E4\\X0\\lte \\X2\\00D800B2\\X0\\!'");
  }

  @Test
  void anEscapeAtTheEndIsClosed() {
    assertThat(StepText.encode("60 Ø")).isEqualTo("'60 \\X2\\00D8\\X0\\'");
  }

  @Test
  void selectsEnumerationsAndListsNest() {
    Object value = List.of(Value.typed("IfcLabel", "x"), Value.token("BEND"), new Ref(7));
    assertThat(StepText.encode(value)).isEqualTo("(IFCLABEL('x'),.BEND.,#7)");
  }

  @Test
  void nullAndDerivedHaveTheirSigns() {
    assertThat(StepText.encode(null)).isEqualTo("$");
    assertThat(StepText.encode(Value.DERIVED)).isEqualTo("*");
  }

  @Test
  void sharedRecordsAreWrittenOnce() {
    StepWriter writer = new StepWriter("IFC4", "x.ifc");
    Ref first = writer.share("IfcDirection", List.of(0.0, 0.0, 1.0));
    assertThat(writer.share("IfcDirection", List.of(0.0, 0.0, 1.0))).isEqualTo(first);
    assertThat(writer.add("IfcDirection", List.of(0.0, 0.0, 1.0))).isNotEqualTo(first);
  }

  @Test
  void numbersNeverGoBack() {
    StepWriter writer = new StepWriter("IFC4", "x.ifc");
    writer.add("IfcDirection", List.of(0.0, 0.0, 1.0));
    assertThatThrownBy(() -> writer.numberFrom(1)).isInstanceOf(IllegalArgumentException.class);
  }
}
