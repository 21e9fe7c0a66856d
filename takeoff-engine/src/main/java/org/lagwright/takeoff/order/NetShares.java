package org.lagwright.takeoff.order;

import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/** How much of an item of insulation goes onto one element. */
public final class NetShares {

  private NetShares() {}

  /**
   * What the pieces of one element take of an item, in its unit, net; 0 for what is no insulation.
   *
   * @param materials those that the order was made with
   */
  public static double of(OrderItem item, Making making, MaterialPack materials) {
    double net = 0;
    for (Piece piece : making.pieces()) {
      MaterialFamily material = materials.family(piece.layer().materialId());
      if (isCutFrom(item, piece, material)) {
        net += piece.count() * (piece.isSheet() ? piece.sheetAreaM2() : piece.tubeLengthM());
      }
    }
    return net;
  }

  private static boolean isCutFrom(OrderItem item, Piece piece, MaterialFamily material) {
    String materialId = item.materialId();
    if (materialId == null) {
      return false;
    }
    return switch (item.goods()) {
      case TUBE -> isCutFrom(LayerForm.TUBE, materialId, item, piece, material);
      case SECTION -> isCutFrom(LayerForm.SECTION, materialId, item, piece, material);
      case SHEET ->
          piece.isSheet()
              && SheetKey.of(piece, material).equals(new SheetKey(materialId, item.thicknessM()));
      default -> false;
    };
  }

  private static boolean isCutFrom(
      LayerForm form, String materialId, OrderItem item, Piece piece, MaterialFamily material) {
    TubeKey sold = new TubeKey(materialId, form, item.boreM(), item.thicknessM());
    return !piece.isSheet() && TubeKey.of(piece, material).equals(sold);
  }
}
