package org.lagwright.takeoff.fitting;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.PieceShape;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/**
 * Equal pieces of insulation that one element needs. Figures are for one of them.
 *
 * @param name what it is: {@code middle piece}
 * @param count how many of them one element needs
 * @param layerNumber 1 for the innermost layer
 * @param layer the material it is cut from
 * @param boreM bore of the tube or section it is cut from; 0 where it is cut from sheet
 * @param shape its shape, equal for equal pieces
 */
public record Piece(
    String name, int count, int layerNumber, Layer layer, double boreM, PieceShape shape) {

  public Piece {
    if (count < 1 || layerNumber < 1) {
      throw new IllegalArgumentException(name + ": " + count + " pieces of layer " + layerNumber);
    }
  }

  /** True where it is cut from flat sheet. */
  public boolean isSheet() {
    return layer.form() == LayerForm.SHEET;
  }

  /** Length of tube or section used up by one, without kerf, metres; 0 for sheet. */
  public double tubeLengthM() {
    return isSheet() ? 0 : shape.stockLengthM();
  }

  /** Area cut from sheet for one, without waste, square metres; 0 for tube. */
  public double sheetAreaM2() {
    return isSheet() ? shape.areaM2() : 0;
  }

  /** Volume of insulation of one, cubic metres. */
  public double volumeM3() {
    return shape.volumeM3();
  }

  /**
   * Angles of the saw cuts at start and end off a square cut, degrees; two where an end is cut to a
   * point; none for saddles and flat pieces.
   */
  public List<Double> cutAnglesDeg() {
    List<Double> angles = new ArrayList<>();
    if (shape instanceof TubePiece tube) {
      addAngles(angles, tube.start());
      addAngles(angles, tube.end());
    }
    return angles;
  }

  private static void addAngles(List<Double> angles, EndCut cut) {
    if (cut instanceof EndCut.Planes planes) {
      planes.slopes().forEach(s -> angles.add(Math.toDegrees(Math.atan(Math.abs(s)))));
    }
  }

  /**
   * Area of the faces that are glued to the neighbours, one coat: both ends and both sides of the
   * seam of a tube; edge times thickness of a panel. Square metres.
   */
  public double jointFaceM2() {
    if (shape instanceof TubePiece tube) {
      double seamM2 = 2 * tube.wallM() * tube.lengthAtM(tube.seamTurn());
      return tube.faceM2(tube.start()) + tube.faceM2(tube.end()) + seamM2;
    }
    return shape.cutLengthM() * shape.wallM();
  }

  /** Outside diameter of a round tube piece, metres; 0 for all others. */
  public double outsideDiameterM() {
    return shape instanceof TubePiece tube && tube.outer() instanceof Outline.Circle round
        ? 2 * round.radiusM()
        : 0;
  }
}
