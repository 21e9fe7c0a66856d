package org.lagwright.ifc.extract.insulation;

import org.lagwright.ifc.extract.draft.Draft;

/** Finds the file of a covering: there is but one, or it may be any of several. */
public interface CoveringFiles {

  /** All coverings of the file that holds this one. */
  Coverings of(Draft covering);
}
