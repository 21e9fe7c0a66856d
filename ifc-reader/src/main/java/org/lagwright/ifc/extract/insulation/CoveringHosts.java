package org.lagwright.ifc.extract.insulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.extract.draft.Names;
import org.lagwright.ifc.extract.place.Footprint;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.geometry.Beside;
import org.lagwright.ifc.geometry.BodyCorners;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Finds what lies inside a covering that names nothing it covers: by common axes and ends.
 *
 * @param <H> what may lie inside, in one file or in several
 */
public final class CoveringHosts<H> {

  /** What a covering lies around, and along which part of it. */
  public record Inside<H>(H host, Layers.Host size, Shape shape, Coaxiality.Extent extent) {

    private double widthM() {
      return size.section() == null ? 0 : size.section().largestSideM();
    }
  }

  /** Two sizes that are drawn as one. */
  private static final double AS_WIDE_M = 0.001;

  /** What encloses less of the length of another one is a sleeve or a socket on it. */
  private static final double MOST = 0.5;

  /**
   * More hosts than this that are drawn at one and the same place have lost their places, and a
   * covering there tells of none of them.
   */
  private static final int CROWD = 20;

  private static final double PLACES_PER_M = 1000;

  private record Entry<H>(H host, Layers.Host size, Shape shape, Point place) {}

  /** Half shells end at the axis, and boards touch their duct; exporters round. */
  private static final double TOUCHING_M = 0.005;

  private final STRtree byPlace = new STRtree();
  private final Map<Point, Integer> hostsAt = new HashMap<>();
  private final List<Entry<H>> hosts = new ArrayList<>();
  private final Comparator<H> order;
  private double widestSideM;

  /**
   * @param order of what is found
   */
  public CoveringHosts(Comparator<H> order) {
    this.order = order;
  }

  /** Hosts are added before the first covering is asked for; bodies without ends tell nothing. */
  public void add(H host, Layers.Host size, Shape shape) {
    if (shape.ends().size() > 1) {
      Box box = shape.endsBox();
      Point place = middle(box);
      int there = hostsAt.merge(place, 1, Integer::sum);
      if (there <= CROWD) {
        byPlace.insert(Footprint.of(box), hosts.size());
        if (size.section() instanceof Section.Rectangular sides) {
          widestSideM = Math.max(widestSideM, sides.largestSideM());
        }
        hosts.add(new Entry<>(host, size, shape, place));
      }
    }
  }

  private boolean isCrowded(Point place) {
    return hostsAt.getOrDefault(place, 0) > CROWD;
  }

  /** What the body of a covering runs along, without what lies in a crowd. */
  public List<Inside<H>> inside(Shape body) {
    List<Inside<H>> inside = new ArrayList<>();
    if (body.ends().size() > 1) {
      byPlace.query(
          Footprint.of(Coaxiality.box(body).wider(Coaxiality.toleranceM(body))),
          index -> {
            Entry<H> near = hosts.get((Integer) index);
            Coaxiality.Extent extent =
                isCrowded(near.place) ? null : Coaxiality.extent(body, near.shape);
            if (extent != null) {
              inside.add(new Inside<>(near.host, near.size, near.shape, extent));
            }
          });
    }
    inside.sort(Comparator.comparing(Inside::host, order));
    return inside;
  }

  /**
   * Of what a covering runs along that which it is on: nothing wider than itself, such as a sleeve,
   * unless it lines that, and of pipes in one another the widest only.
   */
  public static <H> List<Inside<H>> outermost(List<Inside<H>> inside, Shape covering, Names names) {
    Section outer = covering.section() == null ? null : covering.section().value();
    double widthM = outer == null ? Double.MAX_VALUE : outer.largestSideM();
    List<Inside<H>> on = new ArrayList<>();
    for (Inside<H> each : inside) {
      boolean fits = each.widthM() <= widthM + AS_WIDE_M;
      boolean lined = each.size.isLinedBy(outer, covering.form(), names);
      if ((fits || lined) && !isEnclosed(each, inside, widthM)) {
        on.add(each);
      }
    }
    return on;
  }

  /** True if something lies closer to the covering along most of what this one has. */
  private static <H> boolean isEnclosed(Inside<H> one, List<Inside<H>> inside, double widthM) {
    for (Inside<H> other : inside) {
      boolean within = other.widthM() < widthM - AS_WIDE_M;
      boolean closer =
          one.widthM() >= widthM - AS_WIDE_M
              ? other.widthM() > 0
              : one.widthM() > 0 && other.widthM() > one.widthM() + AS_WIDE_M;
      Coaxiality.Extent extent =
          within && closer ? Coaxiality.extent(other.shape, one.shape) : null;
      if (extent != null && extent.length() > MOST) {
        return true;
      }
    }
    return false;
  }

  /**
   * What a half shell or a board lies on: those share no end with it, but follow its surface. Its
   * box touches that of the body, and it is in no crowd.
   */
  public List<H> beside(BodyCorners piece) {
    Box box = piece.box();
    List<H> found = new ArrayList<>();
    byPlace.query(
        Footprint.of(box.wider(TOUCHING_M + widestSideM / 2)),
        index -> {
          Entry<H> entry = hosts.get((Integer) index);
          Beside beside = isCrowded(entry.place) ? null : piece.beside(entry.shape);
          if (beside != null && (beside.round() || isBoard(beside))) {
            found.add(entry.host);
          }
        });
    found.sort(order);
    return found;
  }

  private static boolean isBoard(Beside beside) {
    return beside.liesOn(TOUCHING_M) && Thicknesses.isPossible(beside.wallM());
  }

  /** To the millimetre; plus zero, as a number just below zero is zero too. */
  private static Point middle(Box box) {
    Point low = box.low();
    Point high = box.high();
    return new Point(
        Math.rint((low.x() + high.x()) / 2 * PLACES_PER_M) + 0.0,
        Math.rint((low.y() + high.y()) / 2 * PLACES_PER_M) + 0.0,
        Math.rint((low.z() + high.z()) / 2 * PLACES_PER_M) + 0.0);
  }
}
