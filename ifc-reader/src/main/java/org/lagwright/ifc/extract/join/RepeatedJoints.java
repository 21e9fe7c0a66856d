package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/** Connects the elements that count where their repetitions are connected. */
final class RepeatedJoints {

  private final Joining joining;
  private final Map<ElementKey, MepElement> firsts;
  private final Set<ElementKey> joined;

  /**
   * Connects elements of these files.
   *
   * @param firsts what repeats an element, and that element
   * @param joined given the elements that were connected in the place of a repetition
   */
  RepeatedJoints(Joining joining, Map<ElementKey, MepElement> firsts, Set<ElementKey> joined) {
    this.joining = joining;
    this.firsts = firsts;
    this.joined = joined;
  }

  /** What is connected to a repetition is connected to the element itself, and the other way. */
  void reconnect(MepModel model) {
    for (MepElement element : model.elements()) {
      MepElement first = firsts.get(element.key());
      for (Port port : joining.now(element).ports()) {
        ElementKey other = port.connectedTo();
        if (other != null && first != null) {
          connect(joining.now(first), element, port, itself(other));
        } else if (other != null && firsts.containsKey(other)) {
          replace(joining.now(element), port, port.connectedTo(itself(other)));
        }
      }
    }
  }

  private ElementKey itself(ElementKey element) {
    MepElement first = firsts.get(element);
    return first == null ? element : first.key();
  }

  /**
   * Connects an element where a repetition of it is connected, unless it is there already, or none
   * of its ends is open. Under another origin only what lies at one of its ends is sure.
   */
  private void connect(MepElement first, MepElement element, Port repeating, ElementKey other) {
    boolean isMoved = Bodies.apartM(first, element) >= Repeats.OTHER_ORIGIN_M;
    Point atM = isMoved ? moved(repeating.positionM(), element, first) : repeating.positionM();
    boolean isConnected = first.key().equals(other);
    Port open = null;
    for (Port port : first.ports()) {
      isConnected |= other.equals(port.connectedTo());
      boolean here = atM != null && port.positionM() != null && isNear(port.positionM(), atM);
      isConnected |= here && port.connectedTo() != null;
      open = here ? port : open;
    }
    boolean isWhole = !first.ports().isEmpty() && first.openEnds().isEmpty() && !repeating.tap();
    if (isConnected
        || atM == null
        || (open == null && (isWhole || (isMoved && !ends(first, atM))))) {
      return;
    }
    joined.add(first.key());
    if (open != null) {
      replace(first, open, open.connectedTo(other));
    } else {
      List<Port> ports = new ArrayList<>(first.ports());
      ports.add(Port.withoutRecord(atM, repeating.direction(), other, repeating.tap()));
      List<OpenEnd> left = new ArrayList<>(first.openEnds());
      left.removeIf(end -> isNear(end.positionM(), atM));
      joining.change(first.toBuilder().ports(ports).openEnds(left).build());
    }
  }

  /** A place of one element, as it lies at another that is placed like it. */
  private static @Nullable Point moved(@Nullable Point atM, MepElement from, MepElement to) {
    Point fromM = from.place().positionM();
    Point toM = to.place().positionM();
    return atM == null || fromM == null || toM == null
        ? null
        : new Point(
            atM.x() - fromM.x() + toM.x(),
            atM.y() - fromM.y() + toM.y(),
            atM.z() - fromM.z() + toM.z());
  }

  /** True if one of the ends that nothing is joined to lies there. */
  private static boolean ends(MepElement element, Point atM) {
    for (OpenEnd end : element.openEnds()) {
      if (isNear(end.positionM(), atM)) {
        return true;
      }
    }
    return false;
  }

  private void replace(MepElement element, Port before, Port now) {
    List<Port> ports = new ArrayList<>(element.ports());
    ports.set(ports.indexOf(before), now);
    List<OpenEnd> left = new ArrayList<>(element.openEnds());
    Point atM = before.positionM();
    left.removeIf(end -> atM != null && isNear(end.positionM(), atM));
    joining.change(element.toBuilder().ports(ports).openEnds(left).build());
  }

  private static boolean isNear(Point one, Point other) {
    return one.distanceM(other) <= Repeats.SAME_ELEMENT_M;
  }
}
