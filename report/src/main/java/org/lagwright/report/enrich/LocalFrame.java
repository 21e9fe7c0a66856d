package org.lagwright.report.enrich;

import org.lagwright.ifc.extract.HostReader.Host;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.model.Point;

/**
 * The coordinates that a covering is written in: the axes of the placement it hangs on, from a
 * point near its body, so that figures stay short and exact.
 *
 * @param placement instance number of the placement it hangs on, 0 for none
 * @param frame of that placement in the world
 * @param origin where the covering is placed in that frame, metres
 */
record LocalFrame(long placement, Frame frame, Point origin) {

  private static final Point NO_SHIFT = new Point(0, 0, 0);

  /**
   * Where the coverings of an element hang.
   *
   * @param asPart true on the placement of the element itself, false beside it
   */
  static LocalFrame of(Host host, boolean asPart) {
    long placement = asPart ? host.placement() : host.within();
    Frame frame = asPart ? host.frame() : host.frameWithin();
    return frame == null
        ? new LocalFrame(0, Frame.WORLD, NO_SHIFT)
        : new LocalFrame(placement, frame, NO_SHIFT);
  }

  /** The same axes from another point of the world. */
  LocalFrame at(Point world) {
    return new LocalFrame(placement, frame, frame.local(world));
  }

  /** Local coordinates of a world position, metres. */
  Point local(Point world) {
    Point there = frame.local(world);
    return new Point(there.x() - origin.x(), there.y() - origin.y(), there.z() - origin.z());
  }

  /** Local components of a world direction. */
  Point direction(Point world) {
    return frame.localDirection(world);
  }
}
