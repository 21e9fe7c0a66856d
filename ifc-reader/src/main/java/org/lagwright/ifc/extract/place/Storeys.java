package org.lagwright.ifc.extract.place;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** At which height the floors of the storeys lie in the world coordinates of the file. */
final class Storeys {

  /** Placements nearer than this are at one height. */
  private static final double SAME_HEIGHT_M = 0.001;

  /** Of a building that stands no higher, storeys may lie as high above its ground floor. */
  private static final double ABOVE_SEA_M = 100;

  /** What lies this far below a floor still stands on it. */
  private static final double INTO_FLOOR_M = 0.05;

  /** How far below the lowest floor pits and drains still belong to it: one more storey. */
  private static final double UNDER_LOWEST_M = 5;

  /** In plan, from where a storey is placed; files with other origins lie farther apart. */
  private static final double SITE_M = 1000;

  private final IfcFile file;
  private final Relations relations;
  private final Placements placements;
  private final double lengthUnitM;

  /** Whether a building states its storeys above the sea. */
  private final Map<Long, Boolean> aboveSea = new ConcurrentHashMap<>();

  /** By building, how far above their placements its storeys are stated, metres. */
  private final Map<Long, double[]> zeros = new ConcurrentHashMap<>();

  /**
   * Storeys of each building and site and, under 0, of all; by the building they stand in, 0 if
   * they stand in none, and the height of their floors.
   */
  private @Nullable Map<Long, Map<Long, TreeMap<Double, Long>>> byFloor;

  /** True if any storey is part of a site. */
  private boolean underSites;

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
   * the height of the building and only state the elevation, which then counts from there; unless
   * it is the height of the placement itself, or all are stated above the sea, or as far above
   * their placements as this one.
   */
  @Nullable Double floorM(IfcRecord storey) {
    Double placedM = heightM(storey);
    Double statedM = elevationM(storey);
    long buildingId = buildingOf(storey.id());
    IfcRecord building = file.find(buildingId);
    Double baseM = building == null ? null : heightM(building);
    if (placedM == null) {
      return statedM == null ? null : statedM + (baseM == null ? 0 : baseM);
    }
    double zeroM = baseM == null ? 0 : baseM;
    if (statedM == null
        || !isSame(placedM, zeroM)
        || isSame(statedM, placedM)
        || isZeroOf(buildingId, zeroM, statedM - placedM)) {
      return placedM;
    }
    return baseM != null && baseM > ABOVE_SEA_M && areAboveSea(buildingId, baseM)
        ? statedM
        : Double.valueOf(placedM + statedM);
  }

  private static boolean isSame(double oneM, double otherM) {
    return Math.abs(oneM - otherM) < SAME_HEIGHT_M;
  }

  /** True if a storey placed elsewhere in a building is stated as far above its placement. */
  private boolean isZeroOf(long building, double zeroM, double aboveM) {
    for (double zeroAboveM : zeros.computeIfAbsent(building, id -> zerosOf(id, zeroM))) {
      if (isSame(zeroAboveM, aboveM)) {
        return true;
      }
    }
    return false;
  }

  /** How far the storeys that are not placed at the height of their building are stated above. */
  private double[] zerosOf(long building, double baseM) {
    return file.all("IfcBuildingStorey").stream()
        .filter(storey -> buildingOf(storey.id()) == building)
        .mapToDouble(storey -> aboveItsPlacementM(storey, baseM))
        .filter(Double::isFinite)
        .distinct()
        .toArray();
  }

  private double aboveItsPlacementM(IfcRecord storey, double baseM) {
    Double placedM = heightM(storey);
    Double statedM = elevationM(storey);
    return placedM == null || statedM == null || isSame(placedM, baseM)
        ? Double.NaN
        : statedM - placedM;
  }

  /**
   * True if the elevations of all storeys of a building lie nearer to its own height than to zero,
   * where the ground floor is otherwise.
   */
  private boolean areAboveSea(long building, double baseM) {
    Boolean known = aboveSea.get(building);
    if (known == null) {
      known = true;
      for (IfcRecord storey : file.all("IfcBuildingStorey")) {
        Double statedM = elevationM(storey);
        boolean fromBase = statedM != null && Math.abs(statedM - baseM) >= Math.abs(statedM);
        known = known && !(fromBase && buildingOf(storey.id()) == building);
      }
      aboveSea.put(building, known);
    }
    return known;
  }

  /** True for buildings and, where the schema has them, for other facilities. */
  static boolean isBuilding(IfcRecord record) {
    return record.is("IfcBuilding") || record.is("IfcFacility");
  }

