package org.lagwright.ifc.geometry.surface;

import java.util.List;
import java.util.function.Supplier;
import org.lagwright.ifc.geometry.frame.Vec;

/**
 * A curved face by its figures.
 *
 * @param areaM2 its area
 * @param fluxM3 a third of the flux of the position from {@code from} through it, along the normal
 *     of its loops: its share of the volume of a closed body about that point
 * @param from the point that the flux is counted from
 * @param tiles nearly plane parts of it by their loops, for those who cut it
 */
public record Patch(double areaM2, double fluxM3, Vec from, Supplier<List<List<List<Vec>>>> tiles) {

  /** The same patch, seen from the other side. */
  public Patch reversed() {
    return new Patch(areaM2, -fluxM3, from, () -> PatchTiles.reversed(tiles.get()));
  }

  /**
   * Its share of a volume about another point.
   *
   * @param areaNormal vector area of the face, which its edges alone tell
   */
  double volumeM3(Vec tip, Vec areaNormal) {
    return fluxM3 + from.minus(tip).dot(areaNormal) / 3;
  }
}
