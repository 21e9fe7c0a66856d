package org.lagwright.ifc.geometry.frame;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * World frames of products and ports. The frames that many chains share are remembered; a cycle, a
 * missing record or a chain deeper than the limits allow gives null. Safe for several threads.
 */
public final class Placements {

  private static final int REMEMBERED = 1 << 9;

  private final IfcFile file;
  private final Coordinates coordinates;

  /**
   * A frame that was worked out.
   *
   * @param frame null if the placement is broken
   * @param depth how many placements its chain has
   * @param givesAxis true if the placement itself says which way the third axis points
   */
  private record Known(@Nullable Frame frame, int depth, boolean givesAxis) {}

  private static final Known START = new Known(Frame.WORLD, 0, false);
  private static final Known BROKEN = new Known(null, 0, false);

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
    return known(product.refId("ObjectPlacement")).frame;
  }

  /** True if the placement of a product or port itself says which way its third axis points. */
  public boolean givesAxis(IfcRecord product) {
    return known(product.refId("ObjectPlacement")).givesAxis;
  }

  /** World frame of a placement record, null as in {@link #of}. */
  public @Nullable Frame world(IfcRecord placement) {
    return known(placement.id()).frame;
  }

  private Known known(long placement) {
    Known start = known.find(placement);
    if (start == null) {
      start = follow(placement);
      // a chain that is too deep is long to follow, and its element asks several times
      known.keep(placement, start);
    }
    return start;
  }

  private Known follow(long placement) {
    List<IfcRecord> chain = new ArrayList<>(2);
    int deepest = file.step().limits().maxReferenceDepth();
    long at = placement;
    Known start = null;
    while (start == null) {
      IfcRecord record = file.find(at);
      if (record == null) {
        start = BROKEN;
      } else if (chain.size() >= deepest) {
        return BROKEN;
      } else {
        chain.add(record);
        at = record.refId("PlacementRelTo");
        start = record.has("PlacementRelTo") ? known.find(at) : START;
      }
    }
    return start.depth + chain.size() > deepest ? BROKEN : compose(chain, start);
  }

  private Known compose(List<IfcRecord> outermostLast, Known start) {
    Known last = start;
    for (int i = outermostLast.size() - 1; i >= 0; i--) {
      IfcRecord placement = outermostLast.get(i);
      Coordinates.Axes own = relative(placement);
      Frame frame =
          last.frame == null || own.frame() == null ? null : last.frame.times(own.frame());
      last = new Known(frame, last.depth + 1, own.givesAxis());
      known.keep(placement.id(), last);
    }
    return last;
  }

  private Coordinates.Axes relative(IfcRecord placement) {
    String attribute =
        placement.is("IfcLinearPlacement") ? "CartesianPosition" : "RelativePlacement";
    return coordinates.axes(placement, attribute);
  }
}
