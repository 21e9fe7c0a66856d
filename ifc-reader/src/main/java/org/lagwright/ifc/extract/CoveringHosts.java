package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.lagwright.ifc.geometry.Box;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.geometry.ShapeEnd;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds what lies inside a covering that names nothing it covers: by common axes and ends. */
final class CoveringHosts {

  private final STRtree hosts = new STRtree();

  /**
   * @param drafts elements after they were measured
   */
  CoveringHosts(Collection<Draft> drafts) {
    for (Draft draft : drafts) {
      boolean lagged = draft.kind != null && draft.kind.isLagged();
      if (lagged && draft.shape.ends().size() > 1) {
        hosts.insert(envelope(draft.shape, 0), draft);
      }
    }
  }

  /** Elements that the body of a covering runs along, in the order of the file. */
  List<Draft> inside(Draft covering, Shape body) {
    if (body.ends().size() < 2) {
      return List.of();
    }
    List<Draft> near = new ArrayList<>();
    hosts.query(envelope(body, Coaxiality.toleranceM(body)), h -> near.add((Draft) h));
    return near.stream()
        .filter(host -> !host.key.equals(covering.key))
        .filter(host -> Coaxiality.runsAlong(body, host.shape))
        .sorted(Comparator.comparing(host -> host.key))
        .toList();
  }

  private static Envelope envelope(Shape shape, double marginM) {
    Box box = Box.around(shape.ends().stream().map(ShapeEnd::centreM).toList());
    Envelope envelope = new Envelope(box.low().x(), box.high().x(), box.low().y(), box.high().y());
    envelope.expandBy(marginM);
    return envelope;
  }
}
