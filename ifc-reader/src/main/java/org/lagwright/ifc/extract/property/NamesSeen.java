package org.lagwright.ifc.extract.property;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Notices a name that stands twice in one set, whatever its case. Most sets have few names. */
final class NamesSeen {

  /** Up to this many names are compared one by one. */
  private static final int FEW = 64;

  private final List<String> names = new ArrayList<>(8);

  /** All names, folded, once there are many. */
  private Set<String> many = Set.of();

  /** A bit for each length of a name seen; names of other length differ. */
  private long lengths;

  /** False if the name was there before. */
  boolean add(String name) {
    if (names.size() == FEW) {
      if (many.isEmpty()) {
        many = new HashSet<>();
        names.forEach(seen -> many.add(folded(seen)));
      }
      return many.add(folded(name));
    }
    long bit = 1L << name.length();
    boolean repeated = (lengths & bit) != 0 && contains(name);
    lengths |= bit;
    names.add(name);
    return !repeated;
  }

  /** False if one of the others was there before. */
  boolean addAll(NamesSeen others) {
    boolean once = true;
    for (String name : others.names) {
      once &= add(name);
    }
    return once && others.many.isEmpty();
  }

  private boolean contains(String name) {
    for (String other : names) {
      if (other.equalsIgnoreCase(name)) {
        return true;
      }
    }
    return false;
  }

  /** Equal for names that differ in case only. */
  private static String folded(String name) {
    return name.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }
}
