package org.lagwright.takeoff.fitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.JunctionCover.Leg;

/** The axes of fittings with branches, read from the places and directions of their ports. */
final class FittingAxes {

  /** Two ends count as one run where they point apart within this angle. */
  private static final double STRAIGHT_RAD = Math.toRadians(175);

  private static final double LEAST_LEG_M = 1e-4;

  /** Branches closer to their run than this are no branches but mistakes of the drawing. */
  private static final double LEAST_ANGLE_RAD = Math.toRadians(15);

  private FittingAxes() {}

  /**
   * A run with one branch.
   *
   * @param startM from the far end of the run to the crossing of the axes
   * @param endM from the crossing to the end that the branch leans to
   * @param branchM from the crossing to the end of the branch
   * @param angleRad angle between branch and the end it leans to, at most a right angle
   * @param offsetM distance of the axes
   * @param run section of the run, the larger end
   * @param branch section of the branch
   */
  record Tee(
      double startM,
      double endM,
      double branchM,
      double angleRad,
      double offsetM,
      Section run,
      Section branch) {}

  /** An end of a fitting. */
  private record End(Point at, Point out) {}

  private static List<End> ends(MepElement element) {
    List<End> ends = new ArrayList<>();
    for (Port port : element.ports()) {
      Point at = port.positionM();
      Point out = port.direction();
      if (at != null && out != null) {
        ends.add(new End(at, out));
      }
    }
    return ends;
  }

  /**
   * The axes of a tee or lateral, empty where its ports do not tell them.
   *
   * @param section of all ends, where the element does not tell one for each
   */
  static Optional<Tee> tee(MepElement element, Section section) {
    List<End> ends = ends(element);
    if (ends.size() != 3) {
      return Optional.empty();
    }
    for (int branch = 0; branch < 3; branch++) {
      End a = ends.get((branch + 1) % 3);
      End b = ends.get((branch + 2) % 3);
      if (Direction.angleRad(a.out(), b.out()) > STRAIGHT_RAD) {
        return tee(a, b, ends.get(branch), sections(element, section));
      }
    }
    return Optional.empty();
  }

  /** As run, run, branch, whatever the order of the ports. */
  private static List<Section> sections(MepElement element, Section section) {
    return element.ends().size() == 3 ? element.ends() : List.of(section, section, section);
  }

  private static Optional<Tee> tee(End a, End b, End branch, List<Section> sections) {
    End towards = Direction.dot(a.out(), branch.out()) > 0 ? a : b;
    End away = towards == a ? b : a;
    double angleRad = Math.min(Direction.angleRad(towards.out(), branch.out()), Math.PI / 2);
    if (angleRad < LEAST_ANGLE_RAD) {
      return Optional.empty();
    }
    Point across = Direction.cross(towards.out(), branch.out());
    Point between = Direction.between(away.at(), branch.at());
    double acrossLength = Direction.length(across);
    double offsetM = Math.abs(Direction.dot(between, across)) / acrossLength;
    Point inPlane = Direction.cross(across, towards.out());
    double branchM = Direction.dot(between, inPlane) / Direction.dot(branch.out(), inPlane);
    double startM = Direction.dot(Direction.plus(between, branch.out(), -branchM), towards.out());
    double runM = away.at().distanceM(towards.at());
    Section run = larger(sections.get(0), sections.get(1));
    if (branchM < LEAST_LEG_M || startM < LEAST_LEG_M || runM - startM < LEAST_LEG_M) {
      return Optional.empty();
    }
    return Optional.of(
        new Tee(startM, runM - startM, branchM, angleRad, offsetM, run, sections.get(2)));
  }

  private static Section larger(Section one, Section other) {
    return one.largestSideM() >= other.largestSideM() ? one : other;
  }

  /**
   * Legs that meet in one point of one plane, empty where ports do not tell or axes miss each
   * other.
   */
  static Optional<List<Leg>> legs(MepElement element) {
    List<End> ends = ends(element);
    if (ends.size() < 3) {
      return Optional.empty();
    }
    End first = ends.get(0);
    Point normal = new Point(0, 0, 0);
    for (End end : ends) {
      Point candidate = Direction.cross(first.out(), end.out());
      normal = Direction.length(candidate) > Direction.length(normal) ? candidate : normal;
    }
    double size = Direction.length(normal);
    if (size < 0.1) {
      return Optional.empty();
    }
    Point up = Direction.plus(new Point(0, 0, 0), normal, 1 / size);
    return Optional.of(ends.stream().map(end -> leg(ends, end, up)).toList())
        .filter(legs -> legs.stream().allMatch(leg -> leg.lengthM() > LEAST_LEG_M))
        .filter(FittingAxes::areApart);
  }

  /** Legs that point nearly the same way leave no room for a cut between them. */
  private static boolean areApart(List<Leg> legs) {
    for (int i = 0; i < legs.size(); i++) {
      for (int j = 0; j < i; j++) {
        double turned = legs.get(i).directionRad() - legs.get(j).directionRad();
        if (Math.abs(Math.IEEEremainder(turned, 2 * Math.PI)) < LEAST_ANGLE_RAD) {
          return false;
        }
      }
    }
    return true;
  }

  private static Leg leg(List<End> ends, End end, Point up) {
    End first = ends.get(0);
    Point side = Direction.cross(up, first.out());
    double direction =
        Math.atan2(Direction.dot(end.out(), side), Direction.dot(end.out(), first.out()));
    return new Leg(direction, legM(ends, end));
  }

  /** Distance to where the axis passes that of the end it crosses most squarely. */
  private static double legM(List<End> ends, End end) {
    End other = end;
    double most = 0;
    for (End candidate : ends) {
      double across = Direction.length(Direction.cross(end.out(), candidate.out()));
      if (across > most + 1e-6) {
        most = across;
        other = candidate;
      }
    }
    Point between = Direction.between(other.at(), end.at());
    Point across = Direction.cross(Direction.cross(other.out(), end.out()), other.out());
    return Direction.dot(between, across) / Direction.dot(end.out(), across);
  }

  /** True where a bend lies level: both ends point sideways. */
  static boolean isLevel(MepElement element) {
    return element.ports().stream()
        .allMatch(p -> p.direction() == null || Math.abs(p.direction().z()) < 0.5);
  }

  /**
   * Distance of the parallel axes of both ends: of reducers, transitions and offsets. 0 where ports
   * do not tell.
   */
  static double offsetM(MepElement element) {
    List<Port> ports = element.ports();
    if (ports.size() != 2) {
      return 0;
    }
    Point out = ports.get(0).direction();
    Point from = ports.get(0).positionM();
    Point to = ports.get(1).positionM();
    if (out == null || from == null || to == null) {
      return 0;
    }
    Point between = Direction.between(from, to);
    double alongM = Direction.dot(between, out);
    return Math.sqrt(Math.max(0, Direction.dot(between, between) - alongM * alongM));
  }
}
