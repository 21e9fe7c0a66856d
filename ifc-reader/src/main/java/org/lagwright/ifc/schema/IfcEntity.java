package org.lagwright.ifc.schema;

import java.util.List;
import java.util.Set;

/** One entity of a schema. */
final class IfcEntity {

  private final String name;
  private final Set<String> ancestors;
  private final List<String> attributes;
  private final NameTable positions;
  private final NameTable isA;

  /**
   * @param name as the standard spells it: {@code IfcPipeSegment}
   * @param ancestors its own name and those of all its supertypes
   * @param attributes names in file order
   */
  IfcEntity(String name, Set<String> ancestors, List<String> attributes) {
    this.name = name;
    this.ancestors = Set.copyOf(ancestors);
    this.attributes = List.copyOf(attributes);
    this.positions = new NameTable(attributes);
    this.isA = new NameTable(ancestors);
  }

  /** Stands for entities that no schema knows: no attributes, no supertypes. */
  static IfcEntity unknown(String keyword) {
    return new IfcEntity(keyword, Set.of(keyword), List.of());
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

  /** True for its own name and those of its supertypes. */
  boolean isA(String entityName) {
    return isA.contains(entityName);
  }

  /** Position of an attribute, -1 if the entity has none of that name. */
  int position(String attribute) {
    return positions.number(attribute);
  }
}
