package org.lagwright.takeoff.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackReaderTest {

  @TempDir Path folder;

  record Wall(String id, double thicknessMm, List<String> notes) {
    Wall {
      if (thicknessMm <= 0) {
        throw new IllegalArgumentException("thicknessMm must be above 0.");
      }
    }
  }

  @Test
  void textStaysTextWhereOtherReadersMakeItABoolean() throws IOException {
    Wall wall = PackReader.readFile(file("id: no\nthicknessMm: 25\nnotes: [yes]\n"), Wall.class);

    assertThat(wall).isEqualTo(new Wall("no", 25, List.of("yes")));
  }

  @Test
  void unknownKeyIsRefusedWithLineAndColumn() throws IOException {
    Path file = file("id: a\nwidth: 25\nthicknessMm: 9\nnotes: []\n");

    assertThatThrownBy(() -> PackReader.readFile(file, Wall.class))
        .isInstanceOf(PackException.class)
        .hasMessageContaining(":2:")
        .hasMessageContaining("unknown key 'width'")
        .hasMessageContaining("thicknessMm");
  }

  @Test
  void duplicateKeyIsRefused() throws IOException {
    Path file = file("id: a\nid: b\nthicknessMm: 25\nnotes: []\n");

    assertThatThrownBy(() -> PackReader.readFile(file, Wall.class))
        .isInstanceOf(PackException.class)
        .hasMessageContaining(":2:");
  }

  @Test
  void missingNumberIsRefused() throws IOException {
    Path file = file("id: a\nnotes: []\n");

    assertThatThrownBy(() -> PackReader.readFile(file, Wall.class))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("thicknessMm");
  }

  record Rack(String id, List<Shelf> shelves) {
    Rack {
      shelves = List.copyOf(shelves);
    }
  }

  record Shelf(String id, List<String> goods) {
    Shelf {
      goods = List.copyOf(goods);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "id: a | 1:1: 'shelves' is missing here. Add it.",
        "id: a\\nshelves: | 1:1: 'shelves' is missing here. Add it.",
        "id: a\\nshelves:\\n  - {id: b, goods: []}\\n  - {id: c} | 4:5: 'goods' is missing here. Add it.",
        "id: a\\nshelves:\\n  - | 1:1: an entry of 'shelves' is empty. Fill it, or drop it.",
        "shelves: [] | 1:1: 'id' is missing here. Add it."
      })
  void missingListIsRefusedInOneLineWithItsPlace(String yaml, String message) throws IOException {
    Path file = file(yaml.replace("\\n", "\n") + "\n");

    assertThatThrownBy(() -> PackReader.readFile(file, Rack.class))
        .isInstanceOf(PackException.class)
        .hasMessage(file + ":" + message);
  }

  @Test
  void aValueTheRecordRefusesIsReportedInTheRecordsWords() throws IOException {
    Path file = file("id: a\nthicknessMm: -3\nnotes: []\n");

    assertThatThrownBy(() -> PackReader.readFile(file, Wall.class))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("thicknessMm must be above 0.");
  }

  @Test
  void brokenYamlIsOneLine() throws IOException {
    Path file = file("id: [a\nthicknessMm: 25\n");

    assertThatThrownBy(() -> PackReader.readFile(file, Wall.class))
        .isInstanceOf(PackException.class)
        .hasMessageNotContaining("\n");
  }

  @Test
  void missingFileSaysSo() {
    assertThatThrownBy(() -> PackReader.readFile(folder.resolve("none.yaml"), Wall.class))
        .isInstanceOf(PackException.class)
        .hasMessageContaining("no such file");
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("wall.yaml"), text);
  }
}
