package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;

/** Notices a name that stands twice in one set, whatever its case. Most sets have few names. */
final class NamesSeen {

  private final List<String> names = new ArrayList<>(8);

  /** A bit for each length of a name seen; names of other length differ. */
  private long lengths;

  /** False if the name was there before. */
  boolean add(String name) {
    long bit = 1L << name.length();
    boolean repeated = (lengths & bit) != 0 && contains(name);
    lengths |= bit;
    names.add(name);
    return !repeated;
  }

  private boolean contains(String name) {
    for (String other : names) {
      if (other.equalsIgnoreCase(name)) {
        return true;
      }
    }
    return false;
  }
}
