package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Form;

/** What words in names tell, in the languages of words.txt. */
public final class Words {

  private static final FormWords FORMS = new FormWords();
  private static final Remembered<Optional<Form>> FORM_OF = new Remembered<>();
  private static final Map<Line, List<Word>> LINES = new EnumMap<>(Line.class);
  private static final Remembered<Optional<Line>> LINE_OF = new Remembered<>();
  private static final Remembered<Boolean> NEITHER_PIPE_NOR_DUCT = new Remembered<>();
  private static final Meaning CONDUIT = new Meaning();
  private static final Meaning BESIDE = new Meaning();
  private static final Meaning HEATER = new Meaning();
  private static final Meaning NONE = new Meaning();
  private static final Meaning SEVERAL = new Meaning();
  private static final Meaning NO_INSULATION = new Meaning();
  private static final Meaning UNTOLD = new Meaning();
  private static final Meaning LINING = new Meaning();
  private static final Meaning INSULATION = new Meaning();
  private static final Meaning INSULANT = new Meaning();
  private static final Meaning INSULATED = new Meaning();
  private static final Meaning COAT = new Meaning();
  private static final Meaning SAFEGUARD = new Meaning();
  private static final Meaning RUBBER = new Meaning();
  private static final Meaning HEAVY = new Meaning();
  private static final Meaning AIR = new Meaning();
  private static final Meaning WET = new Meaning();
  private static final List<Word> TUBES = new ArrayList<>();

  static {
    for (String line : Resource.lines("words.txt")) {
      int colon = line.indexOf(':');
      String head = line.substring(0, colon);
      List<Word> words = new ArrayList<>();
      for (String word : line.substring(colon + 1).split(",")) {
        words.add(Word.of(word));
      }
      switch (head) {
        case "not" -> LINES.put(Line.NEITHER, words);
        case "duct" -> LINES.put(Line.DUCT, words);
        case "pipe" -> LINES.put(Line.PIPE, words);
        case "conduit" -> CONDUIT.words.addAll(words);
        case "line" -> FORMS.lines.addAll(words);
        case "beside" -> BESIDE.words.addAll(words);
        case "heater" -> HEATER.words.addAll(words);
        case "context" -> FORMS.context.addAll(words);
        case "flexible" -> FORMS.flexible.addAll(words);
        case "none" -> NONE.words.addAll(words);
        case "several" -> SEVERAL.words.addAll(words);
        case "no-insulation" -> NO_INSULATION.words.addAll(words);
        case "untold" -> UNTOLD.words.addAll(words);
        case "lining" -> LINING.words.addAll(words);
        case "insulation" -> INSULATION.words.addAll(words);
        case "insulant" -> INSULANT.words.addAll(words);
        case "insulated" -> INSULATED.words.addAll(words);
        case "coat" -> COAT.words.addAll(words);
        case "safeguard" -> SAFEGUARD.words.addAll(words);
        case "rubber" -> RUBBER.words.addAll(words);
        case "heavy" -> HEAVY.words.addAll(words);
        case "air" -> AIR.words.addAll(words);
        case "wet" -> WET.words.addAll(words);
        case "tube" -> TUBES.addAll(words);
        default -> FORMS.add(Form.valueOf(head.substring("form ".length())), words);
      }
    }
  }

  /** What a name speaks of; cables, trays, conduits and chambers are neither. */
  public enum Line {
    NEITHER,
    DUCT,
    PIPE
  }

  /** A word that tells of a line, with the compound that it begins in. */
  private record Spoken(Line line, int start, int end, int length) {

