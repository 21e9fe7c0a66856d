package org.lagwright.ifc.extract;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Frame;
import org.lagwright.ifc.geometry.Placements;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** At which height the floors of the storeys lie in the world coordinates of the file. */
final class Storeys {

  /** Placements nearer than this are at one height. */
  private static final double SAME_HEIGHT_M = 0.001;

  /** What lies this far below a floor still stands on it. */
  private static final double INTO_FLOOR_M = 0.05;

  private final IfcFile file;
  private final Relations relations;
  private final Placements placements;
  private final double lengthUnitM;
  private @Nullable TreeMap<Double, Long> byFloor;

  Storeys(IfcFile file, Relations relations, Placements placements, double lengthUnitM) {
    this.file = file;
    this.relations = relations;
    this.placements = placements;
    this.lengthUnitM = lengthUnitM;
  }

  /** Elevation as the storey states it, in metres; null where it does not. */
  @Nullable Double elevationM(IfcRecord storey) {
    double elevation = storey.number("Elevation") * lengthUnitM;
    return Double.isFinite(elevation) ? elevation : null;
  }

  /**
   * World height of a storey's floor: that of its placement. Some exporters place all storeys at
   * the height of the building and only state the elevation, which then counts from there.
   */
  @Nullable Double floorM(IfcRecord storey) {
    Double placedM = heightM(storey);
    Double statedM = elevationM(storey);
    IfcRecord building = file.find(relations.wholeOf(storey.id()));
    Double baseM = building == null ? null : heightM(building);
    if (placedM == null) {
      return statedM == null ? null : statedM + (baseM == null ? 0 : baseM);
    }
    boolean unplaced = Math.abs(placedM - (baseM == null ? 0 : baseM)) < SAME_HEIGHT_M;
    return unplaced && statedM != null ? Double.valueOf(placedM + statedM) : placedM;
  }

  private @Nullable Double heightM(IfcRecord product) {
    Frame frame = placements.of(product);
    return frame == null ? null : frame.origin().z();
  }

  /** The storey whose floor is the next one below a world height; the lowest for what is below. */
  Optional<Long> at(double heightM) {
    TreeMap<Double, Long> floors = floors();
    Map.Entry<Double, Long> below = floors.floorEntry(heightM + INTO_FLOOR_M);
    Map.Entry<Double, Long> found = below == null ? floors.firstEntry() : below;
    return Optional.ofNullable(found).map(Map.Entry::getValue);
  }

  private synchronized TreeMap<Double, Long> floors() {
    if (byFloor == null) {
      byFloor = new TreeMap<>();
      for (IfcRecord storey : file.all("IfcBuildingStorey")) {
        Double floorM = floorM(storey);
        if (floorM != null) {
          byFloor.putIfAbsent(floorM, storey.id());
        }
      }
    }
    return byFloor;
  }
}
