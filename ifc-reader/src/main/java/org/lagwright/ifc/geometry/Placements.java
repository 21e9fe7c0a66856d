package org.lagwright.ifc.geometry;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * World frames of products and ports. The frames that many chains share are remembered; a cycle, a
 * missing record or a chain deeper than the limits allow gives null. Safe for several threads.
 */
public final class Placements {

  private static final int REMEMBERED = 1 << 12;

  private final IfcFile file;
  private final Coordinates coordinates;

  /**
   * A frame that was worked out.
   *
   * @param frame null if the placement is broken
   * @param depth how many placements its chain has
   */
  private record Known(@Nullable Frame frame, int depth) {}

  private static final Known START = new Known(Frame.WORLD, 0);

  private final Recent<Known> known = new Recent<>(REMEMBERED);

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

  /** World frame of a placement record, null as in {@link #of}. */
  public @Nullable Frame world(IfcRecord placement) {
    Deque<IfcRecord> chain = new ArrayDeque<>();
    Known start = START;
    IfcRecord at = placement;
    int deepest = file.step().limits().maxReferenceDepth();
    while (at != null) {
      Known before = known.find(at.id());
      if (before != null) {
        start = before;
        break;
      }
      if (chain.size() >= deepest) {
        start = new Known(null, chain.size());
        break;
      }
      chain.push(at);
      if (!at.has("PlacementRelTo")) {
        break;
      }
      at = at.ref("PlacementRelTo");
      start = at == null ? new Known(null, 0) : start;
    }
    return start.depth + chain.size() > deepest ? null : compose(chain, start);
  }

  private @Nullable Frame compose(Deque<IfcRecord> outermostFirst, Known start) {
    Frame frame = start.frame;
    int depth = start.depth;
    for (IfcRecord placement : outermostFirst) {
      Frame own = relative(placement);
      frame = frame == null || own == null ? null : frame.times(own);
      known.keep(placement.id(), new Known(frame, ++depth));
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
