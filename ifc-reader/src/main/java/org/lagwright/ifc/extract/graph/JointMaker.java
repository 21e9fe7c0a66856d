package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/** Puts joints that were found by touch among the ports of an element. */
public final class JointMaker {

  private JointMaker() {}

  /** The port nearest to a place, among those not seen; -1 if none lies there. */
  public static int nearest(List<Port> ports, Point atM, boolean[] seen) {
    int nearest = -1;
    double leastM = Drawn.SAME_PLACE_M;
    for (int i = 0; i < ports.size(); i++) {
      Point positionM = ports.get(i).positionM();
      if (!seen[i] && positionM != null && positionM.distanceM(atM) < leastM) {
        nearest = i;
        leastM = positionM.distanceM(atM);
      }
    }
    return nearest;
  }

  /**
   * The joint takes the port at this end, or one without place, or becomes a port itself.
   *
   * @param port index of the port at this end among those of the element, -1 if it has none
   * @return true if the file connects the two by this port
   */
  public static boolean attach(
      Draft draft, int port, Point atM, @Nullable Point outward, ElementKey other, boolean tap) {
    List<Port> joints = new ArrayList<>(draft.joints());
    boolean known = attach(joints, port, atM, outward, other, tap);
    draft.join(joints);
    return known;
  }

  /** The same for the joints of an element that are still being worked on. */
  public static boolean attach(
      List<Port> joints,
      int port,
      Point atM,
      @Nullable Point outward,
      ElementKey other,
      boolean tap) {
    int at = port >= 0 ? port : unplaced(joints, other);
    boolean known = at >= 0 && other.equals(joints.get(at).connectedTo());
    if (at >= 0) {
      joints.set(at, joints.get(at).touching(other, atM, outward, tap));
    } else {
      joints.add(Port.withoutRecord(atM, outward, other, tap));
    }
    return known;
  }

  /** A port without place that is connected to the other element, else one that is to nothing. */
  private static int unplaced(List<Port> ports, ElementKey other) {
    int towards = unplacedTo(ports, other);
    return towards >= 0 ? towards : unplacedTo(ports, null);
  }

  /** A port without place that is connected to an element, null for none; -1 if there is none. */
  static int unplacedTo(List<Port> ports, @Nullable ElementKey other) {
    for (int i = 0; i < ports.size(); i++) {
      Port port = ports.get(i);
      if (port.positionM() == null && Objects.equals(port.connectedTo(), other)) {
        return i;
      }
    }
    return -1;
  }

  /** What the main has of a branch at its side. */
  public static Port side(SideSearch.Meeting<?> meeting, ElementKey branch) {
    Point out = meeting.branch().outward();
    Point back = new Point(-out.x(), -out.y(), -out.z());
    return Port.withoutRecord(meeting.footM(), back, branch, true);
  }

  /** Pipe to pipe and duct to duct; valves and apparatus to either. */
  static boolean sameLine(@Nullable Kind a, @Nullable Kind b) {
    return !((isPipe(a) && isDuct(b)) || (isDuct(a) && isPipe(b)));
  }

  private static boolean isPipe(@Nullable Kind kind) {
    return kind != null && kind.isOfPipe();
  }

  private static boolean isDuct(@Nullable Kind kind) {
    return kind == Kind.DUCT_SEGMENT || kind == Kind.DUCT_FITTING;
  }
}
