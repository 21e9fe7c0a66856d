package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lagwright.ifc.extract.graph.PointGrid;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;

/** Measured elements by where their middle lies. */
final class PlaceIndex {

  private final List<MepElement> elements;
  private final List<Point> middles;
  private final PointGrid grid;

  PlaceIndex(List<MepElement> all) {
    this.elements = all.stream().filter(Bodies::isMeasured).toList();
    this.middles =
        elements.stream().map(e -> Objects.requireNonNull(e.place().positionM())).toList();
    this.grid = new PointGrid(middles, Bodies.SAME_PLACE_M);
  }

  /** The elements that have a place, in the order given. */
  List<MepElement> elements() {
    return elements;
  }

  /**
   * Elements whose middle is that of another one and that do not cross it, itself among them if it
   * is indexed.
   */
  List<MepElement> near(MepElement element) {
    Point middle = Objects.requireNonNull(element.place().positionM());
    List<MepElement> near = new ArrayList<>();
    grid.near(
        middle,
        i -> {
          if (middles.get(i).distanceM(middle) <= Bodies.SAME_PLACE_M
              && !Bodies.areCrossing(elements.get(i), element)) {
            near.add(elements.get(i));
          }
        });
    return near;
  }
}
