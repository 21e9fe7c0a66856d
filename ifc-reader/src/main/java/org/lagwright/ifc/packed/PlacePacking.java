package org.lagwright.ifc.packed;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Point;

/** Places; many elements have the same storey and space, for the same reasons. */
final class PlacePacking implements Packing<Place> {

  /** The only one. */
  static final Packing<Place> PLACE = new PlacePacking();

  private PlacePacking() {}

  @Override
  public void write(Place place, PackedWriter to) {
    to.shared(to.vocabulary().places, at(place, null, null), ROOM);
    Packings.POSITION.writeOrNull(place.positionM(), to);
    Packings.FIGURE.writeOrNull(place.heightAboveFloorM(), to);
  }

  @Override
  public Place read(PackedReader from) {
    Place room = from.shared(from.vocabulary().places, ROOM);
    return at(room, Packings.POSITION.readOrNull(from), Packings.FIGURE.readOrNull(from));
  }

  private static Place at(
      Place room, @Nullable Point positionM, @Nullable Double heightAboveFloorM) {
    return new Place(
        room.building(),
        room.storey(),
        room.storeyElevationM(),
        room.space(),
        room.external(),
        positionM,
        heightAboveFloorM,
        room.basis());
  }

  private static final Packing<List<Evidence>> BASIS = Packings.EVIDENCE.list();

  private static final Packing<Place> ROOM =
      new Packing<>() {
        @Override
        public void write(Place room, PackedWriter to) {
          to.word(room.building());
          to.word(room.storey());
          Packings.FIGURE.writeOrNull(room.storeyElevationM(), to);
          to.word(room.space());
          Boolean external = room.external();
          to.count(external == null ? 0 : external ? 1 : 2);
          BASIS.write(room.basis(), to);
        }

        @Override
        public Place read(PackedReader from) {
          String building = from.word();
          String storey = from.word();
          Double elevationM = Packings.FIGURE.readOrNull(from);
          String space = from.word();
          int external = (int) from.count();
          return new Place(
              building,
              storey,
              elevationM,
              space,
              external == 0 ? null : Boolean.valueOf(external == 1),
              null,
              null,
              BASIS.read(from));
        }
      };
}
