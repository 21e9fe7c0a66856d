package org.lagwright.takeoff.order;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.MaterialPack;

/** What of each material was chosen to be bought: how long tubes are, how large sheets. */
final class SoldSizes {

  private final MaterialPack materials;
  private final Map<TubeKey, Double> tubeLengthsM = new HashMap<>();
  private final Map<SheetKey, SheetSize> sheetSizes = new HashMap<>();

  SoldSizes(MaterialPack materials) {
    this.materials = materials;
  }

  void tube(TubeKey key, double lengthM) {
    tubeLengthsM.put(key, lengthM);
  }

  void sheet(SheetKey key, SheetSize size) {
    sheetSizes.put(key, size);
  }

  /**
   * Joints within a piece that is larger than what is sold.
   *
   * @param around gives the rectangle that a piece of sheet is cut from
   */
  Joints cuts(Piece piece, Function<Piece, SheetCut> around) {
    MaterialFamily material = materials.family(piece.layer().materialId());
    return piece.isSheet()
        ? ofSheet(SheetKey.of(piece, material), around.apply(piece), piece.shape().wallM())
        : ofTube(TubeKey.of(piece, material), piece);
  }

  private Joints ofTube(TubeKey key, Piece piece) {
    double soldM = tubeLengthsM.getOrDefault(key, Double.POSITIVE_INFINITY);
    int cuts = (int) Math.max(0, Math.ceil(piece.tubeLengthM() / soldM - 1e-9) - 1);
    if (cuts == 0 || !(piece.shape() instanceof TubePiece tube)) {
      return Joints.NONE;
    }
    return new Joints(2 * cuts * tube.ringM2(), cuts * tube.outer().girthM(), cuts, 0);
  }

  private Joints ofSheet(SheetKey key, SheetCut around, double wallM) {
    SheetSize size = sheetSizes.get(key);
    if (size == null) {
      return Joints.NONE;
    }
    List<SheetCut> parts = SheetPlanner.split(around, size);
    double edgesM = parts.stream().mapToDouble(p -> 2 * (p.widthM() + p.lengthM())).sum();
    double jointM = Math.max(0, edgesM / 2 - around.widthM() - around.lengthM());
    return new Joints(2 * wallM * jointM, jointM, parts.size() - 1, 0);
  }
}
