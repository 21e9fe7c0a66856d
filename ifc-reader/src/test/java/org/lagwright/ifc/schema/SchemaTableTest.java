package org.lagwright.ifc.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables are searched by halving, so each must stay in order. */
class SchemaTableTest {

  @ParameterizedTest
  @ValueSource(strings = {"ifc2x3.txt", "ifc4.txt", "ifc4x3.txt"})
  void everyEntityOfATableIsFound(String resource) {
    SchemaTable table = SchemaTable.read(resource);
    assertThat(table.lines()).hasSizeGreaterThan(600);
    for (String[] words : table.lines()) {
      assertThat(table.find(words[0].toUpperCase(Locale.ROOT))).containsExactly(words);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "A", "IFC", "IFCPIPESEGMEN", "IFCPIPESEGMENTS", "IFCZZZ", "IFCPIPESEGMENT "})
  void whatIsNoEntityIsNotFound(String keyword) {
    assertThat(SchemaTable.read("ifc4.txt").find(keyword)).isNull();
  }

  @ParameterizedTest
  @ValueSource(strings = {"ifc2x3-types.txt", "ifc4-types.txt", "ifc4x3-types.txt"})
  void aTableOfTypesHasNoEmptyWords(String resource) {
    for (String[] words : SchemaTable.read(resource).lines()) {
      assertThat(words).hasSizeGreaterThan(1).doesNotContain("");
    }
  }
}
