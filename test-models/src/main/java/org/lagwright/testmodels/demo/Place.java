package org.lagwright.testmodels.demo;

import org.lagwright.testmodels.ifc.Vec;

/** The rooms of the terminal, with the box each fills in millimetres. */
public enum Place {
  PLANT_ROOM("G.01", "Plant room", Storey.GROUND, box(0, 0, 10_000, 8_000), false),
  ROPE_STORE("G.02", "Rope store (unheated)", Storey.GROUND, box(0, 8_000, 10_000, 15_000), false),
  HALL("G.03", "Departure hall", Storey.GROUND, box(10_000, 0, 40_000, 15_000), false),
  OFFICES("1.01", "Offices", Storey.UPPER, box(0, 0, 40_000, 15_000), false),
  ROOF("R.01", "Outdoors on roof", Storey.ROOF, box(0, 0, 40_000, 15_000), true);

  /** A storey with its elevation and height in millimetres. */
  public enum Storey {
    GROUND("Ground floor", 0),
    UPPER("Upper floor", 4_000),
    ROOF("Roof", 8_000);

    static final double HEIGHT_MM = 4_000;

    final String title;
    final double elevationMm;

    Storey(String title, double elevationMm) {
      this.title = title;
      this.elevationMm = elevationMm;
    }
  }

  private record Box(double minX, double minY, double maxX, double maxY) {}

  final String number;
  final String title;
  final Storey storey;
  final boolean external;

  @SuppressWarnings("ImmutableEnumChecker") // a record of numbers is immutable
  private final Box box;

  Place(String number, String title, Storey storey, Box box, boolean external) {
    this.number = number;
    this.title = title;
    this.storey = storey;
    this.box = box;
    this.external = external;
  }

  private static Box box(double minX, double minY, double maxX, double maxY) {
    return new Box(minX, minY, maxX, maxY);
  }

  /** Extent west to east. */
  double sizeX() {
    return box.maxX - box.minX;
  }

  /** Extent south to north. */
  double sizeY() {
    return box.maxY - box.minY;
  }

  /** Centre of the floor. */
  Vec floorCentre() {
    return new Vec((box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2, storey.elevationMm);
  }

  /** True where the point is in the room or on its boundary. */
  boolean contains(Vec at) {
    return at.x() >= box.minX
        && at.x() <= box.maxX
        && at.y() >= box.minY
        && at.y() <= box.maxY
        && at.z() >= storey.elevationMm
        && at.z() <= storey.elevationMm + Storey.HEIGHT_MM;
  }
}
