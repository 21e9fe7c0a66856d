package org.lagwright.report.enrich;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.lagwright.ifc.append.GlobalId;
import org.lagwright.ifc.append.IfcAppender;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.body.Body;
import org.lagwright.takeoff.body.Body.Facets;

/**
 * Shapes of flat faces, which take hundreds of records each. Fittings of one size that lie the same
 * way have the same: it is written once, and each of them shows a copy of it.
 */
final class FacetedShapes {

  /** Of a metre: corners this near are one, finer than any drawing. */
  private static final double SAME_STEPS = 1e6;

  private final IfcAppender to;
  private final SharedRecords shared;
  private final Map<String, Long> written = new HashMap<>();

  FacetedShapes(IfcAppender to, SharedRecords shared) {
    this.to = to;
    this.shared = shared;
  }

  /** True if a shape has flat faces only, so that others may have it too. */
  static boolean areFaceted(List<Body> bodies) {
    return bodies.stream().allMatch(Facets.class::isInstance);
  }

  /**
   * Instance number of an item that shows a shape.
   *
   * @param representation writes the shape, asked where none before was like it
   */
  long item(List<Body> bodies, LocalFrame local, long context, Supplier<Long> representation) {
    String likeness = context + " " + likeness(bodies, local);
    Long source = written.get(likeness);
    if (source == null) {
      source =
          to.record("IfcRepresentationMap")
              .ref("MappingOrigin", shared.origin())
              .ref("MappedRepresentation", representation.get())
              .add();
      written.put(likeness, source);
    }
    return to.record("IfcMappedItem")
        .ref("MappingSource", source)
        .ref("MappingTarget", shared.unmoved())
        .add();
  }

  /** Of equal corners in the coordinates of the covering, and equal faces between them; short. */
  private static String likeness(List<Body> bodies, LocalFrame local) {
    StringBuilder text = new StringBuilder();
    for (Body body : bodies) {
      Facets facets = (Facets) body;
      for (Point corner : facets.corners()) {
        Point at = local.local(corner);
        text.append(steps(at.x())).append(' ').append(steps(at.y())).append(' ');
        text.append(steps(at.z())).append(' ');
      }
      text.append(facets.faces());
    }
    return GlobalId.of(text.toString());
  }

  private static long steps(double lengthM) {
    return Math.round(lengthM * SAME_STEPS);
  }
}
