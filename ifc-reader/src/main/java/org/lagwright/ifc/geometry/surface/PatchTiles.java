package org.lagwright.ifc.geometry.surface;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.surface.Surface.UV;

/**
 * Cuts a face on a curved surface into nearly plane tiles with their corners on it. The parameter
 * plane is divided so that the surface turns by at most a step from tile to tile; what of the face
 * lies in a cell of it is a tile. Loops keep their direction, so that holes take away.
 */
final class PatchTiles {

  /** Places at which the turn of a surface is looked at. */
  private static final int PLACES = 24;

  private static final int MOST_STEPS = 720;

  private final Surface surface;
  private final Frame frame;
  private final double stepRad;

  PatchTiles(Surface surface, Frame frame, double stepRad) {
    this.surface = surface;
    this.frame = frame;
    this.stepRad = stepRad;
  }

  /**
   * The tiles, each with its loops.
   *
   * @param loops closed loops of parameters, the last point joined to the first
   */
  List<List<List<Vec>>> tiles(List<List<UV>> loops) {
    double[] u = steps(loops, false);
    double[] v = steps(loops, true);
    List<List<List<Vec>>> tiles = new ArrayList<>();
    for (int i = 1; i < u.length; i++) {
      List<List<UV>> strip = between(loops, u[i - 1], u[i], false);
      for (int k = 1; k < v.length && !strip.isEmpty(); k++) {
        List<List<UV>> cell = between(strip, v[k - 1], v[k], true);
        if (!cell.isEmpty()) {
          tiles.add(cell.stream().map(loop -> loop.stream().map(this::at).toList()).toList());
        }
      }
    }
    return tiles;
  }

  private Vec at(UV uv) {
    return frame.point(surface.at(uv.u(), uv.v()));
  }

  private double[] steps(List<List<UV>> loops, boolean inV) {
    double low = extreme(loops, inV, -1);
    double high = extreme(loops, inV, 1);
    double acrossLow = extreme(loops, !inV, -1);
    double acrossHigh = extreme(loops, !inV, 1);
    double turn = 0;
    for (double share : new double[] {0, 0.5, 1}) {
      double across = acrossLow + share * (acrossHigh - acrossLow);
      turn = Math.max(turn, turn(low, high, across, inV));
    }
    int count = (int) Math.max(1, Math.min(MOST_STEPS, Math.ceil(turn / stepRad - 1e-6)));
    double[] steps = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      steps[i] = low + (high - low) * i / count;
    }
    return steps;
  }

  private static double extreme(List<List<UV>> loops, boolean inV, int sign) {
    return sign
        * loops.stream()
            .flatMap(List::stream)
            .mapToDouble(uv -> sign * (inV ? uv.v() : uv.u()))
            .max()
            .orElse(0);
  }

  /** By how much the tangent turns along one parameter. */
  private double turn(double low, double high, double across, boolean inV) {
    double turn = 0;
    Vec last = Vec.ZERO;
    for (int i = 0; i <= PLACES; i++) {
      double along = low + (high - low) * i / PLACES;
      Vec tangent = inV ? surface.alongV(across, along) : surface.alongU(along, across);
      turn += last.isTiny() || tangent.isTiny() ? 0 : last.angleTo(tangent);
      last = tangent;
    }
    return turn;
  }

  private static List<List<UV>> between(
      List<List<UV>> loops, double low, double high, boolean inV) {
    List<List<UV>> kept = new ArrayList<>();
    for (List<UV> loop : loops) {
      List<UV> part = beyond(beyond(loop, low, 1, inV), high, -1, inV);
      if (part.size() > 2) {
        kept.add(part);
      }
    }
    return kept;
  }

  /** Clips a loop at one value of a parameter (Sutherland and Hodgman, 1974). */
  private static List<UV> beyond(List<UV> loop, double at, int sign, boolean inV) {
    List<UV> kept = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      UV a = loop.get(i);
      UV b = loop.get((i + 1) % loop.size());
      double offA = sign * ((inV ? a.v() : a.u()) - at);
      double offB = sign * ((inV ? b.v() : b.u()) - at);
      if (offA >= 0) {
        kept.add(a);
      }
      if (offA * offB < 0) {
        double share = offA / (offA - offB);
        double u = a.u() + share * (b.u() - a.u());
        double v = a.v() + share * (b.v() - a.v());
        kept.add(inV ? new UV(u, at) : new UV(at, v));
      }
    }
    return kept;
  }

  /** The same tiles, wound the other way. */
  static List<List<List<Vec>>> reversed(List<List<List<Vec>>> tiles) {
    List<List<List<Vec>>> reversed = new ArrayList<>();
    for (List<List<Vec>> tile : tiles) {
      List<List<Vec>> loops = new ArrayList<>();
      for (List<Vec> loop : tile) {
        List<Vec> turned = new ArrayList<>(loop);
        Collections.reverse(turned);
        loops.add(turned);
      }
      reversed.add(loops);
    }
    return reversed;
  }
}
