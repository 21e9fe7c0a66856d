package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lagwright.ifc.geometry.Box;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.geometry.ShapeEnd;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Finds what lies inside a covering that names nothing it covers: by common axes and ends.
 *
 * @param <H> what may lie inside, in one file or in several
 */
final class CoveringHosts<H> {

  /** What a covering lies around, and along which part of it. */
  record Inside<H>(H host, Coaxiality.Extent extent) {}

  private record Entry<H>(H host, Shape shape) {}

  /** Half shells end at the axis; exporters round. */
  private static final double TOUCHING_M = 0.005;

  private final STRtree byPlace = new STRtree();
  private final List<Entry<H>> hosts = new ArrayList<>();
  private final Comparator<H> order;

  /**
   * @param order of what is found
   */
  CoveringHosts(Comparator<H> order) {
    this.order = order;
  }

  /** Hosts are added before the first covering is asked for; bodies without ends tell nothing. */
  void add(H host, Shape shape) {
    if (shape.ends().size() > 1) {
      byPlace.insert(envelope(shape, 0), hosts.size());
      hosts.add(new Entry<>(host, shape));
    }
  }

  /** What the body of a covering runs along. */
  List<Inside<H>> inside(Shape body) {
    List<Inside<H>> inside = new ArrayList<>();
    if (body.ends().size() > 1) {
      byPlace.query(
          envelope(body, Coaxiality.toleranceM(body)),
          index -> {
            Entry<H> near = hosts.get((Integer) index);
            Coaxiality.Extent extent = Coaxiality.extent(body, near.shape);
            if (extent != null) {
              inside.add(new Inside<>(near.host, extent));
            }
          });
    }
    inside.sort(Comparator.comparing(Inside::host, order));
    return inside;
  }

  /** What may lie beside a body: its axis touches the box of the body. */
  List<H> near(Box box) {
    List<H> near = new ArrayList<>();
    byPlace.query(envelope(box, TOUCHING_M), index -> near.add(hosts.get((Integer) index).host));
    near.sort(order);
    return near;
  }

  private static Envelope envelope(Shape shape, double marginM) {
    return envelope(Box.around(shape.ends().stream().map(ShapeEnd::centreM).toList()), marginM);
  }

  private static Envelope envelope(Box box, double marginM) {
    Envelope envelope = new Envelope(box.low().x(), box.high().x(), box.low().y(), box.high().y());
    envelope.expandBy(marginM);
    return envelope;
  }
}
