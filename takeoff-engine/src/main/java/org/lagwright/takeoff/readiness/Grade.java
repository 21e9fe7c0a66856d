package org.lagwright.takeoff.readiness;

/** How an element meets a requirement. */
public enum Grade {
  /** The model states it the way it is asked for. */
  AS_ASKED,
  /** The takeoff knows it from elsewhere: bodies, neighbours, names. */
  WORKED_OUT,
  MISSING
}
