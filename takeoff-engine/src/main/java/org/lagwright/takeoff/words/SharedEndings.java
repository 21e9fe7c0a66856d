package org.lagwright.takeoff.words;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Spells out words that share their ending with the next one: {@code Zu- und Abluft} is supply and
 * extract air, {@code Vor-/Rücklauf} flow and return.
 */
public final class SharedEndings {

  private static final String AND =
      "\\s*(?:[/&+,]|(?:und|u\\.?|oder|and|och|eller|en|ja)(?=[\\s-]))\\s*-?";

  /** A word cut off by a hyphen (before a stroke also without), and the word it leans on. */
  private static final Pattern CUT_OFF =
      Pattern.compile(
          "(?<!\\p{L})(\\p{L}+)(?:-|(?=[/&+]))(?=(?:" + AND + "\\p{L}+-)*" + AND + "(\\p{L}+))",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private static final Pattern THRICE = Pattern.compile("(\\p{L})\\1\\1", Pattern.CASE_INSENSITIVE);

  private final List<String> endings;

  /**
   * @param endings parts with which the second word may end, lower case: {@code luft}
   */
  public SharedEndings(List<String> endings) {
    this.endings = List.copyOf(endings);
  }

  /** The text with each cut off word followed by its full form; the text itself if it has none. */
  public String spelledOut(String text) {
    Matcher cutOff = CUT_OFF.matcher(text);
    StringBuilder spelled = new StringBuilder();
    while (cutOff.find()) {
      String word = cutOff.group(1);
      String ending = sharedEnding(word, cutOff.group(2));
      String full = ending == null ? cutOff.group() : word + " " + joined(word, ending);
      cutOff.appendReplacement(spelled, Matcher.quoteReplacement(full));
    }
    return spelled.isEmpty() ? text : cutOff.appendTail(spelled).toString();
  }

  /** The longest ending that the second word can lend; null where the first one is whole. */
  private @Nullable String sharedEnding(String word, String second) {
    String lower = second.toLowerCase(Locale.ROOT);
    int start = lower.length();
    for (String ending : endings) {
      if (word.toLowerCase(Locale.ROOT).endsWith(ending)) {
        return null;
      }
      int at = lower.lastIndexOf(ending);
      if (at > 0) {
        start = Math.min(start, at);
      }
    }
    return start == lower.length() ? null : lower.substring(start);
  }

  /** Of three equal letters at the seam Swedish drops one: {@code tilluft}. */
  private static String joined(String word, String ending) {
    boolean capitals = Character.isUpperCase(word.charAt(word.length() - 1));
    String full = word + (capitals ? ending.toUpperCase(Locale.ROOT) : ending);
    return THRICE.matcher(full).replaceAll("$1$1");
  }
}
