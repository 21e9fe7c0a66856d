package org.lagwright.ifc.extract.text;

/**
 * A word to look for in names, folded as it stands in words.txt. A long word may stand anywhere in
 * a compound, a short one must stand alone, unless marks say otherwise.
 *
 * @param first true if it tells only at the beginning of a name
 * @param ends true if it may end a compound
 * @param begins true if it may begin a compound
 * @param wholeCompound true if it tells of the whole compound that it begins
 */
public record Word(
    String text, boolean first, boolean ends, boolean begins, boolean wholeCompound) {

  private static final int MAY_BE_INSIDE_A_COMPOUND = 5;

  /** Letters of a plural behind a word, as in Rohre, pipes and leidingen. */
  private static final int LONGEST_ENDING = 2;

  /** A word with the marks that words.txt explains. */
  public static Word of(String written) {
    String marked = written.trim();
    if (marked.startsWith("^")) {
      return new Word(marked.substring(1), true, false, false, false);
    }
    if (marked.startsWith("=")) {
      return new Word(marked.substring(1), false, false, false, false);
    }
    if (marked.startsWith("-")) {
      return new Word(marked.substring(1), false, true, false, false);
    }
    if (marked.endsWith("-")) {
      return new Word(marked.substring(0, marked.length() - 1), false, false, true, true);
    }
    boolean inside = marked.length() >= MAY_BE_INSIDE_A_COMPOUND;
    return new Word(marked, false, inside, inside, false);
  }

  /** Where it stands in a folded text, -1 if nowhere. */
  public int indexIn(String folded) {
    if (first) {
      return folded.startsWith(text) && mayStand(folded, 0) ? 0 : -1;
    }
    for (int at = folded.indexOf(text); at >= 0; at = folded.indexOf(text, at + 1)) {
      if (mayStand(folded, at)) {
        return at;
      }
    }
    return -1;
  }

  private boolean mayStand(String folded, int at) {
    int end = at + text.length();
    boolean before = ends || at == 0 || !Character.isLetter(folded.charAt(at - 1));
    boolean behind = begins || end == folded.length() || !Character.isLetter(folded.charAt(end));
    return before && behind;
  }

  /** Where that which it tells of ends, if it stands at a place; a plural ends with its letters. */
  int endIn(String folded, int at) {
    int end = at + text.length();
    int compound = endOfCompound(folded, end);
    return wholeCompound || compound - end <= LONGEST_ENDING ? compound : end;
  }

  /** Where the letters around a place begin. */
  static int startOfCompound(String folded, int at) {
    int start = at;
    while (start > 0 && Character.isLetter(folded.charAt(start - 1))) {
      start--;
    }
    return start;
  }

  /** Where the letters around a place end. */
  static int endOfCompound(String folded, int at) {
    int end = at;
    while (end < folded.length() && Character.isLetter(folded.charAt(end))) {
      end++;
    }
    return end;
  }
}
