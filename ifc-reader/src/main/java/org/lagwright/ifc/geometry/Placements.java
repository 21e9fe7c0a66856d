package org.lagwright.ifc.geometry;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * World frames of products and ports. Chains are walked once and remembered; a cycle, a missing
 * record or a chain deeper than the limits allow gives null.
 */
public final class Placements {

  private final IfcFile file;
  private final Coordinates coordinates;

  /** Frames by placement record; a broken placement is kept as null. */
  private final Map<Long, @Nullable Frame> known = new HashMap<>();

  /**
   * @param units units of the file; frames come out in metres
   */
  public Placements(IfcFile file, GeometryUnits units) {
    this.file = file;
    this.coordinates = new Coordinates(units);
  }

  /**
   * World frame of a product or port, null if it has no placement, if the chain is broken, or if it
   * hangs on a grid.
   */
  public @Nullable Frame of(IfcRecord product) {
    IfcRecord placement = product.ref("ObjectPlacement");
    return placement == null ? null : world(placement);
  }

  private @Nullable Frame world(IfcRecord placement) {
    Deque<IfcRecord> chain = new ArrayDeque<>();
    IfcRecord at = placement;
    Frame frame = Frame.WORLD;
    int deepest = file.step().limits().maxReferenceDepth();
    while (at != null && !known.containsKey(at.id())) {
      if (chain.size() >= deepest) {
        frame = null;
        break;
      }
      chain.push(at);
      if (!at.has("PlacementRelTo")) {
        break;
      }
      IfcRecord parent = at.ref("PlacementRelTo");
      frame = parent == null ? null : frame;
      at = parent;
    }
    if (at != null && frame != null && known.containsKey(at.id())) {
      frame = known.get(at.id());
    }
    return compose(chain, frame);
  }

  private @Nullable Frame compose(Deque<IfcRecord> outermostFirst, @Nullable Frame start) {
    Frame frame = start;
    for (IfcRecord placement : outermostFirst) {
      Frame own = relative(placement);
      frame = frame == null || own == null ? null : frame.times(own);
      known.put(placement.id(), frame);
    }
    return frame;
  }

  private @Nullable Frame relative(IfcRecord placement) {
    if (placement.is("IfcLinearPlacement")) {
      return coordinates.axes(placement.ref("CartesianPosition"));
    }
    return coordinates.axes(placement.ref("RelativePlacement"));
  }
}
