package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.lagwright.ifc.model.Property;

/** Which property answers which question, by its name in any of several languages. */
public final class PropertyNames {

  /** The questions of property-names.txt. */
  public enum Role {
    OUTSIDE_DIAMETER,
    INSIDE_DIAMETER,
    WALL,
    NOMINAL,
    NOMINAL_UNIT,
    SECOND_NOMINAL,
    DIAMETER,
    WIDTH,
    HEIGHT,
    SIZE,
    OVERALL_SIZE,
    FORM,
    SHAPE,
    LENGTH,
    ANGLE,
    BEND_RADIUS,
    ECCENTRICITY,
    BRANCH_LENGTH,
    BRANCH_NOMINAL,
    INSULATION_THICKNESS,
    INSULATION_MATERIAL,
    INSULATION_OR_SHUT_OFF,
    LINING_THICKNESS,
    LINING,
    COVERING_THICKNESS,
    EXTERNAL,
    PORT_TEMPERATURE,
    MATERIAL
  }

  /** Roles by bare name as in property-names.txt, as bits: 1 shifted by the ordinal of the role. */
  private static final Map<String, Integer> ROLES = new HashMap<>();

  /**
   * Roles by name as written, since the same few names stand on every element; a file with more
   * names than any real one has is not remembered further.
   */
  private static final Map<String, Integer> SEEN = new ConcurrentHashMap<>();

  private static final int MOST_NAMES = 10_000;

  static {
    for (String line : Resource.lines("property-names.txt")) {
      int colon = line.indexOf(':');
      Role role = Role.valueOf(line.substring(0, colon).toUpperCase(Locale.ROOT).replace('-', '_'));
      for (String name : line.substring(colon + 1).split(",")) {
        String bare = name.trim();
        ROLES.put(bare, ROLES.getOrDefault(bare, 0) | bit(role));
      }
    }
  }

  /** What is asked of an element when its place and its insulation are told. */
  private static final int ASKED_LAST =
      bit(Role.INSULATION_THICKNESS)
          | bit(Role.INSULATION_MATERIAL)
          | bit(Role.INSULATION_OR_SHUT_OFF)
          | bit(Role.LINING_THICKNESS)
          | bit(Role.LINING)
          | bit(Role.COVERING_THICKNESS)
          | bit(Role.EXTERNAL);

  /**
   * What is read as a plain length. A name in inches or feet answers no other question: texts of
   * sizes are read by themselves, and so many inches of pipe are its nominal size.
   */
  private static final int LENGTHS =
      bit(Role.OUTSIDE_DIAMETER)
          | bit(Role.INSIDE_DIAMETER)
          | bit(Role.WALL)
          | bit(Role.WIDTH)
          | bit(Role.HEIGHT)
          | bit(Role.LENGTH)
          | bit(Role.BEND_RADIUS)
          | bit(Role.ECCENTRICITY)
          | bit(Role.BRANCH_LENGTH)
          | bit(Role.INSULATION_THICKNESS)
          | bit(Role.LINING_THICKNESS)
          | bit(Role.COVERING_THICKNESS);

  private PropertyNames() {}

  /** A role as a bit of {@link #roles}. */
  public static int bit(Role role) {
    return 1 << role.ordinal();
  }

  /** Properties that answer a question, in the order of the element. */
  public static List<Property> listOf(List<Property> properties, Role role) {
    List<Property> found = List.of();
    for (int i = 0; i < properties.size(); i++) {
      Property property = properties.get(i);
      if (answers(property, role)) {
        found = found.isEmpty() ? new ArrayList<>(2) : found;
        found.add(property);
      }
    }
    return found;
  }

  /** True if one of the properties answers a question. */
  public static boolean anyAnswers(List<Property> properties, Role role) {
    for (int i = 0; i < properties.size(); i++) {
      if (answers(properties.get(i), role)) {
        return true;
      }
    }
    return false;
  }

  /** True if a property answers a question. */
  public static boolean answers(Property property, Role role) {
    return (roles(property.name()) & bit(role)) != 0;
  }

  /** True for a property that is still asked for once its element is measured. */
  public static boolean areAskedLast(Property property) {
    return (roles(property.name()) & ASKED_LAST) != 0;
  }

  /** True if a property of this name answers some question. */
  public static boolean areWanted(String name) {
    return roles(name) != 0;
  }

  /** The questions that a property of this name answers, as bits. */
  public static int roles(String name) {
    Integer known = SEEN.get(name);
    if (known == null) {
      known = rolesAsWritten(name);
      if (known == 0) {
        known = NameCode.rolesWithout(name);
      }
      if (known != 0 && UnitInName.isInInchesOrFeet(name)) {
        known &= LENGTHS;
      }
      if (SEEN.size() < MOST_NAMES) {
        SEEN.put(name, known);
      }
    }
    return known;
  }

  /** The questions that a name answers as it is, with or without a unit at its end. */
  static int rolesAsWritten(String name) {
    String bare = bare(name);
    int roles = ROLES.getOrDefault(bare, 0);
    return roles == 0
        ? ROLES.getOrDefault(UnitInName.withoutUnit(bare, Words.fold(name)), 0)
        : roles;
  }

  /** The name without case, accents, spaces, punctuation, and a unit in brackets. */
  private static String bare(String name) {
    StringBuilder bare = new StringBuilder(name.length());
    String folded = UnitInName.withoutBracketed(Words.fold(name));
    for (int i = 0; i < folded.length(); i++) {
      if (Character.isLetterOrDigit(folded.charAt(i))) {
        bare.append(folded.charAt(i));
      }
    }
    return bare.toString();
  }
}
