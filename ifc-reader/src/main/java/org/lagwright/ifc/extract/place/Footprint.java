package org.lagwright.ifc.extract.place;

import org.lagwright.ifc.geometry.frame.Box;
import org.locationtech.jts.geom.Envelope;

/** Boxes as seen from above, by which an index of places knows them. */
public final class Footprint {

  private Footprint() {}

  /** The footprint of a box, in metres. */
  public static Envelope of(Box box) {
    return new Envelope(box.low().x(), box.high().x(), box.low().y(), box.high().y());
  }
}
