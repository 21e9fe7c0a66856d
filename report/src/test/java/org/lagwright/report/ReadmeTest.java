package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.FindingCode;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.cli.Main;
import org.lagwright.takeoff.TakeoffFinding;

/** What the README says is held against the program. */
class ReadmeTest {

  @TempDir Path folder;

  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Pattern FINDING_ROW =
      Pattern.compile("^\\| `([A-Z_]+)` \\| (info|warning|error) \\|", Pattern.MULTILINE);

  @Test
  void everyFindingStandsInTheTableWithItsSeverity() throws IOException {
    Map<String, String> listed = new TreeMap<>();
    Matcher row = FINDING_ROW.matcher(readme());
    while (row.find()) {
      listed.put(row.group(1), row.group(2));
    }
    Map<String, String> known =
        Stream.<FindingCode>concat(
                Arrays.stream(ReadFinding.values()), Arrays.stream(TakeoffFinding.values()))
            .collect(
                Collectors.toMap(
                    FindingCode::name, c -> c.severity().name().toLowerCase(Locale.ROOT)));

    assertThat(listed).isEqualTo(new TreeMap<>(known));
  }

  @Test
  void everySettingStandsInTheTable() throws IOException {
    assertThat(rows("## Settings", "Location classes"))
        .containsExactlyInAnyOrderElementsOf(known("nonsense: 1"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "temperaturesC: {nonsense: 5} | Services:",
        "materials: {cold: nonsense} | Materials:",
        "places: [{contains: a, location: nonsense}] | Location classes:"
      })
  void everyNameThatSettingsMayUseIsListed(String wrong, String heading) throws IOException {
    String readme = readme();
    String paragraph = readme.substring(readme.indexOf("\n" + heading)).split("\n\n", 2)[0];
    List<String> listed =
        Pattern.compile("`([a-z_-]+)`").matcher(paragraph).results().map(r -> r.group(1)).toList();

    assertThat(listed).containsExactlyInAnyOrderElementsOf(known(wrong));
  }

  /** The names that the program offers instead of a wrong one. */
  private List<String> known(String settings) throws IOException {
    Path file = Files.writeString(folder.resolve("settings.yaml"), settings + "\n");
    StringWriter err = new StringWriter();
    new Main(new ModelPipeline(), new PrintWriter(new StringWriter()), new PrintWriter(err), false)
        .run("takeoff", "x.ifc", "--settings", file.toString());
    Matcher known = Pattern.compile("Known(?: here)?: \\[?([^.\\]]+)").matcher(err.toString());

    assertThat(known.find()).as(err.toString()).isTrue();
    return List.of(known.group(1).split(", "));
  }

  @Test
  void theContinuousBuildCallsTheTestCommandOfTheReadme() throws IOException {
    String run = Files.readString(ROOT.resolve(".ci/run"));
    Matcher command =
        Pattern.compile("Run all tests and checks:\\s+```\\s+(.*?)\\s+```").matcher(readme());

    assertThat(command.find()).isTrue();
    assertThat(run.lines()).contains(command.group(1));
  }

  @Test
  void filesAndPicturesItNamesExist() throws IOException {
    Matcher link = Pattern.compile("(?:\\]\\(|`)([a-z-]+/[\\w./-]+\\.\\w+)").matcher(readme());
    int found = 0;
    while (link.find()) {
      if (!link.group(1).contains("target/")) {
        assertThat(ROOT.resolve(link.group(1))).exists();
        found++;
      }
    }

    assertThat(found).isGreaterThan(2);
  }

  @Test
  void everyCommandIsListed() throws IOException {
    StringWriter out = new StringWriter();
    new Main(new ModelPipeline(), new PrintWriter(out, true), new PrintWriter(out, true), false)
        .run("--help");
    List<String> commands =
        out.toString()
            .lines()
            .dropWhile(line -> !line.startsWith("Commands:"))
            .skip(1)
            .takeWhile(line -> !line.isBlank())
            .filter(line -> line.matches("  [a-z].*"))
            .map(line -> line.trim().split(" ", 2)[0])
            .toList();

    assertThat(commands).isNotEmpty();
    assertThat(rows("## Commands", "Models are"))
        .extracting(row -> row.split(" ", 2)[0])
        .containsExactlyElementsOf(commands);
  }

  @Test
  void classesThatTheContributorsGuideNamesExist() throws IOException {
    Set<String> classes = new HashSet<>();
    try (Stream<Path> files = Files.walk(ROOT)) {
      files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".java"))
          .forEach(name -> classes.add(name.substring(0, name.length() - ".java".length())));
    }
    List<String> named =
        Pattern.compile("`([A-Z][a-z]+(?:[A-Z][a-z]+)+)(?:\\.\\w+\\(?\\)?)?`")
            .matcher(Files.readString(ROOT.resolve("DEVELOPERS.md")))
            .results()
            .map(r -> r.group(1))
            .toList();

    assertThat(named).hasSizeGreaterThan(20);
    assertThat(classes).containsAll(named);
  }

  /** First cells in code font of the table rows between two texts. */
  private static List<String> rows(String from, String to) throws IOException {
    String readme = readme();
    String part = readme.substring(readme.indexOf(from), readme.indexOf(to));
    Matcher row = Pattern.compile("^\\| `([^`]+)` \\|", Pattern.MULTILINE).matcher(part);
    return row.results().map(r -> r.group(1)).toList();
  }

  private static String readme() throws IOException {
    return Files.readString(ROOT.resolve("README.md"));
  }
}
