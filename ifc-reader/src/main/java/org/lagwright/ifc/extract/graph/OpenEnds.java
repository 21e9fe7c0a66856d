package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/** The ends of an element that nothing in its own file connects; another file may. */
public final class OpenEnds {

  private OpenEnds() {}

  /** The ends of an element that nothing is joined to. */
  public static List<OpenEnd> of(Draft draft) {
    List<ShapeEnd> drawn = draft.shape().ends();
    int connected = 0;
    for (Port joint : draft.joints()) {
      connected += joint.connectedTo() != null && !isAtTheSide(draft, joint) ? 1 : 0;
    }
    if (connected >= Math.max(drawn.size(), draft.ports().size())) {
      return List.of();
    }
    List<OpenEnd> open = new ArrayList<>();
    for (ShapeEnd end : drawn) {
      if (!isConnected(draft.joints(), end, drawn)) {
        open.add(new OpenEnd(end.centreM(), end.outward(), section(draft, end.section())));
      }
    }
    for (Port port : draft.ports()) {
      Point atM = port.positionM();
      if (atM != null && !Drawn.isAnEnd(drawn, atM) && port.connectedTo() == null) {
        open.add(new OpenEnd(atM, port.direction(), null));
      }
    }
    return open;
  }

  /** Branches on the side of a straight piece leave both of its ends open. */
  private static boolean isAtTheSide(Draft draft, Port joint) {
    Point atM = joint.positionM();
    return joint.tap() && atM != null && !Drawn.isAnEnd(draft.shape().ends(), atM);
  }

  /** True if a joint lies at an end; that at the other end of a thin piece lies near both. */
  static boolean isConnected(List<Port> joints, ShapeEnd end, List<ShapeEnd> drawn) {
    for (Port joint : joints) {
      Point atM = joint.positionM();
      if (joint.connectedTo() != null
          && atM != null
          && atM.distanceM(end.centreM()) < Drawn.SAME_PLACE_M
          && !isAtTheBack(atM, end, drawn)) {
        return true;
      }
    }
    return false;
  }

  /** True if a place is nearer to an end that looks the other way. */
  private static boolean isAtTheBack(Point atM, ShapeEnd end, List<ShapeEnd> drawn) {
    for (ShapeEnd other : drawn) {
      boolean back = end.outward().dot(other.outward()) < 0;
      if (back && other.centreM().distanceM(atM) < end.centreM().distanceM(atM)) {
        return true;
      }
    }
    return false;
  }

  /** True if a joint with an element on its other side lies at a place. */
  public static boolean isConnected(List<Port> joints, Point atM) {
    for (Port joint : joints) {
      Point positionM = joint.positionM();
      if (joint.connectedTo() != null
          && positionM != null
          && positionM.distanceM(atM) < Drawn.SAME_PLACE_M) {
        return true;
      }
    }
    return false;
  }

  /** Of a straight piece the size that was chosen, which may not be the one that was drawn. */
  private static Section section(Draft draft, Section drawn) {
    Measured<Section> chosen = draft.section();
    return draft.isSegment() && chosen != null ? chosen.value() : drawn;
  }
}
