package org.lagwright.ifc.extract;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.lagwright.ifc.model.Form;

/** What words in names tell, in the languages of words.txt. */
final class Words {

  private static final int MAY_BE_INSIDE_A_COMPOUND = 5;

  private static final Pattern MARKS = Pattern.compile("\\p{M}+");

  private static final Map<Form, List<String>> FORMS = new EnumMap<>(Form.class);
  private static final List<String> NEITHER_PIPE_NOR_DUCT = new ArrayList<>();
  private static final List<String> DUCT = new ArrayList<>();
  private static final List<String> PIPE = new ArrayList<>();
  private static final List<String> INSULATION = new ArrayList<>();

  static {
    for (String line : Resource.lines("words.txt")) {
      int colon = line.indexOf(':');
      String head = line.substring(0, colon);
      List<String> words =
          Arrays.stream(line.substring(colon + 1).split(",")).map(String::trim).toList();
      switch (head) {
        case "not" -> NEITHER_PIPE_NOR_DUCT.addAll(words);
        case "duct" -> DUCT.addAll(words);
        case "pipe" -> PIPE.addAll(words);
        case "insulation" -> INSULATION.addAll(words);
        default -> FORMS.put(Form.valueOf(head.substring("form ".length())), words);
      }
    }
  }

  private Words() {}

  /** Lower case without accents; the German sharp s as ss. */
  static String fold(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    if (lower.chars().allMatch(c -> c < 128)) {
      return lower;
    }
    String decomposed = Normalizer.normalize(lower.replace("ß", "ss"), Normalizer.Form.NFD);
    return MARKS.matcher(decomposed).replaceAll("");
  }

  /** The form that the first telling word of a text names. */
  static Optional<Form> form(String text) {
    String folded = fold(text);
    Form best = null;
    int bestAt = Integer.MAX_VALUE;
    int bestLength = 0;
    for (Map.Entry<Form, List<String>> entry : FORMS.entrySet()) {
      for (String word : entry.getValue()) {
        int at = indexOf(folded, word);
        if (at >= 0 && (at < bestAt || (at == bestAt && word.length() > bestLength))) {
          best = entry.getKey();
          bestAt = at;
          bestLength = word.length();
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** True for cables, trays, conduits, chambers. */
  static boolean isNeitherPipeNorDuct(String text) {
    return containsAny(fold(text), NEITHER_PIPE_NOR_DUCT);
  }

  static boolean isDuct(String text) {
    return containsAny(fold(text), DUCT);
  }

  static boolean isPipe(String text) {
    return containsAny(fold(text), PIPE);
  }

  /** True for insulation and for lining. */
  static boolean isInsulation(String text) {
    return containsAny(fold(text), INSULATION);
  }

  private static boolean containsAny(String folded, List<String> words) {
    return words.stream().anyMatch(word -> indexOf(folded, word) >= 0);
  }

  /** Where a word stands in a folded text, -1 if nowhere; short words must stand alone. */
  private static int indexOf(String folded, String word) {
    for (int at = folded.indexOf(word); at >= 0; at = folded.indexOf(word, at + 1)) {
      if (word.length() >= MAY_BE_INSIDE_A_COMPOUND || standsAlone(folded, at, word.length())) {
        return at;
      }
    }
    return -1;
  }

  private static boolean standsAlone(String folded, int at, int length) {
    boolean before = at == 0 || !Character.isLetter(folded.charAt(at - 1));
    int end = at + length;
    return before && (end == folded.length() || !Character.isLetter(folded.charAt(end)));
  }
}
