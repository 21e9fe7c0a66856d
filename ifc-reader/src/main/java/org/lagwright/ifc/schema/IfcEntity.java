package org.lagwright.ifc.schema;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** One entity of a schema. */
final class IfcEntity {

  private final String name;
  private final Set<String> ancestors;
  private final List<String> attributes;

  /**
   * Attribute names, each at the place its hash says or at the next free one; a table of our own,
   * as every record asks all the time and most askers hold the very same text.
   */
  private final String[] slots;

  /** Position in the record of the attribute at each place. */
  private final byte[] positions;

  /**
   * @param name as the standard spells it: {@code IfcPipeSegment}
   * @param ancestors its own name and those of all its supertypes
   * @param attributes names in file order
   */
  IfcEntity(String name, Set<String> ancestors, List<String> attributes) {
    this.name = name;
    this.ancestors = Collections.unmodifiableSet(new HashSet<>(ancestors));
    this.attributes = List.copyOf(attributes);
    int size = Math.max(2, Integer.highestOneBit(Math.max(1, attributes.size())) * 4);
    this.slots = new String[size];
    this.positions = new byte[size];
    for (int i = 0; i < attributes.size(); i++) {
      put(attributes.get(i).intern(), i);
    }
  }

  /** Stands for entities that no schema knows: no attributes, no supertypes. */
  static IfcEntity unknown(String keyword) {
    return new IfcEntity(keyword, Set.of(keyword), List.of());
  }

  private void put(String attribute, int position) {
    int slot = attribute.hashCode() & (slots.length - 1);
    while (slots[slot] != null && !slots[slot].equals(attribute)) {
      slot = (slot + 1) & (slots.length - 1);
    }
    slots[slot] = attribute;
    positions[slot] = (byte) position;
  }

  /** As the standard spells it: {@code IfcPipeSegment}. */
  String name() {
    return name;
  }

  /** Its own name and those of all its supertypes. */
  Set<String> ancestors() {
    return ancestors;
  }

  /** Names in file order. */
  List<String> attributes() {
    return attributes;
  }

  /** Position of an attribute, -1 if the entity has none of that name. */
  int position(String attribute) {
    int slot = attribute.hashCode() & (slots.length - 1);
    String at = slots[slot];
    while (at != null) {
      if (at.equals(attribute)) {
        return positions[slot];
      }
      slot = (slot + 1) & (slots.length - 1);
      at = slots[slot];
    }
    return -1;
  }
}
