package org.lagwright.takeoff.clearance;

import java.util.List;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.UprightBox;
import org.lagwright.takeoff.fitting.Direction;

/**
 * A part of the building as a body.
 *
 * @param openings what is cut out of it, as bodies
 */
record Block(BuildingPart part, Solid solid, Box box, List<Solid> openings) {

  private static final Point UP = new Point(0, 0, 1);

  /** Drawing accuracy of openings; common practice, no source. */
  private static final double TOLERANCE_M = 0.001;

  static Block of(BuildingPart part, UprightBox box) {
    Solid solid = solid(box);
    return new Block(part, solid, solid.box(), part.openings().stream().map(Block::solid).toList());
  }

  /** From its foot to its top. */
  private static Solid solid(UprightBox box) {
    Point along = new Point(Math.cos(box.turnRad()), Math.sin(box.turnRad()), 0);
    Point across = new Point(-along.y(), along.x(), 0);
    Face middle = new Face(box.centre(), along, across, box.lengthM() / 2, box.widthM() / 2, 0);
    double halfM = box.heightM() / 2;
    return new Solid(
        middle.at(Direction.plus(box.centre(), UP, -halfM)),
        middle.at(Direction.plus(box.centre(), UP, halfM)));
  }

  /**
   * Room around bodies that go through it in its openings, metres: the least of them all, below
   * zero where one sticks out of its opening; NaN where one has none to go through.
   */
  double roomM(List<Solid> bodies) {
    double leastM = Double.NaN;
    for (Solid body : bodies) {
      if (Gap.betweenM(body, solid, 0) < 0) {
        double roomM = openings.stream().mapToDouble(o -> roomM(body, o)).max().orElse(Double.NaN);
        if (Double.isNaN(roomM)) {
          return roomM;
        }
        leastM = Double.isNaN(leastM) ? roomM : Math.min(leastM, roomM);
      }
    }
    return leastM;
  }

  /** True where there is room, but for what drawings are out by. */
  static boolean fits(double roomM) {
    return roomM >= -TOLERANCE_M;
  }

  /** Across the way through: what is left on the worse side of both other directions. */
  private double roomM(Solid body, Solid opening) {
    Point way = Direction.between(body.from().centre(), body.to().centre());
    List<Point> sides = List.of(opening.from().u(), opening.from().v(), UP);
    Point through = sides.get(0);
    for (Point side : sides) {
      if (Math.abs(Direction.dot(way, side)) > Math.abs(Direction.dot(way, through))) {
        through = side;
      }
    }
    Solid within =
        body.between(through, -solid.reachM(Direction.opposite(through)), solid.reachM(through));
    double leastM = Double.POSITIVE_INFINITY;
    for (Point side : sides) {
      if (!side.equals(through)) {
        leastM = Math.min(leastM, opening.reachM(side) - within.reachM(side));
        Point back = Direction.opposite(side);
        leastM = Math.min(leastM, opening.reachM(back) - within.reachM(back));
      }
    }
    return leastM;
  }
}
