package org.lagwright.ifc.schema;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The entities of one schema. An entity that this schema lacks but another one has is read the way
 * that one writes it, because exporters mix them.
 */
public enum IfcSchema {
  IFC2X3,
  IFC4,
  IFC4X3;

  private static final Set<String> RELEASED =
      Set.of(
          "IFC2X3",
          "IFC2X3_TC1",
          "IFC4",
          "IFC4_ADD1",
          "IFC4_ADD2",
          "IFC4_ADD2_TC1",
          "IFC4X3",
          "IFC4X3_TC1",
          "IFC4X3_ADD1",
          "IFC4X3_ADD2");

  /** Read when first asked for, as few files need all three. */
  @SuppressWarnings("ImmutableEnumChecker") // a cache
  private volatile @Nullable SchemaTable table;

  /** What has been asked for so far. */
  @SuppressWarnings("ImmutableEnumChecker") // a cache
  private final Map<String, IfcEntity> entities = new ConcurrentHashMap<>();

  /**
   * The schema for a FILE_SCHEMA identifier: exact names, and drafts and addenda of the same family
   * such as {@code IFC4X3_RC3}.
   *
   * @return empty for anything else (IFC2X2, other standards)
   */
  public static Optional<IfcSchema> forIdentifier(String identifier) {
    String id = identifier.toUpperCase(Locale.ROOT);
    if (id.startsWith("IFC2X3")) {
      return Optional.of(IFC2X3);
    }
    if (id.startsWith("IFC4X")) {
      return Optional.of(IFC4X3);
    }
    return id.startsWith("IFC4") ? Optional.of(IFC4) : Optional.empty();
  }

  /**
   * True for released editions: the families that this reader was written for, with their addenda
   * and corrigenda, which many exporters name.
   */
  public static boolean isReleased(String identifier) {
    return RELEASED.contains(identifier.toUpperCase(Locale.ROOT));
  }

  /** True if this or another schema knows the keyword. */
  public boolean knows(String keyword) {
    return find(keyword) != null;
  }

  /**
   * True if the keyword names the entity or a subtype of it; entity spelled as the standard does.
   */
  public boolean isA(String keyword, String entity) {
    IfcEntity found = find(keyword);
    return found != null && found.isA(entity);
  }

  /**
   * The standard's spelling of a keyword: {@code IfcPipeSegment}; the keyword itself if unknown.
   */
  public String spelling(String keyword) {
    IfcEntity found = find(keyword);
    return found == null ? keyword : found.name();
  }

  IfcEntity entity(String keyword) {
    IfcEntity found = find(keyword);
    return found == null ? IfcEntity.unknown(keyword) : found;
  }

  private @Nullable IfcEntity find(String keyword) {
    IfcEntity own = own(keyword);
    IfcSchema[] all = values();
    for (int i = all.length - 1; i >= 0 && own == null; i--) {
      own = all[i].own(keyword);
    }
    return own;
  }

  private @Nullable IfcEntity own(String keyword) {
    IfcEntity known = entities.get(keyword);
    if (known == null) {
      String[] words = table().find(keyword);
      known = words == null ? null : entity(words);
      if (known != null) {
        entities.put(keyword, known);
      }
    }
    return known;
  }

  private SchemaTable table() {
    SchemaTable read = table;
    if (read == null) {
      read = SchemaTable.read(name().toLowerCase(Locale.ROOT) + ".txt");
      table = read;
    }
    return read;
  }

  /**
   * @param words name, supertype, own attributes
   */
  private IfcEntity entity(String[] words) {
    IfcEntity supertype = null;
    if (!words[1].equals("-")) {
      supertype = own(words[1].toUpperCase(Locale.ROOT));
      if (supertype == null) {
        throw new IllegalStateException("supertype missing from the schema table: " + words[1]);
      }
    }
    return new IfcEntity(words[0], supertype, Arrays.asList(words).subList(2, words.length));
  }

  /** Names of the attributes that each entity of this schema itself adds, in file order. */
  Map<String, List<String>> ownAttributes() {
    Map<String, List<String>> own = new HashMap<>();
    for (String[] words : table().lines()) {
      own.put(words[0], List.of(words).subList(2, words.length));
    }
    return own;
  }

  /** Name of the supertype of an entity of this schema, {@code -} if it has none. */
  String supertype(String entity) {
    String[] words = table().find(entity.toUpperCase(Locale.ROOT));
    return words == null ? "-" : words[1];
  }
}
