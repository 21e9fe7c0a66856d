package org.lagwright.takeoff.order;

import java.util.Comparator;
import java.util.List;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/**
 * Tube or section of one size as it is bought.
 *
 * @param boreM bore as sold, metres
 */
record TubeKey(String materialId, LayerForm form, double boreM, double wallM)
    implements Comparable<TubeKey> {

  /** Foam is pushed over pipes wider than its bore by this; common practice, no source. */
  private static final double STRETCH_MM = 0.5;

  private static final Comparator<TubeKey> ORDER =
      Comparator.comparing(TubeKey::form)
          .thenComparing(TubeKey::materialId)
          .thenComparingDouble(TubeKey::boreM)
          .thenComparingDouble(TubeKey::wallM);

  /** What a piece is cut from: the smallest bore sold that fits, or its own where none is known. */
  static TubeKey of(Piece piece, MaterialFamily material) {
    LayerForm form = piece.layer().form();
    List<Double> boresMm = form == LayerForm.TUBE ? material.stock().bores() : List.of();
    double ownMm = Math.round(piece.boreM() * 10_000) / 10.0;
    double boreMm =
        boresMm.stream().filter(bore -> bore >= ownMm - STRETCH_MM).findFirst().orElse(ownMm);
    return new TubeKey(material.id(), form, boreMm / 1000, piece.layer().thicknessM());
  }

  @Override
  public int compareTo(TubeKey other) {
    return ORDER.compare(this, other);
  }
}
