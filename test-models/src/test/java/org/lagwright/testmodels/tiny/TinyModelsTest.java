package org.lagwright.testmodels.tiny;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TinyModelsTest {

  /** Small enough to read in one look. */
  private static final int LARGEST = 2_600;

  static Stream<String> names() {
    return TinyModels.list().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void committedFileIsWhatTheCodeWrites(String name) {
    assertThat(new String(TinyModels.read(name), StandardCharsets.US_ASCII))
        .as(
            "Tiny model differs from the code. If that is meant, run the main class"
                + " org.lagwright.testmodels.tiny.WriteTiny with the folder"
                + " test-models/src/main/resources/org/lagwright/testmodels/tiny")
        .isEqualTo(TinyModels.write(name));
  }

  @ParameterizedTest
  @MethodSource("names")
  void modelIsTinyAndNamedAsASentence(String name) {
    assertThat(TinyModels.read(name)).hasSizeLessThan(LARGEST);
    assertThat(name).matches("[a-z0-9]+(-[a-z0-9]+){3,}");
  }

  @Test
  void unknownNameIsRefused() {
    assertThatThrownBy(() -> TinyModels.read("no-such-rule"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no-such-rule");
  }

  @Test
  void numbersInTheLargeNumberModelAreBeyondAnInt() {
    String text = TinyModels.write("ids-beyond-2-to-the-31");
    assertThat(text).contains("\n#4294967300=").doesNotContain("\n#1=");
  }
}
