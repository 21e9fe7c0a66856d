package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drafts;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/**
 * Finds ports of the file that sit at the side of a straight piece: what is connected there, a tap
 * or a branch, has a size of its own, as if it had been drawn there without ports. {@link Taps}
 * does the same where the file has no ports.
 */
public final class SidePorts {

  private static final int ENDS = 2;

  private SidePorts() {}

  /**
   * Marks the ports at the side of a straight piece, also those that nothing is connected to, as
   * what touches them lies at the side all the same; {@link Draft#joints} holds the result.
   *
   * @return true if there are any
   */
  public static boolean mark(Draft main) {
    Drawn drawn = main.drawn();
    List<ShapeEnd> ends = drawn.shape().ends();
    if (ends.size() != ENDS || !isAtBoth(ends, drawn.ports())) {
      return false;
    }
    List<Port> joints = new ArrayList<>(drawn.joints());
    Axis axis = Axis.between(ends.get(0).centreM(), ends.get(1).centreM());
    boolean straight = Coaxiality.isStraight(drawn.shape());
    boolean any = false;
    for (int i = 0; i < joints.size() && straight; i++) {
      Port port = joints.get(i);
      if (isAtTheSide(port, axis, ends.get(0), joints.size())) {
        joints.set(i, port.atTheSide());
        any = true;
      }
    }
    if (any) {
      main.join(joints);
    }
    return any;
  }

  /**
   * True if some port lies at an end and some does not; places of ports that never do are wrong.
   */
  private static boolean isAtBoth(List<ShapeEnd> ends, List<Port> ports) {
    boolean atAnEnd = false;
    boolean elsewhere = false;
    for (Port port : ports) {
      Point atM = port.positionM();
      if (atM != null) {
        boolean here = Drawn.isAnEnd(ends, atM);
        atAnEnd |= here;
        elsewhere |= !here;
      }
    }
    return atAnEnd && elsewhere;
  }

  /**
   * On the surface, or on the axis and pointing across it. Ports on the axis of a piece that has no
   * more than two are those of its ends, where it was put into a socket.
   */
  private static boolean isAtTheSide(Port port, Axis axis, ShapeEnd end, int ports) {
    Point atM = port.positionM();
    double alongM = atM == null ? Double.NaN : axis.along(atM);
    boolean between = alongM > Drawn.SAME_PLACE_M && alongM < axis.lengthM() - Drawn.SAME_PLACE_M;
    if (atM == null || !between) {
      return false;
    }
    double offM = atM.distanceM(axis.at(alongM));
    Point out = port.direction();
    boolean across =
        ports > ENDS && out != null && Math.abs(axis.cosine(out)) <= SideSearch.STEEPEST;
    return offM <= end.section().largestSideM() / 2 + Drawn.SAME_PLACE_M
        && (across || offM > Drawn.SAME_PLACE_M);
  }

  /** Marks the ports of what is connected to the sides of these pieces. */
  public static void markBranches(Drafts drafts, List<Draft> mains) {
    for (Draft main : mains) {
      for (Port side : main.joints()) {
        Draft branch =
            side.tap() && side.connectedTo() != null ? drafts.find(side.connectedTo()) : null;
        if (branch != null) {
          markBranch(branch, main, side.positionM());
        }
      }
    }
  }

  private static void markBranch(Draft branch, Draft main, @Nullable Point atM) {
    List<Port> joints = new ArrayList<>(branch.joints());
    int nearest = -1;
    double leastM = Double.MAX_VALUE;
    for (int i = 0; i < joints.size(); i++) {
      Port joint = joints.get(i);
      if (main.key().equals(joint.connectedTo()) && !joint.tap()) {
        Point placeM = joint.positionM();
        double awayM = placeM == null || atM == null ? Double.MAX_VALUE : placeM.distanceM(atM);
        if (nearest < 0 || awayM < leastM) {
          nearest = i;
          leastM = awayM;
        }
      }
    }
    if (nearest >= 0) {
      joints.set(nearest, joints.get(nearest).atTheSide());
      branch.join(joints);
    }
  }
}
