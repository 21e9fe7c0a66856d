package org.lagwright.ifc.geometry.surface;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.surface.Surface.UV;

/**
 * Area and flux of a face on a curved surface. Over the part of the parameter plane within its
 * loops they are, by Green's theorem, integrals along the loops of integrals across; so no face is
 * cut into triangles, unless the body is cut: then it falls into {@link PatchTiles}. Loops that go
 * round a closed surface count too, as the seam between them would be passed both ways.
 */
public final class PatchIntegral {

  /** Gauss-Legendre with four points: places and weights on -1 to 1; textbook, from memory. */
  private static final double[] PLACES = {
    -0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526
  };

  private static final double[] SHARES = {
    0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538
  };

  /** Parts of the inner integral. */
  private static final int PANELS = 8;

  /** Places along a leg of a loop, which is short: Gauss-Legendre with two points. */
  private static final double[] ALONG = {0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6};

  /** Loops with less than this share of the surface they span are seams. */
  private static final double SEAM = 1e-9;

  /** The same between parameters: what rounding leaves of a path there and back. */
  private static final double SEAM_AREA = 1e-12;

  private final Surface surface;
  private final Frame frame;
  private final Vec from;
  private final double stepRad;

  /** True if the inner integral runs along u. */
  private boolean swapped;

  private PatchIntegral(Surface surface, Frame frame, Vec from, double stepRad) {
    this.surface = surface;
    this.frame = frame;
    this.from = from;
    this.stepRad = stepRad;
  }

  private record Sum(double area, double flux) {
    Sum plus(Sum o) {
      return new Sum(area + o.area, flux + o.flux);
    }

    Sum times(double f) {
      return new Sum(area * f, flux * f);
    }
  }

  /**
   * The figures of a face, null if its loops do not tell which part of the surface it is.
   *
   * @param loops points of its edges on the surface, before the frame
   * @param frame where the face stands
   * @param stepRad by how much the surface turns at most across a tile, where the face is cut
   */
  public static @Nullable Patch of(
      Surface surface, List<List<Vec>> loops, Frame frame, double stepRad) {
    Vec from = frame.point(loops.get(0).get(0));
    return new PatchIntegral(surface, frame, from, stepRad).patch(loops);
  }

  /**
   * The face by its tiles alone, which takes far less time; they may be wound either way, and there
   * are none if the loops do not tell which part of the surface it is.
   */
  public static List<List<List<Vec>>> tiles(
      Surface surface, List<List<Vec>> loops, Frame frame, double stepRad) {
    Vec from = frame.point(loops.get(0).get(0));
    PatchIntegral integral = new PatchIntegral(surface, frame, from, stepRad);
    List<List<UV>> paths = integral.paths(loops);
    return paths.isEmpty() || !integral.bounds(paths)
        ? List.of()
        : new PatchTiles(surface, frame, stepRad).tiles(integral.closed(paths));
  }

  private @Nullable Patch patch(List<List<Vec>> loops) {
    List<List<UV>> paths = paths(loops);
    boolean round = !paths.isEmpty() && isRound(paths);
    Sum sum = paths.isEmpty() ? null : round ? around(paths) : within(paths);
    if (sum == null || !Double.isFinite(sum.flux)) {
      return null;
    }
    // the sign of the area says whether the loops run with the normal of the surface
    double flux = sum.flux;
    return new Patch(Math.abs(sum.area), flux, from, () -> tiles(paths, flux));
  }

  /** The loops as parameters; none if that fails, or if they go round both ways. */
  private List<List<UV>> paths(List<List<Vec>> loops) {
    List<List<UV>> paths = new ArrayList<>();
    for (List<Vec> loop : loops) {
      List<UV> path = unrolled(loop);
      if (path.stream().anyMatch(uv -> !Double.isFinite(uv.u()) || !Double.isFinite(uv.v()))) {
        return List.of();
      }
      paths.add(path);
    }
    boolean roundU = paths.stream().anyMatch(path -> turns(path, false) != 0);
    swapped = paths.stream().anyMatch(path -> turns(path, true) != 0);
    return roundU && swapped ? List.of() : paths;
  }

  private boolean isRound(List<List<UV>> paths) {
    return swapped || paths.stream().anyMatch(path -> turns(path, false) != 0);
  }

