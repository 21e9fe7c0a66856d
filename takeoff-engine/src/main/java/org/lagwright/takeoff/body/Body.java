package org.lagwright.takeoff.body;

import java.util.List;
import java.util.Objects;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.Direction;

/** A body of insulation in the world, metres. */
public sealed interface Body {

  /** Volume in closed form, cubic metres. */
  double volumeM3();

  /** A ring pushed along its axis. */
  record Prism(Ring ring, Pose pose, double lengthM) implements Body {

    public Prism {
      requirePositive(lengthM, "length");
    }

    @Override
    public double volumeM3() {
      return ring.areaM2() * lengthM;
    }
  }

  /**
   * A ring turned about an axis in its plane, beyond its outer face: Pappus' theorem holds.
   *
   * @param toCentre unit vector in the plane of the ring, from its middle to that axis
   * @param radiusM from the middle of the ring to that axis
   */
  record Turn(Ring ring, Pose pose, Point toCentre, double radiusM, double angleRad)
      implements Body {

    public Turn {
      requirePositive(radiusM, "radius");
      requirePositive(angleRad, "angle");
    }

    @Override
    public double volumeM3() {
      return ring.areaM2() * radiusM * angleRad;
    }
  }

  /**
   * A ring that becomes another one of the same shape along its axis.
   *
   * @param offsetUM where the middle of the other one lies, along the width
   * @param offsetVM likewise, along the height
   */
  record Taper(Ring ring, Ring end, Pose pose, double lengthM, double offsetUM, double offsetVM)
      implements Body {

    private static final double SAME_M = 1e-4;

    public Taper {
      requirePositive(lengthM, "length");
    }

    /** True where both ends are on one axis. */
    public boolean isConcentric() {
      return Math.hypot(offsetUM, offsetVM) < SAME_M;
    }

    /** The same in flat faces, its volume within 0.3 %. */
    public Facets faceted() {
      Pose there = new Pose(pose.point(offsetUM, offsetVM, lengthM), pose.frame());
      return FacetMaker.sweep(
          List.of(pose, there),
          List.of(Outline.onCircle(ring.outer()), Outline.onCircle(end.outer())),
          List.of(Outline.onCircle(inner(ring)), Outline.onCircle(inner(end))),
          true);
    }

    private static Section inner(Ring ring) {
      return Objects.requireNonNull(ring.inner(), "a tapered body is hollow");
    }

    /** Exact, as the area is of second degree along the axis. */
    @Override
    public double volumeM3() {
      double middleM2 = ring.meanWith(end).areaM2();
      return lengthM / 6 * (ring.areaM2() + 4 * middleM2 + end.areaM2());
    }
  }

  /**
   * A closed body of flat faces.
   *
   * @param corners its corners
   * @param faces corners of each face by their place in the list, from 0, counterclockwise from
   *     outside
   */
  record Facets(List<Point> corners, List<List<Integer>> faces) implements Body {

    public Facets {
      corners = List.copyOf(corners);
      faces = List.copyOf(faces);
    }

    @Override
    public double volumeM3() {
      Point tip = corners.get(0);
      double six = 0;
      for (List<Integer> face : faces) {
        Point first = Direction.between(tip, corners.get(face.get(0)));
        for (int i = 1; i + 1 < face.size(); i++) {
          Point a = Direction.between(tip, corners.get(face.get(i)));
          Point b = Direction.between(tip, corners.get(face.get(i + 1)));
          six += Direction.dot(first, Direction.cross(a, b));
        }
      }
      return six / 6;
    }
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException("a body needs a " + what + " above 0, not " + value);
    }
  }
}
