package org.lagwright.takeoff.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A word or several in a row, as the words pack lists them.
 *
 * @param tokens its tokens, folded
 * @param stem true if the last token is only the beginning of a word
 */
record Phrase(List<Token> tokens, boolean stem) {

  Phrase {
    tokens = List.copyOf(tokens);
  }

  /** The phrase as written, and with ae, oe, ue for umlauts where it has any. */
  static List<Phrase> listOf(String written) {
    Set<String> spellings = new LinkedHashSet<>(List.of(Token.composed(written)));
    spellings.add(Token.composed(written).replace("ä", "ae").replace("ö", "oe").replace("ü", "ue"));
    List<Phrase> phrases = new ArrayList<>();
    for (String spelling : spellings) {
      List<Token> tokens = Token.listIn(spelling);
      if (tokens.isEmpty()) {
        throw new IllegalArgumentException("'" + written + "' has neither letter nor digit.");
      }
      phrases.add(new Phrase(tokens, spelling.endsWith("*")));
    }
    return phrases;
  }

  /** True if the phrase stands in the text from this token on. */
  boolean standsAt(List<Token> text, int from) {
    if (from + tokens.size() > text.size()) {
      return false;
    }
    for (int i = 0; i < tokens.size(); i++) {
      Token wanted = tokens.get(i);
      Token found = text.get(from + i);
      boolean open = stem && i == tokens.size() - 1;
      boolean same =
          open
              ? found.folded().startsWith(wanted.folded())
              : found.folded().equals(wanted.folded());
      if (!same || (i > 0 && wanted.glued() && !found.glued())) {
        return false;
      }
    }
    return true;
  }

  /** Letters and digits, by which the longer of two matches is found. */
  int size() {
    return tokens.stream().mapToInt(t -> t.folded().length()).sum();
  }

  String first() {
    return tokens.get(0).folded();
  }

  /** True for a plain word of at least so many letters, which may stand inside a longer one. */
  boolean fitsInside(int letters) {
    return tokens.size() == 1 && !stem && first().length() >= letters;
  }
}
