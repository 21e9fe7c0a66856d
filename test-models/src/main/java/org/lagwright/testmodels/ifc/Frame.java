package org.lagwright.testmodels.ifc;

/**
 * A right-handed coordinate system.
 *
 * @param origin in millimetres
 * @param z unit vector
 * @param x unit vector, square to z
 */
public record Frame(Vec origin, Vec z, Vec x) {

  /** Rounding allowed in "square to". */
  private static final double TOLERANCE = 1e-9;

  /** The coordinate system of the world. */
  public static final Frame WORLD = new Frame(Vec.ORIGIN, Vec.UP, Vec.EAST);

  public Frame {
    if (Math.abs(z.dot(x)) > TOLERANCE) {
      throw new IllegalArgumentException("x " + x + " is not square to z " + z);
    }
  }

  /** Axes of the world, another origin. */
  public static Frame at(Vec origin) {
    return new Frame(origin, Vec.UP, Vec.EAST);
  }

  public Vec y() {
    return z.cross(x);
  }

  /** This frame seen from another one. */
  public Frame within(Frame outer) {
    return new Frame(outer.turned(origin.minus(outer.origin)), outer.turned(z), outer.turned(x));
  }

  private Vec turned(Vec world) {
    return new Vec(world.dot(x), world.dot(y()), world.dot(z));
  }
}
