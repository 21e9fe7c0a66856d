package org.lagwright.ifc.extract.place;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.PropertyList;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** Goes up the spatial structure of one file: space, storey, building, site. */
final class Structures {

  private static final String CONTAINED_IN = "contained in";

  private final IfcFile file;
  private final Relations relations;
  private final PropertyReader properties;
  private final Storeys storeys;
  private final Map<Long, Structure> known = new ConcurrentHashMap<>();

  Structures(OpenedFile opened, Storeys storeys) {
    this.file = opened.file();
    this.relations = opened.relations();
    this.properties = opened.properties();
    this.storeys = storeys;
  }

  /** What contains the element, or the nearest whole that is contained somewhere. */
  long containerOf(long element) {
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

  /** What a spatial element tells, nothing if there is none. */
  Structure of(Optional<Long> spatial) {
    return spatial.isPresent() ? of(spatial.get()) : Structure.NOTHING;
  }

  /** What a floor tells that was found by its height, nothing if there is none. */
  Structure on(Optional<Storeys.Floor> floor) {
    if (floor.isEmpty()) {
      return Structure.NOTHING;
    }
    Structure storey = of(floor.get().storey());
    return floor.get().ofOneHouse() ? storey : storey.inAnyHouse(floor.get().atOneHeight());
  }

  /** What a spatial element tells, by its instance number. */
  Structure of(long spatial) {
    Structure structure = known.get(spatial);
    if (structure == null) {
      structure = climb(spatial);
      known.put(spatial, structure);
    }
    return structure;
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
            Outdoors.isOutdoors(
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

  private Structure.OfStorey ofStorey(IfcRecord storey) {
    return new Structure.OfStorey(
        storey.text("Name"),
        storeys.elevationM(storey),
        storeys.floorM(storey),
        evidence(storey, CONTAINED_IN));
  }

  private static boolean isRoom(IfcRecord record) {
    return record.is("IfcSpace") || record.is("IfcExternalSpatialStructureElement");
  }

  /** Its names, and with them what its class tells and its names may not. */
  static @Nullable String nameOf(IfcRecord space) {
    String name = space.text("Name");
    String longName = space.text("LongName");
    String names = longName == null ? name : longName;
    if (name != null && longName != null && !longName.equals(name)) {
      names = name + " " + longName;
    }
    return Outdoors.isEarth(space) ? (names == null ? "" : names + ", ") + "external earth" : names;
  }

  /** A spatial element, as what tells where something is. */
  static Evidence evidence(IfcRecord record, String how) {
    String name = record.text("Name");
    return new Evidence(record.id(), how + " " + record.entityName(), name == null ? "" : name);
  }
}
