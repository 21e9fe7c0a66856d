package org.lagwright.ifc.extract.insulation;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.geometry.Beside;
import org.lagwright.ifc.geometry.BodyCorners;
import org.lagwright.ifc.geometry.BodyItems;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.CornerReader;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** The bodies of coverings: as a whole, and how they lie to an element. Asked by one thread. */
public final class CoveringBodies {

  private final IfcFile file;
  private final ShapeMeasurer bodies;
  private final CornerReader corners;
  private final Map<ElementKey, Shape> shapes = new HashMap<>();
  private final Map<ElementKey, BodyItems> items = new HashMap<>();

  /** Measures coverings of one file. */
  public CoveringBodies(IfcFile file, ShapeMeasurer bodies, CornerReader corners) {
    this.file = file;
    this.bodies = bodies;
    this.corners = corners;
  }

  /** All of it. */
  public Shape shape(Draft covering) {
    Shape shape = shapes.get(covering.key());
    if (shape == null) {
      shape = bodies.measure(record(covering), ShapeHints.NONE);
      shapes.put(covering.key(), shape);
    }
    return shape;
  }

  private BodyItems itemsOf(Draft covering) {
    BodyItems known = items.get(covering.key());
    if (known == null) {
      known = bodies.itemsOf(record(covering));
      items.put(covering.key(), known);
    }
    return known;
  }

  /**
   * What of it lies along an element; all of it if its items are not told apart. A short box may
   * run along another of its edges than the longest.
   */
  Shape along(Draft covering, Draft host) {
    return along(covering, host.shape());
  }

  private Shape along(Draft covering, Shape host) {
    Shape along = itemsOf(covering).along(host, shape(covering));
    if (along.mayLieOtherwise() && !Coaxiality.runsAlong(along, host)) {
      for (Shape other : along.otherReadings()) {
        if (Coaxiality.runsAlong(other, host)) {
          return other;
        }
      }
    }
    return along;
  }

  /** True if what lies along an element leaves room for insulation between both surfaces. */
  public boolean isWider(Draft covering, CoveringHosts.Inside<?> inside) {
    Measured<Section> outer = along(covering, inside.shape()).section();
    Section bare = inside.size().section();
    return outer != null && bare != null && Thicknesses.between(bare, outer.value()).isPresent();
  }

  /** The outer section of what lies along an element, null if its body tells none. */
  @Nullable Section outer(Draft covering, Draft host) {
    Measured<Section> section = along(covering, host).section();
    return section == null ? null : section.value();
  }

  /** The corners of the body of a covering, null if it has none. */
  public @Nullable BodyCorners corners(Draft covering) {
    return corners.cornersOf(record(covering)).orElse(null);
  }

  /** A half shell or a board that lies beside an element, null if it is none. */
  @Nullable Beside beside(Draft covering, Draft host) {
    BodyCorners body = corners(covering);
    Beside piece = body == null ? null : body.beside(host.shape());
    return piece != null && Thicknesses.isPossible(piece.wallM()) ? piece : null;
  }

  /** Wall of a straight ring about its own axis, null if it is none. */
  @Nullable Double ringWallM(Draft covering, Shape along) {
    BodyCorners body = corners(covering);
    double wallM = body == null ? 0 : body.ringWallM(along);
    return Thicknesses.isPossible(wallM) ? wallM : null;
  }

  /** True for what lies beside a duct, such as a board, though a single one is less wide. */
  boolean liesOutside(Draft covering, Draft host) {
    if (host.kind() != Kind.DUCT_SEGMENT
        || outer(covering, host) == null
        || Coaxiality.runsAlong(along(covering, host), host.shape())) {
      return false;
    }
    BodyCorners body = corners(covering);
    return body != null && body.reachOutOf(host.shape());
  }

  private IfcRecord record(Draft draft) {
    return Objects.requireNonNull(file.find(draft.step()));
  }
}
