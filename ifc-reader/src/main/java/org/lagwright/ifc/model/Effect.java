package org.lagwright.ifc.model;

/** What a finding did to the quantities. */
public enum Effect {
  /** The element is in no line. */
  LEFT_OUT,
  /** A quantity rests on a weaker source than a measurement. */
  ESTIMATED,
  /** A rule or default filled a gap. */
  ASSUMED,
  /** The quantities are as they would be without it. */
  NONE
}