    /** True if this one tells before another: it is of an earlier compound, or ends a compound. */
    boolean isBefore(Spoken other) {
      if (start != other.start) {
        return start < other.start;
      }
      return end != other.end ? end > other.end : length > other.length;
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
  static String withoutNumber(String name) {
    int end = name.length();
    while (end > 0 && (Sizes.isDigit(name.charAt(end - 1)) || name.charAt(end - 1) == ':')) {
      end--;
    }
    return name.substring(0, end);
  }

  /**
   * Lower case without accents and strokes; the German sharp s as ss, the i without its dot as i.
   * An o with a stroke that stands between no letters is the sign of a diameter and stays.
   */
  public static String fold(String text) {
    return Letters.folded(text);
  }

  /** The form that a name tells, empty if it tells none; see {@link FormWords}. */
  public static Optional<Form> form(String name) {
    String text = withoutNumber(name);
    Optional<Form> known = FORM_OF.find(text);
    return known == null ? FORM_OF.keep(text, FORMS.read(fold(text))) : known;
  }

  /** Words that tell a form, folded. */
  static List<Word> of(Form form) {
    return FORMS.of(form);
  }

  /**
   * What a name speaks of: the first word tells, and in a compound its last part; null if none
   * does. A Kanalgrundrohr is a pipe, and so is a "pipe to the duct heater"; but a family or type
   * that is called Conduit and nothing else is one, whatever tube stands before it.
   */
  public static @Nullable Line line(String name) {
    String text = withoutNumber(name);
    Optional<Line> known = LINE_OF.find(text);
    return (known == null ? LINE_OF.keep(text, readLine(text)) : known).orElse(null);
  }

  private static Optional<Line> readLine(String text) {
    String folded = fold(text);
    if (isTypeOfConduits(folded)) {
      return Optional.of(Line.NEITHER);
    }
    Spoken spoken = spoken(folded);
    return spoken == null ? Optional.empty() : Optional.of(spoken.line);
  }

  /** True if a whole part of "family:type:number" says conduit, and no part speaks of ducts. */
  private static boolean isTypeOfConduits(String folded) {
    if (folded.indexOf(':') < 0) {
      return false;
    }
    for (String part : folded.split(":", -1)) {
      for (Word word : CONDUIT.words) {
        if (part.trim().equals(word.text())) {
          return !containsAny(folded, LINES.getOrDefault(Line.DUCT, List.of()));
        }
      }
    }
    return false;
  }

  private static @Nullable Spoken spoken(String folded) {
    Spoken best = null;
    for (Map.Entry<Line, List<Word>> entry : LINES.entrySet()) {
      for (Word word : entry.getValue()) {
        int at = word.indexIn(folded);
        if (at >= 0) {
          int end = word.endIn(folded, at);
          int start = Word.startOfCompound(folded, at);
          Spoken found = new Spoken(entry.getKey(), start, end, end - at);
          best = best == null || found.isBefore(best) ? found : best;
        }
      }
    }
    return best;
  }

  /** True if a name speaks of cables, trays, conduits or chambers, and of no pipe or duct too. */
  public static boolean isNeitherPipeNorDuct(String name) {
    String text = withoutNumber(name);
    Boolean known = NEITHER_PIPE_NOR_DUCT.find(text);
    return known == null ? NEITHER_PIPE_NOR_DUCT.keep(text, isNeither(fold(text))) : known;
  }

  private static boolean isNeither(String folded) {
    if (isTypeOfConduits(folded)) {
      return true;
    }
    boolean told = false;
    String rest = folded;
    for (Spoken next = spoken(rest); next != null; next = spoken(rest)) {
      if (next.line != Line.NEITHER) {
        return false;
      }
      told = true;
      rest = rest.substring(next.end);
    }
    return told;
  }

  /** True for a word that means a tube for cables, and a duct in French. */
  public static boolean isConduit(String text) {
    return CONDUIT.isOf(text);
  }

  /**
   * True for what sits at a pipe and is no piece of it: gauges, thermowells, vents, fire collars.
   * Not for a tee or valve that carries one.
   */
  public static boolean isBesideThePipe(String text) {
    Line line = line(text);
    boolean isLine = line != null && line != Line.NEITHER;
    return BESIDE.isOf(text) && !isLine && form(text).isEmpty();
  }

  /** True for what heats a room, where a line ends: radiators and convectors. */
  public static boolean isRoomHeater(String text) {
    return HEATER.isOf(text);
  }

  /** True if a text tells of a duct. */
  public static boolean isDuct(String text) {
    return line(text) == Line.DUCT;
  }

  /** True if a text tells of a pipe. */
  public static boolean isPipe(String text) {
    return line(text) == Line.PIPE;
  }

  /**
   * True for a name that speaks of a pipe in no other words than those that round ducts are called
   * by too: a tube, in German "Rohr".
   */
  public static boolean isTube(String text) {
    String folded = fold(text);
    Spoken spoken = spoken(folded);
    if (spoken == null || spoken.line != Line.PIPE) {
      return false;
    }
    for (Word word : TUBES) {
      if (folded.startsWith(word.text(), spoken.start)) {
        return true;
      }
    }
    return false;
  }

  /** True for the air of a building; not for what heats or cools it, nor for compressed air. */
  public static boolean isAir(String text) {
    return AIR.isOf(text) && !WET.isOf(text);
  }

  /** True for a text that says that something is not there, or that nothing is known of it. */
  static boolean isNone(String text) {
    return NONE.isOf(text) || UNTOLD.isOf(text);
  }

  /** True for a text that says that something is not there. */
  static boolean isDenial(String text) {
    return NONE.isOf(text);
  }

  /** True for a text that speaks of several layers. */
  static boolean tellsOfLayers(String text) {
    return SEVERAL.isOf(text);
  }

  /** True for what lies around a pipe to heat it or against corrosion, and insulates nothing. */
  public static boolean isNoInsulation(String text) {
    return NO_INSULATION.isOf(text);
  }

  /** True for insulation and for lining. */
  public static boolean isInsulation(String text) {
    return INSULATION.isOf(text) || LINING.isOf(text);
  }

  /** True for materials that insulate; of a layer, as hoses and seals are made of some too. */
  public static boolean isInsulant(String text) {
    return INSULANT.isOf(text);
  }

  /** True for rubber, which insulates metal; of some, hoses are made. */
  public static boolean isRubber(String text) {
    return RUBBER.isOf(text);
  }

  /** True for what has insulation, not for insulation itself. */
  public static boolean isInsulated(String text) {
    return INSULATED.isOf(text);
  }

  /** True for a text that speaks of insulation in any way. */
  public static boolean tellsOfInsulation(String text) {
    return isInsulation(text) || isInsulated(text) || isInsulant(text);
  }

  /** True for paint and vapour barriers, which insulate nothing. */
  public static boolean isCoat(String text) {
    return COAT.isOf(text);
  }

  /** True for what lies around a pipe against fire, sound or damage, and may not insulate it. */
  public static boolean mayBeNoInsulation(String text) {
    boolean hard = isCoat(text) || HEAVY.isOf(text);
    return SAFEGUARD.isOf(text) || (hard && !tellsOfInsulation(text));
  }

  /** True for concrete, mortar and masonry, which line ducts and insulate nothing. */
  public static boolean isHeavy(String text) {
    return HEAVY.isOf(text) && !isInsulant(text);
  }

  /** True for what lines a duct on its inside. */
  public static boolean isLining(String text) {
    return LINING.isOf(text);
  }

  private static boolean containsAny(String folded, List<Word> words) {
    for (Word word : words) {
      if (word.indexIn(folded) >= 0) {
        return true;
      }
    }
    return false;
  }
}
