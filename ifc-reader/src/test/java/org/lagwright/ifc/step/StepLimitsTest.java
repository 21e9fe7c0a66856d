package org.lagwright.ifc.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Hostile files end in a message or in nothing, within bounds that are written down. */
class StepLimitsTest {

  private static final String HEADER = "ISO-10303-21;HEADER;FILE_SCHEMA(('IFC4'));ENDSEC;DATA;\n";
  private static final String END = "ENDSEC;END-ISO-10303-21;";

  /** 3 records, 2 keywords, 2 brackets, 100 bytes a record, 20 bytes a text. */
  private static final StepLimits TIGHT = new StepLimits(3, 2, 2, 100, 20, 5, 1000, 10);

  @Test
  void withinTheLimitsAFileIsRead() {
    assertThat(open("#1=A(('x'));#2=B();#3=A(1);").size()).isEqualTo(3);
  }

  @Test
  void records() {
    assertRefused("#1=A();#2=A();#3=A();#4=A();", "more than 3 records");
  }

  @Test
  void keywords() {
    assertRefused("#1=A();#2=B();\n#3=C();", "more than 2 keywords");
  }

  @Test
  void lengthOfARecord() {
    assertRefused("#1=A();\n#2=A('" + "x".repeat(100) + "');", "longer than 100 bytes");
  }

  /** What is never closed is looked for no further than a record may reach. */
  @Test
  void lengthOfACommentThatIsNeverClosed() {
    assertRefused("#1=A();\n#2=A(/*" + "x".repeat(1000) + ");", "longer than 100 bytes");
  }

  @Test
  void lengthOfAText() {
    StepFile file = open("#1=A('" + "x".repeat(19) + "','" + "y".repeat(18) + "');");
    StepArguments arguments = Objects.requireNonNull(file.find(1)).arguments();

    assertThat(arguments.text(0)).isEmpty();
    assertThat(arguments.text(1)).contains("y".repeat(18));
  }

  @Test
  void nesting() {
    StepFile file = open("#1=A((1));#2=A(((1)));");

    assertThat(Objects.requireNonNull(file.find(1)).arguments().list(0).number(0)).isEqualTo(1);
    assertThat(Objects.requireNonNull(file.find(2)).arguments().size()).isZero();
  }

  @Test
  void aKeywordThatNeverEndsIsNone() {
    StepFile file =
        StepFile.open(
            bytes("#1=" + "A".repeat(200) + "();#2=A();"), StepLimits.DEFAULT, k -> true, n -> {});

    assertThat(file.size()).isEqualTo(1);
    assertThat(file.problems()).hasSize(1);
  }

  @Test
  void eachLimitStandsInTheGuideWithItsValue() throws IOException {
    String guide = Files.readString(Path.of("../DEVELOPERS.md"));

    for (RecordComponent limit : StepLimits.class.getRecordComponents()) {
      assertThat(guide)
          .containsPattern(
              "\\| `" + limit.getName() + "` \\| " + value(limit) + " \\| [^|]{10,} \\|");
    }
  }

  private static String value(RecordComponent limit) {
    try {
      Number value = (Number) limit.getAccessor().invoke(StepLimits.DEFAULT);
      return NumberFormat.getIntegerInstance(Locale.ROOT)
          .format(value.longValue())
          .replace(',', ' ');
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  private static StepFile open(String records) {
    return StepFile.open(bytes(records), TIGHT, k -> true, n -> {});
  }

  private static StepBytes bytes(String records) {
    return StepBytes.of((HEADER + records + END).getBytes(StandardCharsets.US_ASCII));
  }

  private static void assertRefused(String records, String why) {
    assertThatThrownBy(() -> open(records))
        .isInstanceOf(StepException.class)
        .hasMessageContaining(why);
  }
}
