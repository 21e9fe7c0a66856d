package org.lagwright.testmodels.golden;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class GoldenTest {

  @BeforeEach
  void onlyWhereFilesAreCompared() {
    assumeFalse(System.getProperty("lagwright.golden", "").equals("write"), "files are written");
  }

  @Test
  void anEqualTextPasses() {
    assertThatCode(() -> Golden.check(GoldenTest.class, "two-lines.txt", "one\ntwo\n"))
        .doesNotThrowAnyException();
  }

  @Test
  void theFirstDifferentLineIsNamed() {
    assertThatThrownBy(() -> Golden.check(GoldenTest.class, "two-lines.txt", "one\nthree\n"))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("line 2")
        .hasMessageContaining("expected: two")
        .hasMessageContaining("but was:  three");
  }

  @Test
  void aMissingFileSaysHowToWriteIt() {
    assertThatThrownBy(() -> Golden.check(GoldenTest.class, "none.txt", ""))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("-Dlagwright.golden=write");
  }
}
