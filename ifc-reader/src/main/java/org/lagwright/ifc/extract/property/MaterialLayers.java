package org.lagwright.ifc.extract.property;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PipeMaterial;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * What elements are made of in layers, one around the other: all layers of a covering, and of a
 * pipe or duct those that are called insulation or lining, or that are of a material that
 * insulates. Layers have a thickness, profiles a wall, constituents neither. Asked by one thread.
 */
public final class MaterialLayers {

  /** Of a layer that only its material tells: less is foil, or the core of a wall. No source. */
  private static final double THINNEST_M = 0.006;

  private final IfcFile file;
  private final Relations relations;
  private final double lengthUnitM;

  /** False if no element of the file can have layers, which is most files. */
  private final boolean any;

  private final Map<Long, Told> told = new HashMap<>();

  /** What a material tells. */
  private record Told(
      Optional<ExistingInsulation> insulation, Optional<ExistingInsulation> lining) {

    private static final Told NOTHING = new Told(Optional.empty(), Optional.empty());

    boolean isNothing() {
      return insulation.isEmpty() && lining.isEmpty();
    }
  }

  /** Reads materials of one file, whose unit of length is given in metres. */
  public MaterialLayers(IfcFile file, Relations relations, double lengthUnitM) {
    this.file = file;
    this.relations = relations;
    this.lengthUnitM = lengthUnitM;
    this.any =
        file.count("IfcMaterialLayer") > 0
            || file.count("IfcMaterialConstituent") > 0
            || file.count("IfcMaterialProfile") > 0;
  }

  /**
   * All layers of a covering that may insulate together in metres, null if it has none: neither
   * sheet and foil nor air that moves.
   */
  public @Nullable Double thicknessM(long covering) {
    for (long id : any ? relations.materialsOf(covering) : Links.NONE) {
      double sumM = 0;
      for (IfcRecord layer : layers(id)) {
        boolean none =
            Thicknesses.isThin(metres(layer)) || "T".equals(layer.enumeration("IsVentilated"));
        sumM += none ? 0 : metres(layer);
      }
      if (Thicknesses.isPossible(sumM)) {
        return sumM;
      }
    }
    return null;
  }

  /** Layers of a pipe or duct that are called insulation; empty if it has none. */
  public Optional<ExistingInsulation> insulationOn(long element) {
    return told(element).insulation;
  }

  /** Layers of a duct that are called its lining; empty if it has none. */
  public Optional<ExistingInsulation> liningIn(long element) {
    return told(element).lining;
  }

  private Told told(long element) {
    for (long id : any ? relations.materialsOf(element) : Links.NONE) {
      Told known = told.get(id);
      if (known == null) {
        List<IfcRecord> parts = parts(id);
        known = new Told(told(parts, false), told(parts, true));
        told.put(id, known);
      }
      if (!known.isNothing()) {
        return known;
      }
    }
    return Told.NOTHING;
  }

  /** All parts of one meaning together. */
  private Optional<ExistingInsulation> told(List<IfcRecord> parts, boolean lining) {
    double sumM = 0;
    IfcRecord first = null;
    boolean wall = !lining && haveWall(parts);
    for (IfcRecord part : parts) {
      boolean thick = wall && part.is("IfcMaterialLayer") && metres(part) >= THINNEST_M;
      boolean meant = isCalled(part, lining) || (thick && insulates(part, parts));
      if (meant && (metres(part) > 0 || !part.is("IfcMaterialLayer"))) {
        sumM += metres(part) > 0 ? metres(part) : Double.NaN;
        first = first == null ? part : first;
      }
    }
    boolean unknown = Double.isNaN(sumM);
    if (first == null || (!unknown && !Thicknesses.isPossible(sumM))) {
      return Optional.empty();
    }
    Evidence evidence =
        new Evidence(first.id(), path(first), unknown ? nameOf(first) : InWords.millimetres(sumM));
    return Optional.of(
        new ExistingInsulation(unknown ? null : sumM, materialOf(first), 1, evidence, List.of()));
  }

