package org.lagwright.takeoff.body;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.body.Ends.End;
import org.lagwright.takeoff.fitting.Direction;
import org.lagwright.takeoff.measure.Size;

/**
 * Which way the straight pieces lead that elements are joined to. Where a model gives its ports no
 * direction, or one that does not lead along the pipe, they tell.
 */
public final class Joints {

  /** A joint and the end of the piece on its other side lie this near, metres. */
  private static final double SAME_M = 0.01;

  private final Map<ElementKey, MepElement> straights = new HashMap<>();

  /** Remembers the straight pieces of a takeoff. */
  public Joints(List<TakenElement> elements) {
    for (TakenElement taken : elements) {
      if (taken.element().kind().isSegment()) {
        straights.put(taken.element().key(), taken.element());
      }
    }
  }

  /** The way that a joined straight piece leads away from a place; empty if none does. */
  Optional<Point> wayOut(MepElement element, Point at) {
    for (Port port : element.ports()) {
      MepElement other = port.connectedTo() == null ? null : straights.get(port.connectedTo());
      if (other != null && !port.tap()) {
        Optional<Point> way = wayOf(other, at);
        if (way.isPresent()) {
          return way;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Point> wayOf(MepElement straight, Point from) {
    Section section = Size.findDecidingSection(straight).orElse(null);
    List<End> ends = section == null ? List.of() : Ends.ofBody(straight, section);
    if (ends.size() != 2 || Ends.isOtherThanStraight(straight, ends)) {
      return Optional.empty();
    }
    boolean first = ends.get(0).at().distanceM(from) < ends.get(1).at().distanceM(from);
    Point near = ends.get(first ? 0 : 1).at();
    Point far = ends.get(first ? 1 : 0).at();
    return near.distanceM(from) < SAME_M && near.distanceM(far) > SAME_M
        ? Optional.of(Direction.unit(Direction.between(near, far)))
        : Optional.empty();
  }
}