  /** True if the loops bound a part of the surface: two that go round, one about a pole, others. */
  private boolean bounds(List<List<UV>> paths) {
    if (!isRound(paths)) {
      return true;
    }
    return paths.size() == 2
        || paths.size() == 1
            && !swapped
            && !Double.isNaN(surface.poleV(turns(paths.get(0), false) > 0));
  }

  private List<List<List<Vec>>> tiles(List<List<UV>> paths, double flux) {
    List<List<UV>> loops = closed(paths);
    List<List<List<Vec>>> tiles = new PatchTiles(surface, frame, stepRad).tiles(loops);
    double own =
        tiles.stream().mapToDouble(tile -> new Facet(tile, Facet.Role.OUTER).volumeM3(from)).sum();
    return own * flux < 0 ? PatchTiles.reversed(tiles) : tiles;
  }

  /** The loops as they bound the face in the parameter plane. */
  private List<List<UV>> closed(List<List<UV>> paths) {
    List<UV> first = paths.get(0);
    boolean round = turns(first, swapped) != 0;
    if (round && paths.size() == 1) {
      return List.of(toThePole(first));
    }
    if (round) {
      return List.of(band(first, paths.get(1)));
    }
    double outer = parameterArea(first);
    if (paths.size() == 1 && Math.abs(outer) < SEAM_AREA) {
      return List.of(allRound(first));
    }
    List<List<UV>> loops = new ArrayList<>(List.of(first));
    for (List<UV> hole : paths.subList(1, paths.size())) {
      boolean same = parameterArea(hole) * outer > 0;
      loops.add(same ? backwards(hole) : hole);
    }
    return loops;
  }

  private static double parameterArea(List<UV> path) {
    double sum = 0;
    for (int i = 0; i < path.size(); i++) {
      UV a = path.get(i);
      UV b = path.get((i + 1) % path.size());
      sum += (a.u() * b.v() - b.u() * a.v()) / 2;
    }
    return sum;
  }

  private List<UV> toThePole(List<UV> path) {
    double pole = surface.poleV(turns(path, false) > 0);
    List<UV> loop = new ArrayList<>(path);
    loop.add(new UV(path.get(path.size() - 1).u(), pole));
    loop.add(new UV(path.get(0).u(), pole));
    return loop;
  }

