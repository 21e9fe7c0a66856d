package org.lagwright.takeoff.service;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What words mean instead of their usual family. {@code HWS} is the hot water service of a British
 * building and the heating water supply of an American one.
 *
 * @param withDirection family meant where flow or return is told, or where it is named
 * @param inCircuit family meant in a circuit that heats or cools rooms
 * @param whereNamed families of which the first that is named is meant
 */
record Otherwise(
    @Nullable String withDirection, @Nullable String inCircuit, List<String> whereNamed) {

  static final Otherwise NOTHING = new Otherwise(null, null, List.of());

  Otherwise {
    whereNamed = List.copyOf(whereNamed);
  }

  /** The family meant, given what all hints tell of a circuit. */
  String meant(String usual, Circuit circuit) {
    for (String named : whereNamed) {
      if (circuit.families().contains(named)) {
        return named;
      }
    }
    if (withDirection != null
        && (circuit.directionTold() || circuit.families().contains(withDirection))) {
      return withDirection;
    }
    return inCircuit != null && circuit.hydronic() ? inCircuit : usual;
  }
}
