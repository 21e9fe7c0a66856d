package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.fitting.Direction;

/**
 * Elements that begin, end or have their middle where many others do, as where a file has lost
 * their places. Each of them would meet each other one, so that a few thousand make millions of
 * pairs.
 */
final class Crowds {

  static final String REASON = "at one and the same place with many others";

  /** More than any joint or collector brings together; common practice, no source. */
  private static final int MOST = 20;

  /** Places are held together by millimetres. */
  private static final double PER_M = 1000;

  private final Map<Point, Integer> elementsAt = new HashMap<>();

  Crowds(List<Placed> placed) {
    for (Placed one : placed) {
      for (Point place : places(one)) {
        elementsAt.merge(place, 1, Integer::sum);
      }
    }
  }

  boolean hold(Placed one) {
    for (Point place : places(one)) {
      if (elementsAt.getOrDefault(place, 0) > MOST) {
        return true;
      }
    }
    return false;
  }

  private static List<Point> places(Placed one) {
    List<Point> ends = one.made().ends();
    List<Point> places = new ArrayList<>(ends.size() + 1);
    for (Point end : ends) {
      places.add(rounded(end));
    }
    if (ends.size() == 2) {
      places.add(rounded(Direction.middle(ends.get(0), ends.get(1))));
    }
    return places;
  }

  private static Point rounded(Point at) {
    return new Point(
        Math.rint(at.x() * PER_M), Math.rint(at.y() * PER_M), Math.rint(at.z() * PER_M));
  }
}