  private static String nameOf(IfcRecord part) {
    String name = part.text("Name");
    return name == null ? "" : name;
  }

  private static String path(IfcRecord part) {
    if (part.is("IfcMaterialLayer")) {
      return "IfcMaterialLayer.LayerThickness";
    }
    return part.is("IfcMaterialProfile") ? "IfcMaterialProfile.Profile" : part.entityName();
  }

  /** Thickness of a layer, or the wall of a hollow profile; 0 if it has none. */
  private double metres(IfcRecord part) {
    IfcRecord profile = part.ref("Profile");
    double thickness =
        profile == null ? part.number("LayerThickness") : profile.number("WallThickness");
    double thicknessM = thickness * lengthUnitM;
    return thicknessM > 0 ? thicknessM : 0;
  }

  /** True if one of the layers may be the pipe or duct itself. */
  private boolean haveWall(List<IfcRecord> parts) {
    for (IfcRecord part : parts) {
      if (metres(part) > 0 && !isCalled(part, false) && !isInsulant(part)) {
        return true;
      }
    }
    return false;
  }

  /** True for what insulates, and for rubber if another part is of metal, as of no hose. */
  private static boolean insulates(IfcRecord part, List<IfcRecord> parts) {
    return isInsulant(part)
        || (haveName(List.of(part), Words::isRubber) && haveName(parts, MaterialLayers::isMetal));
  }

  private static boolean isMetal(String name) {
    return PipeMaterial.in(name).filter(PipeMaterial::isMetal).isPresent();
  }

  private static boolean haveName(List<IfcRecord> parts, Predicate<String> meant) {
    for (IfcRecord part : parts) {
      for (String name : names(part)) {
        if (name != null && meant.test(name)) {
          return true;
        }
      }
    }
    return false;
  }

  /** True for a material that insulates. */
  private static boolean isInsulant(IfcRecord part) {
    boolean insulant = false;
    for (String name : names(part)) {
      if (name != null && (Words.isLining(name) || Words.isCoat(name) || Words.isPipe(name))) {
        return false;
      }
      insulant |= name != null && Words.isInsulant(name);
    }
    return insulant;
  }

  private static @Nullable String[] names(IfcRecord part) {
    IfcRecord material = part.ref("Material");
    return new String[] {
      part.text("Category"),
      part.text("Name"),
      material == null ? null : material.text("Category"),
      material == null ? null : material.text("Name")
    };
  }

  /** True for a layer or profile of insulation, by its name or by that of its material. */
  public static boolean isInsulation(IfcRecord part) {
    return isCalled(part, false) || isInsulant(part);
  }

  private static boolean isCalled(IfcRecord part, boolean lining) {
    boolean insulation = false;
    for (String name : names(part)) {
      if (name != null && Words.isLining(name)) {
        return lining;
      }
      insulation |= name != null && Words.isInsulation(name) && !Words.isInsulated(name);
    }
    return insulation && !lining;
  }

  private static @Nullable String materialOf(IfcRecord part) {
    IfcRecord material = part.ref("Material");
    return material == null ? null : material.text("Name");
  }

  private List<IfcRecord> layers(long material) {
    List<IfcRecord> layers = new ArrayList<>();
    for (IfcRecord part : parts(material)) {
      if (part.is("IfcMaterialLayer")) {
        layers.add(part);
      }
    }
    return layers;
  }

  /** Layers, profiles or constituents of a set, or of the set that a usage refers to. */
  private List<IfcRecord> parts(long material) {
    IfcRecord at = file.find(material);
    IfcRecord set = at;
    if (at != null && at.is("IfcMaterialLayerSetUsage")) {
      set = at.ref("ForLayerSet");
    } else if (at != null && at.is("IfcMaterialProfileSetUsage")) {
      set = at.ref("ForProfileSet");
    }
    if (set == null) {
      return List.of();
    }
    if (set.is("IfcMaterialLayerSet")) {
      return set.refs("MaterialLayers");
    }
    return set.is("IfcMaterialProfileSet")
        ? set.refs("MaterialProfiles")
        : set.refs("MaterialConstituents");
  }
}
