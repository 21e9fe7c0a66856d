package org.lagwright.ifc.step;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Decodes strings of exchange files: doubled quotes, {@code \X\}, {@code \X2\}, {@code \X4\},
 * {@code \S\} with {@code \P.\} code pages (ISO 10303-21 clause 6.4.3), and what real files hold
 * besides: raw UTF-8, raw single-byte text, lone backslashes. Never fails; what is no escape stays
 * as it is.
 */
final class StepText {

  private final String raw;
  private final StringBuilder out;
  private Charset codePage = StandardCharsets.ISO_8859_1;
  private int at;

  /** True once several characters were escaped together, so escapes stand for characters. */
  private boolean escapesWholeText;

  private StepText(String raw) {
    this.raw = raw;
    this.out = new StringBuilder(raw.length());
  }

  /** Decodes the bytes between the outer quotes. */
  static String decode(byte[] bytes) {
    boolean plain = true;
    for (byte b : bytes) {
      plain &= b >= 0 && b != '\\' && b != '\'';
    }
    return plain ? new String(bytes, StandardCharsets.US_ASCII) : new StepText(chars(bytes)).run();
  }

  /** UTF-8 where the bytes are that, else Windows-1252, which contains Latin-1's letters. */
  private static String chars(byte[] bytes) {
    return utf8(bytes).orElseGet(() -> new String(bytes, Charset.forName("windows-1252")));
  }

  private static Optional<String> utf8(byte[] bytes) {
    try {
      return Optional.of(
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private String run() {
    while (at < raw.length()) {
      char c = raw.charAt(at);
      if (c == '\'' && raw.startsWith("''", at)) {
        out.append('\'');
        at += 2;
      } else if (c != '\\' || !escape()) {
        out.append(c);
        at++;
      }
    }
    return escapesWholeText ? out.toString() : repaired(out.toString());
  }

  /**
   * Some exporters escape each byte of UTF-8 as if it were a character; then the bytes are read.
   */
  private static String repaired(String text) {
    boolean onlyBytes = text.chars().allMatch(c -> c < 0x100);
    boolean beyondAscii = text.chars().anyMatch(c -> c >= 0x80);
    return onlyBytes && beyondAscii
        ? utf8(text.getBytes(StandardCharsets.ISO_8859_1)).orElse(text)
        : text;
  }

  /** Reads one escape sequence; false, and nothing consumed, if there is none. */
  private boolean escape() {
    if (raw.startsWith("\\\\", at)) {
      out.append('\\');
      at += 2;
      return true;
    }
    if (raw.startsWith("\\X\\", at)) {
      return singleByte();
    }
    if (raw.startsWith("\\X2\\", at)) {
      return wide(4);
    }
    if (raw.startsWith("\\X4\\", at)) {
      return wide(8);
    }
    if (raw.startsWith("\\S\\", at) && at + 3 < raw.length()) {
      out.append(new String(new byte[] {(byte) (raw.charAt(at + 3) + 128)}, codePage));
      at += 4;
      return true;
    }
    return selectCodePage();
  }

  /** {@code \X\} and two hex digits, several in a row: some exporters write UTF-8 that way. */
  private boolean singleByte() {
    byte[] bytes = new byte[(raw.length() - at) / 5];
    int count = 0;
    while (raw.startsWith("\\X\\", at) && hex(at + 3, 2) >= 0) {
      bytes[count++] = (byte) hex(at + 3, 2);
      at += 5;
    }
    byte[] run = Arrays.copyOf(bytes, count);
    out.append(count > 1 ? chars(run) : new String(run, StandardCharsets.ISO_8859_1));
    return count > 0;
  }

  /** {@code \X2\} or {@code \X4\} up to {@code \X0\}; a missing end is forgiven. */
  private boolean wide(int digits) {
    int i = at + 4;
    int start = out.length();
    while (hex(i, digits) >= 0) {
      long code = hex(i, digits);
      if (digits == 4) {
        out.append((char) code);
      } else if (Character.isValidCodePoint((int) code)) {
        out.appendCodePoint((int) code);
      }
      i += digits;
    }
    boolean closed = raw.startsWith("\\X0\\", i);
    if (!closed && out.length() == start) {
      return false;
    }
    at = closed ? i + 4 : i;
    escapesWholeText |= out.length() - start > 1;
    return true;
  }

  /** {@code \PA\} to {@code \PI\} select ISO 8859-1 to 8859-9 for the {@code \S\} that follow. */
  private boolean selectCodePage() {
    boolean selects =
        raw.startsWith("\\P", at)
            && at + 3 < raw.length()
            && raw.charAt(at + 2) >= 'A'
            && raw.charAt(at + 2) <= 'I'
            && raw.charAt(at + 3) == '\\';
    if (selects) {
      codePage = Charset.forName("ISO-8859-" + (raw.charAt(at + 2) - 'A' + 1));
      at += 4;
    }
    return selects;
  }

  /** The value of some hex digits, -1 if they are not there. */
  private long hex(int from, int digits) {
    if (from + digits > raw.length()) {
      return -1;
    }
    long value = 0;
    for (int i = from; i < from + digits; i++) {
      int digit = Character.digit(raw.charAt(i), 16);
      if (digit < 0) {
        return -1;
      }
      value = value * 16 + digit;
    }
    return value;
  }
}
