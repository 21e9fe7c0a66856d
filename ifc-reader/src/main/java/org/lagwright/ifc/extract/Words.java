package org.lagwright.ifc.extract;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Form;

/** What words in names tell, in the languages of words.txt. */
final class Words {

  private static final int MAY_BE_INSIDE_A_COMPOUND = 5;

  private static final Set<Form> JOINTS = Set.of(Form.FLANGE, Form.COUPLING, Form.UNION);

  private static final Set<Form> REDUCING = Set.of(Form.REDUCER, Form.TRANSITION);

  private static final Set<Form> SHAPES = EnumSet.allOf(Form.class);

  private static final Map<Form, List<Word>> FORMS = new EnumMap<>(Form.class);
  private static final Remembered<Optional<Form>> FORM_OF = new Remembered<>();
  private static final List<Word> LINE = new ArrayList<>();
  private static final Meaning NEITHER_PIPE_NOR_DUCT = new Meaning();
  private static final Meaning DUCT = new Meaning();
  private static final Meaning PIPE = new Meaning();
  private static final Meaning LINING = new Meaning();
  private static final Meaning INSULATION = new Meaning();

  static {
    SHAPES.removeAll(JOINTS);
    SHAPES.removeAll(REDUCING);
    for (String line : Resource.lines("words.txt")) {
      int colon = line.indexOf(':');
      String head = line.substring(0, colon);
      List<Word> words = new ArrayList<>();
      for (String word : line.substring(colon + 1).split(",")) {
        words.add(Word.of(word));
      }
      switch (head) {
        case "not" -> NEITHER_PIPE_NOR_DUCT.words.addAll(words);
        case "duct" -> DUCT.words.addAll(words);
        case "pipe" -> PIPE.words.addAll(words);
        case "line" -> LINE.addAll(words);
        case "lining" -> LINING.words.addAll(words);
        case "insulation" -> INSULATION.words.addAll(words);
        default -> FORMS.put(Form.valueOf(head.substring("form ".length())), words);
      }
    }
  }

  /**
   * A word to look for, folded as it stands in words.txt; one marked as first tells only at the
   * beginning of a name.
   */
  private record Word(String text, boolean first) {

    static Word of(String written) {
      String word = written.trim();
      boolean first = word.startsWith("^");
      return new Word(first ? word.substring(1) : word, first);
    }
  }

  /** Words of which each tells the same. */
  private static final class Meaning {

    private final List<Word> words = new ArrayList<>();
    private final Remembered<Boolean> answers = new Remembered<>();

    boolean isOf(String name) {
      String text = withoutNumber(name);
      Boolean known = answers.find(text);
      return known == null ? answers.keep(text, containsAny(fold(text), words)) : known;
    }
  }

  private Words() {}

  /**
   * A name without the number that makes it unique, as in {@code Pipe 22:4711}. No word ends in a
   * digit, so it tells the same, and is the same on thousands of elements.
   */
  private static String withoutNumber(String name) {
    int end = name.length();
    while (end > 0 && (Sizes.isDigit(name.charAt(end - 1)) || name.charAt(end - 1) == ':')) {
      end--;
    }
    return name.substring(0, end);
  }

  /** Lower case without accents; the German sharp s as ss. */
  static String fold(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    if (isAscii(lower)) {
      return lower;
    }
    String decomposed = Normalizer.normalize(lower.replace("ß", "ss"), Normalizer.Form.NFD);
    StringBuilder withoutMarks = new StringBuilder(decomposed.length());
    for (int i = 0; i < decomposed.length(); i++) {
      if (!isMark(decomposed.charAt(i))) {
        withoutMarks.append(decomposed.charAt(i));
      }
    }
    return withoutMarks.toString();
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

  /**
   * The form that the first telling word of a name tells. Words for a change of size tell after
   * those for a shape, as a reducing tee is a tee; flange, coupling and union tell last, as they
   * also say how a piece is joined: a flanged elbow is a bend.
   */
  static Optional<Form> form(String name) {
    String text = withoutNumber(name);
    Optional<Form> known = FORM_OF.find(text);
    return known == null ? FORM_OF.keep(text, readForm(text)) : known;
  }

  private static Optional<Form> readForm(String text) {
    String folded = fold(text);
    Form best = first(folded, SHAPES);
    best = best == null ? first(folded, REDUCING) : best;
    return Optional.ofNullable(best == null ? first(folded, JOINTS) : best);
  }

  private static @Nullable Form first(String folded, Set<Form> asked) {
    Form best = null;
    int bestAt = Integer.MAX_VALUE;
    int bestLength = 0;
    for (Map.Entry<Form, List<Word>> entry : FORMS.entrySet()) {
      for (Word word : asked.contains(entry.getKey()) ? entry.getValue() : List.<Word>of()) {
        int at = indexOf(folded, word);
        int length = word.text.length();
        boolean earlier = at < bestAt || (at == bestAt && length > bestLength);
        if (at >= 0 && earlier && isHead(folded, at + length)) {
          best = entry.getKey();
          bestAt = at;
          bestLength = length;
        }
      }
    }
    return best;
  }

  /** False if the word that ends here only begins a compound that names a pipe or duct. */
  private static boolean isHead(String folded, int end) {
    int wordEnd = end;
    while (wordEnd < folded.length() && Character.isLetter(folded.charAt(wordEnd))) {
      wordEnd++;
    }
    String rest = folded.substring(end, wordEnd);
    for (Word word : rest.isEmpty() ? List.<Word>of() : LINE) {
      if (rest.endsWith(word.text)) {
        return false;
      }
    }
    return true;
  }

  /** True for cables, trays, conduits, chambers. */
  static boolean isNeitherPipeNorDuct(String text) {
    return NEITHER_PIPE_NOR_DUCT.isOf(text);
  }

  static boolean isDuct(String text) {
    return DUCT.isOf(text);
  }

  static boolean isPipe(String text) {
    return PIPE.isOf(text);
  }

  /** True for insulation and for lining. */
  static boolean isInsulation(String text) {
    return INSULATION.isOf(text) || LINING.isOf(text);
  }

  /** True for what lines a duct on its inside. */
  static boolean isLining(String text) {
    return LINING.isOf(text);
  }

  private static boolean containsAny(String folded, List<Word> words) {
    for (Word word : words) {
      if (indexOf(folded, word) >= 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * Where a word stands in a folded text, -1 if nowhere; short words must stand alone, and those
   * marked with ^ also at the beginning.
   */
  private static int indexOf(String folded, Word word) {
    if (word.first) {
      return folded.startsWith(word.text) && standsAlone(folded, 0, word.text.length()) ? 0 : -1;
    }
    for (int at = folded.indexOf(word.text); at >= 0; at = folded.indexOf(word.text, at + 1)) {
      if (word.text.length() >= MAY_BE_INSIDE_A_COMPOUND
          || standsAlone(folded, at, word.text.length())) {
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
