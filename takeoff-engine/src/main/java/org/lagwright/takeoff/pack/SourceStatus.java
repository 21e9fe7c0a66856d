package org.lagwright.takeoff.pack;

import com.fasterxml.jackson.annotation.JsonValue;

/** How far a row of a pack was checked. Packs write the label. */
public enum SourceStatus {
  /** Read in the named text itself. */
  VERIFIED("verified"),
  /** Read where others quote the named text. */
  REPRODUCTION("read in a reproduction, verify"),
  /** Convention of the trade. */
  COMMON_PRACTICE("common practice, no source"),
  /** Written down from memory. */
  MEMORY("from memory, verify"),
  /** Given by the user. */
  USER("given by the user, not checked");

  private final String label;

  SourceStatus(String label) {
    this.label = label;
  }

  /** The words shown to users. */
  @JsonValue
  public String label() {
    return label;
  }
}
