package org.lagwright.takeoff.words;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A run of letters or of digits in a name.
 *
 * @param folded lower case without accents
 * @param glued true if nothing stands between it and the token before ({@code HK1}, {@code
 *     HeizungVL})
 * @param start where it starts in the composed text
 * @param end where it ends, exclusive
 */
public record Token(String folded, boolean glued, int start, int end) {

  private static final Pattern ACCENTS = Pattern.compile("\\p{M}");
  private static final String TIMES = "xX\u0445\u0425";

  /** Composed form of a text, to which the positions of tokens refer. */
  public static String composed(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC);
  }

  /** The tokens of a text in composed form. */
  static List<Token> listIn(String composed) {
    List<Token> tokens = new ArrayList<>();
    int start = 0;
    while (start < composed.length()) {
      if (!Character.isLetterOrDigit(composed.charAt(start))) {
        start++;
        continue;
      }
      int end = start + 1;
      while (end < composed.length() && !boundary(composed, end)) {
        end++;
      }
      boolean glued = start > 0 && Character.isLetterOrDigit(composed.charAt(start - 1));
      if (!isTimes(composed, start, end)) {
        tokens.add(new Token(fold(composed.substring(start, end)), glued, start, end));
      }
      start = end;
    }
    return tokens;
  }

  /** Lower case, accents and strokes dropped, sharp s as ss, the dotless i with its dot. */
  public static String fold(String text) {
    String lower = text.toLowerCase(Locale.ROOT).replace("ß", "ss").replace("æ", "ae");
    lower = lower.replace('ø', 'o').replace('ł', 'l').replace('ı', 'i').replace('đ', 'd');
    return ACCENTS.matcher(Normalizer.normalize(lower, Normalizer.Form.NFD)).replaceAll("");
  }

  /** True for the x of a size, Latin or Cyrillic, which is no letter: {@code 50x1.8}. */
  private static boolean isTimes(String text, int start, int end) {
    return end - start == 1
        && TIMES.indexOf(text.charAt(start)) >= 0
        && start > 0
        && Character.isDigit(text.charAt(start - 1))
        && end < text.length()
        && Character.isDigit(text.charAt(end));
  }

  private static boolean boundary(String text, int at) {
    char before = text.charAt(at - 1);
    char here = text.charAt(at);
    if (!Character.isLetterOrDigit(here) || Character.isDigit(before) != Character.isDigit(here)) {
      return true;
    }
    if (!Character.isUpperCase(here)) {
      return false;
    }
    boolean startsWord = at + 1 < text.length() && Character.isLowerCase(text.charAt(at + 1));
    return Character.isLowerCase(before) || startsWord;
  }
}
