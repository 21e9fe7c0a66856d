package org.lagwright.ifc.extract.text;

import java.text.Normalizer;
import java.util.Locale;

/** Letters of any Latin, Greek or Cyrillic alphabet as words.txt has them: small and bare. */
final class Letters {

  private Letters() {}

  /** See {@link Words#fold}. */
  static String folded(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    if (isAscii(lower)) {
      return lower;
    }
    String decomposed = Normalizer.normalize(lower.replace("ß", "ss"), Normalizer.Form.NFD);
    StringBuilder withoutMarks = new StringBuilder(decomposed.length());
    for (int i = 0; i < decomposed.length(); i++) {
      char c = decomposed.charAt(i);
      if (c == 'ø' && isBetweenLetters(decomposed, i)) {
        withoutMarks.append('o');
      } else if (c == 'æ') {
        withoutMarks.append("ae");
      } else if (c == 'ł') {
        withoutMarks.append('l');
      } else if (c == 'ı') {
        withoutMarks.append('i');
      } else if (c == 'đ') {
        withoutMarks.append('d');
      } else if (!isMark(c)) {
        withoutMarks.append(c);
      }
    }
    return withoutMarks.toString();
  }

  private static boolean isBetweenLetters(String text, int at) {
    return at > 0
        && at + 1 < text.length()
        && Character.isLetter(text.charAt(at - 1))
        && Character.isLetter(text.charAt(at + 1));
  }

  private static boolean isMark(char c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.COMBINING_SPACING_MARK;
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= 128) {
        return false;
      }
    }
    return true;
  }
}
