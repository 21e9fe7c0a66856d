package org.lagwright.takeoff.order;

import java.util.Comparator;
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

  private static final Comparator<TubeKey> ORDER =
      Comparator.comparing(TubeKey::form)
          .thenComparing(TubeKey::materialId)
          .thenComparingDouble(TubeKey::boreM)
          .thenComparingDouble(TubeKey::wallM);

  /** What a piece is cut from: the smallest bore sold that fits, or its own where none is known. */
  static TubeKey of(Piece piece, MaterialFamily material) {
    LayerForm form = piece.layer().form();
    double ownMm = Math.round(piece.boreM() * 10_000) / 10.0;
    double wallM = piece.layer().thicknessM();
    double boreMm = material.stock().findBoreMm(form.label(), wallM * 1000, ownMm).orElse(ownMm);
    return new TubeKey(material.id(), form, boreMm / 1000, wallM);
  }

  @Override
  public int compareTo(TubeKey other) {
    return ORDER.compare(this, other);
  }
}
