package org.lagwright.takeoff.thickness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.Stock;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/**
 * The stock layers that reach a thickness: one where one is enough, else two.
 *
 * <p>Ducts get sheet. Pipes get tube or rigid section where the bore fits, else sheet. The second
 * layer is of the same form where its bore fits over the first, else sheet. Common practice, no
 * source.
 */
final class StockBuildUp {

  /** Rounding of the computation, not a tolerance of the trade, metres. */
  private static final double SLACK_M = 1e-9;

  private final String materialId;
  private final Stock stock;
  private final boolean duct;

  private StockBuildUp(MaterialFamily material, boolean duct) {
    this.materialId = material.id();
    this.stock = material.stock();
    this.duct = duct;
  }

  /**
   * The build-up with the smallest total at or above the requirement; of equal totals the one with
   * the thicker inner layer.
   *
   * @param requiredM metres; may be infinite
   * @return inside out; empty where nothing is required or nothing reaches it
   */
  static List<Layer> choose(
      MaterialFamily material, Section section, boolean duct, double requiredM) {
    if (requiredM <= 0) {
      return List.of();
    }
    StockBuildUp buildUp = new StockBuildUp(material, duct);
    List<Layer> inner = buildUp.layersAround(section);
    return inner.stream()
        .filter(l -> l.thicknessM() >= requiredM - SLACK_M)
        .findFirst()
        .map(List::of)
        .or(() -> buildUp.twoLayers(section, inner, requiredM))
        .orElse(List.of());
  }

  private Optional<List<Layer>> twoLayers(Section section, List<Layer> inner, double requiredM) {
    List<Layer> best = List.of();
    double bestM = Double.POSITIVE_INFINITY;
    for (int i = inner.size() - 1; i >= 0; i--) {
      Layer first = inner.get(i);
      for (Layer second : layersOver(section, first)) {
        double totalM = first.thicknessM() + second.thicknessM();
        if (totalM >= requiredM - SLACK_M && totalM < bestM - SLACK_M) {
          best = List.of(first, second);
          bestM = totalM;
        }
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  private List<Layer> layersOver(Section section, Layer first) {
    if (first.form() != LayerForm.SHEET && section instanceof Section.Round round) {
      return layersAround(new Section.Round(round.outsideDiameterM() + 2 * first.thicknessM()));
    }
    return layers(LayerForm.SHEET, stock.sheetsMm());
  }

  private List<Layer> layersAround(Section section) {
    if (!duct && section instanceof Section.Round round) {
      for (LayerForm form : List.of(LayerForm.TUBE, LayerForm.SECTION)) {
        List<Layer> layers = layers(form, wallsOver(form, round.outsideDiameterM() * 1000));
        if (!layers.isEmpty()) {
          return layers;
        }
      }
    }
    return layers(LayerForm.SHEET, stock.sheetsMm());
  }

  /** The walls that are sold with a bore that goes over a diameter, millimetres. */
  private List<Double> wallsOver(LayerForm form, double outsideMm) {
    List<Double> wallsMm = form == LayerForm.TUBE ? stock.tubeWallsMm() : stock.sectionWallsMm();
    return wallsMm.stream()
        .filter(wallMm -> stock.findBoreMm(form.label(), wallMm, outsideMm).isPresent())
        .toList();
  }

  private List<Layer> layers(LayerForm form, List<Double> wallsMm) {
    List<Layer> layers = new ArrayList<>();
    for (double wallMm : wallsMm) {
      layers.add(new Layer(materialId, form, wallMm / 1000));
    }
    return layers;
  }
}
