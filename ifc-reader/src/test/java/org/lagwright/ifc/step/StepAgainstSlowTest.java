package org.lagwright.ifc.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.SharedModels;

/** Whatever the file and wherever it is cut, the fast reader finds what the slow one finds. */
class StepAgainstSlowTest {

  /** Bytes of a part, and how many of them are gone through at a time. */
  private record Cutting(int partBytes, int chunkBytes) {}

  private static final List<Cutting> CUTTINGS =
      List.of(
          new Cutting(8, 1 << 18),
          new Cutting(61, 16),
          new Cutting(500, 200),
          new Cutting(1 << 20, 1),
          new Cutting(1 << 20, 300),
          new Cutting(1 << 20, 1 << 18));

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 20261125})
  void anyFileReadsTheSameInOnePartAndInMany(long seed, @TempDir Path folder) throws IOException {
    for (int i = 0; i < 400; i++) {
      long fileSeed = seed * 1000 + i;
      byte[] bytes = HostileFiles.write(fileSeed);
      CUTTINGS.forEach(cutting -> assertSame("seed " + fileSeed, bytes, cutting));
      if (i % 10 == 0) {
        StepBytes mapped = StepFileTest.mapped(bytes, folder);
        CUTTINGS.forEach(cutting -> assertSame("mapped, seed " + fileSeed, mapped, bytes, cutting));
      }
    }
  }

  @Test
  void publicModelsReadTheSameInOnePartAndInMany() throws IOException {
    try (Stream<Path> files = Files.walk(SharedModels.folder())) {
      List<Path> models = files.filter(f -> f.toString().endsWith(".ifc")).sorted().toList();
      for (Path model : models) {
        byte[] bytes = Files.readAllBytes(model);
        if (bytes.length < 100_000) {
          CUTTINGS.forEach(cutting -> assertSame(model.toString(), bytes, cutting));
        }
      }
    }
  }

  private static void assertSame(String file, byte[] bytes, Cutting cutting) {
    assertSame(file, StepBytes.of(bytes), bytes, cutting);
  }

  private static void assertSame(String file, StepBytes read, byte[] bytes, Cutting cutting) {
    String name = file + " " + cutting;
    SlowStep slow = SlowStep.read(bytes);
    try {
      StepFile fast =
          new StepIndexer(
                  read,
                  StepLimits.DEFAULT,
                  k -> true,
                  n -> {},
                  cutting.partBytes(),
                  cutting.chunkBytes())
              .run();
      assertThat(slow.refusal).as(name).isEmpty();
      assertSame(name, fast, slow);
    } catch (StepException e) {
      assertRefused(name + ": " + e.getMessage(), e, slow.refusal);
    }
  }

  private static void assertSame(String name, StepFile fast, SlowStep slow) {
    assertThat(fast.schema()).as(name).isEqualTo(slow.schema);
    assertThat(fast.counts()).as(name).isEqualTo(slow.counts);
    assertThat(fast.size()).as(name).isEqualTo(slow.offsets.size());
    assertThat(fast.greatestId())
        .as(name)
        .isEqualTo(slow.offsets.keySet().stream().mapToLong(id -> id).max().orElse(0));
    slow.offsets.forEach(
        (id, at) -> assertThat(fast.offset(id)).as(name + " #" + id).isEqualTo(at));
    slow.ids.forEach(
        (keyword, ids) ->
            assertThat(fast.ids(List.of(keyword)))
                .as(name)
                .containsExactly(ids.stream().mapToLong(id -> id).sorted().toArray()));
    assertThat(fast.offset(slow.offsets.size() + 777_777_777L)).as(name).isEqualTo(-1);
    assertThat(fast.problems()).as(name).hasSameSizeAs(slow.problems);
    for (int i = 0; i < slow.problems.size(); i++) {
      assertThat(fast.problems().get(i).line()).as(name).isEqualTo(slow.problems.get(i).line());
      assertThat(fast.problems().get(i).what()).as(name).contains(slow.problems.get(i).what());
    }
  }

  private static void assertRefused(String name, StepException e, String refusal) {
    assertThat(refusal).as(name).isNotEmpty();
    int blank = refusal.indexOf(' ');
    assertThat(e.line()).as(name).isEqualTo(Long.parseLong(refusal.substring(0, blank)));
    assertThat(e.getMessage()).as(name).contains(refusal.substring(blank + 1));
  }

  /** Eight digits are read at once; this holds them against the plain way. */
  @ParameterizedTest
  @ValueSource(strings = {"0", "7", "42", "99999999", "00000001", "1234567", "12345678"})
  void wholeNumbersAreReadAtOnce(String digits) {
    byte[] bytes = (digits + "=(;'/#:x").getBytes(StandardCharsets.US_ASCII);
    long word = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getLong();

    assertThat(StepNumber.leadingDigits(word)).isEqualTo(digits.length());
    assertThat(StepNumber.wholeNumber(word, digits.length())).isEqualTo(Long.parseLong(digits));
  }
}
