package org.lagwright.ifc.schema;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One entity of a schema. */
final class IfcEntity {

  private final String name;
  private final @Nullable IfcEntity supertype;
  private final List<String> ownAttributes;

  /** Made when first asked for, as most entities of a file are never read. */
  private volatile @Nullable NameTable positions;

  /**
   * @param name as the standard spells it: {@code IfcPipeSegment}
   * @param supertype null if it has none
   * @param ownAttributes names of the attributes that it adds to its supertype, in file order
   */
  IfcEntity(String name, @Nullable IfcEntity supertype, List<String> ownAttributes) {
    this.name = name.intern();
    this.supertype = supertype;
    this.ownAttributes = ownAttributes;
  }

  /** Stands for entities that no schema knows: no attributes, no supertypes. */
  static IfcEntity unknown(String keyword) {
    return new IfcEntity(keyword, null, List.of());
  }

  /** As the standard spells it: {@code IfcPipeSegment}. */
  String name() {
    return name;
  }

  /** Names in file order, those of the supertypes first. */
  List<String> attributes() {
    List<String> attributes =
        new ArrayList<>(supertype == null ? List.of() : supertype.attributes());
    attributes.addAll(ownAttributes);
    return attributes;
  }

  /** True for its own name and those of its supertypes. */
  boolean isA(String entityName) {
    for (IfcEntity entity = this; entity != null; entity = entity.supertype) {
      if (entity.name.equals(entityName)) {
        return true;
      }
    }
    return false;
  }

  /** True if {@link #isA} is true of one of the names. */
  boolean isOneOf(List<String> entityNames) {
    for (String entityName : entityNames) {
      if (isA(entityName)) {
        return true;
      }
    }
    return false;
  }

  /** Position of an attribute, -1 if the entity has none of that name. */
  int position(String attribute) {
    NameTable table = positions;
    if (table == null) {
      table = new NameTable(attributes());
      positions = table;
    }
    return table.number(attribute);
  }
}
