package org.lagwright.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.fitting.Piece;

/** How one layer of an element is made, with its pieces. */
record MakingView(
    String method,
    String reason,
    String rule,
    String source,
    String bonding,
    double bondedAreaM2,
    List<String> assumed,
    List<PieceView> pieces) {

  /** Equal pieces; figures are for one of them. */
  record PieceView(
      String name,
      int count,
      String material,
      String form,
      double boreM,
      double wallM,
      double tubeLengthM,
      List<Double> cutAnglesDeg,
      double sheetAreaM2,
      double volumeM3) {

    static PieceView of(Piece piece) {
      return new PieceView(
          piece.name(),
          piece.count(),
          piece.layer().materialId(),
          piece.layer().form().label(),
          Finite.number(piece.boreM()),
          Finite.number(piece.shape().wallM()),
          Finite.number(piece.tubeLengthM()),
          piece.cutAnglesDeg(),
          Finite.number(piece.sheetAreaM2()),
          Finite.number(piece.volumeM3()));
    }
  }

  /** The layers from the inside out, null where nothing is made. */
  static @Nullable List<MakingView> of(@Nullable Making making) {
    return making == null
        ? null
        : making.layers().stream().map(layer -> of(layer, making.assumed())).toList();
  }

  private static MakingView of(LayerMaking layer, List<String> assumed) {
    return new MakingView(
        layer.method().label(),
        layer.reason(),
        layer.rule(),
        layer.source(),
        layer.bonding().words(),
        Finite.number(layer.bondedAreaM2()),
        assumed,
        layer.cover().pieces().stream().map(PieceView::of).toList());
  }
}
