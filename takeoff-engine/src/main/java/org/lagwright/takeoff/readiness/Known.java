package org.lagwright.takeoff.readiness;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;

/** What the takeoff may know about an element, or about a whole file. */
public enum Known {
  /** The file says what unit its lengths have. */
  LENGTH_UNIT,
  /** No element of the file lies in another one that is like it. */
  DRAWN_ONCE,
  /** The file has ports. */
  PORTS,
  SECTION,
  LENGTH,
  POSITION,
  /** A body that gave a size or a length. */
  BODY,
  SERVICE,
  SYSTEM,
  /** Told by the model for this very medium, and believed. */
  TEMPERATURE,
  /** Connected to something, by ports or by ends that touch. */
  JOINED,
  /** Connected to something by ports of the file. */
  JOINED_BY_PORTS,
  STOREY,
  GLOBAL_ID,
  UNIQUE_ID;

  /** The name in the pack: {@code length-unit}. */
  @JsonValue
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
