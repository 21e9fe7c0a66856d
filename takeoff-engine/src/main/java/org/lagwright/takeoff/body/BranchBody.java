package org.lagwright.takeoff.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.body.Ends.End;
import org.lagwright.takeoff.body.FacetMaker.Cut;
import org.lagwright.takeoff.fitting.Direction;

/**
 * Legs that meet: tees, laterals, crosses, wyes. Legs of one round section are cut half way to each
 * other. Else the run is halved at the crossing and has holes for its branches, which begin on its
 * outer face.
 */
final class BranchBody {

  /** Diameters this near count as one: rounding of exports. */
  private static final double SAME_M = 0.001;

  private static final double LEAST_M = 0.001;

  /** Two legs make a run where they point apart within 10 degrees. */
  private static final double STRAIGHT = -Math.cos(Math.toRadians(10));

  private static final double UPWARDS = 1e-6;

  private final Point centre;
  private final List<End> ends;
  private final Lie lie;

  /**
   * @param ends run, run, branch and, of a cross, the other branch; in any order where all legs
   *     have one section
   */
  BranchBody(Point centre, List<End> ends, Lie lie) {
    this.centre = centre;
    this.ends = List.copyOf(ends);
    this.lie = lie;
  }

  private Point way(int index) {
    return Direction.unit(Direction.between(centre, ends.get(index).at()));
  }

  private double lengthM(int index) {
    return ends.get(index).at().distanceM(centre);
  }

  /** True where the first two ends make a run that the others leave. */
  private boolean hasRun() {
    return Direction.dot(way(0), way(1)) < STRAIGHT;
  }

  /** True where all legs can be made. */
  boolean isPossible() {
    return ends.stream().allMatch(end -> end.at().distanceM(centre) > LEAST_M)
        && ends.stream().noneMatch(end -> end.section() instanceof Section.Oval)
        && (isOfOneSection() || hasRun());
  }

  private boolean isOfOneSection() {
    double firstM = ends.get(0).section().largestSideM();
    return ends.stream()
        .allMatch(
            end ->
                end.section() instanceof Section.Round
                    && Math.abs(end.section().largestSideM() - firstM) < SAME_M);
  }

  List<Body> bodies(double belowM, double totalM) {
    return isOfOneSection() ? equal(belowM, totalM) : onRun(belowM, totalM);
  }

  private List<Body> equal(double belowM, double totalM) {
    Ring ring = Ring.around(ends.get(0).section(), belowM, totalM);
    List<Body> bodies = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      Frame frame = equalFrame(i);
      bodies.add(
          FacetMaker.leg(
              new Pose(centre, frame),
              Outline.of(ring.outer()),
              Outline.of(Ring.grown(ends.get(0).section(), belowM)),
              halfWay(i, frame),
              lengthM(i)));
    }
    return bodies;
  }

  /** Its height in the plane of the legs, so that a corner lies where the cut is deepest. */
  private Frame equalFrame(int index) {
    for (int other = 0; other < ends.size(); other++) {
      double along = Direction.dot(way(index), way(other));
      if (Math.abs(along) < -STRAIGHT) {
        return Lie.upright(way(index), way(other));
      }
    }
    return Frame.across(way(index));
  }

  /** Up to the planes half way to all other legs. */
  private Cut halfWay(int index, Frame frame) {
    return (u, v) -> {
      double fromM = Double.NEGATIVE_INFINITY;
      for (int other = 0; other < ends.size(); other++) {
        if (other != index) {
          Point there = way(other);
          double across = u * Direction.dot(frame.u(), there) + v * Direction.dot(frame.v(), there);
          fromM = Math.max(fromM, across / (1 - Direction.dot(way(index), there)));
        }
      }
      return fromM;
    };
  }

  private List<Body> onRun(double belowM, double totalM) {
    Point along = Direction.unit(Direction.between(ends.get(1).at(), ends.get(0).at()));
    Frame frame = Lie.upright(along, way(2));
    List<BranchHole> holes = new ArrayList<>();
    for (int i = 2; i < ends.size(); i++) {
      holes.add(hole(i, frame, belowM));
    }
    List<Body> bodies = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      double sign = i == 0 ? 1 : -1;
      Frame half = new Frame(scaled(along, sign), scaled(frame.u(), sign), frame.v());
      Section bare = lie.inFrame(ends.get(i).section(), frame);
      bodies.add(
          FacetMaker.leg(
              new Pose(centre, half),
              BranchHole.outline(Ring.grown(bare, totalM), holes),
              BranchHole.outline(Ring.grown(bare, belowM), holes),
              (u, v) -> BranchHole.fromM(holes, sign * u, v, sign),
              lengthM(i)));
    }
    Section main = lie.inFrame(larger(ends.get(0).section(), ends.get(1).section()), frame);
    for (int i = 2; i < ends.size(); i++) {
      branch(i, frame, Ring.grown(main, totalM), belowM, totalM).ifPresent(bodies::add);
    }
    return bodies;
  }

  private static Section larger(Section a, Section b) {
    return a.perimeterM() >= b.perimeterM() ? a : b;
  }

  private static Point scaled(Point a, double by) {
    return new Point(a.x() * by, a.y() * by, a.z() * by);
  }

  /** What a bare branch, with the layers below, takes out of the run. */
  private BranchHole hole(int index, Frame run, double belowM) {
    Section bare = lie.inFrame(ends.get(index).section(), branchFrame(index, run));
    Section below = Ring.grown(bare, belowM);
    double acrossM = Outline.of(below).reachM(1, 0);
    double alongM = Outline.of(below).reachM(0, 1);
    double mostM =
        Outline.of(Ring.grown(lie.inFrame(ends.get(0).section(), run), belowM)).reachM(1, 0);
    double otherM =
        Outline.of(Ring.grown(lie.inFrame(ends.get(1).section(), run), belowM)).reachM(1, 0);
    boolean round = below instanceof Section.Round;
    if (round) {
      acrossM = below.largestSideM() / 2;
      alongM = acrossM;
    }
    return new BranchHole(
        Math.min(acrossM, BranchHole.WIDEST * Math.min(mostM, otherM)),
        alongM,
        round,
        Direction.dot(way(index), run.axis()),
        Direction.dot(way(index), run.v()) > 0);
  }

  /** Across the branch, with u as in the run. */
  private Frame branchFrame(int index, Frame run) {
    Point axis = way(index);
    return new Frame(axis, run.u(), Direction.cross(axis, run.u()));
  }

  /** From the outer face of the run to the end; nothing where it does not come out of it. */
  private Optional<Body> branch(int index, Frame run, Section main, double belowM, double totalM) {
    Frame frame = branchFrame(index, run);
    Section bare = lie.inFrame(ends.get(index).section(), frame);
    double rise = Math.abs(Direction.dot(frame.axis(), run.v()));
    double side = Math.signum(Direction.dot(frame.axis(), run.v()));
    double lean = Direction.dot(frame.v(), run.v()) * side;
    Cut cut = (u, v) -> (BranchHole.heightM(main, u) - v * lean) / Math.max(rise, UPWARDS);
    if (cut.atM(0, 0) >= lengthM(index) - LEAST_M) {
      return Optional.empty();
    }
    return Optional.of(
        FacetMaker.leg(
            new Pose(centre, frame),
            Outline.of(Ring.grown(bare, totalM)),
            Outline.of(Ring.grown(bare, belowM)),
            cut,
            lengthM(index)));
  }
}
