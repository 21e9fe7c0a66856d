package org.lagwright.testmodels.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The records of an exchange file, read the plain way: character by character, all at once. */
final class StepReading {

  private final String text;
  private int at;
  private final Map<Long, Instance> instances = new LinkedHashMap<>();

  /** A value of a record. */
  sealed interface Value {}

  /**
   * Anything without parts: {@code $}, {@code *}, {@code #12}, {@code .T.}, {@code 1.5}, a string.
   */
  record Plain(String written) implements Value {}

  record Many(List<Value> values) implements Value {}

  /** A value with its type, where several are possible. */
  record Typed(String keyword, Many inside) implements Value {}

  record Instance(String keyword, List<Value> arguments) {}

  private StepReading(String text) {
    this.text = text;
  }

  /** All instances of the data section, by number. */
  static Map<Long, Instance> instances(String file) {
    StepReading reading = new StepReading(file);
    reading.at = file.indexOf("DATA;") + "DATA;".length();
    reading.skipSpace();
    while (reading.peek() == '#') {
      reading.instance();
      reading.skipSpace();
    }
    return reading.instances;
  }

  private char peek() {
    return text.charAt(at);
  }

  private void skipSpace() {
    while (at < text.length()) {
      if (text.startsWith("/*", at)) {
        at = text.indexOf("*/", at) + 2;
      } else if (Character.isWhitespace(peek())) {
        at++;
      } else {
        return;
      }
    }
  }

  private void expect(char wanted) {
    skipSpace();
    if (peek() != wanted) {
      throw new IllegalArgumentException(
          "'" + wanted + "' expected: " + text.substring(at, Math.min(text.length(), at + 40)));
    }
    at++;
    skipSpace();
  }

  private void instance() {
    expect('#');
    long id = Long.parseLong(word());
    expect('=');
    String keyword = word().toUpperCase(Locale.ROOT);
    List<Value> arguments = list().values();
    expect(';');
    if (instances.put(id, new Instance(keyword, arguments)) != null) {
      throw new IllegalArgumentException("#" + id + " is there twice");
    }
  }

  private String word() {
    int from = at;
    while (Character.isLetterOrDigit(peek()) || peek() == '_') {
      at++;
    }
    return text.substring(from, at);
  }

  private Many list() {
    List<Value> values = new ArrayList<>();
    expect('(');
    while (peek() != ')') {
      values.add(value());
      skipSpace();
      if (peek() == ',') {
        expect(',');
      }
    }
    expect(')');
    return new Many(values);
  }

  private Value value() {
    char c = peek();
    if (c == '(') {
      return list();
    }
    if (c == '\'') {
      return string();
    }
    if (Character.isLetter(c)) {
      return new Typed(word().toUpperCase(Locale.ROOT), list());
    }
    int from = at;
    while (",)".indexOf(peek()) < 0 && !Character.isWhitespace(peek())) {
      at++;
    }
    return new Plain(text.substring(from, at));
  }

  private Value string() {
    int from = at++;
    while (peek() != '\'' || text.charAt(at + 1) == '\'') {
      at += peek() == '\'' ? 2 : 1;
    }
    at++;
    return new Plain(text.substring(from, at));
  }
}
