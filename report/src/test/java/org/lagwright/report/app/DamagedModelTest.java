package org.lagwright.report.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.source.ModelException;
import org.lagwright.ifc.source.ModelReader;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.settings.SettingsReader;
import org.lagwright.testmodels.demo.AlderQuay;
import org.lagwright.testmodels.ifc.Schema;

/**
 * The demo model with records removed, references bent, numbers spoilt. Whatever is left is taken
 * off with an account that adds up, or refused in one line; nothing else may be thrown.
 */
class DamagedModelTest {

  private static final int RUNS = 25;
  private static final long SEED = 20261125;
  private static final Pattern REFERENCE = Pattern.compile("#\\d+(?=[,)])");
  private static final Pattern NUMBER = Pattern.compile("(?<=[,(])-?\\d+\\.\\d*");

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(Schema.class)
  void aDamagedModelIsTakenOffOrRefusedInOneLine(Schema schema) throws IOException {
    List<String> records = Arrays.asList(AlderQuay.write(schema).split("\n"));
    int takenOff = 0;
    for (int run = 0; run < RUNS; run++) {
      Random random = new Random(SEED + run);
      String damaged = String.join("\n", damage(records, random));
      Path file = Files.writeString(folder.resolve("m.ifc"), damaged, StandardCharsets.ISO_8859_1);
      takenOff += takeOffOrRefuse(file, "seed " + (SEED + run)) ? 1 : 0;
    }

    assertThat(takenOff).isGreaterThan(RUNS / 2);
  }

  private static boolean takeOffOrRefuse(Path file, String seed) {
    MepModel model;
    try {
      model = ModelReader.read(file, 0, ProgressListener.SILENT);
    } catch (ModelException e) {
      assertThat(e.getMessage()).as(seed).doesNotContain("\n").endsWith(".");
      return false;
    }
    Takeoff takeoff = Takeoff.of(List.of(model), SettingsReader.defaults());
    assertThat(takeoff.totals().read()).as(seed).isEqualTo(model.elements().size());
    return true;
  }

  private static List<String> damage(List<String> records, Random random) {
    List<String> damaged = new ArrayList<>(records);
    int wounds = 1 + random.nextInt(40);
    for (int i = 0; i < wounds; i++) {
      int at = random.nextInt(damaged.size());
      String record = damaged.get(at);
      switch (random.nextInt(6)) {
        case 0 -> damaged.remove(at);
        case 1 -> damaged.set(at, bend(REFERENCE, record, "#" + (1 + random.nextInt(5000))));
        case 2 -> damaged.set(at, bend(NUMBER, record, "0."));
        case 3 -> damaged.set(at, bend(NUMBER, record, random.nextBoolean() ? "-1.E30" : "1.E300"));
        case 4 -> damaged.set(at, bend(NUMBER, record, random.nextBoolean() ? "1.#INF" : "$"));
        default -> damaged.set(at, flip(record, random));
      }
    }
    return damaged;
  }

  private static String bend(Pattern what, String record, String to) {
    return what.matcher(record).replaceFirst(Matcher.quoteReplacement(to));
  }

  private static String flip(String record, Random random) {
    if (record.isEmpty()) {
      return record;
    }
    int at = random.nextInt(record.length());
    return record.substring(0, at) + (char) (32 + random.nextInt(90)) + record.substring(at + 1);
  }
}
