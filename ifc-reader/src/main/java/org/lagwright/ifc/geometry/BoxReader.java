package org.lagwright.ifc.geometry;

import java.util.Optional;
import org.lagwright.ifc.geometry.curve.PlanRectangle;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.model.UprightBox;
import org.lagwright.ifc.schema.IfcRecord;

/** Reads the bodies of walls, slabs, beams and openings as upright boxes around their corners. */
public final class BoxReader {

  private final CornerReader corners;

  /**
   * @param units units of the file
   * @param placements frames of the products of the same file, in metres
   */
  public BoxReader(GeometryUnits units, Placements placements) {
    this.corners = new CornerReader(units, placements);
  }

  /** The box of a product; empty where it has no place or no body that is read here. */
  public Optional<UprightBox> boxOf(IfcRecord product) {
    Optional<BodyCorners> body = corners.cornersOf(product);
    return body.isPresent()
        ? Optional.of(PlanRectangle.boxAround(body.get().all()))
        : Optional.empty();
  }
}
