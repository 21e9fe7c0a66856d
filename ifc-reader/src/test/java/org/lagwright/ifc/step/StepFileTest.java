package org.lagwright.ifc.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.step.StepArguments.Token;

class StepFileTest {

  private static final String HEADER =
      "ISO-10303-21;HEADER;FILE_DESCRIPTION((''),'2;1');FILE_SCHEMA(('IFC4'));ENDSEC;DATA;\n";
  private static final String END = "ENDSEC;END-ISO-10303-21;";

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r", "", " ", "/* a comment; with a 'quote */"})
  void recordsAreFoundWhateverStandsBetweenThem(String between) {
    StepFile file = open("#1=A(1);" + between + "#2 = B ( 2 ) ;" + between + "#3= c(3);" + between);

    assertThat(file.size()).isEqualTo(3);
    assertThat(record(file, 2).keyword()).isEqualTo("B");
    assertThat(record(file, 3).keyword()).isEqualTo("C");
    assertThat(record(file, 3).arguments().number(0)).isEqualTo(3);
    assertThat(file.counts()).containsEntry("A", 1).containsEntry("B", 1).containsEntry("C", 1);
    assertThat(file.ids(List.of("C"))).containsExactly(3);
    assertThat(file.problems()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {" /* mm */", "/**/", "/*a*//* b, (c) */", " /* 1 / 2 */\n"})
  void commentsBeforeAndBehindArgumentsCountForNothing(String comment) {
    String text = "#1=A(4000.%1$s,.X.%1$s,'t'%1$s,#7%1$s,(1.%1$s,%1$s2.),(#8%1$s,#9),%1$s5);";
    StepArguments arguments = record(open(text.formatted(comment)), 1).arguments();

    assertThat(arguments.number(0)).isEqualTo(4000);
    assertThat(arguments.enumeration(1)).contains("X");
    assertThat(arguments.text(2)).contains("t");
    assertThat(arguments.reference(3)).isEqualTo(7);
    assertThat(arguments.numbers(4)).containsExactly(1, 2);
    assertThat(arguments.references(5)).containsExactly(8, 9);
    assertThat(arguments.number(6)).isEqualTo(5);
  }

  @Test
  void semicolonsAndBracketsInStringsAndCommentsCountForNothing() {
    StepFile file = open("#1=A('a;)(',/* ); */'it''s; ''',.X.);#2=B($);");

    StepArguments arguments = record(file, 1).arguments();
    assertThat(file.size()).isEqualTo(2);
    assertThat(arguments.size()).isEqualTo(3);
    assertThat(arguments.text(0)).contains("a;)(");
    assertThat(arguments.text(1)).contains("it's; '");
    assertThat(arguments.enumeration(2)).contains("X");
  }

  @Test
  void everyKindOfArgumentIsToldApart() {
    StepArguments a =
        record(open("#1=A($,*,#2,-1.5E-3,'t',.bend.,(1,2),IFCLABEL('x'),\"0F\",.5);"), 1)
            .arguments();

    assertThat(a.token(0)).isEqualTo(Token.NULL);
    assertThat(a.token(1)).isEqualTo(Token.DERIVED);
    assertThat(a.reference(2)).isEqualTo(2);
    assertThat(a.number(3)).isEqualTo(-0.0015);
    assertThat(a.text(4)).contains("t");
    assertThat(a.enumeration(5)).contains("BEND");
    assertThat(a.list(6).size()).isEqualTo(2);
    assertThat(a.keyword(7)).contains("IFCLABEL");
    assertThat(a.text(7)).contains("x");
    assertThat(a.token(8)).isEqualTo(Token.OTHER);
    assertThat(a.number(9)).isEqualTo(0.5);
    assertThat(a.token(10)).isEqualTo(Token.ABSENT);
    assertThat(a.reference(10)).isZero();
    assertThat(a.number(0)).isNaN();
  }

  @Test
  void nestedListsAreFlattenedOnRequest() {
    StepArguments a = record(open("#1=A(((0.,1.),( 2. ,3.)),(#4,$,#5));"), 1).arguments();

    assertThat(a.numbers(0)).containsExactly(0, 1, 2, 3);
    assertThat(a.references(1)).containsExactly(4, 5);
    assertThat(a.list(0).list(1).number(1)).isEqualTo(3);
  }

  @Test
  void numbersAreExactlyRounded() {
    StepArguments a =
        record(open("#1=A(0.1,24525622.89,1.7976931348623157E308,1.#INF,123456789.123456789);"), 1)
            .arguments();

    assertThat(a.number(0)).isEqualTo(0.1);
    assertThat(a.number(1)).isEqualTo(24525622.89);
    assertThat(a.number(2)).isEqualTo(Double.MAX_VALUE);
    assertThat(a.number(3)).isNaN();
    assertThat(a.number(4)).isEqualTo(Double.parseDouble("123456789.123456789"));
  }

  @Test
  void idsBeyondThirtyTwoBitsWork() {
    StepFile file = open("#4294967300=A(#9223372036854770000);#9223372036854770000=B(1);#7=C();");

    assertThat(file.greatestId()).isEqualTo(9223372036854770000L);
    assertThat(record(file, 4294967300L).arguments().reference(0)).isEqualTo(9223372036854770000L);
    assertThat(file.find(4294967301L)).isNull();
    assertThat(record(file, 7).arguments().size()).isZero();
  }

  @Test
  void ofTwoRecordsWithOneNumberTheFirstIsUsedAndTheLineIsNamed() {
    StepFile file = open("#1=A(1);\n#1=A(2);\n");

    assertThat(record(file, 1).arguments().number(0)).isEqualTo(1);
    assertThat(file.problems()).hasSize(1);
    assertThat(file.problems().get(0).line()).isEqualTo(3);
    assertThat(file.problems().get(0).what()).contains("#1").contains("twice");
  }

  @Test
  void rubbishBetweenRecordsIsSteppedOverAndNamed() {
    StepFile file = open("#1=A(1);;\nrubbish;\n#0=A();#2=B();");

    assertThat(file.size()).isEqualTo(2);
    assertThat(file.problems()).hasSize(3);
  }

  @Test
  void aMissingBracketDoesNotSwallowTheNextRecord() {
    StepArguments a = record(open("#1=A(1,(2,3;#2=B(4);"), 1).arguments();

    assertThat(a.number(0)).isEqualTo(1);
    assertThat(a.size()).isLessThanOrEqualTo(2);
  }

  @Test
  void bracketsBeyondTheLimitReadAsNothing() {
    String deep = "(".repeat(200) + ")".repeat(200);

    assertThat(record(open("#1=A" + deep + ";#2=B(1);"), 1).arguments().size()).isZero();
  }

  @Test
  void aCutOffFileIsRefusedWithTheLine() {
    String text = HEADER + "#1=A(1);\n#2=B('never clo";

    assertThatThrownBy(() -> open(text.getBytes(StandardCharsets.US_ASCII)))
        .isInstanceOf(StepException.class)
        .hasMessageContaining("cut off")
        .extracting(e -> ((StepException) e).line())
        .isEqualTo(3L);
  }

  @Test
  void aFileWithoutItsEndIsRefused() {
    String text = HEADER + "#1=A(1);\n";

    assertThatThrownBy(() -> open(text.getBytes(StandardCharsets.US_ASCII)))
        .isInstanceOf(StepException.class)
        .hasMessageContaining("ENDSEC");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "<ifcXML/>", "PK", "ISO-10303-22;"})
  void whatIsNoExchangeFileIsRefused(String text) {
    assertThatThrownBy(() -> open(text.getBytes(StandardCharsets.US_ASCII)))
        .isInstanceOf(StepException.class)
        .hasMessageContaining("not an IFC file");
  }

