package org.lagwright.ifc.extract;

/** Finds the file of a covering: there is but one, or it may be any of several. */
interface CoveringFiles {

  /** All coverings of the file that holds this one. */
  Coverings of(Draft covering);
}
