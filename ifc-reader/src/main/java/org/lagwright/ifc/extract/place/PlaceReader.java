package org.lagwright.ifc.extract.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.geometry.CornerReader;
import org.lagwright.ifc.geometry.RegionReader;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Premises;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.PropertyList;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Where an element is: up the spatial structure from what contains it or its whole; then from what
 * it is referenced in; then by where its middle lies.
 */
public final class PlaceReader implements Premises {

  private static final String CONTAINED_IN = "contained in";
  private static final String IN_ITS_BODY = "its middle lies in the body of";
  private static final String OF_ITS_SPACE = "storey of its space";

  /** How exporters write true. */
  private static final List<String> YES = List.of("T", "TRUE", "1", "YES", "JA", "OUI");

  /** How they write false. */
  private static final List<String> NO = List.of("F", "FALSE", "0", "NO", "NEIN", "NON");

  /** Higher than any storey, the halls of power stations and atria among them; common practice. */
  private static final double HIGHEST_STOREY_M = 30;

  private final IfcFile file;
  private final Relations relations;
  private final PropertyReader properties;
  private final Middles middles;
  private final Storeys storeys;
  private final Spaces spaces;
  private final Map<Long, Structure> structures = new ConcurrentHashMap<>();

  /** Whole storeys share one basis. */
  private final Map<List<Evidence>, List<Evidence>> bases = new ConcurrentHashMap<>();

  /** Reads places of the elements of one file. */
  public PlaceReader(OpenedFile opened) {
    this.file = opened.file();
    this.relations = opened.relations();
    this.properties = opened.properties();
    Placements placements = opened.placements();
    GeometryUnits units = opened.units().geometry();
    this.middles = new Middles(file, placements, new CornerReader(units, placements));
    this.storeys = new Storeys(file, relations, placements, opened.lengthUnitM());
    this.spaces = new Spaces(file, new RegionReader(file, units, placements));
  }

  /** What a spatial element and those above it tell; records are null where there is none. */
  private record Structure(
      @Nullable IfcRecord site,
      @Nullable IfcRecord building,
      @Nullable IfcRecord storey,
      @Nullable IfcRecord space,
      @Nullable Boolean external,
      @Nullable OfStorey ofStorey,
      @Nullable Evidence containedInSpace) {

    static final Structure NOTHING = new Structure(null, null, null, null, null, null, null);
  }

  /** What a storey gives to all elements on it. */
  private record OfStorey(
      @Nullable String name,
      @Nullable Double elevationM,
      @Nullable Double floorM,
      Evidence containedIn) {}

  /** The place of an element. Its own IsExternal counts where the space is silent. */
  public Place placeOf(IfcRecord element, Draft draft) {
    long container = container(element.id());
    Point middle = middles.of(element, draft, container);
    boolean lagged = draft.kind() == null || draft.kind().isLagged();
    if (middle == null && lagged && !middles.arePlaced(element)) {
      notePlacement(element, draft);
    }
    List<Evidence> basis = new ArrayList<>();
    Structure contained = structure(container);
    Structure inSpace = spaceOf(element.id(), contained, middle, basis);
    Structure onStorey = storeyOf(element.id(), contained, inSpace, middle, basis);
    Boolean external = externalOf(contained, inSpace, draft.properties(), basis);
    IfcRecord building = premises(contained, inSpace).building;
    return place(
        building == null ? onStorey.building : building,
        onStorey.ofStorey,
        inSpace.space,
        external,
        middle,
        shared(basis));
  }

  /** Of what contains it and its space the one that tells the building, else the site. */
  private static Structure premises(Structure contained, Structure inSpace) {
    boolean told = contained.building != null || contained.site != null && inSpace.building == null;
    return told ? contained : inSpace;
  }

  private static Place place(
      @Nullable IfcRecord building,
      @Nullable OfStorey storey,
      @Nullable IfcRecord space,
      @Nullable Boolean external,
      @Nullable Point middle,
      List<Evidence> basis) {
    Double floorM = storey == null ? null : storey.floorM;
    return new Place(
        building == null ? null : building.text("Name"),
        storey == null ? null : storey.name,
        storey == null ? null : storey.elevationM,
        space == null ? null : spaceName(space),
        external,
        middle,
        floorM == null || middle == null ? null : aboveFloor(middle.z() - floorM),
        basis);
  }

  /** Null where floor and element cannot count from one zero, as of a storey that only says 0. */
  private static @Nullable Double aboveFloor(double heightM) {
    return Math.abs(heightM) > HIGHEST_STOREY_M ? null : Double.valueOf(heightM);
  }

