package org.lagwright.ifc.extract.draft;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;

/** Finds elements that are being worked out: those of one file, or of several. */
public interface DraftLookup {

  /** An element, null if it is none of these. */
  @Nullable Draft find(ElementKey key);
}
