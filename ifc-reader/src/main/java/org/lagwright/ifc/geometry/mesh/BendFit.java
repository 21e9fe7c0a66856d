package org.lagwright.ifc.geometry.mesh;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.BendLegs;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.model.Section;

/**
 * The bend radius of a meshed bend that may have straight tangents. The ends alone only give the
 * radius a bend without tangents would have; here the arc is chosen so that the corners of the mesh
 * lie at the pipe's radius from the centre line, those of a duct on its throat and its heel.
 */
public final class BendFit {

  /** Median distance of the corners from the pipe's surface over its radius, to be accepted. */
  private static final double ON_SURFACE = 0.02;

  /** Mean distance to be accepted: the mitres of a bend of five gores stand off by 2.5 %. */
  private static final double ON_MITRES = 0.04;

  /** Distances count up to this share of the pipe's radius, so that flanges do not outweigh. */
  private static final double CAPPED = 0.25;

  /** A bend without tangents is taken unless tangents fit what is nearest this much better. */
  private static final double BETTER = 0.3;

  /** Mean distance of the nearest half of the corners from the pipe's surface over its radius. */
  private static final double NEAR = 0.01;

  /** Radii tried in a row, before the best one is narrowed down. */
  private static final int STEPS = 100;

  /** Corners may lie this much further out than the ends: coarse arcs, flanges. */
  static final double OUTSIDE = 1.1;

  /** Differences below this share of the pipe's radius are rounding. */
  private static final double EXACT = 1e-6;

  /** Corners of the tip of a mitre over those of both ends. */
  private static final double TIP = 0.25;

  /** How near to the plane of an end, over the pipe's radius, corners belong to its ring. */
  private static final double IN_END = 0.01;

  /** A bend radius, NaN if it has none, and the length with tangents, metres. */
  public record Fit(double radiusM, double lengthM) {}

  private final List<Vec> corners;

  /** How far each corner should be from the centre line. */
  private final double[] halvesM;

  /** The largest of them. */
  private final double pipeRadius;

  private final BendLegs legs;

  /**
   * @param corners corners of the mesh in the same coordinates as the ends
   */
  private BendFit(List<Vec> corners, double[] halvesM, BendLegs legs, double pipeRadius) {
    this.corners = corners;
    this.halvesM = halvesM;
    this.pipeRadius = pipeRadius;
    this.legs = legs;
  }

  /** The legs of a bend between two ends. */
  public static BendLegs legs(ShapeEnd a, ShapeEnd b) {
    return BendLegs.of(a.centre(), a.out(), b.centre(), b.out());
  }

  /** True if a bend has two equal ends, and turns. */
  static boolean isEven(ShapeEnd a, ShapeEnd b) {
    boolean turns = a.out().cross(b.out()).norm() >= Math.sin(Math.toRadians(1));
    return turns && Ends.same(a.section(), b.section());
  }

  /** True if a bend between two ends is round, and turns. */
  static boolean isRound(ShapeEnd a, ShapeEnd b) {
    return a.section() instanceof Section.Round && isEven(a, b);
  }

  /** The fit, null if the ends are not round, not alike, or if no arc fits. */
  static @Nullable Fit of(List<Vec> corners, ShapeEnd a, ShapeEnd b) {
    return isRound(a, b) ? of(corners, legs(a, b), a.section().largestSideM() / 2) : null;
  }

  /** The fit of a pipe of a radius, null if no arc between the legs fits. */
  static @Nullable Fit of(List<Vec> corners, BendLegs legs, double pipeRadius) {
    double[] halvesM = new double[corners.size()];
    Arrays.fill(halvesM, pipeRadius);
    BendFit fit = new BendFit(corners, halvesM, legs, pipeRadius);
    Fit best = fit.best();
    return best == null || fit.isDrawn(best.radiusM()) ? best : null;
  }

  /**
   * The fit of a rectangular or oval bend between equal ends, null if throat and heel do not both
   * follow an arc: one of them may have a square corner.
   *
   * @param loop corners of the first end
   */
  static @Nullable Fit ofDuct(List<Vec> corners, ShapeEnd a, ShapeEnd b, List<Vec> loop) {
    BendLegs legs = legs(a, b);
    boolean rectangular = a.section() instanceof Section.Rectangular;
    BendSides sides = BendSides.of(corners, legs, loop, rectangular);
    if (sides == null || sides.corners().isEmpty()) {
      return null;
    }
    Fit best = new BendFit(sides.corners(), sides.halvesM(), legs, sides.largestM()).best();
    return best != null && sides.follow(best.radiusM()) ? best : null;
  }

  /**
   * True if nearly all corners lie within the ends' width of the centre line through both ends; so
   * a square or mitred elbow, or a body that only looks like a bend, does not pass.
   *
   * @param half half the width of the ends in the plane of the bend
   */
  static boolean followsArc(List<Vec> corners, ShapeEnd a, ShapeEnd b, double half) {
    BendLegs legs = legs(a, b);
    double radius = legs.largestRadiusM();
    Vec normal = legs.toA().cross(legs.toB()).unit();
    long outside =
        corners.stream()
            .map(p -> legs.corner().plus(p.minus(legs.corner()).across(normal)))
            .filter(p -> legs.fromAxisM(p, radius) > half * OUTSIDE + Vec.WELD_M)
            .count();
    return outside <= corners.size() / 20;
  }