  @Override
  public boolean haveSpaces() {
    return file.count("IfcSpace") + file.count("IfcExternalSpatialElement") > 0;
  }

  @Override
  public Place around(Point worldM) {
    Structure around = structure(spaces.at(worldM));
    if (around.space == null) {
      return Place.UNKNOWN;
    }
    List<Evidence> basis = new ArrayList<>();
    basis.add(evidence(around.space, IN_ITS_BODY));
    if (around.storey != null) {
      basis.add(evidence(around.storey, OF_ITS_SPACE));
    }
    Boolean external = externalOf(around, around, List.of(), basis);
    return place(around.building, around.ofStorey, around.space, external, worldM, basis);
  }

  private static void notePlacement(IfcRecord element, Draft draft) {
    IfcRecord placement = element.ref("ObjectPlacement");
    if (placement != null) {
      draft.note(ReadFinding.PLACE_UNKNOWN, Effect.NONE, placement.entityName());
    }
  }

  private List<Evidence> shared(List<Evidence> basis) {
    List<Evidence> known = bases.get(basis);
    if (known == null) {
      List<Evidence> own = List.copyOf(basis);
      known = bases.putIfAbsent(own, own);
      known = known == null ? own : known;
    }
    return known;
  }

  /** Name of the storey that a product is contained in, null where the model does not tell. */
  public @Nullable String storeyOf(long product) {
    OfStorey storey = structure(container(product)).ofStorey;
    return storey == null ? null : storey.name;
  }

  private Structure spaceOf(
      long element, Structure contained, @Nullable Point middle, List<Evidence> basis) {
    if (contained.containedInSpace != null) {
      basis.add(contained.containedInSpace);
      return contained;
    }
    for (long referenced : relations.referencesOf(element)) {
      Structure structure = structure(referenced);
      if (structure.space != null) {
        basis.add(evidence(structure.space, "referenced in"));
        return structure;
      }
    }
    Structure around = structure(middle == null ? Optional.empty() : spaces.at(middle));
    if (around.space != null) {
      basis.add(evidence(around.space, IN_ITS_BODY));
    }
    return around;
  }

  private Structure storeyOf(
      long element,
      Structure contained,
      Structure inSpace,
      @Nullable Point middle,
      List<Evidence> basis) {
    if (contained.ofStorey != null) {
      basis.add(contained.ofStorey.containedIn);
      return contained;
    }
    if (inSpace.storey != null) {
      basis.add(evidence(inSpace.storey, OF_ITS_SPACE));
      return inSpace;
    }
    for (long referenced : relations.referencesOf(element)) {
      Structure structure = structure(referenced);
      if (structure.storey != null) {
        basis.add(evidence(structure.storey, "referenced in"));
        return structure;
      }
    }
    return middle == null
        ? Structure.NOTHING
        : storeyAt(middle.z(), premises(contained, inSpace), basis);
  }

  /** By height among the storeys of the building, else of the site. */
  private Structure storeyAt(double heightM, Structure premises, List<Evidence> basis) {
    IfcRecord within = premises.building == null ? premises.site : premises.building;
    long withinId = within == null ? 0 : within.id();
    Structure found = structure(storeys.below(heightM, withinId));
    String how = "the floor below its middle";
    if (found.storey == null) {
      found = structure(storeys.lowest(heightM, withinId));
      how = "the lowest floor, above its middle,";
    }
    if (found.storey != null) {
      basis.add(evidence(found.storey, how));
    }
    return found;
  }

  private static @Nullable Boolean externalOf(
      Structure contained, Structure inSpace, List<Property> own, List<Evidence> basis) {
    Boolean bySpace = inSpace.external != null ? inSpace.external : contained.external;
    if (bySpace != null && inSpace.space != null) {
      basis.add(evidence(inSpace.space, bySpace ? "outdoors by" : "indoors by"));
    }
    if (bySpace != null) {
      return bySpace;
    }
    Property stated = stated(own);
    if (stated == null) {
      return null;
    }
    basis.add(stated.evidence());
    return isTrue(stated);
  }

  private static Evidence evidence(IfcRecord record, String how) {
    String name = record.text("Name");
    return new Evidence(record.id(), how + " " + record.entityName(), name == null ? "" : name);
  }

