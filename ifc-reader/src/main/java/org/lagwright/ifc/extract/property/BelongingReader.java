package org.lagwright.ifc.extract.property;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.PropertyList;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** What an element belongs to or consists of by name: systems, materials, presentation layers. */
public final class BelongingReader {

  /** Sets, layers and profiles of one material that are followed, each of them once. */
  private static final int MAX_MATERIAL_PARTS = 1000;

  private static final List<String> MATERIAL_PARTS =
      List.of(
          "Material",
          "Materials",
          "MaterialLayers",
          "MaterialProfiles",
          "MaterialConstituents",
          "ForLayerSet",
          "ForProfileSet");

  private final IfcFile file;
  private final Relations relations;
  private final PropertyReader properties;
  private final Map<Long, Optional<MepSystem>> systems = new ConcurrentHashMap<>();
  private final Map<Long, List<String>> materialNames = new ConcurrentHashMap<>();
  private final Set<Long> met = ConcurrentHashMap.newKeySet();

  /** Reads the belongings of the elements of one file. */
  public BelongingReader(OpenedFile opened) {
    this.file = opened.file();
    this.relations = opened.relations();
    this.properties = opened.properties();
  }

  /**
   * Systems; groups of groups count, as circuits lie in systems. Plain groups are none: people make
   * them of whatever they selected.
   */
  public List<MepSystem> systemsOf(long element) {
    List<MepSystem> own = systems(element);
    return own.isEmpty() ? systemsOfPortsOrWhole(element) : own;
  }

  /** Some exporters put only the ports into a system, or only the assembly. */
  private List<MepSystem> systemsOfPortsOrWhole(long element) {
    List<MepSystem> ofPorts = systems(relations.portsOf(element));
    long whole = relations.wholeOf(element);
    for (int i = 0; i < file.step().limits().maxReferenceDepth() && whole != 0; i++) {
      List<MepSystem> ofWhole = ofPorts.isEmpty() ? systems(whole) : ofPorts;
      if (!ofWhole.isEmpty()) {
        return ofWhole;
      }
      whole = relations.wholeOf(whole);
    }
    return ofPorts;
  }

  private List<MepSystem> systems(long... members) {
    List<Long> groups = new ArrayList<>(1);
    for (long member : members) {
      collectGroups(member, groups);
    }
    List<MepSystem> found = new ArrayList<>(groups.size());
    for (long group : groups) {
      Optional<MepSystem> system = system(group);
      if (system.isPresent()) {
        found.add(system.get());
      }
    }
    return found;
  }

  private Optional<MepSystem> system(long group) {
    Optional<MepSystem> known = systems.get(group);
    if (known == null) {
      known = system(file.find(group));
      systems.put(group, known);
    }
    return known;
  }

  /** Few, so that a list does for them. */
  private void collectGroups(long member, List<Long> groups) {
    if (groups.size() < file.step().limits().maxReferenceDepth()) {
      for (long group : relations.groupsOf(member)) {
        if (!groups.contains(group)) {
          groups.add(group);
          collectGroups(group, groups);
          collectWhole(group, groups);
        }
      }
    }
  }

  /** Circuits are parts of their system too, instead of members. */
  private void collectWhole(long group, List<Long> groups) {
    long whole = relations.wholeOf(group);
    boolean room = groups.size() < file.step().limits().maxReferenceDepth();
    if (room && whole != 0 && !groups.contains(whole) && system(whole).isPresent()) {
      groups.add(whole);
      collectGroups(whole, groups);
      collectWhole(whole, groups);
    }
  }

  private Optional<MepSystem> system(@Nullable IfcRecord group) {
    // a zone, though a system from IFC4 on, groups what is served, whatever flows in a pipe there
    boolean serves = group != null && group.is("IfcSystem") && !group.is("IfcZone");
    if (group == null || !serves || group.is("IfcStructuralAnalysisModel")) {
      return Optional.empty();
    }
    String name = group.text("Name");
    String globalId = group.text("GlobalId");
    String predefined = group.enumeration("PredefinedType");
    if (predefined == null) {
      // one re-export wrote the enumeration as a string
      predefined = group.text("PredefinedType");
    }
    return Optional.of(
        new MepSystem(
            group.id(),
            globalId == null ? "" : globalId,
            name == null ? "" : name,
            group.text("LongName"),
            group.text("ObjectType"),
            predefined,
            properties.propertiesOf(group.id(), PropertyList.UNCOUNTED)));
  }

  /** Names of the materials of an element; of its type if it has none of its own. */
  public List<String> materialsOf(long element) {
    long[] ids = relations.materialsOf(element);
    if (ids.length < 2) {
      return ids.length == 0 ? List.of() : namesIn(ids[0]);
    }
    Set<String> names = new LinkedHashSet<>();
    for (long id : ids) {
      names.addAll(namesIn(id));
    }
    return List.copyOf(names);
  }

  private List<String> namesIn(long material) {
    List<String> known = materialNames.get(material);
    if (known == null) {
      Set<String> names = new LinkedHashSet<>();
      collectMaterials(file.find(material), new HashSet<>(), names);
      known = List.copyOf(names);
      materialNames.put(material, known);
    }
    return known;
  }

  private void collectMaterials(@Nullable IfcRecord at, Set<Long> seen, Set<String> names) {
    if (at == null || seen.size() > MAX_MATERIAL_PARTS) {
      return;
    }
    if (!seen.add(at.id())) {
      met.add(at.id());
      return;
    }
    if (at.is("IfcMaterial")) {
      String name = at.text("Name");
      if (name != null && !name.isBlank()) {
        names.add(name);
      }
      return;
    }
    for (String part : MATERIAL_PARTS) {
      for (IfcRecord inside : at.refs(part)) {
        collectMaterials(inside, seen, names);
      }
    }
  }

  /** Parts of materials that were met more than once in one material. */
  public Set<Long> metAgain() {
    return met;
  }

  /** Presentation layers of the representations of an element and of their items. */
  public List<String> layersOf(IfcRecord element) {
    if (!relations.hasLayers()) {
      return List.of();
    }
    Set<String> layers = new LinkedHashSet<>();
    IfcRecord shape = element.ref("Representation");
    if (shape != null) {
      for (IfcRecord representation : shape.refs("Representations")) {
        addLayer(representation.id(), layers);
        for (long item : representation.refIds("Items")) {
          addLayer(item, layers);
        }
      }
    }
    return List.copyOf(layers);
  }

  private void addLayer(long item, Set<String> layers) {
    String layer = relations.layerOf(item);
    if (layer != null) {
      layers.add(layer);
    }
  }
}