  /** From one loop that goes round over to the other one and back a period away. */
  private List<UV> band(List<UV> first, List<UV> second) {
    double period = swapped ? surface.periodV() : surface.periodU();
    UV last = first.get(first.size() - 1);
    boolean alike = turns(first, swapped) * turns(second, swapped) > 0;
    List<UV> back = alike ? backwards(second) : second;
    int start = 0;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < back.size() - 1; i++) {
      double apart = along(last) - along(back.get(i));
      double off = Math.abs(apart - period * Math.rint(apart / period));
      start = off < least ? i : start;
      least = Math.min(off, least);
    }
    double shift = period * Math.rint((along(last) - along(back.get(start))) / period);
    double turn = along(back.get(back.size() - 1)) - along(back.get(0));
    List<UV> loop = new ArrayList<>(first);
    for (int i = 0; i < back.size(); i++) {
      boolean again = start + i >= back.size() - 1;
      UV at = back.get(again ? start + i - (back.size() - 1) : start + i);
      loop.add(moved(at, shift + (again ? turn : 0)));
    }
    return loop;
  }

  private double along(UV at) {
    return swapped ? at.v() : at.u();
  }

  private UV moved(UV at, double by) {
    return swapped ? new UV(at.u(), at.v() + by) : new UV(at.u() + by, at.v());
  }

  private List<UV> allRound(List<UV> seam) {
    double low = seam.stream().mapToDouble(UV::v).min().orElse(0);
    double high = seam.stream().mapToDouble(UV::v).max().orElse(0);
    double u = seam.get(0).u();
    double end = u + surface.periodU();
    return List.of(new UV(u, low), new UV(end, low), new UV(end, high), new UV(u, high));
  }

  private static List<UV> backwards(List<UV> path) {
    List<UV> turned = new ArrayList<>(path);
    Collections.reverse(turned);
    return turned;
  }

  /** Parameters along a loop without jumps, ending where it begins or a period away. */
  private List<UV> unrolled(List<Vec> loop) {
    List<UV> path = new ArrayList<>();
    UV last = surface.parameters(loop.get(0), new UV(0, 0));
    if (surface.isPole(last)) {
      last = surface.parameters(loop.get(1), last);
      last = surface.parameters(loop.get(0), last);
    }
    path.add(last);
    for (int i = 1; i <= loop.size(); i++) {
      UV next = surface.parameters(loop.get(i % loop.size()), last);
      if (surface.isPole(last) && !surface.isPole(next)) {
        path.add(new UV(next.u(), last.v()));
      }
      path.add(next);
      last = next;
    }
    return path;
  }

  private long turns(List<UV> path, boolean inV) {
    double period = inV ? surface.periodV() : surface.periodU();
    UV first = path.get(0);
    UV last = path.get(path.size() - 1);
    double apart = inV ? last.v() - first.v() : last.u() - first.u();
    return period == 0 ? 0 : Math.round(apart / period);
  }

  /** An outer loop, and holes that take away whichever way round they are written. */
  private @Nullable Sum within(List<List<UV>> paths) {
    double base = paths.get(0).get(0).v();
    Sum outer = along(paths.get(0), base);
    if (paths.size() == 1 && Math.abs(outer.area) < SEAM * extent(paths.get(0))) {
      return seam(paths.get(0));
    }
    Sum sum = outer;
    for (List<UV> hole : paths.subList(1, paths.size())) {
      Sum own = along(hole, base);
      sum = sum.plus(own.times(own.area * outer.area > 0 ? -1 : 1));
    }
    return sum;
  }

  private static double extent(List<UV> path) {
    double u = path.stream().mapToDouble(UV::u).max().orElse(0);
    double v = path.stream().mapToDouble(UV::v).max().orElse(0);
    return 1e-6 + Math.abs(u * v) * 1e-6;
  }

  /** A loop along one meridian and back is the seam of a face all the way round. */
  private @Nullable Sum seam(List<UV> path) {
    double low = path.stream().mapToDouble(UV::v).min().orElse(0);
    double high = path.stream().mapToDouble(UV::v).max().orElse(0);
    double period = surface.periodU();
    if (period == 0 || !(high > low)) {
      return null;
    }
    double u = path.get(0).u();
    return along(List.of(new UV(u + period, high), new UV(u, high)), low);
  }

  /** Loops that go round, one each way; a single one goes round a pole. */
  private @Nullable Sum around(List<List<UV>> paths) {
    double base = swapped ? paths.get(0).get(0).u() : paths.get(0).get(0).v();
    long turns = paths.stream().mapToLong(path -> turns(path, swapped)).sum();
    if (paths.size() == 1 && !swapped) {
      double pole = surface.poleV(turns > 0);
      return Double.isNaN(pole) ? null : along(paths.get(0), pole);
    }
    if (paths.size() != 2) {
      return null;
    }
    Sum first = along(paths.get(0), base);
    Sum second = along(paths.get(1), base);
    return turns == 0 ? first.plus(second) : first.plus(second.times(-1));
  }

  /** Along a loop, of what lies between it and a base line, counted as Green's theorem does. */
  private Sum along(List<UV> path, double base) {
    Sum sum = new Sum(0, 0);
    for (int i = 0; i + 1 < path.size(); i++) {
      UV a = swapped ? path.get(i).swapped() : path.get(i);
      UV b = swapped ? path.get(i + 1).swapped() : path.get(i + 1);
      double across = b.u() - a.u();
      for (int g = 0; g < ALONG.length && across != 0; g++) {
        Sum column = column(a.u() + ALONG[g] * across, base, a.v() + ALONG[g] * (b.v() - a.v()));
        sum = sum.plus(column.times(across / ALONG.length));
      }
    }
    // counter-clockwise in u and v is positive; swapping both turns it round
    return sum.times(swapped ? 1 : -1);
  }

  /** Integral over the second parameter at one place of the first. */
  private Sum column(double first, double low, double high) {
    double area = 0;
    double flux = 0;
    double width = (high - low) / PANELS;
    for (int panel = 0; panel < PANELS; panel++) {
      for (int g = 0; g < PLACES.length; g++) {
        double second = low + width * (panel + (PLACES[g] + 1) / 2);
        double u = swapped ? second : first;
        double v = swapped ? first : second;
        Vec normal = frame.vector(surface.alongU(u, v)).cross(frame.vector(surface.alongV(u, v)));
        double weight = SHARES[g] / 2 * width;
        area += weight * normal.norm();
        flux += weight * frame.point(surface.at(u, v)).minus(from).dot(normal) / 3;
      }
    }
    return new Sum(area, flux);
  }
}
