package org.lagwright.ifc.extract.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.extract.text.YesNo;
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
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Where an element is: up the spatial structure from what contains it or its whole; then from what
 * it is referenced in; then by where its middle lies.
 */
public final class PlaceReader implements Premises {

  private static final String IN_ITS_BODY = "its middle lies in the body of";
  private static final String OF_ITS_SPACE = "storey of its space";

  /** Higher than any storey, the halls of power stations and atria among them; common practice. */
  private static final double HIGHEST_STOREY_M = 30;

  private final IfcFile file;
  private final Relations relations;
  private final Placements placements;
  private final Middles middles;
  private final Storeys storeys;
  private final Spaces spaces;
  private final Structures structures;

  /** Whole storeys share one basis. */
  private final Map<List<Evidence>, List<Evidence>> bases = new ConcurrentHashMap<>();

  /** Reads places of the elements of one file. */
  public PlaceReader(OpenedFile opened) {
    this.file = opened.file();
    this.relations = opened.relations();
    this.placements = opened.placements();
    GeometryUnits units = opened.units().geometry();
    this.middles = new Middles(file, placements, new CornerReader(units, placements));
    this.storeys = new Storeys(file, relations, placements, opened.lengthUnitM());
    this.spaces = new Spaces(file, new RegionReader(file, units, placements));
    this.structures = new Structures(opened, storeys);
  }

  /** The place of an element. Its own IsExternal counts where the space is silent. */
  public Place placeOf(IfcRecord element, Draft draft) {
    long container = structures.containerOf(element.id());
    Point middle = middles.of(element, draft, container);
    boolean lagged = draft.kind() == null || draft.kind().isLagged();
    if (middle == null && lagged && !middles.arePlaced(element)) {
      notePlacement(element, draft);
    }
    List<Evidence> basis = new ArrayList<>();
    Structure contained = structures.of(container);
    if (lagged) {
      noteOtherStorey(element.id(), draft, contained);
    }
    Structure inSpace = spaceOf(element.id(), contained, middle, basis);
    Structure onStorey = storeyOf(element.id(), contained, inSpace, middle, basis);
    Boolean external = externalOf(contained, inSpace, draft.properties(), basis);
    IfcRecord building = premises(contained, inSpace).building();
    return place(
        building == null ? onStorey.building() : building,
        onStorey.ofStorey(),
        inSpace,
        external,
        middle,
        shared(basis));
  }

  /** Of what contains it and its space the one that tells the building, else the site. */
  private static Structure premises(Structure contained, Structure inSpace) {
    boolean told =
        contained.building() != null || contained.site() != null && inSpace.building() == null;
    return told ? contained : inSpace;
  }

  private static Place place(
      @Nullable IfcRecord building,
      Structure.@Nullable OfStorey storey,
      Structure inSpace,
      @Nullable Boolean external,
      @Nullable Point middle,
      List<Evidence> basis) {
    return new Place(
        building == null ? null : building.text("Name"),
        storey == null ? null : storey.name(),
        storey == null ? null : storey.elevationM(),
        inSpace.space() == null ? null : Structures.nameOf(inSpace.space()),
        external,
        middle,
        Place.aboveNextFloorM(aboveFloor(storey, middle), aboveFloor(inSpace.ofStorey(), middle)),
        basis);
  }

  /** Null where floor and element cannot count from one zero, as of a storey that only says 0. */
  private static @Nullable Double aboveFloor(
      Structure.@Nullable OfStorey storey, @Nullable Point middle) {
    Double floorM = storey == null || middle == null ? null : storey.floorM();
    double heightM = floorM == null || middle == null ? Double.NaN : middle.z() - floorM;
    return Math.abs(heightM) <= HIGHEST_STOREY_M ? heightM : null;
  }

  @Override
  public boolean haveSpaces() {
    return file.count("IfcSpace") + file.count("IfcExternalSpatialElement") > 0;
  }

  @Override
  public Place around(Point worldM) {
    Structure around = structures.of(spaces.at(worldM));
    if (around.space() == null) {
      return Place.UNKNOWN;
    }
    List<Evidence> basis = new ArrayList<>();
    basis.add(Structures.evidence(around.space(), IN_ITS_BODY));
    if (around.storey() != null) {
      basis.add(Structures.evidence(around.storey(), OF_ITS_SPACE));
    }
    Boolean external = externalOf(around, around, List.of(), basis);
    return place(around.building(), around.ofStorey(), around, external, worldM, basis);
  }

  @Override
  public boolean haveStoreys() {
    return file.count("IfcBuildingStorey") > 0;
  }

