package org.lagwright.report.bcf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;

/**
 * One issue: a cause, and the elements that it concerns.
 *
 * @param cause what tells the topic from others, the same from run to run
 * @param type what it is, one of the types that the archive declares
 * @param priority one of the priorities that the archive declares
 * @param label service, or what else it belongs to; empty if nothing
 * @param elements in the order of the takeoff; may be empty where it concerns a file
 * @param parts parts of the building that it concerns too
 */
public record Topic(
    String cause,
    String type,
    String priority,
    String title,
    String description,
    String label,
    List<MepElement> elements,
    List<BuildingPart> parts) {

  public Topic {
    elements = List.copyOf(elements);
    parts = List.copyOf(parts);
  }

  /** An issue about elements only. */
  Topic(
      String cause,
      String type,
      String priority,
      String title,
      String description,
      String label,
      List<MepElement> elements) {
    this(cause, type, priority, title, description, label, elements, List.of());
  }

  /**
   * Something that a viewer shows.
   *
   * @param tag of the authoring program, null if there is none
   */
  record Component(String globalId, @Nullable String tag) {}

  /** Everything it concerns. */
  List<Component> components() {
    return Stream.concat(
            elements.stream().map(e -> new Component(e.globalId(), e.tag())),
            parts.stream().map(part -> new Component(part.globalId(), null)))
        .toList();
  }

  /** Positions of the files that it concerns. */
  List<Integer> models() {
    return Stream.concat(
            elements.stream().map(MepElement::key), parts.stream().map(BuildingPart::key))
        .map(ElementKey::model)
        .distinct()
        .toList();
  }

  /** The same for the same cause, so that a later run updates the topic and adds none. */
  public String guid() {
    return guid("topic");
  }

  /** Of its one viewpoint. */
  String viewpointGuid() {
    return guid("viewpoint");
  }

  private String guid(String of) {
    byte[] name = ("lagwright " + of + " " + cause).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name).toString();
  }
}
