package org.lagwright.ifc.extract.property;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The patterns that were learnt from the sets of a file. Safe for several threads. */
final class SetPatterns {

  /** Real models have some dozen sets; a file that has more is read without. */
  private static final int MOST_KEYS = 1000;

  /** Pipes and fittings may have sets of one name with as many, but other, properties. */
  private static final int MOST_OF_A_KEY = 4;

  private final Map<SetPattern.Key, List<SetPattern>> byKey = new ConcurrentHashMap<>();

  /** Those of sets of one name and size, the one learnt last first; none if there are none. */
  List<SetPattern> of(SetPattern.Key key) {
    List<SetPattern> known = byKey.get(key);
    return known == null ? List.of() : known;
  }

  /** True if another one should be learnt from a set that is like none of those. */
  boolean want(List<SetPattern> known) {
    return known.isEmpty()
        ? byKey.size() < MOST_KEYS
        : known.size() < MOST_OF_A_KEY || areWorn(known);
  }

  private static boolean areWorn(List<SetPattern> known) {
    for (SetPattern pattern : known) {
      if (!pattern.isWorn()) {
        return false;
      }
    }
    return true;
  }

  /** Adds a pattern; where there are as many as may be, it takes the place of all. */
  void add(SetPattern.Key key, SetPattern learnt) {
    List<SetPattern> known = of(key);
    List<SetPattern> all = new ArrayList<>(MOST_OF_A_KEY);
    all.add(learnt);
    if (known.size() < MOST_OF_A_KEY) {
      all.addAll(known);
    }
    byKey.put(key, List.copyOf(all));
  }
}
