package org.lagwright.ifc.extract.text;

import org.jspecify.annotations.Nullable;

/**
 * Finds the figure beside a word for a diameter: {@code dia. 160}, {@code 60.3 mm OD}. Words are
 * common practice, no source.
 */
final class DiameterInWords {

  /** What may be the outside or the nominal diameter of a pipe; longer words first. */
  private static final String[] PLAIN = {
    "diameter",
    "diametre",
    "diam\u00E8tre",
    "diametro",
    "di\u00E1metro",
    "di\u00E2metro",
    "diam",
    "dia",
    "durchmesser",
    "durchm"
  };

  /** What is the outside; as a small word {@code od} is a Polish one. */
  private static final String[] OUTSIDE = {
    "aussendurchmesser", "au\u00DFendurchmesser", "o.d.", "OD"
  };

  /** How words begin that make it another diameter. */
  private static final String[] OTHER = {
    "inn", "ins", "int", "nom", "bend", "bolt", "hole", "flan"
  };

  /** A smaller figure before a word, without a unit, may number something. */
  private static final double LEAST_BARE_MM = 20;

  /**
   * A figure and what it is.
   *
   * @param outside true if the word says that it is the outside
   */
  record Found(FigureCursor.Figure figure, boolean outside) {}

  private DiameterInWords() {}

  /** True if a text may hold one of the words: few letters of most texts are looked at. */
  static boolean mayBeIn(String text) {
    for (int i = 0; i + 1 < text.length(); i++) {
      char c = text.charAt(i);
      boolean begins = (c | 0x20) == 'd' || (c | 0x20) == 'o';
      if (begins
              && (isAt(text, i, "dia")
                  || isAt(text, i, "di\u00E1")
                  || isAt(text, i, "di\u00E2")
                  || isAt(text, i, "dur")
                  || isAt(text, i, "o.d")
                  || isOutsideBefore(text, i))
          || (c == 'O' && text.charAt(i + 1) == 'D')) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAt(String text, int at, String letters) {
    return text.regionMatches(true, at, letters, 0, letters.length());
  }

  /**
   * True for Da or De right before a figure, as outsides are called in German, French and Italian;
   * with a space between only Da, as the small words are prepositions.
   */
  static boolean isOutsideBefore(String text, int at) {
    int figure = at + 2;
    if (figure >= text.length() || "ae".indexOf(text.charAt(at + 1) | 0x20) < 0) {
      return false;
    }
    boolean apart = text.startsWith("Da ", at);
    figure += apart ? 1 : 0;
    return figure < text.length() && Sizes.isDigit(text.charAt(figure));
  }

  /** The first figure behind such a word, else before one; null if there is none. */
  static @Nullable Found find(String text) {
    if (!mayBeIn(text)) {
      return null;
    }
    for (int i = 0; i < text.length(); i++) {
      boolean starts = i == 0 || !Character.isLetter(text.charAt(i - 1));
      int outsideEnd = starts ? behindWord(OUTSIDE, text, i) : -1;
      int end = outsideEnd < 0 && starts ? behindWord(PLAIN, text, i) : outsideEnd;
      FigureCursor.Figure figure = end < 0 || isOther(text, i) ? null : beside(text, i, end);
      if (figure != null) {
        return new Found(figure, outsideEnd >= 0 || isBehindOutside(text, i));
      }
    }
    return null;
  }

  private static int behindWord(String[] words, String text, int at) {
    for (String word : words) {
      int end = at + word.length();
      boolean small = Character.isLowerCase(word.charAt(0));
      boolean here = text.regionMatches(small, at, word, 0, word.length());
      if (here && (end >= text.length() || !Character.isLetter(text.charAt(end)))) {
        return end;
      }
    }
    return -1;
  }

  private static FigureCursor.@Nullable Figure beside(String text, int from, int to) {
    FigureCursor cursor = new FigureCursor(text);
    cursor.goTo(to);
    cursor.takeSign(".");
    cursor.takeSign("=:");
    cursor.skipSpace();
    FigureCursor.Figure behind = cursor.take();
    FigureCursor.Figure before = before(text, from);
    if (before != null && before.unit() != null) {
      return before;
    }
    return behind == null && before != null && before.value() >= LEAST_BARE_MM ? before : behind;
  }

  /** The figure between which and a place there is but space. */
  static FigureCursor.@Nullable Figure before(String text, int place) {
    FigureCursor cursor = new FigureCursor(text);
    while (cursor.next() && cursor.at() < place) {
      FigureCursor.Figure figure = cursor.take();
      cursor.skipSpace();
      if (figure != null && cursor.at() == place) {
        return figure;
      }
    }
    return null;
  }

  private static boolean isOther(String text, int word) {
    String before = wordBefore(text, word);
    for (String other : OTHER) {
      if (before.regionMatches(true, 0, other, 0, other.length())) {
        return true;
      }
    }
    return false;
  }

  private static boolean isBehindOutside(String text, int word) {
    String before = wordBefore(text, word);
    return before.equalsIgnoreCase("outside") || before.equalsIgnoreCase("outer");
  }

  /** The word before a place; empty if a figure or nothing stands there. */
  private static String wordBefore(String text, int place) {
    int end = place;
    while (end > 0 && !Character.isLetterOrDigit(text.charAt(end - 1))) {
      end--;
    }
    int start = end;
    while (start > 0 && Character.isLetter(text.charAt(start - 1))) {
      start--;
    }
    return text.substring(start, end);
  }
}
