package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/** Where an element of a file that was read ends, after its body was let go of. */
public final class ReadEnds {

  private ReadEnds() {}

  /** At its joints, and where nothing is joined. */
  public static List<OpenEnd> of(MepElement element) {
    List<OpenEnd> ends = new ArrayList<>(element.openEnds());
    for (Port port : element.ports()) {
      Point atM = port.positionM();
      boolean joined = atM != null && !port.tap() && port.connectedTo() != null;
      if (atM != null && joined && !isKnown(ends, atM)) {
        ends.add(new OpenEnd(atM, port.direction(), null));
      }
    }
    return ends;
  }

  /** An end that another file joined is open in its own. */
  private static boolean isKnown(List<OpenEnd> ends, Point atM) {
    return ends.stream().anyMatch(e -> e.positionM().distanceM(atM) < Drawn.SAME_PLACE_M);
  }

  /** The body as its ends tell it, null if there are fewer than two or one points nowhere. */
  static @Nullable Shape shapeOf(MepElement element, List<OpenEnd> ends) {
    Measured<Section> section = element.section();
    if (ends.size() < 2 || section == null) {
      return null;
    }
    if (element.kind().isSegment() && element.form() == Form.STRAIGHT && ends.size() == 2) {
      return straight(ends.get(0).positionM(), ends.get(1).positionM(), section);
    }
    List<ShapeEnd> drawn = new ArrayList<>();
    for (OpenEnd end : ends) {
      Point outward = end.outward();
      if (outward == null) {
        return null;
      }
      Section own = end.section();
      drawn.add(new ShapeEnd(end.positionM(), outward, own == null ? section.value() : own));
    }
    return Shape.ofEnds(drawn, section.how(), section.evidence());
  }

  /** The axes of ports that a file has may be wrong; of a straight piece the places tell. */
  private static Shape straight(Point a, Point b, Measured<Section> section) {
    Point unit = Axis.between(a, b).unit();
    Point back = new Point(-unit.x(), -unit.y(), -unit.z());
    return new Shape(
        Form.STRAIGHT,
        section,
        null,
        null,
        null,
        List.of(new ShapeEnd(a, back, section.value()), new ShapeEnd(b, unit, section.value())),
        List.of());
  }
}
