package org.lagwright.takeoff.pack;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Collection;
import java.util.Comparator;

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

  /** True where the figure was read, be it in a reproduction. */
  public boolean isRead() {
    return this == VERIFIED || this == REPRODUCTION;
  }

  /** The label for a figure beside its number; what nobody read begins with "unverified". */
  public String shown() {
    return isRead() || this == USER ? label : "unverified: " + label;
  }

  /** The least checked of several; what the user gave is the user's own to check. */
  public static SourceStatus weakest(Collection<SourceStatus> all) {
    return all.stream()
        .filter(status -> status != USER)
        .max(Comparator.naturalOrder())
        .orElse(USER);
  }
}
