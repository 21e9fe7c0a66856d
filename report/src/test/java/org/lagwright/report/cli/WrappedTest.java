package org.lagwright.report.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WrappedTest {

  @Test
  void textThatFitsStaysOnOneLine() {
    assertThat(Wrapped.lines("  source  ", "a table")).containsExactly("  source  a table");
  }

  @Test
  void longTextIsBrokenBetweenWordsAndIndented() {
    String text = "nine char ".repeat(30).strip();
    List<String> lines = Wrapped.lines("  source  ", text);
    assertThat(lines).hasSize(4).allMatch(line -> line.length() <= TextTable.WIDTH);
    assertThat(lines.subList(1, 4)).allMatch(line -> line.startsWith("          nine"));
    assertThat(joined(lines)).isEqualTo("source " + text);
  }

  @Test
  void wordLongerThanALineIsBrokenWithoutLosingALetter() {
    String word = "x".repeat(99) + "\uD83D\uDD25" + "y".repeat(150);
    List<String> lines = Wrapped.lines("", word);
    assertThat(lines).allMatch(line -> line.length() <= TextTable.WIDTH);
    assertThat(String.join("", lines)).isEqualTo(word);
  }

  @Test
  void wideFirstPartLeavesRoomForText() {
    List<String> lines = Wrapped.lines("z".repeat(120) + " ", "one two three four five six seven");
    assertThat(lines).hasSize(2);
    assertThat(lines.get(1)).endsWith("seven").startsWith(" ".repeat(121));
  }

  private static String joined(List<String> lines) {
    return String.join(" ", lines.stream().map(String::strip).toList()).replaceAll(" +", " ");
  }
}
