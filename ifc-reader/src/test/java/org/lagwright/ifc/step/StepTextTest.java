package org.lagwright.ifc.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Escapes of ISO 10303-21:2016 clause 6.4.3, and what exporters make of them. */
class StepTextTest {

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "plain,plain",
        "it''s,it's",
        "a\\\\b,a\\b",
        "K\\X\\E4lte,Kälte",
        "\\X2\\00D8\\X0\\ 60,Ø 60",
        "\\X2\\041404 1B\\X0\\,Д04 1B\\X0\\",
        "\\X4\\0001F6E0\\X0\\,\uD83D\uDEE0",
        "K\\S\\dlte,Kälte",
        "\\PE\\\\S\\R,в",
        "C:\\temp,C:\\temp",
        "\\X2\\00D8,Ø",
        "abc\\S\\'def,abc§def",
        "lone \\X2\\ stays,lone \\X2\\ stays"
      })
  void escapesAreDecoded(String raw, String expected) {
    assertThat(StepText.decode(raw.getBytes(StandardCharsets.US_ASCII))).isEqualTo(expected);
  }

  @Test
  void utf8BytesEscapedOneByOneAreReadAsUtf8() {
    assertThat(decode("viem\\X\\C3\\X\\A4ri")).isEqualTo("viemäri");
    assertThat(decode("viem\\X2\\00C3\\X0\\\\X2\\00A4\\X0\\ri")).isEqualTo("viemäri");
  }

  @Test
  void rawBytesAreReadAsUtf8IfTheyAreThatElseAsWindows1252() {
    assertThat(StepText.decode("Kälte".getBytes(StandardCharsets.UTF_8))).isEqualTo("Kälte");
    assertThat(StepText.decode("K\u00E4lte \u20AC".getBytes(Charset.forName("windows-1252"))))
        .isEqualTo("Kälte \u20AC");
  }

  private static String decode(String raw) {
    return StepText.decode(raw.getBytes(StandardCharsets.US_ASCII));
  }
}
