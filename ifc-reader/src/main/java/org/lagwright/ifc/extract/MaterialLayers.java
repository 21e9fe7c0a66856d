package org.lagwright.ifc.extract;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Thicknesses of the layers that elements are made of: all layers of a covering, and of a pipe or
 * duct those that are called insulation. Asked by one thread.
 */
final class MaterialLayers {

  private final IfcFile file;
  private final Relations relations;
  private final double lengthUnitM;

  /** False if no element of the file can have layers, which is most files. */
  private final boolean any;

  private final Map<Long, Optional<ExistingInsulation>> insulation = new HashMap<>();

  MaterialLayers(IfcFile file, Relations relations, double lengthUnitM) {
    this.file = file;
    this.relations = relations;
    this.lengthUnitM = lengthUnitM;
    this.any = file.count("IfcMaterialLayer") > 0;
  }

  /** All layers of a covering together in metres, null if it has none. */
  @Nullable Double thicknessM(long covering) {
    for (long id : any ? relations.materialsOf(covering) : Links.NONE) {
      double sumM = 0;
      for (IfcRecord layer : layers(id)) {
        sumM += metres(layer);
      }
      if (Thicknesses.isPossible(sumM)) {
        return sumM;
      }
    }
    return null;
  }

  /** Layers of a pipe or duct that are called insulation; empty if it has none. */
  Optional<ExistingInsulation> insulationOn(long element) {
    for (long id : any ? relations.materialsOf(element) : Links.NONE) {
      Optional<ExistingInsulation> known = insulation.get(id);
      if (known == null) {
        known = insulationIn(id);
        insulation.put(id, known);
      }
      if (known.isPresent()) {
        return known;
      }
    }
    return Optional.empty();
  }

  private Optional<ExistingInsulation> insulationIn(long material) {
    double sumM = 0;
    IfcRecord first = null;
    for (IfcRecord layer : layers(material)) {
      double thicknessM = isInsulation(layer) ? metres(layer) : 0;
      sumM += thicknessM;
      first = first == null && thicknessM > 0 ? layer : first;
    }
    if (first == null || !Thicknesses.isPossible(sumM)) {
      return Optional.empty();
    }
    Evidence evidence =
        new Evidence(first.id(), "IfcMaterialLayer.LayerThickness", Sizes.millimetres(sumM));
    return Optional.of(new ExistingInsulation(sumM, materialOf(first), 1, evidence, List.of()));
  }

  private double metres(IfcRecord layer) {
    double thicknessM = layer.number("LayerThickness") * lengthUnitM;
    return thicknessM > 0 ? thicknessM : 0;
  }

  private static boolean isInsulation(IfcRecord layer) {
    for (String name :
        new String[] {layer.text("Category"), layer.text("Name"), materialOf(layer)}) {
      if (name != null && Words.isInsulation(name)) {
        return !Words.isLining(name);
      }
    }
    return false;
  }

  private static @Nullable String materialOf(IfcRecord layer) {
    IfcRecord material = layer.ref("Material");
    return material == null ? null : material.text("Name");
  }

  private List<IfcRecord> layers(long material) {
    IfcRecord at = file.find(material);
    IfcRecord set = at != null && at.is("IfcMaterialLayerSetUsage") ? at.ref("ForLayerSet") : at;
    return set != null && set.is("IfcMaterialLayerSet") ? set.refs("MaterialLayers") : List.of();
  }
}
