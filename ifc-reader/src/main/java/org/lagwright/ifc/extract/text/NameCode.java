package org.lagwright.ifc.extract.text;

import java.util.Locale;
import java.util.Set;
import org.lagwright.ifc.extract.text.PropertyNames.Role;

/**
 * Codes of offices and programs in front of the names of properties, as in {@code AQ_Dämmdicke} or
 * {@code AQ: Insulation thickness}. A code is capitals, or a number that begins with a zero, before
 * a name that is not all capitals; so a {@code Box_Width} and a {@code MAX_LENGTH} have none. In
 * square brackets, as in {@code [IDK] Isolationsdicke}, it may be anything but a word that changes
 * what the name means.
 */
final class NameCode {

  /** An office and a subject or the like. */
  private static final int MOST_CODES = 2;

  private static final int LONGEST = 5;

  /** Shorter names, such as an OD, mean other things behind a code. */
  private static final int SHORTEST_CLEAR_NAME = 7;

  /** Short words in capitals that change what a name means; words for parts are known anyway. */
  private static final Set<String> WORDS =
      Set.of(
          "MIN", "MAX", "IN", "OUT", "INT", "EXT", "INNEN", "BOX", "NO", "DN", "NW", "ISO", "INS",
          "INSUL", "DAEMM");

  /** What no other thing has, whatever stands between code and name. */
  private static final int UNMISTAKABLE =
      PropertyNames.bit(Role.INSULATION_THICKNESS) | PropertyNames.bit(Role.OUTSIDE_DIAMETER);

  /** What an element has once; a number or a letter in front does not tell one of several. */
  private static final int SINGLE =
      PropertyNames.bit(Role.INSULATION_THICKNESS)
          | PropertyNames.bit(Role.INSULATION_MATERIAL)
          | PropertyNames.bit(Role.INSULATION_OR_SHUT_OFF)
          | PropertyNames.bit(Role.LINING_THICKNESS);

  /** What is clear behind an underscore if it is long. */
  private static final int CLEAR =
      SINGLE
          | PropertyNames.bit(Role.OUTSIDE_DIAMETER)
          | PropertyNames.bit(Role.INSIDE_DIAMETER)
          | PropertyNames.bit(Role.WALL)
          | PropertyNames.bit(Role.NOMINAL);

  /** What is clear behind an underscore however short it is. */
  private static final int SIDES =
      PropertyNames.bit(Role.WIDTH)
          | PropertyNames.bit(Role.HEIGHT)
          | PropertyNames.bit(Role.LENGTH);

  /** What is clear behind a code that counts, such as that of a second end. */
  private static final int COUNTED = SINGLE | PropertyNames.bit(Role.SECOND_NOMINAL);

  private NameCode() {}

  /** The questions that a name answers without its codes, as bits; 0 if it has none. */
  static int rolesWithout(String name) {
    return name.startsWith("[") ? rolesBehindBrackets(name) : rolesBehindCapitals(name);
  }

  private static int rolesBehindBrackets(String name) {
    int end = name.indexOf(']');
    if (end < 2 || isWord(name.substring(1, end).toUpperCase(Locale.ROOT))) {
      return 0;
    }
    char last = name.charAt(end - 1);
    boolean counts = Sizes.isDigit(last) && last != '1';
    String plain = name.substring(end + 1).strip();
    int roles = plain.length() > 1 ? PropertyNames.rolesAsWritten(plain) : 0;
    return roles & (counts ? COUNTED : CLEAR | SIDES | COUNTED);
  }

  private static int rolesBehindCapitals(String name) {
    String rest = name;
    int allowed = CLEAR | SIDES;
    for (int i = 0; i < MOST_CODES; i++) {
      int end = codeEnd(rest);
      if (end == 0 || !hasLowerCase(rest)) {
        return 0;
      }
      boolean oneOfSeveral = Sizes.isDigit(rest.charAt(0)) || (end == 1 && i == 0);
      allowed &= rest.charAt(end) == '_' ? CLEAR | SIDES : UNMISTAKABLE;
      allowed &= oneOfSeveral ? SINGLE : CLEAR | SIDES;
      rest = rest.substring(end + 1).strip();
      int roles = PropertyNames.rolesAsWritten(rest);
      if (roles != 0) {
        boolean clear = (roles & allowed & CLEAR) != 0 && rest.length() >= SHORTEST_CLEAR_NAME;
        return clear || (roles & allowed & SIDES) != 0 ? roles : 0;
      }
    }
    return 0;
  }

  /** Where the code ends that a name begins with, at what parts them; 0 if it begins with none. */
  private static int codeEnd(String name) {
    int end = 0;
    boolean number = name.startsWith("0");
    while (end < name.length() && isOfCode(name.charAt(end), number)) {
      end++;
    }
    if (end == 0 || end > LONGEST || end == name.length()) {
      return 0;
    }
    char parting = name.charAt(end);
    boolean parted = parting == '_' || parting == ':' || parting == ' ';
    return parted && !isWord(name.substring(0, end)) ? end : 0;
  }

  private static boolean isOfCode(char c, boolean number) {
    return number ? Sizes.isDigit(c) : Character.isUpperCase(c);
  }

  private static boolean isWord(String code) {
    return WORDS.contains(code) || Words.form(code).isPresent() || Words.line(code) != null;
  }

  private static boolean hasLowerCase(String name) {
    for (int i = 0; i < name.length(); i++) {
      if (Character.isLowerCase(name.charAt(i))) {
        return true;
      }
    }
    return false;
  }
}
