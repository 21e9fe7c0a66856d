package org.lagwright.ifc.model;

/** How a value was obtained. The order is no order of trust. */
public enum How {
  /** From the positions of the element's own connection ports. */
  PORTS,
  /** From a solid with exact parameters: an extrusion, a revolution, a sweep. */
  SOLID,
  /** From faces only: triangles, polygons, boundary representations. */
  MESH,
  /** From a quantity set of the element or its type. */
  QUANTITY_SET,
  /** From a property of the element or its type. */
  PROPERTY,
  /** Read out of a name or another free text. */
  TEXT,
  /** Taken over from a connected element. */
  NEIGHBOUR;

  /** True if it was measured on the body of the element. */
  public boolean isDrawn() {
    return this == SOLID || this == MESH;
  }
}
