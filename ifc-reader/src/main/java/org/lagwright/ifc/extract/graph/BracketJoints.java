package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DraftLookup;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/**
 * Gives the joints of an element that is but the bracket around its parts to those parts that end
 * there, so that services are followed through them.
 */
public final class BracketJoints {

  private final DraftLookup drafts;

  /** Joins what these elements are made of. */
  public BracketJoints(DraftLookup drafts) {
    this.drafts = drafts;
  }

  /**
   * A joint that changes hands.
   *
   * @param next what is joined there
   * @param back which of its joints leads to the bracket
   */
  private record Handover(Port joint, Point atM, Draft next, int back, Draft part) {}

  /**
   * Gives them all, or none.
   *
   * @return false if some part is not known that ends at a joint
   */
  public boolean giveTo(List<Draft> parts, Draft bracket) {
    List<Handover> all = new ArrayList<>(0);
    for (Port joint : bracket.joints()) {
      if (joint.connectedTo() != null) {
        Handover one = handover(joint, bracket, parts);
        if (one == null) {
          return false;
        }
        all.add(one);
      }
    }
    for (Handover one : all) {
      give(one);
    }
    if (!all.isEmpty()) {
      bracket.join(bracket.ports().stream().map(Port::unconnected).toList());
    }
    return true;
  }

  private @Nullable Handover handover(Port joint, Draft bracket, List<Draft> parts) {
    Point atM = joint.positionM();
    Draft next = joint.connectedTo() == null ? null : drafts.find(joint.connectedTo());
    if (atM == null || next == null) {
      return null;
    }
    int back = back(next, bracket, atM);
    Draft part = back < 0 ? null : partAt(atM, parts);
    return part == null ? null : new Handover(joint, atM, next, back, part);
  }

  /** Which joint of the next element leads to the bracket, -1 if none does. */
  private static int back(Draft next, Draft bracket, Point atM) {
    List<Port> joints = next.joints();
    boolean[] others = new boolean[joints.size()];
    for (int i = 0; i < others.length; i++) {
      others[i] = !bracket.key().equals(joints.get(i).connectedTo());
    }
    int nearest = JointMaker.nearest(joints, atM, others);
    return nearest < 0 ? JointMaker.unplacedTo(joints, bracket.key()) : nearest;
  }

  /** The only part with an end at a place that is joined to nothing; null if there is not one. */
  private static @Nullable Draft partAt(Point atM, List<Draft> parts) {
    Draft found = null;
    for (Draft part : parts) {
      if (Drawn.isAnEnd(part.shape().ends(), atM) && !OpenEnds.isConnected(part.joints(), atM)) {
        if (found != null) {
          return null;
        }
        found = part;
      }
    }
    return found;
  }

  private static void give(Handover one) {
    List<Port> joints = new ArrayList<>(one.next.joints());
    joints.set(one.back, joints.get(one.back).connectedTo(one.part.key()));
    one.next.join(joints);
    List<Port> ports = one.part.joints();
    int port = JointMaker.nearest(ports, one.atM, new boolean[ports.size()]);
    JointMaker.attach(
        one.part, port, one.atM, outward(one.part, one.atM), one.next.key(), one.joint.tap());
  }

  private static @Nullable Point outward(Draft part, Point atM) {
    for (ShapeEnd end : part.shape().ends()) {
      if (Drawn.isAnEnd(List.of(end), atM)) {
        return end.outward();
      }
    }
    return null;
  }
}
