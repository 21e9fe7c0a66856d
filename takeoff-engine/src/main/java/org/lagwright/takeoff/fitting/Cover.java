package org.lagwright.takeoff.fitting;

import java.util.List;

/**
 * One layer of insulation over one fitting.
 *
 * @param pieces what it is made of
 * @param outerAreaM2 outer surface on the fitting itself, without what pieces overlap on the pipes
 *     beside it, square metres
 * @param volumeM3 volume of insulation on the fitting itself, cubic metres
 */
public record Cover(List<Piece> pieces, double outerAreaM2, double volumeM3) {

  public Cover {
    pieces = List.copyOf(pieces);
    if (!(outerAreaM2 >= 0 && Double.isFinite(outerAreaM2))
        || !(volumeM3 >= 0 && Double.isFinite(volumeM3))) {
      throw new IllegalArgumentException("no cover of " + outerAreaM2 + " m2, " + volumeM3);
    }
  }

  /** A cover whose surface is exactly that of its pieces. */
  static Cover of(List<Piece> pieces) {
    return new Cover(
        pieces,
        pieces.stream().mapToDouble(p -> p.count() * p.shape().areaM2()).sum(),
        pieces.stream().mapToDouble(p -> p.count() * p.volumeM3()).sum());
  }
}
