package org.lagwright.takeoff.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.body.Ends.End;
import org.lagwright.takeoff.fitting.Direction;

/** Where the axes of a fitting meet. */
public final class Centre {

  /** Models write directions of ports that do not point along their pipes; 10 degrees. */
  private static final double ALONG = Math.cos(Math.toRadians(10));

  private static final double PARALLEL = 0.02;
  private static final double LEAST_M = 1e-6;

  private Centre() {}

  /** The crossing of the axes, empty where the directions of the ends do not lead through it. */
  public static Optional<Point> crossing(List<End> ends) {
    for (End a : ends) {
      for (End b : ends) {
        Point p = a.out();
        Point q = b.out();
        if (p != null && q != null && Direction.length(Direction.cross(p, q)) > PARALLEL) {
          Point crossing = crossing(a.at(), p, b.at(), q);
          return Optional.of(crossing)
              .filter(c -> ends.stream().allMatch(end -> leadsThrough(end, c)));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean leadsThrough(End end, Point centre) {
    Point way = Direction.between(centre, end.at());
    double lengthM = Direction.length(way);
    return end.out() != null
        && lengthM > LEAST_M
        && Direction.dot(end.out(), way) > ALONG * lengthM;
  }

  /** Middle of the shortest way between two lines that are not parallel. */
  private static Point crossing(Point p, Point d, Point q, Point e) {
    Point way = Direction.between(p, q);
    double de = Direction.dot(d, e);
    double along = Direction.dot(way, d);
    double other = Direction.dot(way, e);
    double free = 1 - de * de;
    double s = (along - de * other) / free;
    double t = (de * along - other) / free;
    return Direction.middle(Direction.plus(p, d, s), Direction.plus(q, e, t));
  }

  /** Of three ends the one whose foot lies nearest to the middle of the other two. */
  public static int branchOf(List<End> ends) {
    int branch = 0;
    for (int i = 1; i < 3; i++) {
      if (offMiddle(ends, i) < offMiddle(ends, branch) - LEAST_M) {
        branch = i;
      }
    }
    return branch;
  }

  private static double offMiddle(List<End> ends, int branch) {
    return Math.abs(share(ends, branch) - 0.5);
  }

  /**
   * Three ends in the order run, run, branch, whatever the order of their ports.
   *
   * @param sections sections of run, run, branch where they are told, else any other number
   */
  public static List<End> runBeforeBranch(List<End> ends, List<Section> sections) {
    int branch = branchOf(ends);
    List<End> sorted = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      End end = ends.get((branch + 1 + i) % 3);
      Section own = sections.size() == 3 ? sections.get(i) : end.section();
      sorted.add(new End(end.at(), end.out(), own));
    }
    return sorted;
  }

  /** Four ends in pairs that face apart, the larger pair first. */
  public static List<End> pairs(List<End> ends) {
    Point mean = mean(ends);
    End first = ends.get(0);
    End opposite = first;
    double least = 1;
    for (End other : ends.subList(1, ends.size())) {
      Point a = Direction.between(mean, first.at());
      Point b = Direction.between(mean, other.at());
      double along = Direction.dot(a, b) / (Direction.length(a) * Direction.length(b));
      opposite = along < least ? other : opposite;
      least = Math.min(least, along);
    }
    List<End> pair = List.of(first, opposite);
    List<End> others = ends.stream().filter(end -> !pair.contains(end)).toList();
    boolean firstIsLarger = widestM(pair) >= widestM(others);
    List<End> sorted = new ArrayList<>(firstIsLarger ? pair : others);
    sorted.addAll(firstIsLarger ? others : pair);
    return sorted;
  }

  private static double widestM(List<End> ends) {
    return ends.stream().mapToDouble(end -> end.section().perimeterM()).max().orElse(0);
  }

  /** The foot of a branch on the line between the other two ends. */
  public static Point foot(List<End> ends, int branch) {
    Point from = ends.get((branch + 1) % 3).at();
    Point way = Direction.between(from, ends.get((branch + 2) % 3).at());
    return Direction.plus(from, way, share(ends, branch));
  }

  private static double share(List<End> ends, int branch) {
    Point from = ends.get((branch + 1) % 3).at();
    Point way = Direction.between(from, ends.get((branch + 2) % 3).at());
    Point to = Direction.between(from, ends.get(branch).at());
    return Direction.dot(to, way) / Direction.dot(way, way);
  }

  /** The mean of all ends. */
  public static Point mean(List<End> ends) {
    Point sum = new Point(0, 0, 0);
    for (End end : ends) {
      sum = Direction.plus(sum, end.at(), 1.0 / ends.size());
    }
    return sum;
  }
}
