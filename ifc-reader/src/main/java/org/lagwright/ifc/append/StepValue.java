package org.lagwright.ifc.append;

import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A value as exchange files have it (ISO 10303-21, clause 6: strings, numbers, lists).
 *
 * @param written the text in the file, ASCII only
 */
public record StepValue(String written) {

  /** No value. */
  public static final StepValue NULL = new StepValue("$");

  /** Follows from other attributes. */
  static final StepValue DERIVED = new StepValue("*");

  private static final int FIRST_PLAIN = 0x20;
  private static final int LAST_PLAIN = 0x7E;
  private static final int LAST_OF_TWO_BYTES = 0xFFFF;

  /** A string; characters beyond ASCII are written by their numbers, in two or four bytes. */
  public static StepValue text(String text) {
    StringBuilder out = new StringBuilder(text.length() + 2).append('\'');
    int bytes = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int character = text.codePointAt(i);
      int needed = bytesOf(character);
      if (needed != bytes) {
        out.append(bytes == 0 ? "" : "\\X0\\").append(needed == 0 ? "" : "\\X" + needed + "\\");
        bytes = needed;
      }
      out.append(needed == 0 ? plain((char) character) : hex(character, 2 * needed));
    }
    return new StepValue(out.append(bytes == 0 ? "'" : "\\X0\\'").toString());
  }

  private static int bytesOf(int character) {
    if (character >= FIRST_PLAIN && character <= LAST_PLAIN) {
      return 0;
    }
    return character <= LAST_OF_TWO_BYTES ? 2 : 4;
  }

  private static String plain(char c) {
    return c == '\'' ? "''" : c == '\\' ? "\\\\" : String.valueOf(c);
  }

  private static String hex(int character, int digits) {
    return String.format(Locale.ROOT, "%0" + digits + "X", character);
  }

  /**
   * A real number.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  public static StepValue real(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("no number to write: " + value);
    }
    String written = Double.toString(value == 0 ? 0.0 : value);
    return new StepValue(
        written.endsWith(".0") ? written.substring(0, written.length() - 1) : written);
  }

  /** A whole number. */
  public static StepValue integer(long value) {
    return new StepValue(Long.toString(value));
  }

  /** True or false. */
  public static StepValue bool(boolean value) {
    return new StepValue(value ? ".T." : ".F.");
  }

  /** A value of an enumeration, in upper case without points. */
  public static StepValue enumeration(String value) {
    return new StepValue("." + value + ".");
  }

  /** A record by its instance number. */
  public static StepValue reference(long id) {
    return new StepValue("#" + id);
  }

  /** Several records. */
  public static StepValue references(Collection<Long> ids) {
    return list(ids.stream().map(StepValue::reference).toList());
  }

  /** A list. */
  public static StepValue list(Collection<StepValue> values) {
    return new StepValue(
        values.stream().map(StepValue::written).collect(Collectors.joining(",", "(", ")")));
  }

  /** A list of real numbers. */
  public static StepValue reals(double... values) {
    StringBuilder out = new StringBuilder("(");
    for (double value : values) {
      out.append(out.length() == 1 ? "" : ",").append(real(value).written);
    }
    return new StepValue(out.append(')').toString());
  }

  /** A value with its type, where several types are possible. */
  public static StepValue typed(String type, StepValue value) {
    return new StepValue(type.toUpperCase(Locale.ROOT) + "(" + value.written + ")");
  }
}
