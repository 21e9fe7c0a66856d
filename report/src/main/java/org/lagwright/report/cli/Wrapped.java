package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.report.PlainText;

/** Text of any length in lines of at most {@link TextTable#WIDTH} characters; nothing is cut. */
final class Wrapped {

  /** Beside a wide first part the text still gets this much room. */
  private static final int LEAST = 30;

  private Wrapped() {}

  /**
   * The lines. Breaks are between words; a word longer than a line is broken where the line ends.
   *
   * @param first what the first line begins with; the others are indented by its length
   */
  static List<String> lines(String first, String text) {
    int room = Math.max(LEAST, TextTable.WIDTH - first.length());
    List<String> lines = new ArrayList<>();
    String rest = PlainText.oneLine(text).strip();
    String before = first;
    while (rest.length() > room) {
      int end = end(rest, room);
      lines.add(before + rest.substring(0, end).stripTrailing());
      rest = rest.substring(end).stripLeading();
      before = " ".repeat(first.length());
    }
    lines.add((before + rest).stripTrailing());
    return lines;
  }

  private static int end(String text, int room) {
    int space = text.lastIndexOf(' ', room);
    if (space > 0) {
      return space;
    }
    return Character.isHighSurrogate(text.charAt(room - 1)) ? room - 1 : room;
  }
}
