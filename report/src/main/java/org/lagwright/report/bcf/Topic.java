package org.lagwright.report.bcf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.lagwright.ifc.model.MepElement;

/**
 * One issue: a cause, and the elements that it concerns.
 *
 * @param cause what tells the topic from others, the same from run to run
 * @param type what it is, one of the types that the archive declares
 * @param priority one of the priorities that the archive declares
 * @param label service, or what else it belongs to; empty if nothing
 * @param elements in the order of the takeoff; may be empty where it concerns a file
 */
public record Topic(
    String cause,
    String type,
    String priority,
    String title,
    String description,
    String label,
    List<MepElement> elements) {

  public Topic {
    elements = List.copyOf(elements);
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
