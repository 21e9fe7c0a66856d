package org.lagwright.ifc.schema;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One entity of a schema.
 *
 * @param name as the standard spells it: {@code IfcPipeSegment}
 * @param positions position in the record by attribute name
 * @param ancestors its own name and those of all its supertypes
 * @param attributes names in file order
 */
record IfcEntity(
    String name, Map<String, Integer> positions, Set<String> ancestors, List<String> attributes) {

  IfcEntity {
    // hash tables, as small immutable ones are slow to search and records ask all the time
    positions = Collections.unmodifiableMap(new HashMap<>(positions));
    ancestors = Collections.unmodifiableSet(new HashSet<>(ancestors));
    attributes = List.copyOf(attributes);
  }

  /** Stands for entities that no schema knows: no attributes, no supertypes. */
  static IfcEntity unknown(String keyword) {
    return new IfcEntity(keyword, Map.of(), Set.of(keyword), List.of());
  }

  /** Position of an attribute, -1 if the entity has none of that name. */
  int position(String attribute) {
    return positions.getOrDefault(attribute, -1);
  }
}
