package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * The names of an element. Those of the type tell what it is; its own name often tells where it
 * goes ("pipe - manifold to tank"), so it is asked last.
 *
 * @param own Name of the occurrence, empty if absent
 * @param described descriptions and tags, also of the type, that may tell a size, where no body
 *     does; they are asked for nothing else
 */
public record Names(
    String own,
    @Nullable String objectType,
    @Nullable String typeName,
    @Nullable String tag,
    List<String> described) {

  static Names of(IfcRecord element, @Nullable IfcRecord type) {
    String own = element.label("Name");
    return new Names(
        own == null ? "" : own,
        blankToNull(element.label("ObjectType")),
        type == null ? null : blankToNull(type.label("Name")),
        blankToNull(element.text("Tag")),
        List.of());
  }

  /** These, with descriptions and tags. */
  Names described(IfcRecord element, @Nullable IfcRecord type) {
    List<String> texts = new ArrayList<>(0);
    addSize(element.label("Description"), texts);
    addSize(element.label("Tag"), texts);
    if (type != null) {
      addSize(type.label("Description"), texts);
      addSize(type.label("ElementType"), texts);
      addSize(type.label("Tag"), texts);
    }
    return new Names(own, objectType, typeName, tag, List.copyOf(texts));
  }

  private static void addSize(@Nullable String text, List<String> to) {
    if (text != null && SizeTexts.mayHold(text) && !Words.tellsOfInsulation(text)) {
      to.add(text);
    }
  }

  private static @Nullable String blankToNull(@Nullable String text) {
    return text == null || text.isBlank() ? null : text;
  }

  /** Names of the type, most telling first; empty if it has none. */
  public List<String> ofType() {
    List<String> names = new ArrayList<>(3);
    if (typeName != null) {
      names.add(typeName);
    }
    if (objectType != null) {
      names.add(objectType);
    }
    return names;
  }

  /** Names of the type, and then its own. */
  public List<String> all() {
    List<String> names = ofType();
    if (!own.isBlank()) {
      names.add(own);
    }
    return names;
  }

  /** Names of the type if there are any, else its own. */
  public List<String> ofTypeElseOwn() {
    List<String> names = ofType();
    return names.isEmpty() ? all() : names;
  }

  /** True if one of them calls the element insulation. */
  boolean callInsulation() {
    for (String name : all()) {
      if (Words.isInsulation(name)) {
        return true;
      }
    }
    return false;
  }

  /** True if one of them may tell how thick its insulation is; asks few of them further. */
  boolean callInsulated() {
    for (String name : all()) {
      if (name.contains("mm") && Words.isInsulated(name)) {
        return true;
      }
    }
    return false;
  }
}