  @Test
  void aFileWithoutSchemaIsRefused() {
    String text = "ISO-10303-21;HEADER;ENDSEC;DATA;" + END;

    assertThatThrownBy(() -> open(text.getBytes(StandardCharsets.US_ASCII)))
        .isInstanceOf(StepException.class)
        .hasMessageContaining("FILE_SCHEMA");
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    StepFile file = open(("\uFEFF" + HEADER + "#1=A();" + END).getBytes(StandardCharsets.UTF_8));

    assertThat(file.size()).isEqualTo(1);
  }

  /** Of any length, also where they are just too long to be exact without help. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 20261126})
  void decimalsAreRoundedAsJavaRoundsThem(long seed) {
    Random random = new Random(seed);
    List<String> decimals = new ArrayList<>();
    for (int i = 0; i < 4000; i++) {
      String digits = new BigInteger(1 + random.nextInt(70), random).toString();
      int point = random.nextInt(digits.length() + 1);
      String zeros = "0".repeat(random.nextInt(4) == 0 ? random.nextInt(25) : 0);
      String sign = random.nextBoolean() ? "" : "-";
      decimals.add(sign + digits.substring(0, point) + "." + zeros + digits.substring(point));
    }
    StepArguments read = record(open("#1=A(" + String.join(",", decimals) + ");"), 1).arguments();

    for (int i = 0; i < decimals.size(); i++) {
      String decimal = decimals.get(i);
      boolean isNumber = !decimal.matches("-?\\.");
      assertThat(read.number(i))
          .as("seed " + seed + ": " + decimal)
          .isEqualTo(isNumber ? Double.parseDouble(decimal) : Double.NaN);
    }
  }

  /** Records are read page by page; none may be cut off where a page ends, however long it is. */
  @ParameterizedTest
  @ValueSource(ints = {1, 97, 1000, 1024, 8190, 8192, 9300, 65_530, 70_000, 600_000, 1_048_000})
  void recordsOfAnyLengthAreReadAsAWhole(int length, @TempDir Path folder) throws IOException {
    StringBuilder records = new StringBuilder();
    int count = Math.max(4, 40_000 / length);
    for (int i = 1; i <= count; i++) {
      records.append("#" + i + "=A('" + "x;".repeat(length / 2) + "'," + i + ",(#7,#8));\n");
    }
    byte[] text = text(records.toString());

    assertWholeRecords(open(text), count, length / 2 * 2);
    assertWholeRecords(open(mapped(text, folder)), count, length / 2 * 2);
  }

