package org.lagwright.takeoff.order;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;

/**
 * A piece to be cut from stock.
 *
 * @param purpose what it is for, in words or as a template number
 * @param lengthM length along the tube, metres, above 0
 * @param element the element it is for, null where it is for none
 */
public record Cut(String purpose, double lengthM, @Nullable ElementKey element) {

  /** A cut for no element. */
  public Cut(String purpose, double lengthM) {
    this(purpose, lengthM, null);
  }

  public Cut {
    if (!(lengthM > 0) || Double.isInfinite(lengthM)) {
      throw new IllegalArgumentException("a cut must be longer than 0 m, was " + lengthM);
    }
  }
}
