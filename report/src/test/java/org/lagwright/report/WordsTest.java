package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.FindingCode.Severity;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.thickness.Demand;

class WordsTest {

  @ParameterizedTest
  @CsvSource({
    "PIPE_SEGMENT, pipe",
    "PIPE_FITTING, pipe fitting",
    "DUCT_SEGMENT, duct",
    "DUCT_FITTING, duct fitting",
    "INLINE, in-line item"
  })
  void kindsAreWordsOfTheSite(Kind kind, String word) {
    assertThat(Words.kind(kind)).isEqualTo(word);
  }

  @ParameterizedTest
  @EnumSource(Form.class)
  void formsAreWordsWithoutHyphens(Form form) {
    assertThat(Words.form(form)).matches("[a-z ]+");
  }

  @Test
  void kindsFormsAndDemandsKeepApartInWords() {
    assertThat(Stream.of(Kind.values()).map(Words::kind)).doesNotHaveDuplicates();
    assertThat(Stream.of(Form.values()).map(Words::form)).doesNotHaveDuplicates();
    assertThat(Stream.of(Demand.Kind.values()).map(Words::demand)).doesNotHaveDuplicates();
  }

  @Test
  void findingsAndOriginsAreReadable() {
    assertThat(Words.effect(Effect.LEFT_OUT)).isEqualTo("left out");
    assertThat(Words.effect(Effect.NONE)).isEqualTo("no change");
    assertThat(Words.severity(Severity.WARNING)).isEqualTo("warning");
    assertThat(Words.how(How.QUANTITY_SET)).isEqualTo("quantity set");
  }

  @ParameterizedTest
  @CsvSource({"24, 24", "0.9, 0.9", "100, 100", "-0.5, -0.5"})
  void numbersHaveNoNeedlessZeros(double number, String shown) {
    assertThat(Words.plain(number)).isEqualTo(shown);
  }
}
