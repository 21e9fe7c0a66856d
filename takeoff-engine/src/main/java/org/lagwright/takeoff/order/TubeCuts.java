package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/**
 * The cuts that one element needs from one tube size.
 *
 * <p>Pieces with slanted ends, laid one after the other and each turned by half a turn, share their
 * cuts: all of them together are one length of tube, as long as it fits the stock. Where it does
 * not, each is cut for itself and as long as its longest side.
 */
final class TubeCuts {

  private final String lineId;
  private final ElementKey element;
  private final StockLength stock;
  private final List<Cut> cuts = new ArrayList<>();
  private final List<Piece> chained = new ArrayList<>();

  private TubeCuts(String lineId, ElementKey element, StockLength stock) {
    this.lineId = lineId;
    this.element = element;
    this.stock = stock;
  }

  static List<Cut> of(String lineId, ElementKey element, List<Piece> pieces, StockLength stock) {
    TubeCuts made = new TubeCuts(lineId, element, stock);
    for (Piece piece : pieces) {
      made.add(piece);
    }
    made.addChain();
    return made.cuts;
  }

  private void add(Piece piece) {
    if (isSlanted(piece)) {
      chained.add(piece);
      return;
    }
    for (int i = 0; i < piece.count(); i++) {
      addSplit(piece.name(), piece.tubeLengthM());
    }
  }

  private static boolean isSlanted(Piece piece) {
    return piece.shape() instanceof TubePiece tube && tube.longestM() > tube.stockLengthM() + 1e-6;
  }

  private void addChain() {
    int count = chained.stream().mapToInt(Piece::count).sum();
    if (count == 0) {
      return;
    }
    double lengthM = chained.stream().mapToDouble(p -> p.count() * p.tubeLengthM()).sum();
    double withKerfM = lengthM + (count - 1) * stock.kerfM() + openEndsM();
    if (withKerfM <= stock.lengthM()) {
      cuts.add(new Cut(lineId + " " + count + " pieces in one length", withKerfM, element));
      return;
    }
    for (Piece piece : chained) {
      for (int i = 0; i < piece.count(); i++) {
        addSplit(piece.name(), longestM(piece));
      }
    }
  }

  /** What the slanted outer ends of the chain need beyond its axis; none where two are square. */
  private double openEndsM() {
    long squareEnds =
        chained.stream().filter(p -> p.cutAnglesDeg().contains(0.0)).mapToInt(Piece::count).sum();
    double slantM =
        chained.stream().mapToDouble(p -> longestM(p) - p.tubeLengthM()).max().orElse(0);
    return squareEnds >= 2 ? 0 : slantM;
  }

  private static double longestM(Piece piece) {
    return piece.shape() instanceof TubePiece tube ? tube.longestM() : piece.tubeLengthM();
  }

  private void addSplit(String name, double lengthM) {
    if (lengthM > 0) {
      cuts.addAll(CuttingPlanner.split(new Cut(lineId + " " + name, lengthM, element), stock));
    }
  }
}
