package org.lagwright.ifc.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.model.Evidence;

/**
 * A profile, still in its own plane.
 *
 * @param outline outer outline, null if it is neither circle, rectangle nor oval
 * @param path the outer curve of free profiles, null for those with parameters
 * @param bore of a rectangle and of a part of a composite profile its bore, as far as it was asked
 *     for; null if it has none
 * @param parts the parts of a composite profile, whose widest one this is; else empty
 * @param evidence where the size stands
 */
public record Profile(
    @Nullable Outline outline,
    @Nullable Path path,
    @Nullable Outline bore,
    List<Profile> parts,
    Evidence evidence) {

  /** A profile without a bore. */
  public Profile(@Nullable Outline outline, @Nullable Path path, Evidence evidence) {
    this(outline, path, null, List.of(), evidence);
  }

  /** The same profile with a bore. */
  public Profile withBore(@Nullable Outline itsBore) {
    return new Profile(outline, path, itsBore, parts, evidence);
  }

  Profile withParts(List<Profile> itsParts) {
    return new Profile(outline, path, bore, itsParts, evidence);
  }

  /** The same profile, of a frame, in the surrounding one. */
  public Profile in(Frame frame) {
    List<Profile> placed = parts.isEmpty() ? parts : new ArrayList<>(parts.size());
    for (Profile part : parts) {
      placed.add(part.in(frame));
    }
    return new Profile(
        outline == null ? null : outline.in(frame),
        path == null ? null : path.in(frame),
        bore == null ? null : bore.in(frame),
        placed,
        evidence);
  }
}
