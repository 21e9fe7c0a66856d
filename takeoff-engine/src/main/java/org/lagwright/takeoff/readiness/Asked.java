package org.lagwright.takeoff.readiness;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the model is asked to state, in the terms of buildingSMART IDS 1.0: elements it applies to
 * and exactly one facet that they must have.
 *
 * @param schemas IFC versions as IDS names them
 * @param kinds kinds of element it applies to, by label; empty where {@code entities} tell
 * @param entities class names in upper case; empty where {@code kinds} tell
 * @param atLeastOne true where the file must have such an element
 */
public record Asked(
    List<String> schemas,
    List<String> kinds,
    List<String> entities,
    @Nullable PropertyFacet property,
    @Nullable PartOfFacet partOf,
    @Nullable AttributeFacet attribute,
    boolean atLeastOne) {

  private static final Set<String> SCHEMAS = Set.of("IFC2X3", "IFC4", "IFC4X3_ADD2");

  public Asked {
    kinds = Objects.requireNonNullElse(kinds, List.<String>of());
    entities = Objects.requireNonNullElse(entities, List.<String>of());
    if (!SCHEMAS.containsAll(schemas) || schemas.isEmpty()) {
      throw new IllegalArgumentException("schemas must be of " + SCHEMAS + ".");
    }
    if (kinds.isEmpty() == entities.isEmpty()) {
      throw new IllegalArgumentException("either kinds or entities must be told.");
    }
    if (Stream.of(property, partOf, attribute).filter(Objects::nonNull).count() != 1) {
      throw new IllegalArgumentException("exactly one facet must be asked for.");
    }
    schemas = List.copyOf(schemas);
    kinds = List.copyOf(kinds);
    entities = List.copyOf(entities);
  }

  /**
   * A property or quantity with a value.
   *
   * @param sets names of sets; empty for any
   * @param measure IFC type of its value, upper case
   * @param from smallest value in SI, temperatures in kelvin
   * @param to largest value
   */
  public record PropertyFacet(
      List<String> sets, List<String> names, String measure, double from, double to) {
    public PropertyFacet {
      sets = List.copyOf(Objects.requireNonNullElse(sets, List.<String>of()));
      names = List.copyOf(names);
      if (!(from < to)) {
        throw new IllegalArgumentException("from must lie below to.");
      }
    }
  }

  /**
   * A whole or group that the element belongs to.
   *
   * @param relation relation in upper case, null for any
   * @param entity class of the whole in upper case
   * @param types predefined types of the whole that will do; empty for any
   */
  public record PartOfFacet(@Nullable String relation, String entity, List<String> types) {
    public PartOfFacet {
      types = List.copyOf(Objects.requireNonNullElse(types, List.<String>of()));
    }
  }

  /**
   * An attribute that is not empty.
   *
   * @param pattern regular expression that its text must match as a whole, for the GlobalId only;
   *     null for any value
   */
  public record AttributeFacet(String name, @Nullable String pattern) {
    public AttributeFacet {
      if (pattern != null && !name.equals("GlobalId")) {
        throw new IllegalArgumentException("a pattern can be held against the GlobalId only.");
      }
    }
  }

  /** True in files of this schema, as FILE_SCHEMA has it. */
  boolean holdsIn(String schema) {
    return schemas.stream().anyMatch(own -> own.equals(versionOf(schema)));
  }

  /** Drafts and corrections count as the version they belong to. */
  private static String versionOf(String schema) {
    if (schema.startsWith("IFC2X")) {
      return "IFC2X3";
    }
    return schema.startsWith("IFC4X") ? "IFC4X3_ADD2" : "IFC4";
  }
}
