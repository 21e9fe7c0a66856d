package org.lagwright.ifc.geometry.frame;

/**
 * The units that geometry is written in: those of the project's unit assignment.
 *
 * @param lengthM metres in one length unit of the file (0.001 for millimetres)
 * @param angleRad radians in one plane angle unit of the file (pi/180 for degrees)
 */
public record GeometryUnits(double lengthM, double angleRad) {

  public GeometryUnits {
    if (!(lengthM > 0 && Double.isFinite(lengthM) && angleRad > 0 && Double.isFinite(angleRad))) {
      throw new IllegalArgumentException("units must be above zero and finite");
    }
  }
}