  /** What contains the element, or the nearest whole that is contained somewhere. */
  private long container(long element) {
    long at = element;
    for (int i = 0; i < file.step().limits().maxReferenceDepth() && at != 0; i++) {
      if (relations.containerOf(at) != 0) {
        return relations.containerOf(at);
      }
      at = relations.wholeOf(at);
      if (isSpatial(at)) {
        return at;
      }
    }
    return 0;
  }

  /** Some exporters aggregate elements straight under a storey. */
  private boolean isSpatial(long id) {
    IfcRecord record = id == 0 ? null : file.find(id);
    return record != null
        && (record.is("IfcSpatialStructureElement") || record.is("IfcSpatialElement"));
  }

  private Structure structure(Optional<Long> spatial) {
    return spatial.isPresent() ? structure(spatial.get()) : Structure.NOTHING;
  }

  private Structure structure(long spatial) {
    Structure known = structures.get(spatial);
    if (known == null) {
      known = climb(spatial);
      structures.put(spatial, known);
    }
    return known;
  }

  private Structure climb(long spatial) {
    IfcRecord site = null;
    IfcRecord building = null;
    IfcRecord storey = null;
    IfcRecord space = null;
    Boolean external = null;
    long at = spatial;
    for (int i = 0; i < file.step().limits().maxReferenceDepth() && at != 0; i++) {
      IfcRecord record = file.find(at);
      if (record == null) {
        break;
      }
      if (isRoom(record) && space == null) {
        space = record;
        external =
            external(
                record,
                file.find(relations.typeOf(at)),
                properties.propertiesOf(at, PropertyList.UNCOUNTED));
      } else if (record.is("IfcBuildingStorey") && storey == null) {
        storey = record;
      } else if (Storeys.isBuilding(record) && building == null) {
        building = record;
      } else if (record.is("IfcSite") && site == null) {
        site = record;
      }
      at = relations.wholeOf(at);
    }
    return new Structure(
        site,
        building,
        storey,
        space,
        external,
        storey == null ? null : ofStorey(storey),
        space == null ? null : evidence(space, CONTAINED_IN));
  }

  private OfStorey ofStorey(IfcRecord storey) {
    return new OfStorey(
        storey.text("Name"),
        storeys.elevationM(storey),
        storeys.floorM(storey),
        evidence(storey, CONTAINED_IN));
  }

  private static boolean isRoom(IfcRecord record) {
    return record.is("IfcSpace") || record.is("IfcExternalSpatialStructureElement");
  }

  /** Its names, and with them what its class tells and its names may not. */
  private static @Nullable String spaceName(IfcRecord space) {
    String name = space.text("Name");
    String longName = space.text("LongName");
    String names = longName == null ? name : longName;
    if (name != null && longName != null && !longName.equals(name)) {
      names = name + " " + longName;
    }
    return isEarth(space) ? (names == null ? "" : names + ", ") + "external earth" : names;
  }

  /** True for the ground around a building, which is neither outdoors nor indoors. */
  private static boolean isEarth(IfcRecord space) {
    return space.is("IfcExternalSpatialStructureElement")
        && "EXTERNAL_EARTH".equals(space.enumeration("PredefinedType"));
  }

  /**
   * IFC2X3 says it in an attribute, later schemas in the predefined type, by their class, or in a
   * property. What the predefined type or attribute calls internal is internal.
   */
  private static @Nullable Boolean external(
      IfcRecord space, @Nullable IfcRecord itsType, List<Property> properties) {
    if (isEarth(space)) {
      return null;
    }
    String told = space.enumeration("InteriorOrExteriorSpace");
    String own = space.enumeration("PredefinedType");
    String type = own == null && itsType != null ? itsType.enumeration("PredefinedType") : own;
    if (space.is("IfcExternalSpatialStructureElement")
        || "EXTERNAL".equals(told)
        || "EXTERNAL".equals(type)) {
      return true;
    }
    Property stated = stated(properties);
    if (stated != null) {
      return isTrue(stated);
    }
    return "INTERNAL".equals(told) || "INTERNAL".equals(type) ? Boolean.FALSE : null;
  }

  private static @Nullable Property stated(List<Property> properties) {
    for (Property p : PropertyNames.listOf(properties, PropertyNames.Role.EXTERNAL)) {
      if (p.name().equalsIgnoreCase("IsExternal") && (isTrue(p) || NO.contains(bare(p)))) {
        return p;
      }
    }
    return null;
  }

  private static boolean isTrue(Property stated) {
    return YES.contains(bare(stated));
  }

  private static String bare(Property property) {
    return property.text().toUpperCase(Locale.ROOT).replace(".", "");
  }
}
