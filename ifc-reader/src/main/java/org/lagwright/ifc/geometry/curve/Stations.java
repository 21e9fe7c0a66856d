package org.lagwright.ifc.geometry.curve;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;

/** The frames through which a profile passes on its way along a path or about an axis. */
public final class Stations {

  /** Corners that turn by less (radians) are none. */
  private static final double STRAIGHT_RAD = 1e-6;

  /** Corners whose mitre would be steeper (cosine) are left unmitred; they lead back. */
  private static final double STEEPEST = 0.05;

  private Stations() {}

  /**
   * Along a path: at right angles to it, turned as the path turns, mitred at corners.
   *
   * @param start the frame of the profile where the path begins
   * @param stepRad arcs are cut into steps of at most this
   */
  public static List<Frame> along(Path path, Frame start, double stepRad) {
    List<Frame> stations = new ArrayList<>(List.of(start));
    Vec tangent = path.first().startTangent();
    Frame square = start;
    for (Leg leg : path.legs()) {
      Vec out = leg.startTangent();
      if (tangent.angleTo(out) > STRAIGHT_RAD) {
        Frame mitred = mitred(square, tangent, out);
        stations.set(stations.size() - 1, mitred);
        square = turned(square, Vec.of(square.origin()), tangent, out);
      }
      int steps = leg instanceof Leg.Arc arc ? arc.steps(stepRad) : 1;
      Vec last = out;
      for (int i = 1; i <= steps; i++) {
        double share = (double) i / steps;
        Vec next = leg instanceof Leg.Arc arc ? arc.tangentAt(share) : leg.endTangent();
        Vec at = leg instanceof Leg.Arc arc ? arc.pointAt(share) : leg.end();
        square = turned(square, at, last, next);
        stations.add(square);
        last = next;
      }
      tangent = leg.endTangent();
    }
    return stations;
  }

  private static Frame turned(Frame frame, Vec at, Vec from, Vec to) {
    Vec hinge = from.cross(to);
    double angle = from.angleTo(to);
    Vec axis = hinge.unit();
    return hinge.isTiny()
        ? new Frame(at.point(), frame.ex(), frame.ey(), frame.ez())
        : Frame.of(
            at,
            Vec.of(frame.ex()).turned(axis, angle),
            Vec.of(frame.ey()).turned(axis, angle),
            Vec.of(frame.ez()).turned(axis, angle));
  }

  /** The profile pushed along the incoming tangent onto the plane that halves the corner. */
  private static Frame mitred(Frame frame, Vec in, Vec out) {
    Vec normal = in.plus(out).unit();
    double slope = in.dot(normal);
    if (slope < STEEPEST) {
      return frame;
    }
    return Frame.of(
        Vec.of(frame.origin()),
        pushed(Vec.of(frame.ex()), in, normal, slope),
        pushed(Vec.of(frame.ey()), in, normal, slope),
        Vec.of(frame.ez()));
  }

  private static Vec pushed(Vec axis, Vec in, Vec normal, double slope) {
    return axis.minus(in.times(axis.dot(normal) / slope));
  }

  /** About an axis, in both senses of the angle. */
  public static List<Frame> about(Vec origin, Vec axis, double angleRad, double stepRad) {
    int steps = Math.max(2, (int) Math.ceil(Math.abs(angleRad) / stepRad - 1e-9));
    List<Frame> stations = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double angle = angleRad * i / steps;
      Vec ex = Vec.X.turned(axis, angle);
      Vec ey = Vec.Y.turned(axis, angle);
      Vec ez = Vec.Z.turned(axis, angle);
      Vec moved = origin.minus(origin.turned(axis, angle));
      stations.add(Frame.of(moved, ex, ey, ez));
    }
    return stations;
  }
}