  @Override
  public Place onFloorBelow(Point worldM) {
    List<Evidence> basis = new ArrayList<>();
    Structure found = storeyAt(worldM.z(), Structure.NOTHING, basis);
    return found.storey() == null || !storeys.isAround(found.storey(), worldM)
        ? Place.UNKNOWN
        : place(found.building(), found.ofStorey(), Structure.NOTHING, null, worldM, basis);
  }

  private void notePlacement(IfcRecord element, Draft draft) {
    IfcRecord placement = element.ref("ObjectPlacement");
    if (placement != null) {
      draft.note(ReadFinding.PLACE_UNKNOWN, Effect.NONE, outermostBroken(placement).entityName());
    }
  }

  /** Of several storeys that contain an element the last counts, which tells nothing of it. */
  private void noteOtherStorey(long element, Draft draft, Structure contained) {
    String counting = nameOf(contained.ofStorey());
    for (long container : relations.containersOf(element)) {
      String other = nameOf(structures.of(container).ofStorey());
      if (counting != null && other != null && !other.equals(counting)) {
        draft.note(ReadFinding.STOREY_CONFLICT, Effect.NONE, counting, other);
        return;
      }
    }
  }

  private static @Nullable String nameOf(Structure.@Nullable OfStorey storey) {
    return storey == null ? null : storey.name();
  }

  /** What a placement that cannot be read hangs on that cannot be read either. */
  private IfcRecord outermostBroken(IfcRecord placement) {
    IfcRecord broken = placement;
    for (int i = 0; i < file.step().limits().maxReferenceDepth(); i++) {
      IfcRecord within = broken.ref("PlacementRelTo");
      if (within == null || placements.world(within) != null) {
        return broken;
      }
      broken = within;
    }
    return placement;
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
    return nameOf(structures.of(structures.containerOf(product)).ofStorey());
  }

  private Structure spaceOf(
      long element, Structure contained, @Nullable Point middle, List<Evidence> basis) {
    if (contained.containedInSpace() != null) {
      basis.add(contained.containedInSpace());
      return contained;
    }
    for (long referenced : relations.referencesOf(element)) {
      Structure structure = structures.of(referenced);
      if (structure.space() != null) {
        basis.add(Structures.evidence(structure.space(), "referenced in"));
        return structure;
      }
    }
    Structure around = structures.of(middle == null ? Optional.empty() : spaces.at(middle));
    if (around.space() != null) {
      basis.add(Structures.evidence(around.space(), IN_ITS_BODY));
    }
    return around;
  }

  private Structure storeyOf(
      long element,
      Structure contained,
      Structure inSpace,
      @Nullable Point middle,
      List<Evidence> basis) {
    if (contained.ofStorey() != null) {
      basis.add(contained.ofStorey().containedIn());
      return contained;
    }
    if (inSpace.storey() != null) {
      basis.add(Structures.evidence(inSpace.storey(), OF_ITS_SPACE));
      return inSpace;
    }
    for (long referenced : relations.referencesOf(element)) {
      Structure structure = structures.of(referenced);
      if (structure.storey() != null) {
        basis.add(Structures.evidence(structure.storey(), "referenced in"));
        return structure;
      }
    }
    return middle == null
        ? Structure.NOTHING
        : storeyAt(middle.z(), premises(contained, inSpace), basis);
  }

  /** By height among the storeys of the building, else of the site. */
  private Structure storeyAt(double heightM, Structure premises, List<Evidence> basis) {
    IfcRecord within = premises.building() == null ? premises.site() : premises.building();
    long withinId = within == null ? 0 : within.id();
    Structure found = structures.on(storeys.below(heightM, withinId));
    String how = "the floor below its middle";
    if (found.storey() == null) {
      found = structures.on(storeys.lowest(heightM, withinId));
      how = "the lowest floor, above its middle,";
    }
    if (found.storey() != null) {
      basis.add(Structures.evidence(found.storey(), how));
    }
    return found;
  }

  private static @Nullable Boolean externalOf(
      Structure contained, Structure inSpace, List<Property> own, List<Evidence> basis) {
    Boolean bySpace = inSpace.external() != null ? inSpace.external() : contained.external();
    if (bySpace != null && inSpace.space() != null) {
      basis.add(Structures.evidence(inSpace.space(), bySpace ? "outdoors by" : "indoors by"));
    }
    if (bySpace != null) {
      return bySpace;
    }
    Property stated = Outdoors.stated(own);
    if (stated == null) {
      return null;
    }
    basis.add(stated.evidence());
    return YesNo.of(stated);
  }
}
