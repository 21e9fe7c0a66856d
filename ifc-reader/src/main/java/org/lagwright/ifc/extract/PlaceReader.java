package org.lagwright.ifc.extract;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** Where an element is: up the spatial structure from what contains it or its whole. */
final class PlaceReader {

  private final IfcFile file;
  private final Relations relations;
  private final PropertyReader properties;
  private final double lengthUnitM;
  private final Map<Long, Place> byContainer = new HashMap<>();

  PlaceReader(IfcFile file, Relations relations, PropertyReader properties, double lengthUnitM) {
    this.file = file;
    this.relations = relations;
    this.properties = properties;
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * The place of an element.
   *
   * @param own its properties, of which IsExternal counts where the space is silent
   */
  Place placeOf(long element, List<Property> own) {
    long container = container(element);
    Place place =
        container == 0 ? Place.UNKNOWN : byContainer.computeIfAbsent(container, id -> climb(id));
    Boolean external = place.external() != null ? place.external() : external(own);
    return new Place(
        place.building(), place.storey(), place.storeyElevationM(), place.space(), external);
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

  private Place climb(long container) {
    String building = null;
    String storey = null;
    Double elevationM = null;
    String space = null;
    Boolean external = null;
    long at = container;
    for (int i = 0; i < file.step().limits().maxReferenceDepth() && at != 0; i++) {
      IfcRecord record = file.find(at);
      if (record == null) {
        break;
      }
      if (record.is("IfcSpace") && space == null) {
        space = spaceName(record);
        external = external(record, properties.propertiesOf(at));
      } else if (record.is("IfcBuildingStorey") && storey == null) {
        storey = record.text("Name");
        double elevation = record.number("Elevation") * lengthUnitM;
        elevationM = Double.isFinite(elevation) ? elevation : null;
      } else if (record.is("IfcBuilding") && building == null) {
        building = record.text("Name");
      }
      at = relations.wholeOf(at);
    }
    return new Place(building, storey, elevationM, space, external);
  }

  private static @Nullable String spaceName(IfcRecord space) {
    String name = space.text("Name");
    String longName = space.text("LongName");
    if (name == null || longName == null || longName.equals(name)) {
      return longName == null ? name : longName;
    }
    return name + " " + longName;
  }

  /** IFC2X3 says it in an attribute, later schemas in the predefined type or a property. */
  private static @Nullable Boolean external(IfcRecord space, List<Property> properties) {
    boolean outside =
        "EXTERNAL".equals(space.enumeration("InteriorOrExteriorSpace"))
            || "EXTERNAL".equals(space.enumeration("PredefinedType"));
    return outside ? Boolean.TRUE : external(properties);
  }

  private static @Nullable Boolean external(List<Property> properties) {
    return properties.stream()
        .filter(p -> p.name().equalsIgnoreCase("IsExternal"))
        .map(p -> p.text().toUpperCase(Locale.ROOT).replace(".", ""))
        .filter(text -> List.of("T", "F", "TRUE", "FALSE").contains(text))
        .map(text -> text.startsWith("T"))
        .findFirst()
        .orElse(null);
  }
}
