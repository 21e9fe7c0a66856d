package org.lagwright.ifc.geometry.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;

/**
 * The torus that most of a surface lies on. The lines along the normals of a torus all meet its
 * axis, and in each half plane about the axis they meet the centre line; so for any direction of
 * the axis its place and the radii follow from linear equations. Directions are tried about each
 * principal direction of the normals, one of which is the middle tangent of a bend; the best is
 * narrowed down by Gauss and Newton's method on the corners, which lie on the torus however they
 * are spread.
 */
public final class TorusFit {

  /** Directions tried about each principal direction over half a turn. */
  private static final int TURNS = 12;

  /** Normals lean along the centre line by less than 20 degrees, or belong to an end. */
  private static final double LEAN = Math.sin(Math.toRadians(20));

  /**
   * At first what leans along the middle tangent by more is no wall: 20 degrees for slight bends
   * that are mostly ends, 45 for others.
   */
  private static final double[] WALLS = {LEAN, Math.sqrt(0.5)};

  /** Distances count up to this share of the size of the body. */
  private static final double CAPPED = 0.1;

  /** Share of the farthest that corners may be off by, to be looked at further. */
  private static final double FAR = 0.7;

  /** And once the torus is narrowed down. */
  private static final double NEAR = 0.02;

  /** Radius of the tube over the size of the body, which is the mean distance from its middle. */
  private static final double WIDEST = 1.2;

  private static final int MOST_STEPS = 40;

  /** Radii of the tube that are tried, as of several tubes about one another: one fewer. */
  private static final int TUBES = 6;

  /**
   * Corners farther off than this many times the median do not count: at first, so that one of
   * several tubes is settled on, and then.
   */
  private static final double[] OUTLIERS = {1.5, 3};

  /** Distances below this share of the tube's radius are rounding. */
  private static final double EXACT = 1e-6;

  /** A centre line of a larger radius, over that of the tube, is straight. */
  private static final double STRAIGHT = 200;

  /** A face by its middle; or a corner, with its share of the faces around it and any normal. */
  public record Sample(Vec at, Vec normal, double areaM2) {}

  /** A solution of two equations. */
  private record Pair(double x, double y) {}

  private final List<Sample> faces;
  private final List<Sample> corners;
  private final double sizeM;

  private TorusFit(List<Sample> faces, List<Sample> corners) {
    this.faces = faces;
    this.corners = corners;
    Vec middle = Vec.mean(corners.stream().map(Sample::at).toList());
    this.sizeM = corners.stream().mapToDouble(c -> c.at.distanceTo(middle)).average().orElse(0);
  }