  private static void assertWholeRecords(StepFile file, int count, int length) {
    StepGlance glance = file.glance();
    for (int i = 1; i <= count; i++) {
      StepArguments arguments = record(file, i).arguments();
      assertThat(arguments.text(0).orElseThrow()).hasSize(length);
      assertThat(arguments.number(1)).isEqualTo(i);
      assertThat(arguments.references(2)).containsExactly(7, 8);
      assertThat(glance.at(i)).isNotNull();
      assertThat(glance.firstLabel()).isEqualTo(arguments.text(0).orElseThrow());
      assertThat(glance.has(2)).isTrue();
    }
  }

  /** The bytes as those of a large file are: mapped, not kept as a whole. */
  static StepBytes mapped(byte[] bytes, Path folder) throws IOException {
    Path file = Files.write(folder.resolve("mapped.ifc"), bytes);
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      StepBytes mapped = StepBytes.map(channel, StepBytes.Arrival.COMPLETE);
      assertThat(mapped.whole()).isNull();
      return mapped;
    }
  }

  @Test
  void moreRecordsThanTheLimitAreRefused() {
    StepLimits tight = new StepLimits(2, 100, 10, 1000, 100, 10, 1000, 10);
    byte[] text = (HEADER + "#1=A();#2=A();#3=A();" + END).getBytes(StandardCharsets.US_ASCII);

    assertThatThrownBy(() -> StepFile.open(StepBytes.of(text), tight, k -> true, p -> {}))
        .isInstanceOf(StepException.class)
        .hasMessageContaining("2 records");
  }

  private static StepFile open(String records) {
    return open(text(records));
  }

  private static byte[] text(String records) {
    return (HEADER + records + END).getBytes(StandardCharsets.US_ASCII);
  }

  private static StepFile open(byte[] text) {
    return open(StepBytes.of(text));
  }

  private static StepFile open(StepBytes bytes) {
    return StepFile.open(bytes, StepLimits.DEFAULT, keyword -> true, read -> {});
  }

  private static StepRecord record(StepFile file, long id) {
    return Objects.requireNonNull(file.find(id));
  }
}
