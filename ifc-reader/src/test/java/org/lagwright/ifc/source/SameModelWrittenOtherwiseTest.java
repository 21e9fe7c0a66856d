package org.lagwright.ifc.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.ifc.SharedModels;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Section;

/**
 * Every public model once more with its records in another order, under other numbers, or turned
 * and far from zero: kinds, forms, sizes, lengths, angles, systems and storeys stay.
 */
class SameModelWrittenOtherwiseTest {

  private static final long SEED = 20261126;
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/");
  private static final Pattern ID = Pattern.compile("'[^']*'|#(\\d+)");
  private static final Pattern TOP_PLACEMENT =
      Pattern.compile("IFCLOCALPLACEMENT\\s*\\(\\s*\\$\\s*,");

  @TempDir Path folder;

  @Test
  void orderOfTheRecordsDoesNotMatter() throws IOException {
    System.out.println("seed " + SEED);
    assertSameWhen(
        records -> {
          Collections.shuffle(records, new Random(SEED));
          return records;
        });
  }

  @Test
  void numbersOfTheRecordsDoNotMatter() throws IOException {
    assertSameWhen(
        records -> {
          records.replaceAll(
              record -> ID.matcher(record).replaceAll(m -> renumbered(m.group(), m.group(1))));
          return records;
        });
  }

  /** Up to the highest number that fits, and in the opposite order. */
  private static String renumbered(String all, @Nullable String id) {
    return Matcher.quoteReplacement(id == null ? all : "#" + (7_000_000_000L - Long.parseLong(id)));
  }

  @Test
  void placeAndDirectionOfTheSiteDoNotMatter() throws IOException {
    assertSameWhen(
        records -> {
          records.replaceAll(
              r -> TOP_PLACEMENT.matcher(r).replaceFirst("IFCLOCALPLACEMENT(#880000005,"));
          records.add("#880000001=IFCCARTESIANPOINT((3500000.,5400000.,120.));");
          records.add("#880000002=IFCDIRECTION((0.1,0.2,0.97));");
          records.add("#880000003=IFCDIRECTION((0.6,0.8,0.));");
          records.add("#880000004=IFCAXIS2PLACEMENT3D(#880000001,#880000002,#880000003);");
          records.add("#880000005=IFCLOCALPLACEMENT($,#880000004);");
          return records;
        });
  }

  private void assertSameWhen(UnaryOperator<List<String>> rewriting) throws IOException {
    List<Path> models;
    try (Stream<Path> files = Files.list(SharedModels.folder())) {
      models = files.filter(f -> f.toString().endsWith(".ifc")).sorted().toList();
    }
    assertThat(models).hasSizeGreaterThan(20);
    for (Path model : models) {
      String text = Files.readString(model, StandardCharsets.ISO_8859_1);
      int from = text.indexOf("DATA;") + "DATA;".length();
      int to = text.lastIndexOf("ENDSEC");
      List<String> records = records(COMMENT.matcher(text.substring(from, to)).replaceAll(" "));
      String rewritten =
          text.substring(0, from)
              + "\n"
              + String.join("\n", rewriting.apply(records))
              + "\n"
              + text.substring(to);
      Path file = folder.resolve("rewritten.ifc");
      Files.writeString(file, rewritten, StandardCharsets.ISO_8859_1);

      Map<String, String> measured = measures(file);
      measures(model)
          .forEach(
              (id, is) ->
                  assertThat(measured)
                      .extractingByKey(id)
                      .as("%s %s", model.getFileName(), id)
                      .isEqualTo(is));
    }
  }

  private static List<String> records(String data) {
    List<String> records = new ArrayList<>();
    boolean quoted = false;
    int from = 0;
    for (int i = 0; i < data.length(); i++) {
      quoted ^= data.charAt(i) == '\'';
      if (data.charAt(i) == ';' && !quoted) {
        records.add(data.substring(from, i + 1).trim());
        from = i + 1;
      }
    }
    return records;
  }

  private static Map<String, String> measures(Path file) {
    MepModel model = ModelReader.read(file, 0, ProgressListener.SILENT);
    Map<String, String> measures = new TreeMap<>();
    for (MepElement e : model.elements()) {
      measures.merge(e.globalId(), measuresOf(e), (one, other) -> one + " and " + other);
    }
    return measures;
  }

  private static String measuresOf(MepElement e) {
    return "%s %s %s %s, %s long, %s deg, radius %s, ends %s, %s, in %s, on %s"
        .formatted(
            e.ifcClass(),
            e.kind(),
            e.form(),
            inWords(e.section()),
            inWords(e.lengthM()),
            inWords(e.angleDeg()),
            inWords(e.bendRadiusM()),
            e.ends().stream().map(SameModelWrittenOtherwiseTest::inWords).sorted().toList(),
            e.nominalSize(),
            e.systems().stream().map(MepSystem::name).sorted().toList(),
            e.place().storey());
  }

  private static String inWords(@Nullable Measured<?> measured) {
    if (measured == null) {
      return "-";
    }
    return measured.value() instanceof Section section
        ? inWords(section)
        : String.format(Locale.ROOT, "%.4f", (Double) measured.value());
  }

  private static String inWords(Section section) {
    return String.format(
        Locale.ROOT, "%s %.4f", section.getClass().getSimpleName(), section.largestSideM());
  }
}