  /**
   * The torus, null if none can be told. Whether the surface lies on it is for the caller to see.
   *
   * @param axes principal directions of the normals
   */
  public static @Nullable Torus of(List<Vec> axes, List<Sample> faces, List<Sample> corners) {
    TorusFit fit = new TorusFit(faces, corners);
    Torus best = null;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < axes.size(); i++) {
      List<Sample> tried = List.of();
      for (double lean : WALLS) {
        List<Sample> walls = fit.walls(axes.get(i), lean);
        if (walls.size() == tried.size()) {
          continue;
        }
        tried = walls;
        Torus start = fit.about(axes.get(i), axes.get((i + 1) % axes.size()), walls);
        boolean near = start != null && fit.off(start, CAPPED) < FAR * fit.farthest();
        Torus torus = start == null || !near ? null : fit.narrowed(start);
        double off = torus == null ? Double.MAX_VALUE : fit.off(torus, NEAR);
        best = off < least ? torus : best;
        least = Math.min(off, least);
      }
    }
    return best;
  }

  /** The faces that lean along a direction by less than a sine. */
  private List<Sample> walls(Vec tangent, double lean) {
    List<Sample> walls = new ArrayList<>(faces.size());
    for (Sample face : faces) {
      if (Math.abs(face.normal.dot(tangent)) < lean) {
        walls.add(face);
      }
    }
    return walls;
  }

  /** The best torus whose axis is at right angles to a direction, the middle tangent. */
  private @Nullable Torus about(Vec tangent, Vec across, List<Sample> walls) {
    Torus best = null;
    double least = Double.MAX_VALUE;
    for (int turn = 0; turn < TURNS; turn++) {
      Torus torus = about(across.turned(tangent, Math.PI * turn / TURNS), walls);
      double off = torus == null ? Double.MAX_VALUE : off(torus, CAPPED);
      best = off < least ? torus : best;
      least = Math.min(off, least);
    }
    return best;
  }

  /** Distance of the corners from the surface, each capped, times their area. */
  private double off(Torus torus, double capped) {
    return off(off(torus), 0, capped);
  }

  private double[] off(Torus torus) {
    double[] offM = new double[corners.size()];
    for (int i = 0; i < offM.length; i++) {
      offM[i] = torus.off(corners.get(i).at);
    }
    return offM;
  }

  /** The same, where the tube's radius is not yet taken off the distances. */
  private double off(double[] offM, double minorM, double capped) {
    double sum = 0;
    for (int i = 0; i < offM.length; i++) {
      sum += corners.get(i).areaM2 * Math.min(Math.abs(offM[i] - minorM), capped * sizeM);
    }
    return sum;
  }

  /** As if all corners were off by what a distance counts at most. */
  private double farthest() {
    return CAPPED * sizeM * corners.stream().mapToDouble(Sample::areaM2).sum();
  }

  private boolean isPossible(Torus torus) {
    return torus.minor() > 0
        && torus.minor() < Math.min(torus.major(), WIDEST * sizeM)
        && torus.major() < STRAIGHT * torus.minor();
  }

  private @Nullable Torus about(Vec axis, List<Sample> firstWalls) {
    Vec u = axis.anyNormal();
    Vec v = axis.cross(u);
    List<Sample> walls = firstWalls;
    Vec centre = null;
    for (int round = 0; round < 3; round++) {
      Equations lines = new Equations();
      for (Sample face : walls) {
        Vec normal = face.normal;
        lines.add(face.areaM2, -normal.dot(v), normal.dot(u), face.at.dot(u), face.at.dot(v));
      }
      Pair found = lines.solve();
      if (found == null) {
        return null;
      }
      Vec at = u.times(found.x).plus(v.times(found.y));
      centre = at;
      walls = wallsAbout(new Torus(at, axis, 0, 0));
    }
    return centre == null ? null : around(new Torus(centre, axis, 0, 0), walls);
  }

  private List<Sample> wallsAbout(Torus line) {
    List<Sample> walls = new ArrayList<>(faces.size());
    for (Sample face : faces) {
      if (!(Math.abs(line.along(face.normal, face.at)) > LEAN)) {
        walls.add(face);
      }
    }
    return walls;
  }

  private @Nullable Torus around(Torus line, List<Sample> walls) {
    Equations normals = new Equations();
    for (Sample face : walls) {
      Vec at = line.tube(face.at);
      double out = face.normal.dot(line.axis().cross(line.tangent(face.at)).times(-1));
      normals.add(face.areaM2, -face.normal.dot(line.axis()), out, at.x(), at.y());
    }
    Pair found = normals.solve();
    if (found == null || !(found.x > 0)) {
      return null;
    }
    Vec centre = line.centre().plus(line.axis().times(found.y));
    Torus bare = new Torus(centre, line.axis(), found.x, 0);
    double[] fromLineM = off(bare);
    Torus best = null;
    double least = Double.MAX_VALUE;
    for (double minor : parts(fromLineM, TUBES)) {
      Torus torus = new Torus(centre, line.axis(), found.x, minor);
      double off = isPossible(torus) ? off(fromLineM, minor, CAPPED) : Double.MAX_VALUE;
      best = off < least ? torus : best;
      least = Math.min(off, least);
    }
    return best;
  }

  /** Two unknowns, each equation {@code a (x - atX) + b (y - atY) = 0} with a weight. */
  private static final class Equations {
    private double aa;
    private double ab;
    private double bb;
    private double ar;
    private double br;

    void add(double weight, double a, double b, double atX, double atY) {
      double right = a * atX + b * atY;
      aa += weight * a * a;
      ab += weight * a * b;
      bb += weight * b * b;
      ar += weight * a * right;
      br += weight * b * right;
    }

    @Nullable Pair solve() {
      double det = aa * bb - ab * ab;
      boolean solvable = det > 1e-9 * (aa + bb) * (aa + bb);
      return solvable ? new Pair((bb * ar - ab * br) / det, (aa * br - ab * ar) / det) : null;
    }
  }

  /**
   * The figures of corners below which a half of the area lies, or a third and two thirds, and so
   * on. Sorted by their first seven digits, so that no objects have to be.
   */
  private double[] parts(double[] figures, int parts) {
    long[] sorted = new long[figures.length];
    double whole = 0;
    for (int i = 0; i < sorted.length; i++) {
      int bits = Float.floatToIntBits((float) figures[i]);
      int ascending = bits < 0 ? bits ^ Integer.MAX_VALUE : bits;
      sorted[i] = (long) ascending << Integer.SIZE | i;
      whole += corners.get(i).areaM2;
    }
    Arrays.sort(sorted);
    double[] found = new double[parts - 1];
    double below = 0;
    int next = 0;
    for (long each : sorted) {
      int corner = (int) each;
      below += corners.get(corner).areaM2;
      while (next < found.length && below >= whole * (next + 1) / parts) {
        found[next++] = figures[corner];
      }
    }
    return found;
  }

  private Torus narrowed(Torus start) {
    Torus torus = start;
    for (double outlier : OUTLIERS) {
      Torus next = torus;
      for (int step = 0; next != null && step < MOST_STEPS; step++) {
        torus = next;
        next = better(torus, near(torus, outlier));
      }
    }
    return torus;
  }

  private List<Sample> near(Torus torus, double outlier) {
    double[] offM = off(torus);
    for (int i = 0; i < offM.length; i++) {
      offM[i] = Math.abs(offM[i]);
    }
    double mostM = Math.max(outlier * parts(offM, 2)[0], EXACT * torus.minor());
    List<Sample> near = new ArrayList<>(offM.length);
    for (int i = 0; i < offM.length; i++) {
      if (offM[i] <= mostM) {
        near.add(corners.get(i));
      }
    }
    return near;
  }

  /** One step, shortened until it leads closer; null if none does by more than rounding. */
  private @Nullable Torus better(Torus from, List<Sample> near) {
    double[] step = step(from, near);
    double off = squares(from, near);
    for (double share = 1; step != null && share > 1e-3; share /= 2) {
      Torus next = moved(from, step, share);
      if (isPossible(next) && squares(next, near) < 0.9999 * off) {
        return next;
      }
    }
    return null;
  }

  private static double squares(Torus torus, List<Sample> near) {
    double sum = 0;
    for (Sample corner : near) {
      double offM = torus.off(corner.at);
      sum += corner.areaM2 * offM * offM;
    }
    return sum;
  }

  /** Tilt of the axis about two directions, shift of the centre along three, both radii. */
  private static double @Nullable [] step(Torus torus, List<Sample> near) {
    if (near.size() < 7) {
      return null;
    }
    Vec u = torus.axis().anyNormal();
    Vec v = torus.axis().cross(u);
    double[][] rows = new double[near.size()][];
    double[] right = new double[near.size()];
    for (int i = 0; i < rows.length; i++) {
      Sample corner = near.get(i);
      Vec q = corner.at.minus(torus.centre());
      double z = q.dot(torus.axis());
      Vec tube = torus.tube(corner.at).unit();
      Vec out = q.across(torus.axis()).unit().times(tube.x());
      double gu = out.dot(u);
      double gv = out.dot(v);
      double weight = Math.sqrt(corner.areaM2);
      rows[i] =
          new double[] {
            weight * (gv * z - tube.y() * q.dot(v)),
            weight * (tube.y() * q.dot(u) - gu * z),
            -weight * gu,
            -weight * gv,
            -weight * tube.y(),
            -weight * tube.x(),
            -weight
          };
      right[i] = -weight * torus.off(corner.at);
    }
    DecompositionSolver solver =
        new QRDecomposition(new Array2DRowRealMatrix(rows, false), 1e-300).getSolver();
    return solver.isNonSingular() ? solver.solve(new ArrayRealVector(right)).toArray() : null;
  }

  private static Torus moved(Torus from, double[] step, double share) {
    Vec u = from.axis().anyNormal();
    Vec v = from.axis().cross(u);
    Vec axis = from.axis().plus(u.times(share * step[1])).minus(v.times(share * step[0])).unit();
    Vec shift = u.times(step[2]).plus(v.times(step[3])).plus(from.axis().times(step[4]));
    return new Torus(
        from.centre().plus(shift.times(share)),
        axis,
        from.major() + share * step[5],
        from.minor() + share * step[6]);
  }
}
