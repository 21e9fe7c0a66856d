package org.lagwright.ifc.geometry;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;

/**
 * A profile, still in its own plane.
 *
 * @param outline outer outline, null if it is neither circle, rectangle nor oval
 * @param path the outer curve of free profiles, null for those with parameters
 * @param evidence where the size stands
 */
record Profile(@Nullable Outline outline, @Nullable Path path, Evidence evidence) {

  Profile in(Frame frame) {
    return new Profile(
        outline == null ? null : outline.in(frame), path == null ? null : path.in(frame), evidence);
  }
}
