package org.lagwright.ifc.schema;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What values one schema wants: types of attributes, and which of them may be missing. Only writing
 * asks for it. Its table also holds enumerations and defined types, which checks in tests read.
 */
public final class SchemaTypes {

  private static final Map<IfcSchema, SchemaTypes> READ = new EnumMap<>(IfcSchema.class);

  private final Map<String, List<Attribute>> attributes = new HashMap<>();
  private final Map<String, Set<String>> derived = new HashMap<>();
  private final IfcSchema schema;

  /**
   * One attribute of an entity.
   *
   * @param type as the schema has it, without spaces: {@code IfcLabel}, {@code
   *     LIST[1:?]IfcCartesianPoint}
   * @param optional true if it may have no value
   * @param derived true if it follows from others and is written as an asterisk
   */
  public record Attribute(String name, String type, boolean optional, boolean derived) {}

  private SchemaTypes(IfcSchema schema) {
    this.schema = schema;
    Map<String, String[]> types = new HashMap<>();
    String resource = schema.name().toLowerCase(Locale.ROOT) + "-types.txt";
    for (String[] words : SchemaTable.read(resource).lines()) {
      types.put(words[0], words);
    }
    schema.ownAttributes().forEach((entity, own) -> add(entity, own, types.get(entity)));
  }

  /** Entities without attributes of their own and without derived ones have no line. */
  private void add(String entity, List<String> own, String @Nullable [] words) {
    List<Attribute> its = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      String type = Objects.requireNonNull(words, entity)[i + 1];
      boolean optional = type.startsWith("?");
      its.add(new Attribute(own.get(i), optional ? type.substring(1) : type, optional, false));
    }
    attributes.put(entity, its);
    Set<String> asterisks = new HashSet<>();
    for (int i = own.size() + 1; words != null && i < words.length; i++) {
      asterisks.add(words[i].substring(1));
    }
    derived.put(entity, asterisks);
  }

  /** The types of a schema. */
  public static SchemaTypes of(IfcSchema schema) {
    synchronized (READ) {
      return READ.computeIfAbsent(schema, SchemaTypes::new);
    }
  }

  /** True if the schema itself has an entity of this name, in the standard's spelling. */
  public boolean isEntity(String name) {
    return attributes.containsKey(name);
  }

  /**
   * All attributes of an entity in file order.
   *
   * @throws IllegalStateException if the schema has no such entity
   */
  public List<Attribute> attributes(String entity) {
    if (!isEntity(entity)) {
      throw new IllegalStateException(schema + " has no entity " + entity);
    }
    List<Attribute> all = new ArrayList<>();
    Set<String> asterisks = new HashSet<>();
    for (String at = entity; !at.equals("-"); at = schema.supertype(at)) {
      all.addAll(0, attributes.getOrDefault(at, List.of()));
      asterisks.addAll(derived.getOrDefault(at, Set.of()));
    }
    all.replaceAll(
        a -> new Attribute(a.name(), a.type(), a.optional(), asterisks.contains(a.name())));
    return all;
  }

  /** Names of all entities, in the standard's spelling. */
  public Set<String> entities() {
    return Collections.unmodifiableSet(attributes.keySet());
  }
}
