package org.lagwright.ifc.model;

import java.util.Locale;

/** The shape of an element, which decides how insulation is cut for it. */
public enum Form {
  STRAIGHT,
  FLEXIBLE,
  BEND,
  TEE,
  LATERAL,
  CROSS,
  WYE,
  REDUCER,
  /** From one shape of section to another: rectangular to round. */
  TRANSITION,
  CAP,
  FLANGE,
  COUPLING,
  UNION,
  OFFSET,
  /** A valve or similar body that gets a box or a two-part cover. */
  VALVE_BODY,
  STRAINER,
  DAMPER,
  PUMP,
  METER,
  SILENCER,
  /** An apparatus: boiler, tank, exchanger, manifold, terminal. */
  APPARATUS,
  /** Nothing in the file tells. */
  UNKNOWN;

  /** How many ends it has; 0 where that is not fixed. */
  public int ways() {
    return switch (this) {
      case CAP -> 1;
      case BEND, REDUCER, TRANSITION, OFFSET, COUPLING, UNION, FLANGE, STRAIGHT -> 2;
      case TEE, LATERAL, WYE -> 3;
      case CROSS -> 4;
      default -> 0;
    };
  }

  /** True where the body need not have the size of the line it sits in. */
  public boolean isWiderThanItsPipe() {
    return switch (this) {
      case BEND, TEE, LATERAL, CROSS, WYE, REDUCER, TRANSITION, OFFSET -> false;
      default -> true;
    };
  }

  /** The name used in files we write: {@code valve-body}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
