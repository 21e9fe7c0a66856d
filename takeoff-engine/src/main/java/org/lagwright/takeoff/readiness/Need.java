package org.lagwright.takeoff.readiness;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;

/** How much hangs on a requirement. */
public enum Need {
  /** Without it an element is left out, or its quantity is wrong. */
  NEEDED,
  /** Without it something has to be assumed or worked out. */
  HELPFUL;

  /** The word in the pack and in outputs. */
  @JsonValue
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
