package org.lagwright.ifc.extract.text;

import org.jspecify.annotations.Nullable;

/**
 * Answers to questions about texts, kept for texts that come again: names of types and written
 * sizes stand on thousands of elements. Keeps a limited number; safe for several threads.
 */
public final class Remembered<T> {

  private static final int SLOTS = 1 << 11;

  private record Answer<T>(String text, T value) {}

  @SuppressWarnings({"unchecked", "rawtypes"})
  private final @Nullable Answer<T>[] answers = new Answer[SLOTS];

  /** The answer for a text, null if it is not known or not any more. */
  public @Nullable T find(String text) {
    Answer<T> known = answers[slot(text)];
    return known != null && known.text.equals(text) ? known.value : null;
  }

  /**
   * Keeps an answer.
   *
   * @param answer must depend on nothing but the text
   * @return the answer
   */
  public T keep(String text, T answer) {
    answers[slot(text)] = new Answer<>(text, answer);
    return answer;
  }

  private static int slot(String text) {
    int hash = text.hashCode();
    return (hash ^ hash >>> 11 ^ hash >>> 22) & (SLOTS - 1);
  }
}
