package org.lagwright.ifc.extract.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Thicknesses in texts that nobody wrote by hand. */
class WordedThicknessTest {

  /** Looked through from each of its digits on, it would take an hour. */
  @ParameterizedTest
  @ValueSource(strings = {"", "+"})
  void aLongRowOfDigitsIsLookedThroughOnce(String sign) {
    String text = "0".repeat(1_000_000) + sign;

    Optional<Double> thicknessM =
        assertTimeoutPreemptively(Duration.ofMinutes(1), () -> WordedThickness.metres(text));

    assertThat(thicknessM).isEmpty();
  }
}
