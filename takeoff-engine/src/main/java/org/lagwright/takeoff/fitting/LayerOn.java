package org.lagwright.takeoff.fitting;

import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.PieceShape;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/**
 * One layer where it lies.
 *
 * @param layer material and thickness
 * @param number 1 for the innermost
 * @param belowM thickness of the layers below it, metres
 */
public record LayerOn(Layer layer, int number, double belowM) {

  /** Thickness of this layer, metres. */
  double wallM() {
    return layer.thicknessM();
  }

  /** Thickness up to its outer face, metres. */
  double totalM() {
    return belowM + layer.thicknessM();
  }

  /** Outer face of this layer over a bare outline. */
  Outline outer(Outline bare) {
    return bare.grown(totalM());
  }

  /** Equal pieces bent round an outline, or cut from tube that fits it. */
  Piece round(String name, int count, Outline bare, PieceShape shape) {
    double boreM = layer.form() == LayerForm.SHEET ? 0 : bare.widthM() + 2 * belowM;
    return new Piece(name, count, number, layer, boreM, shape);
  }

  /** Equal pieces cut from sheet of this thickness, whatever the layer is bought as. */
  Piece flat(String name, int count, PieceShape shape) {
    Layer sheet = new Layer(layer.materialId(), LayerForm.SHEET, layer.thicknessM());
    return new Piece(name, count, number, sheet, 0, shape);
  }
}
