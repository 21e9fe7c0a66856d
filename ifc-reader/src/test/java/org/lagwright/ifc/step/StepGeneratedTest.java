package org.lagwright.ifc.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random files, written with what they hold beside them. */
class StepGeneratedTest {

  @TempDir Path folder;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 20261125, 987654321})
  void whatWasWrittenIsRead(long seed) throws IOException {
    Random random = new Random(seed);
    Map<Long, List<String>> texts = new LinkedHashMap<>();
    String content = generate(random, texts);
    Path path = Files.write(folder.resolve("m.ifc"), content.getBytes(StandardCharsets.ISO_8859_1));

    StepFile file =
        StepFile.open(StepBytes.map(path), StepLimits.DEFAULT, keyword -> true, bytes -> {});

    assertThat(file.size()).isEqualTo(texts.size());
    assertThat(file.problems()).isEmpty();
    texts.forEach((id, expected) -> assertThat(textsOf(file, id)).isEqualTo(expected));
    assertThat(file.ids(List.of("TEXTS")))
        .hasSize(texts.size())
        .containsExactlyInAnyOrder(idsOf(texts));
  }

  private static long[] idsOf(Map<Long, List<String>> texts) {
    return texts.keySet().stream().mapToLong(Long::longValue).toArray();
  }

  private static List<String> textsOf(StepFile file, long id) {
    StepArguments arguments = Objects.requireNonNull(file.find(id)).arguments();
    List<String> found = new ArrayList<>();
    for (int i = 0; i < arguments.size(); i++) {
      found.add(arguments.text(i).orElseThrow());
    }
    return found;
  }

  private static String generate(Random random, Map<Long, List<String>> texts) {
    StringBuilder out = new StringBuilder("ISO-10303-21;HEADER;FILE_SCHEMA(('IFC4'));ENDSEC;DATA;");
    for (int i = 0; i < 500; i++) {
      long id = 1 + (random.nextBoolean() ? random.nextInt(3000) : random.nextLong(1L << 40));
      if (!texts.containsKey(id)) {
        texts.put(id, record(out, id, random));
      }
    }
    return out.append("ENDSEC;END-ISO-10303-21;").toString();
  }

  private static List<String> record(StringBuilder out, long id, Random random) {
    out.append(space(random)).append('#').append(id).append(space(random)).append('=');
    out.append(space(random)).append(random.nextBoolean() ? "TEXTS" : "texts").append('(');
    List<String> values = new ArrayList<>();
    int count = 1 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      String value = text(random);
      values.add(value);
      out.append(i == 0 ? "" : ",").append(space(random));
      out.append('\'').append(value.replace("\\", "\\\\").replace("'", "''")).append('\'');
      out.append(space(random));
    }
    out.append(')').append(space(random)).append(';');
    return values;
  }

  private static String text(Random random) {
    String letters = "ab;(),'#=*/\\$ 1.";
    StringBuilder text = new StringBuilder();
    int length = random.nextInt(40);
    for (int i = 0; i < length; i++) {
      text.append(letters.charAt(random.nextInt(letters.length())));
    }
    return text.toString();
  }

  private static String space(Random random) {
    return switch (random.nextInt(6)) {
      case 0 -> "\r\n";
      case 1 -> "  \t";
      case 2 -> "/* ; ' ( */";
      default -> "";
    };
  }
}
