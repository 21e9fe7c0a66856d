package org.lagwright.ifc.extract.place;

import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.geometry.Region;
import org.lagwright.ifc.geometry.RegionReader;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds the space that a point lies in by the bodies of the spaces; built when first asked. */
final class Spaces {

  private record Room(long space, Region region) implements Comparable<Room> {

    @Override
    public int compareTo(Room other) {
      int byVolume = Double.compare(region.box().volumeM3(), other.region.box().volumeM3());
      return byVolume != 0 ? byVolume : Long.compare(space, other.space);
    }
  }

  private final IfcFile file;
  private final RegionReader regions;
  private final STRtree rooms = new STRtree();
  private boolean read;

  Spaces(IfcFile file, RegionReader regions) {
    this.file = file;
    this.regions = regions;
  }

  /** The space around a world position; the smallest of several, as spaces lie within spaces. */
  Optional<Long> at(Point worldM) {
    readAll();
    Room smallest = null;
    for (Object found : rooms.query(new Envelope(new Coordinate(worldM.x(), worldM.y())))) {
      Room room = (Room) found;
      if (room.region.holds(worldM) && (smallest == null || room.compareTo(smallest) < 0)) {
        smallest = room;
      }
    }
    return smallest == null ? Optional.empty() : Optional.of(smallest.space);
  }

  private synchronized void readAll() {
    if (read) {
      return;
    }
    read = true;
    for (String entity : List.of("IfcSpace", "IfcExternalSpatialElement")) {
      for (IfcRecord space : file.all(entity)) {
        for (Region region : regions.regionsOf(space)) {
          rooms.insert(Footprint.of(region.box()), new Room(space.id(), region));
        }
      }
    }
  }
}