  /** The building that a storey, or a part of one, stands in; 0 if there is none. */
  private long buildingOf(long storey) {
    long at = relations.wholeOf(storey);
    for (int i = 0; i < file.step().limits().maxReferenceDepth() && at != 0; i++) {
      IfcRecord record = file.find(at);
      if (record != null && isBuilding(record)) {
        return at;
      }
      at = relations.wholeOf(at);
    }
    return 0;
  }

  /** False for a place that lies so far from the storey that it belongs to another site. */
  boolean isAround(IfcRecord storey, Point worldM) {
    Frame frame = placements.of(storey);
    return frame == null
        || Math.hypot(frame.origin().x() - worldM.x(), frame.origin().y() - worldM.y()) < SITE_M;
  }

  private @Nullable Double heightM(IfcRecord product) {
    Frame frame = placements.of(product);
    return frame == null ? null : frame.origin().z();
  }

  /**
   * A floor that was found by its height.
   *
   * @param ofOneHouse false if several buildings have one of that name there, of which nothing
   *     tells which it is
   * @param atOneHeight true unless those lie at different heights
   */
  record Floor(long storey, boolean ofOneHouse, boolean atOneHeight) {}

  /**
   * The storey whose floor is the next one below a world height. Where several buildings stand and
   * theirs differ by name, nothing tells which it is.
   *
   * @param within the building or site where it stands, 0 if that is not known
   */
  Optional<Floor> below(double heightM, long within) {
    return agreed(within, floors -> floors.floorEntry(heightM + INTO_FLOOR_M));
  }

  /** The lowest storey there for what lies not far below it, as drains do, and above none. */
  Optional<Floor> lowest(double heightM, long within) {
    for (TreeMap<Double, Long> floors : floors(within).values()) {
      if (floors.floorEntry(heightM + INTO_FLOOR_M) != null) {
        return Optional.empty();
      }
    }
    return agreed(
        within,
        floors -> floors.firstKey() - heightM > UNDER_LOWEST_M ? null : floors.firstEntry());
  }

  /** The highest that the buildings there have, if all of them are called the same. */
  private Optional<Floor> agreed(
      long within, Function<TreeMap<Double, Long>, Map.@Nullable Entry<Double, Long>> of) {
    Map.Entry<Double, Long> agreed = null;
    boolean ofOneHouse = true;
    boolean atOneHeight = true;
    for (TreeMap<Double, Long> floors : floors(within).values()) {
      Map.Entry<Double, Long> floor = of.apply(floors);
      if (agreed != null && floor != null) {
        if (!nameOf(floor).equals(nameOf(agreed))) {
          return Optional.empty();
        }
        ofOneHouse = false;
        atOneHeight = atOneHeight && isSame(floor.getKey(), agreed.getKey());
      }
      boolean higher = floor != null && (agreed == null || floor.getKey() > agreed.getKey());
      agreed = higher ? floor : agreed;
    }
    return agreed == null
        ? Optional.empty()
        : Optional.of(new Floor(agreed.getValue(), ofOneHouse, atOneHeight));
  }

  private String nameOf(Map.Entry<Double, Long> floor) {
    IfcRecord storey = file.find(floor.getValue());
    String name = storey == null ? null : storey.text("Name");
    return name == null ? "" : name;
  }

  /** Those of a site are all where the file puts its storeys under no site. */
  private synchronized Map<Long, TreeMap<Double, Long>> floors(long within) {
    if (byFloor == null) {
      byFloor = new HashMap<>();
      for (IfcRecord storey : file.all("IfcBuildingStorey")) {
        Double floorM = floorM(storey);
        if (floorM != null) {
          note(0, floorM, storey.id());
          noteAbove(floorM, storey.id());
        }
      }
    }
    IfcRecord record = underSites || within == 0 ? null : file.find(within);
    boolean anySite = record != null && record.is("IfcSite");
    return byFloor.getOrDefault(anySite ? Long.valueOf(0) : within, Map.of());
  }

  /** Notes a storey under all buildings and sites that it is part of. */
  private void noteAbove(double floorM, long storey) {
    long at = relations.wholeOf(storey);
    for (int i = 0; i < file.step().limits().maxReferenceDepth() && at != 0; i++) {
      IfcRecord record = file.find(at);
      boolean site = record != null && record.is("IfcSite");
      if (site || record != null && isBuilding(record)) {
        note(at, floorM, storey);
      }
      underSites |= site;
      at = relations.wholeOf(at);
    }
  }

  private void note(long within, double floorM, long storey) {
    Objects.requireNonNull(byFloor)
        .computeIfAbsent(within, unseen -> new TreeMap<>())
        .computeIfAbsent(buildingOf(storey), unseen -> new TreeMap<>())
        .putIfAbsent(floorM, storey);
  }
}
