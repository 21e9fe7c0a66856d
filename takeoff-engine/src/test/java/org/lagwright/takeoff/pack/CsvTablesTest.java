package org.lagwright.takeoff.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTablesTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Size,Rate\n60.3,1.5\n",
        "size;rate\r\n60,3;1,5\r\n",
        "\uFEFFsize\trate\n60.3\t1.5",
        "# remark\n\nsize,rate\n# another\n\"60.3\",\"1.5\"\n,\n"
      })
  void tableIsReadHoweverTheSpreadsheetWroteIt(String text) {
    DataTable table = CsvTables.parse(text, "rates.csv");

    assertThat(table.columns()).containsExactly("size", "rate");
    assertThat(table.rows()).hasSize(1);
    assertThat(table.rows().get(0).number("size")).isEqualTo(60.3);
    assertThat(table.rows().get(0).number("rate")).isEqualTo(1.5);
  }

  @Test
  void cellThatIsNoNumberIsNamedByLineAndColumn() {
    DataTable table = CsvTables.parse("size,rate\n60.3,1.5\n76.1,dear\n", "rates.csv");

    assertThatThrownBy(() -> table.rows().get(1).number("rate"))
        .isInstanceOf(PackException.class)
        .hasMessage("rates.csv:3:2: 'dear' is no number. Write it like 12.5.");
  }

  @Test
  void emptyCellIsNullOrRefused() {
    DataTable table = CsvTables.parse("size,rate\n60.3,\n", "rates.csv");

    assertThat(table.rows().get(0).findNumber("rate")).isNull();
    assertThatThrownBy(() -> table.rows().get(0).number("rate"))
        .hasMessage("rates.csv:2:2: 'rate' is empty. Write a number.");
  }

  @Test
  void missingUnknownAndRepeatedColumnsAreRefused() {
    DataTable table = CsvTables.parse("size,rate\n1,2\n", "rates.csv");

    assertThatThrownBy(() -> table.requireColumns(Set.of("size", "wall"), Set.of("rate")))
        .hasMessage("rates.csv:1: the column 'wall' is missing. Add it to the heading.");
    assertThatThrownBy(() -> table.requireColumns(Set.of("size"), Set.of("wall")))
        .hasMessage("rates.csv:1:2: unknown column 'rate'. Known here: [size, wall].");
    assertThatThrownBy(() -> CsvTables.parse("size,Size\n1,2\n", "rates.csv"))
        .hasMessage("rates.csv:1:2: the column 'size' stands twice. Keep one.");
  }

  @Test
  void cellBesideTheTableIsRefused() {
    assertThatThrownBy(() -> CsvTables.parse("size\n1,2\n", "rates.csv"))
        .hasMessage("rates.csv:2:2: '2' stands in no column. Remove it or give it a heading.");
  }

  @Test
  void thousandsWithBothMarksAreRefused() {
    DataTable table = CsvTables.parse("size;rate\n1;1.234,5\n", "rates.csv");

    assertThatThrownBy(() -> table.rows().get(0).number("rate"))
        .hasMessageContaining("'1.234,5' is no number");
  }

  @Test
  void emptyAndMissingFilesAreOneClearLine() {
    assertThatThrownBy(() -> CsvTables.parse("# nothing\n", "rates.csv"))
        .hasMessage("rates.csv:1:1: the table is empty. Write a heading and rows.");
    assertThatThrownBy(() -> CsvTables.readFile(Path.of("no-such.csv")))
        .hasMessage("no-such.csv: no such file. Check the path.");
  }
}
