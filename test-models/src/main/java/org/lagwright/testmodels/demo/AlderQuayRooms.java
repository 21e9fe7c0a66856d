package org.lagwright.testmodels.demo;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.BuildingWriter;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.PropertyWriter;
import org.lagwright.testmodels.ifc.ShapeWriter;
import org.lagwright.testmodels.ifc.Vec;
import org.lagwright.testmodels.step.Ref;

/** Site, building, storeys and rooms of the terminal, with a few walls and slabs. */
final class AlderQuayRooms {

  private final ShapeWriter shapes;
  private final BuildingWriter building;
  private final PropertyWriter properties;
  private final Map<Place.Storey, Ref> storeys = new EnumMap<>(Place.Storey.class);
  private final Map<Place.Storey, Ref> levels = new EnumMap<>(Place.Storey.class);
  private final Map<Place, Ref> spaces = new EnumMap<>(Place.class);

  AlderQuayRooms(IfcWriter ifc) {
    shapes = new ShapeWriter(ifc);
    building = new BuildingWriter(ifc);
    properties = new PropertyWriter(ifc);
    Ref ground = shapes.placement(null, Frame.WORLD);
    Ref site = building.site("Alder Quay", ground);
    Ref house = building.building("Ferry terminal", shapes.placement(ground, Frame.WORLD));
    building.aggregate("project", ifc.project(), List.of(site));
    building.aggregate("site", site, List.of(house));
    for (Place.Storey storey : Place.Storey.values()) {
      storey(storey, ground);
    }
    building.aggregate("building", house, List.copyOf(storeys.values()));
    for (Place place : Place.values()) {
      space(place, ifc);
    }
    for (Place.Storey storey : Place.Storey.values()) {
      building.aggregate(storey.title, level(storeys, storey), spacesOn(storey));
    }
    structure();
  }

  /** A placement relative to the storey of a room. */
  Ref place(Place place, Frame world) {
    Frame level = Frame.at(new Vec(0, 0, place.storey.elevationMm));
    return shapes.placement(level(levels, place.storey), world.within(level));
  }

  Ref space(Place place) {
    return Objects.requireNonNull(spaces.get(place));
  }

  private void storey(Place.Storey storey, Ref ground) {
    Ref level = shapes.placement(ground, Frame.at(new Vec(0, 0, storey.elevationMm)));
    levels.put(storey, level);
    storeys.put(storey, building.storey(storey.title, level, storey.elevationMm));
  }

  private void space(Place place, IfcWriter ifc) {
    Body box =
        new Body.Extrusion(
            new Profile.Rectangle(place.sizeX(), place.sizeY()), Place.Storey.HEIGHT_MM);
    Ref space =
        building.space(
            place.number,
            place.title,
            place(place, Frame.at(place.floorCentre())),
            shapes.shape(List.of(box.inPlace())),
            place.external);
    spaces.put(place, space);
    List<Ref> common = new ArrayList<>();
    common.add(properties.label("Reference", place.number));
    if (!ifc.schema().isOld()) {
      common.add(properties.truth("IsExternal", place.external));
    }
    Ref set = properties.set("space " + place.number, "Pset_SpaceCommon", common);
    properties.bind("space " + place.number, List.of(space), set);
  }

  private List<Ref> spacesOn(Place.Storey storey) {
    return spaces.entrySet().stream()
        .filter(entry -> entry.getKey().storey == storey)
        .map(Map.Entry::getValue)
        .toList();
  }

  private void structure() {
    List<Ref> ground = new ArrayList<>();
    Frame plant = Frame.at(new Vec(10_000, 7_500, 0));
    ground.add(
        building.wall(
            "Plant room to hall", place(Place.PLANT_ROOM, plant), block(200, 15_000, 4_000)));
    Frame store = Frame.at(new Vec(5_000, 8_000, 0));
    ground.add(
        building.wall(
            "Plant room to store", place(Place.PLANT_ROOM, store), block(10_000, 200, 4_000)));
    Frame slab = Frame.at(new Vec(20_000, 7_500, -250));
    ground.add(
        building.slab("Ground slab", place(Place.PLANT_ROOM, slab), block(40_000, 15_000, 250)));
    building.contain("ground structure", ground, level(storeys, Place.Storey.GROUND));
    Frame upper = Frame.at(new Vec(20_000, 7_500, 3_800));
    Ref floor =
        building.slab("Upper slab", place(Place.OFFICES, upper), block(40_000, 15_000, 200));
    building.contain("upper structure", List.of(floor), level(storeys, Place.Storey.UPPER));
  }

  private Ref block(double x, double y, double height) {
    Body body = new Body.Extrusion(new Profile.Rectangle(x, y), height);
    return shapes.shape(List.of(body.inPlace()));
  }

  private static Ref level(Map<Place.Storey, Ref> refs, Place.Storey storey) {
    return Objects.requireNonNull(refs.get(storey));
  }
}
