package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.lagwright.ifc.extract.place.PlaceReader;
import org.lagwright.ifc.geometry.BoxReader;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.BuildingPartList;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.UprightBox;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Walls, slabs, beams, columns, ceilings, furniture and the like of one file, with the openings in
 * them.
 */
final class BuildingParts extends BuildingPartList {

  /** What is built, which has another name from IFC4X3 on, and what stands in it. */
  private static final List<String> BUILT =
      List.of(
          "IfcBuildingElement",
          "IfcBuiltElement",
          "IfcBuildingElementPart",
          "IfcFurnishingElement",
          "IfcTransportElement");

  /** Coverings of the building; those of pipes and ducts are insulation and read elsewhere. */
  private static final Set<String> FINISHES = Set.of("CEILING", "FLOORING", "CLADDING", "ROOFING");

  private final IfcFile file;
  private final int model;
  private final BoxReader boxes;
  private final PlaceReader places;

  BuildingParts(IfcFile file, int model, BoxReader boxes, PlaceReader places) {
    this.file = file;
    this.model = model;
    this.boxes = boxes;
    this.places = places;
  }

  @Override
  protected List<BuildingPart> read() {
    Map<Long, List<UprightBox>> openings = openings();
    List<BuildingPart> parts = new ArrayList<>();
    long[] ids = BUILT.stream().flatMapToLong(e -> Arrays.stream(file.ids(e))).toArray();
    Arrays.stream(ids)
        .sorted()
        .distinct()
        .mapToObj(file::find)
        .filter(Objects::nonNull)
        .filter(
            record -> isFinish(record) || ModelExtractor.TAKEN_IN.stream().noneMatch(record::is))
        .forEach(record -> parts.add(part(record, openings)));
    return parts;
  }

  private static boolean isFinish(IfcRecord record) {
    String type = record.is("IfcCovering") ? record.enumeration("PredefinedType") : null;
    return type != null && FINISHES.contains(type);
  }

  private BuildingPart part(IfcRecord record, Map<Long, List<UprightBox>> openings) {
    String globalId = record.text("GlobalId");
    String name = record.text("Name");
    return new BuildingPart(
        new ElementKey(model, record.id()),
        globalId == null ? "" : globalId,
        record.entityName(),
        name == null ? "" : name,
        places.storeyOf(record.id()),
        boxes.boxOf(record).orElse(null),
        openings.getOrDefault(record.id(), List.of()));
  }

  private Map<Long, List<UprightBox>> openings() {
    Map<Long, List<UprightBox>> openings = new HashMap<>();
    for (IfcRecord relation : file.all("IfcRelVoidsElement")) {
      IfcRecord opening = relation.ref("RelatedOpeningElement");
      if (opening != null) {
        boxes
            .boxOf(opening)
            .ifPresent(
                box ->
                    openings
                        .computeIfAbsent(
                            relation.refId("RelatingBuildingElement"), id -> new ArrayList<>())
                        .add(box));
      }
    }
    return openings;
  }
}
