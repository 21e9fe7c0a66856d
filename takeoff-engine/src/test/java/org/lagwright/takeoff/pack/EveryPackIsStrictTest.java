package org.lagwright.takeoff.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every pack of the program, damaged in turn: an unknown key, a source left out, a key twice, a
 * list left out. The packs are found in the folders of the resources, so a new one is tested too.
 */
class EveryPackIsStrictTest {

  private static final Path RESOURCES = Path.of("src/main/resources/org/lagwright/takeoff");

  private static final Path CLASSES = Path.of("src/main/java/org/lagwright/takeoff");

  @TempDir Path folder;

  /** A pack with the type it is read into. */
  record Pack(Path file, Class<?> type) {
    @Override
    public String toString() {
      return RESOURCES.relativize(file).toString();
    }
  }

  static List<Pack> packs() {
    try (Stream<Path> files = Files.walk(RESOURCES)) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .filter(file -> !file.endsWith("defaults.yaml"))
          .sorted()
          .map(file -> new Pack(file, type(file)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("packs")
  void undamagedItIsRead(Pack pack) {
    assertThat(PackReader.readFile(pack.file(), pack.type())).isNotNull();
  }

  @ParameterizedTest
  @MethodSource("packs")
  void unknownKeyIsRefusedWithLineAndColumn(Pack pack) throws IOException {
    List<String> lines = Files.readAllLines(pack.file());
    int at = indexOf(lines, "source:");
    lines.add(at, "colour: red");

    assertRefused(pack, lines, (at + 1) + ":1: unknown key 'colour'");
  }

  @ParameterizedTest
  @MethodSource("packs")
  void missingSourceIsRefusedWithLineAndColumn(Pack pack) throws IOException {
    List<String> lines = Files.readAllLines(pack.file());
    lines.remove(indexOf(lines, "source:"));

    assertRefused(pack, lines, (indexOf(lines, "id:") + 1) + ":1: 'source' is missing here");
  }

  @ParameterizedTest
  @MethodSource("packs")
  void keyThatStandsTwiceIsRefusedWithLineAndColumn(Pack pack) throws IOException {
    List<String> lines = Files.readAllLines(pack.file());
    int at = indexOf(lines, "source:");
    lines.add(at, "id: again");

    assertRefused(pack, lines, (at + 1) + ":3: Duplicate");
  }

  @ParameterizedTest
  @MethodSource("packs")
  void everythingButTheHeadLeftOutIsRefusedWithWhatIsMissing(Pack pack) throws IOException {
    String head = "id: x\nversion: \"1\"\nsource: test\nstatus: verified\n";

    assertRefused(pack, head.lines().toList(), "1:1: '");
  }

  private void assertRefused(Pack pack, List<String> lines, String message) throws IOException {
    Path damaged = Files.write(folder.resolve("damaged.yaml"), lines);

    assertThatThrownBy(() -> PackReader.readFile(damaged, pack.type()))
        .isInstanceOf(PackException.class)
        .hasMessageStartingWith(damaged + ":" + message)
        .satisfies(e -> assertThat(Objects.requireNonNull(e.getMessage())).doesNotContain("\n"));
  }

  private static int indexOf(List<String> lines, String key) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith(key)) {
        return i;
      }
    }
    throw new AssertionError("no line begins with " + key);
  }

  /** The record a pack is read into, as the class of its folder says that reads it. */
  private static Class<?> type(Path file) {
    String folder = RESOURCES.relativize(file).getName(0).toString();
    String name = file.getFileName().toString();
    Pattern read = Pattern.compile('"' + Pattern.quote(name) + "\",\\s*(?:\\w+\\.)?(\\w+)\\.class");
    try (Stream<Path> sources = Files.list(CLASSES.resolve(folder))) {
      String type =
          sources
              .filter(source -> source.toString().endsWith(".java"))
              .flatMap(
                  source ->
                      read.matcher(text(source))
                          .results()
                          .map(found -> inFile(source, found.group(1))))
              .findFirst()
              .orElseGet(() -> ruleType(file));
      return Class.forName("org.lagwright.takeoff." + folder + "." + type);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ClassNotFoundException e) {
      throw new AssertionError("nothing tells what " + file + " is read into", e);
    }
  }

  /** The class itself, or one within that of the source. */
  private static String inFile(Path source, String type) {
    String owner = source.getFileName().toString().replace(".java", "");
    boolean ofItsOwn = Files.exists(source.resolveSibling(type + ".java"));
    return ofItsOwn ? type : owner + "$" + type;
  }

  private static String ruleType(Path file) {
    return text(file).contains("\nranges:") ? "PipeRulePack" : "SituationRulePack";
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
