package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTextTest {

  @Test
  void controlCharactersAndLineBreaksBecomeSpaces() {
    assertThat(PlainText.oneLine("a\u001b[31mb\r\n\tc\u0085d\u2028e\u202ef"))
        .isEqualTo("a [31mb   c d e f");
  }

  @Test
  void lettersOfAllLanguagesStay() {
    assertThat(PlainText.oneLine("Kälte \u51b7\u6c34 \ud83d\udd27 Ø50"))
        .isEqualTo("Kälte \u51b7\u6c34 \ud83d\udd27 Ø50");
  }

  @Test
  void whatNoFileCanHoldBecomesAQuestionMark() {
    assertThat(PlainText.oneLine("a\ud83d \udd27b\uffff")).isEqualTo("a? ?b?");
  }
}
