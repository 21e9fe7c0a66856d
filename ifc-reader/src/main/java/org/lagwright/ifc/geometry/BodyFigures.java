package org.lagwright.ifc.geometry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Box;

/**
 * What the body of one product encloses. Curved surfaces are measured as polygons with their
 * corners on the surface, in steps of one degree, which falls short by up to 0.02 %; curved faces
 * of a boundary representation by integrals, unless other bodies cut it.
 *
 * @param box the smallest box along the world axes; of curved faces of a boundary representation it
 *     holds the edges only; null if nothing could be read
 * @param volumeM3 volume of the material, bores and voids not counted; null if the body is open
 * @param surfaceAreaM2 all surfaces: outside, ends, bores; null if nothing could be read
 * @param lateralAreaM2 outside without the open ends, which is what insulation covers; null if
 *     nothing could be read
 * @param problems why something is missing or weak, as short phrases
 */
public record BodyFigures(
    @Nullable Box box,
    @Nullable Double volumeM3,
    @Nullable Double surfaceAreaM2,
    @Nullable Double lateralAreaM2,
    List<String> problems) {

  public BodyFigures {
    problems = List.copyOf(problems);
  }

  static BodyFigures none(String problem) {
    return new BodyFigures(null, null, null, null, List.of(problem));
  }
}
