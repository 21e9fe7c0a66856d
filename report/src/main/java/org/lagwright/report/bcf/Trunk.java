package org.lagwright.report.bcf;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.UprightBox;

/**
 * An element as lines from its middle to its ends, a part of the building as the edges of its box,
 * for pictures.
 *
 * @param middle metres
 * @param lines metres
 * @param dot true where its middle is to be seen
 * @param box true for edges of a box, which are drawn thinner
 */
record Trunk(Point middle, List<Line> lines, boolean dot, boolean box) {

  private static final int[][] CORNERS = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};

  Trunk {
    lines = List.copyOf(lines);
  }

  /** From one point to another. */
  record Line(Point from, Point to) {}

  /** Of everything in a topic that has a place. */
  static List<Trunk> of(Topic topic) {
    List<Trunk> trunks = new ArrayList<>(of(topic.elements()));
    for (BuildingPart part : topic.parts()) {
      UprightBox box = part.box();
      if (box != null) {
        trunks.add(of(box));
      }
    }
    return trunks;
  }

  /** Of each element that has a place. */
  static List<Trunk> of(List<MepElement> elements) {
    List<Trunk> trunks = new ArrayList<>();
    for (MepElement element : elements) {
      List<Point> ends = ends(element);
      Point placed = element.place().positionM();
      Point middle = placed != null ? placed : ends.isEmpty() ? null : ends.get(0);
      if (middle != null) {
        List<Line> lines = ends.stream().map(end -> new Line(middle, end)).toList();
        trunks.add(new Trunk(middle, lines, ends.size() != 2, false));
      }
    }
    return trunks;
  }

  private static Trunk of(UprightBox box) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < CORNERS.length; i++) {
      int next = (i + 1) % CORNERS.length;
      Point low = corner(box, i, -1);
      Point high = corner(box, i, 1);
      lines.add(new Line(low, high));
      lines.add(new Line(low, corner(box, next, -1)));
      lines.add(new Line(high, corner(box, next, 1)));
    }
    return new Trunk(box.centre(), lines, false, true);
  }

  private static Point corner(UprightBox box, int corner, int up) {
    double along = CORNERS[corner][0] * box.lengthM() / 2;
    double across = CORNERS[corner][1] * box.widthM() / 2;
    double cos = Math.cos(box.turnRad());
    double sin = Math.sin(box.turnRad());
    Point centre = box.centre();
    return new Point(
        centre.x() + along * cos - across * sin,
        centre.y() + along * sin + across * cos,
        centre.z() + up * box.heightM() / 2);
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
