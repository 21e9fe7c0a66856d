package org.lagwright.takeoff.order;

import java.util.Comparator;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.material.MaterialFamily;

/** Sheet of one thickness as it is bought. */
record SheetKey(String materialId, double thicknessM) implements Comparable<SheetKey> {

  private static final Comparator<SheetKey> ORDER =
      Comparator.comparing(SheetKey::materialId).thenComparingDouble(SheetKey::thicknessM);

  /**
   * What a piece is cut from: the thinnest sheet sold that is thick enough; its own thickness where
   * none is, such as for rings that close rigid sections.
   */
  static SheetKey of(Piece piece, MaterialFamily material) {
    double ownMm = piece.layer().thicknessM() * 1000;
    double mm =
        material.stock().sheetsMm().stream()
            .filter(sheetMm -> sheetMm >= ownMm - 0.01)
            .findFirst()
            .orElse(ownMm);
    return new SheetKey(material.id(), mm / 1000);
  }

  @Override
  public int compareTo(SheetKey other) {
    return ORDER.compare(this, other);
  }
}
