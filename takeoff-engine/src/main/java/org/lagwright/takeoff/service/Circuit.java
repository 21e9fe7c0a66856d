package org.lagwright.takeoff.service;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What the hints of an element together tell of a circuit. Drinking water has neither flow nor
 * return: cold water with one of them, or in a system of chilled water, is chilled water.
 *
 * @param directionTold true if any hint tells flow or return, whatever the family
 * @param hydronic true if any hint tells a circuit that heats or cools rooms
 * @param families families that hints name
 */
record Circuit(boolean directionTold, boolean hydronic, Set<String> families) {

  static Circuit of(List<Hint> hints) {
    boolean told = false;
    boolean hydronic = false;
    Set<String> families = new HashSet<>();
    for (Hint hint : hints) {
      told |= "flow".equals(hint.direction()) || "return".equals(hint.direction());
      hydronic |= hint.hydronic();
      if (hint.family() != null) {
        families.add(hint.family());
      }
    }
    return new Circuit(told, hydronic, families);
  }
}
