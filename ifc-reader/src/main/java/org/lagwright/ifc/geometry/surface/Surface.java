package org.lagwright.ifc.geometry.surface;

import org.lagwright.ifc.geometry.curve.SampledCurve;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;

/**
 * A surface by two parameters, as ISO 10303-42 defines them; lengths in metres, angles in radians.
 * The normal is the cross product of its tangents along u and along v.
 */
public interface Surface {

  /** Step of the parameters for tangents by differences, over their range. */
  double STEP = 1e-5;

  Vec at(double u, double v);

  default Vec alongU(double u, double v) {
    double h = STEP * rangeU();
    return at(u + h, v).minus(at(u - h, v)).times(0.5 / h);
  }

  default Vec alongV(double u, double v) {
    double h = STEP * rangeV();
    return at(u, v + h).minus(at(u, v - h)).times(0.5 / h);
  }

  /** Parameters of a point on the surface, near to others where several lead there. */
  UV parameters(Vec point, UV near);

  /** After which u leads to the same points again, 0 if it never does. */
  double periodU();

  default double periodV() {
    return 0;
  }

  /** What u usually runs through. */
  default double rangeU() {
    return periodU() > 0 ? periodU() : 1;
  }

  default double rangeV() {
    return periodV() > 0 ? periodV() : 1;
  }

  /** True where all u lead to one point. */
  default boolean isPole(UV at) {
    return false;
  }

  /** The v of the pole towards greater or smaller v; NaN if there is none. */
  default double poleV(boolean greater) {
    return Double.NaN;
  }

  /** A pair of parameters. */
  record UV(double u, double v) {

    UV swapped() {
      return new UV(v, u);
    }
  }

  /** The angle nearest to another one that leads to the same place. */
  static double near(double angle, double other, double period) {
    return period == 0 ? angle : angle + period * Math.rint((other - angle) / period);
  }

  /** A circle of points about z, and the height: cylinders. */
  record Cylinder(Frame frame, double radiusM) implements Surface {
    @Override
    public Vec at(double u, double v) {
      return frame.point(new Vec(radiusM * Math.cos(u), radiusM * Math.sin(u), v));
    }

    @Override
    public UV parameters(Vec point, UV near) {
      Vec p = local(frame, point);
      return new UV(near(Math.atan2(p.y(), p.x()), near.u(), 2 * Math.PI), p.z());
    }

    @Override
    public double periodU() {
      return 2 * Math.PI;
    }
  }

  /** The torus: u goes round the axis, v round the tube. */
  record Torus(Frame frame, double majorM, double minorM) implements Surface {
    @Override
    public Vec at(double u, double v) {
      double r = majorM + minorM * Math.cos(v);
      return frame.point(new Vec(r * Math.cos(u), r * Math.sin(u), minorM * Math.sin(v)));
    }

    @Override
    public UV parameters(Vec point, UV near) {
      Vec p = local(frame, point);
      double v = Math.atan2(p.z(), Math.hypot(p.x(), p.y()) - majorM);
      return new UV(
          near(Math.atan2(p.y(), p.x()), near.u(), 2 * Math.PI), near(v, near.v(), 2 * Math.PI));
    }

    @Override
    public double periodU() {
      return 2 * Math.PI;
    }

    @Override
    public double periodV() {
      return 2 * Math.PI;
    }
  }

  /** The sphere: u is the longitude, v the latitude. */
  record Sphere(Frame frame, double radiusM) implements Surface {
    @Override
    public Vec at(double u, double v) {
      double r = radiusM * Math.cos(v);
      return frame.point(new Vec(r * Math.cos(u), r * Math.sin(u), radiusM * Math.sin(v)));
    }

    @Override
    public UV parameters(Vec point, UV near) {
      Vec p = local(frame, point);
      double v = Math.atan2(p.z(), Math.hypot(p.x(), p.y()));
      double u = isPole(new UV(0, v)) ? near.u() : Math.atan2(p.y(), p.x());
      return new UV(near(u, near.u(), 2 * Math.PI), v);
    }

    @Override
    public double periodU() {
      return 2 * Math.PI;
    }

    @Override
    public double rangeV() {
      return Math.PI;
    }

    @Override
    public boolean isPole(UV at) {
      return Math.PI / 2 - Math.abs(at.v()) < 1e-6;
    }

    @Override
    public double poleV(boolean greater) {
      return greater ? Math.PI / 2 : -Math.PI / 2;
    }
  }

  /** A curve turned about the z axis of a frame: u is the angle, v runs along the curve, metres. */
  record Turned(Frame axis, SampledCurve curve) implements Surface {
    @Override
    public Vec at(double u, double v) {
      Vec c = curve.at(v);
      double cos = Math.cos(u);
      double sin = Math.sin(u);
      return axis.point(new Vec(c.x() * cos - c.y() * sin, c.x() * sin + c.y() * cos, c.z()));
    }

    @Override
    public UV parameters(Vec point, UV near) {
      Vec p = local(axis, point);
      double v = curve.nearestTurned(Math.hypot(p.x(), p.y()), p.z());
      Vec c = curve.at(v);
      double u = Math.atan2(p.y(), p.x()) - Math.atan2(c.y(), c.x());
      return new UV(near(u, near.u(), 2 * Math.PI), v);
    }

    @Override
    public double periodU() {
      return 2 * Math.PI;
    }
  }

  /** A curve moved along a direction: u runs along the curve, v along the direction, metres. */
  record Moved(Frame frame, SampledCurve curve, Vec direction) implements Surface {
    @Override
    public Vec at(double u, double v) {
      return frame.point(curve.at(u).plus(direction.times(v)));
    }

    @Override
    public UV parameters(Vec point, UV near) {
      Vec p = local(frame, point);
      double u = near(curve.nearestAlong(p, direction), near.u(), periodU());
      return new UV(u, p.minus(curve.at(u)).dot(direction));
    }

    @Override
    public double periodU() {
      return curve.isClosed() ? curve.lengthM() : 0;
    }
  }

  /** Coordinates in a frame of unit axes at right angles. */
  private static Vec local(Frame frame, Vec point) {
    Vec off = point.minus(Vec.of(frame.origin()));
    return new Vec(
        off.dot(Vec.of(frame.ex())), off.dot(Vec.of(frame.ey())), off.dot(Vec.of(frame.ez())));
  }
}
