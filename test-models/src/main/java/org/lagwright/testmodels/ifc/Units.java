package org.lagwright.testmodels.ifc;

/** The project units of a file. Callers always give millimetres and degrees. */
public record Units(Length length, Angle angle) {

  /** Millimetres and radians. */
  public static final Units MILLIMETRE_RADIAN = new Units(Length.MILLIMETRE, Angle.RADIAN);

  /** Millimetres and degrees. */
  public static final Units MILLIMETRE_DEGREE = new Units(Length.MILLIMETRE, Angle.DEGREE);

  /** A length from millimetres into the unit of the file. */
  public double length(double mm) {
    return mm / length.millimetres;
  }

  /** An angle from degrees into the unit of the file. */
  public double angle(double degrees) {
    return angle == Angle.DEGREE ? degrees : Math.toRadians(degrees);
  }

  /** Unit of length. */
  public enum Length {
    MILLIMETRE(1),
    METRE(1000),
    /** International foot, 0.3048 m exactly. */
    FOOT(304.8);

    private final double millimetres;

    Length(double millimetres) {
      this.millimetres = millimetres;
    }
  }

  /** Unit of plane angle. */
  public enum Angle {
    RADIAN,
    DEGREE
  }
}
