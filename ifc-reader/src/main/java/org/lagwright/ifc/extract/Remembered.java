package org.lagwright.ifc.extract;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Answers to questions about texts, kept for texts that come again: names of types and written
 * sizes stand on thousands of elements. Keeps a limited number; safe for several threads.
 */
final class Remembered<T> {

  private static final int SLOTS = 1 << 11;

  private record Answer<T>(String text, T value) {}

  private final Function<String, T> question;

  @SuppressWarnings({"unchecked", "rawtypes"})
  private final @Nullable Answer<T>[] answers = new Answer[SLOTS];

  /**
   * @param question must depend on nothing but the text
   */
  Remembered(Function<String, T> question) {
    this.question = question;
  }

  /** Gives one object for equal texts, as far as it remembers them. */
  static Remembered<String> once() {
    return new Remembered<>(text -> text);
  }

  T of(String text) {
    int hash = text.hashCode();
    int slot = (hash ^ hash >>> 11 ^ hash >>> 22) & (SLOTS - 1);
    Answer<T> known = answers[slot];
    if (known == null || !known.text.equals(text)) {
      known = new Answer<>(text, question.apply(text));
      answers[slot] = known;
    }
    return known.value;
  }
}
