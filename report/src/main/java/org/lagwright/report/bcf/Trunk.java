package org.lagwright.report.bcf;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/**
 * An element as lines from its middle to its ends, for pictures.
 *
 * @param middle metres
 * @param ends metres
 */
record Trunk(Point middle, List<Point> ends) {

  /** Of each element that has a place. */
  static List<Trunk> of(List<MepElement> elements) {
    List<Trunk> trunks = new ArrayList<>();
    for (MepElement element : elements) {
      List<Point> ends = ends(element);
      Point placed = element.place().positionM();
      Point middle = placed != null ? placed : ends.isEmpty() ? null : ends.get(0);
      if (middle != null) {
        trunks.add(new Trunk(middle, ends));
      }
    }
    return trunks;
  }

  private static List<Point> ends(MepElement element) {
    List<Point> ends = new ArrayList<>();
    for (Port port : element.ports()) {
      if (port.positionM() != null) {
        ends.add(port.positionM());
      }
    }
    for (OpenEnd end : element.openEnds()) {
      ends.add(end.positionM());
    }
    return ends;
  }
}
