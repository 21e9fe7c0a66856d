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
   * @param placement instance number
   * @param frame null if the placement is broken
   * @param depth how many placements its chain has
   */
  private record Known(long placement, @Nullable Frame frame, int depth) {}

  /** By the last bits of the number; a later one takes the place of an earlier one. */
  private final @Nullable Known[] known = new Known[REMEMBERED];

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
    Known start = new Known(0, Frame.WORLD, 0);
    IfcRecord at = placement;
    int deepest = file.step().limits().maxReferenceDepth();
    while (at != null) {
      Known before = known[slot(at.id())];
      if (before != null && before.placement == at.id()) {
        start = before;
        break;
      }
      if (chain.size() >= deepest) {
        start = new Known(0, null, chain.size());
        break;
      }
      chain.push(at);
      if (!at.has("PlacementRelTo")) {
        break;
      }
      at = at.ref("PlacementRelTo");
      start = at == null ? new Known(0, null, 0) : start;
    }
    return start.depth + chain.size() > deepest ? null : compose(chain, start);
  }

  private static int slot(long placement) {
    return (int) placement & (REMEMBERED - 1);
  }

  private @Nullable Frame compose(Deque<IfcRecord> outermostFirst, Known start) {
    Frame frame = start.frame;
    int depth = start.depth;
    for (IfcRecord placement : outermostFirst) {
      Frame own = relative(placement);
      frame = frame == null || own == null ? null : frame.times(own);
      known[slot(placement.id())] = new Known(placement.id(), frame, ++depth);
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
