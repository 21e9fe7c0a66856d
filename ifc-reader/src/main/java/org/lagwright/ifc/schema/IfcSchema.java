package org.lagwright.ifc.schema;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
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

  /** Lines of the table by keyword; read when first asked for, as few files need all three. */
  @SuppressWarnings("ImmutableEnumChecker") // a cache
  private volatile @Nullable Map<String, String[]> lines;

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

  /** True for the identifiers of the released editions this reader was written for. */
  public static boolean isReleased(String identifier) {
    return Set.of("IFC2X3", "IFC4", "IFC4X3_ADD2", "IFC4X3")
        .contains(identifier.toUpperCase(Locale.ROOT));
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
    return found != null && found.ancestors().contains(entity);
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
    if (known == null && lines().containsKey(keyword)) {
      known = resolve(keyword, lines());
      entities.put(keyword, known);
    }
    return known;
  }

  private Map<String, String[]> lines() {
    Map<String, String[]> read = lines;
    if (read == null) {
      read = lines(name().toLowerCase(Locale.ROOT) + ".txt");
      lines = read;
    }
    return read;
  }

  /** Lines by keyword: name, supertype, own attributes. */
  private static Map<String, String[]> lines(String resource) {
    Map<String, String[]> lines = new HashMap<>();
    for (String[] words : words(resource)) {
      words[0] = words[0].startsWith("!") ? words[0].substring(1) : words[0];
      lines.put(words[0].toUpperCase(Locale.ROOT), words);
    }
    return lines;
  }

  /** The words of each line of a table, without its comments. */
  static List<String[]> words(String resource) {
    InputStream in = IfcSchema.class.getResourceAsStream(resource);
    if (in == null) {
      throw new IllegalStateException("resource missing from the build: " + resource);
    }
    List<String[]> lines = new ArrayList<>();
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (!line.startsWith("#")) {
          lines.add(line.split(" ", -1));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return lines;
  }

  /** Names of the attributes that each entity of this schema itself adds, in file order. */
  Map<String, List<String>> ownAttributes() {
    Map<String, List<String>> own = new HashMap<>();
    for (String[] words : lines().values()) {
      own.put(words[0], List.of(words).subList(2, words.length));
    }
    return own;
  }

  /** Name of the supertype of an entity of this schema, {@code -} if it has none. */
  String supertype(String entity) {
    String[] words = lines().get(entity.toUpperCase(Locale.ROOT));
    return words == null ? "-" : words[1];
  }

  private static IfcEntity resolve(String keyword, Map<String, String[]> lines) {
    List<String> attributes = new ArrayList<>();
    Set<String> ancestors = new HashSet<>();
    String name = "";
    for (String at = keyword; !at.equals("-"); ) {
      String[] words = lines.get(at);
      if (words == null) {
        throw new IllegalStateException("supertype missing from the schema table: " + at);
      }
      attributes.addAll(0, Arrays.asList(words).subList(2, words.length));
      ancestors.add(words[0]);
      name = name.isEmpty() ? words[0] : name;
      at = words[1].toUpperCase(Locale.ROOT);
    }
    return new IfcEntity(name, ancestors, attributes);
  }
}
