package org.lagwright.report.bimserver;

/** Into which project a model that was made from a revision is checked in. */
public enum CheckIn {
  /** The project of the revision. */
  SAME,
  /** A sub-project of it, made where it is missing. */
  SUB
}