  /**
   * The largest arc that fits, because corners on the straight legs fit every smaller one too; none
   * whose inside would turn back on itself, being sharper than the pipe is wide.
   */
  private @Nullable Fit best() {
    double largest = legs.largestRadiusM();
    if (!(largest >= pipeRadius)) {
      return null;
    }
    double found = largest;
    double least = off(largest);
    double step = largest / STEPS;
    boolean reached = least <= ON_SURFACE / 10 * pipeRadius;
    for (double tried = largest - step; !reached && tried >= pipeRadius; tried -= step) {
      double off = off(tried);
      reached = off >= least - EXACT * pipeRadius && least <= ON_SURFACE / 10 * pipeRadius;
      found = off < least && !reached ? tried : found;
      least = Math.min(off, least);
    }
    double radius = largest;
    if (found != largest) {
      double narrow = narrowed(found, step);
      radius = isBetter(narrow, largest) ? narrow : largest;
    }
    return fits(radius) ? new Fit(radius, legs.lengthM(radius)) : null;
  }

  /**
   * True if there are corners on an arc between tangents. Of a bend of two or three pieces there
   * are none: all lie on the legs, and no more than the tip of a mitre reaches an arc that fits
   * them.
   */
  private boolean isDrawn(double radius) {
    double reachM = reachM(radius);
    int onArc = 0;
    int inEnds = 0;
    for (Vec corner : corners) {
      onArc += isOnWay(corner, reachM) ? 1 : 0;
      inEnds += isInEnd(corner) ? 1 : 0;
    }
    return onArc > TIP * inEnds;
  }

  /**
   * True if an arc fits the half of the corners on its way that lie nearest to it, and much better
   * than another one does. The other half may be those of a bore, which fit neither.
   */
  private boolean isBetter(double radius, double than) {
    double reachM = reachM(radius);
    double[] off = new double[corners.size()];
    int onWay = 0;
    for (int i = 0; i < off.length; i++) {
      if (isOnWay(corners.get(i), reachM)) {
        off[onWay++] = offM(i, radius);
      }
    }
    Arrays.sort(off, 0, onWay);
    double nearestM = onWay == 0 ? 0 : off[(onWay - 1) / 2];
    int near = 0;
    double sum = 0;
    double sumThan = 0;
    for (int i = 0; i < off.length; i++) {
      double offM = offM(i, radius);
      if (offM <= nearestM && isOnWay(corners.get(i), reachM)) {
        near++;
        sum += offM;
        sumThan += offM(i, than);
      }
    }
    return sum < BETTER * sumThan && sum < NEAR * pipeRadius * near;
  }

  /** How far from the corner of the legs an arc begins and stops, metres. */
  private double reachM(double radius) {
    return legs.tangentM(radius) + IN_END * pipeRadius;
  }

  /** True of a corner between the planes where an arc begins and stops. */
  private boolean isOnWay(Vec corner, double reachM) {
    Vec v = corner.minus(legs.corner());
    return v.dot(legs.toA()) < reachM && v.dot(legs.toB()) < reachM;
  }

  /** Corners of the ends are on the surface of any arc between them, so they do not count. */
  private boolean fits(double radius) {
    double[] off = new double[corners.size()];
    int between = 0;
    for (int i = 0; i < off.length; i++) {
      if (!isInEnd(corners.get(i))) {
        off[between++] = offM(i, radius);
      }
    }
    for (int i = 0; between == 0 && i < off.length; i++) {
      off[i] = offM(i, radius);
    }
    double[] counted = Arrays.copyOf(off, between == 0 ? off.length : between);
    Arrays.sort(counted);
    return counted[counted.length / 2] <= ON_SURFACE * pipeRadius
        || off(radius) <= ON_MITRES * pipeRadius;
  }

  private boolean isInEnd(Vec corner) {
    Vec v = corner.minus(legs.corner());
    double tolerance = IN_END * pipeRadius;
    return Math.abs(v.dot(legs.toA()) - legs.legA()) < tolerance
        || Math.abs(v.dot(legs.toB()) - legs.legB()) < tolerance;
  }

  /** Halves the step about the best radius until it is below a micrometre. */
  private double narrowed(double start, double firstStep) {
    double at = start;
    for (double step = firstStep / 2; step > 1e-7; step /= 2) {
      boolean less = at - step >= pipeRadius && off(at - step) < off(at) - EXACT * pipeRadius;
      boolean more = off(at + step) <= off(at) + EXACT * pipeRadius;
      at = less ? at - step : more ? at + step : at;
    }
    return at;
  }

  /** Mean distance of the corners from the surface, each capped. */
  private double off(double radius) {
    double sum = 0;
    for (int i = 0; i < halvesM.length; i++) {
      sum += Math.min(offM(i, radius), CAPPED * pipeRadius);
    }
    return sum / halvesM.length;
  }

  private double offM(int corner, double radius) {
    return Math.abs(legs.fromAxisM(corners.get(corner), radius) - halvesM[corner]);
  }
}
