package org.lagwright.testmodels.ifc;

/** A point in millimetres or a direction. */
public record Vec(double x, double y, double z) {

  public static final Vec ORIGIN = new Vec(0, 0, 0);
  public static final Vec EAST = new Vec(1, 0, 0);
  public static final Vec WEST = new Vec(-1, 0, 0);
  public static final Vec NORTH = new Vec(0, 1, 0);
  public static final Vec SOUTH = new Vec(0, -1, 0);
  public static final Vec UP = new Vec(0, 0, 1);
  public static final Vec DOWN = new Vec(0, 0, -1);

  public Vec plus(Vec other) {
    return new Vec(x + other.x, y + other.y, z + other.z);
  }

  public Vec minus(Vec other) {
    return plus(other.times(-1));
  }

  public Vec times(double factor) {
    return new Vec(x * factor, y * factor, z * factor);
  }

  public double dot(Vec other) {
    return x * other.x + y * other.y + z * other.z;
  }

  public Vec cross(Vec other) {
    return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  /** The same direction with length 1. */
  public Vec unit() {
    return times(1 / length());
  }
}
