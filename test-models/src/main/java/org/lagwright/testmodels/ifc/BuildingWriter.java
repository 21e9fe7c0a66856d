package org.lagwright.testmodels.ifc;

import static org.lagwright.testmodels.step.Value.token;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.step.Ref;

/** Writes site, building, storeys, spaces, walls, coverings, materials and what binds them. */
public final class BuildingWriter {

  private final IfcWriter ifc;

  public BuildingWriter(IfcWriter ifc) {
    this.ifc = ifc;
  }

  public Ref site(String name, Ref placement) {
    List<@Nullable Object> rest = spatial(name, null, placement, null);
    for (int i = 0; i < 5; i++) {
      rest.add(null);
    }
    return ifc.root("IfcSite", "site", rest.toArray());
  }

  public Ref building(String name, Ref placement) {
    List<@Nullable Object> rest = spatial(name, null, placement, null);
    for (int i = 0; i < 3; i++) {
      rest.add(null);
    }
    return ifc.root("IfcBuilding", "building", rest.toArray());
  }

  /** A storey at an elevation in millimetres. */
  public Ref storey(String name, Ref placement, double elevationMm) {
    List<@Nullable Object> rest = spatial(name, null, placement, null);
    rest.add(ifc.units().length(elevationMm));
    return ifc.root("IfcBuildingStorey", "storey " + name, rest.toArray());
  }

  /** A space, indoors or outdoors. */
  public Ref space(String name, String longName, Ref placement, Ref shape, boolean external) {
    List<@Nullable Object> rest = spatial(name, longName, placement, shape);
    rest.add(token(external ? "EXTERNAL" : "INTERNAL"));
    rest.add(null);
    return ifc.root("IfcSpace", "space " + name, rest.toArray());
  }

  /** A wall. */
  public Ref wall(String name, Ref placement, Ref shape) {
    List<@Nullable Object> rest = product(name, placement, shape);
    rest.add(null);
    if (!ifc.schema().isOld()) {
      rest.add(token("NOTDEFINED"));
    }
    return ifc.root("IfcWall", "wall " + name, rest.toArray());
  }

  /** A floor slab. */
  public Ref slab(String name, Ref placement, Ref shape) {
    List<@Nullable Object> rest = product(name, placement, shape);
    rest.add(null);
    rest.add(token("FLOOR"));
    return ifc.root("IfcSlab", "slab " + name, rest.toArray());
  }

  /** An insulation covering. */
  public Ref insulation(String key, String name, Ref placement, Ref shape) {
    List<@Nullable Object> rest = product(name, placement, shape);
    rest.add(null);
    rest.add(token("INSULATION"));
    return ifc.root("IfcCovering", key, rest.toArray());
  }

  /** The relation made for coverings; deprecated from IFC4 on and still in use. */
  public void cover(String key, Ref host, Ref covering) {
    ifc.root("IfcRelCoversBldgElements", "covers " + key, null, null, host, List.of(covering));
  }

  /** Binds parts to a whole. */
  public void aggregate(String key, Ref whole, List<Ref> parts) {
    ifc.root("IfcRelAggregates", "parts of " + key, null, null, whole, parts);
  }

  /** Puts elements into a storey or space. */
  public void contain(String key, List<Ref> elements, Ref structure) {
    ifc.root(
        "IfcRelContainedInSpatialStructure", "contents of " + key, null, null, elements, structure);
  }

  /** A material with the elements made of it. */
  public void material(String name, List<Ref> elements) {
    Ref material =
        ifc.schema().isOld()
            ? ifc.step().add("IfcMaterial", name)
            : ifc.step().add("IfcMaterial", name, null, null);
    ifc.root("IfcRelAssociatesMaterial", "made of " + name, null, null, elements, material);
  }

  private static List<@Nullable Object> spatial(
      String name, @Nullable String longName, Ref placement, @Nullable Ref shape) {
    List<@Nullable Object> rest = product(name, placement, shape);
    rest.add(longName);
    rest.add(token("ELEMENT"));
    return rest;
  }

  private static List<@Nullable Object> product(String name, Ref placement, @Nullable Ref shape) {
    List<@Nullable Object> rest = new ArrayList<>();
    rest.add(name);
    rest.add(null);
    rest.add(null);
    rest.add(placement);
    rest.add(shape);
    return rest;
  }
}
