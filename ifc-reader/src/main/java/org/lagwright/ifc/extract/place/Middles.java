package org.lagwright.ifc.extract.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.geometry.BodyCorners;
import org.lagwright.ifc.geometry.CornerReader;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Where the middle of an element lies: the centre of the open ends of its body, else of its ports,
 * else the origin of its placement. Where that is the zero of the file or of what contains it, at
 * which exporters place what is drawn in the coordinates of the whole or not drawn at all, it is
 * the one place at which all its ports lie, else the middle of the box around its body, else
 * unknown.
 */
record Middles(IfcFile file, Placements placements, CornerReader corners) {

  private static final Point ZERO = new Point(0, 0, 0);

  /**
   * World position in metres, null if nothing tells.
   *
   * @param container what contains the element, 0 if nothing does
   */
  @Nullable Point of(IfcRecord element, Draft draft, long container) {
    List<Point> points = new ArrayList<>(3);
    for (ShapeEnd end : draft.shape().ends()) {
      points.add(end.centreM());
    }
    for (Port port : draft.shape().ends().isEmpty() ? draft.ports() : List.<Port>of()) {
      if (port.positionM() != null) {
        points.add(port.positionM());
      }
    }
    return points.isEmpty() ? withoutEnds(element, draft, container) : centre(points);
  }

  /** Ports that all lie at one place tell nothing of ends, but of the place. */
  private @Nullable Point withoutEnds(IfcRecord element, Draft draft, long container) {
    Point own = originM(element);
    IfcRecord around = container == 0 ? null : file.find(container);
    Point zero = around == null ? null : originM(around);
    if (isPlace(own, zero)) {
      return own;
    }
    IfcRecord port = draft.ports().isEmpty() ? null : file.find(draft.ports().get(0).step());
    Point atM = port == null ? null : originM(port);
    if (isPlace(atM, zero)) {
      return atM;
    }
    Optional<BodyCorners> body = corners.cornersOf(element);
    if (body.isEmpty()) {
      return null;
    }
    Box box = body.get().box();
    return centre(List.of(box.low(), box.high()));
  }

  private static boolean isPlace(@Nullable Point atM, @Nullable Point zero) {
    return atM != null && atM.distanceM(ZERO) > 0 && (zero == null || atM.distanceM(zero) > 0);
  }

  /** True if the placement of an element can be read. */
  boolean arePlaced(IfcRecord element) {
    return originM(element) != null;
  }

  private @Nullable Point originM(IfcRecord product) {
    Frame frame = placements.of(product);
    return frame == null ? null : frame.origin();
  }

  /** From the first point on, so that false origins lose no digits. */
  private static Point centre(List<Point> points) {
    Point first = points.get(0);
    double x = 0;
    double y = 0;
    double z = 0;
    for (Point point : points) {
      x += point.x() - first.x();
      y += point.y() - first.y();
      z += point.z() - first.z();
    }
    int n = points.size();
    return new Point(first.x() + x / n, first.y() + y / n, first.z() + z / n);
  }
}
