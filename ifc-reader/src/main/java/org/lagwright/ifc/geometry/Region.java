package org.lagwright.ifc.geometry;

import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.model.Point;

/** A closed part of space, such as a room, that can be asked whether a point lies in it. */
public interface Region {

  /** Upright box around it, in metres. */
  Box box();

  /** True if the world position lies inside. Points on the boundary may count either way. */
  boolean holds(Point worldM);
}
