package org.lagwright.report.bcf;

import java.util.List;
import java.util.stream.Stream;
import org.lagwright.ifc.model.Point;

/**
 * A parallel view onto some elements from above, at a slant, seen towards north-east.
 *
 * @param eye where the camera stands, metres
 * @param heightM height of what is seen, metres
 */
record View(Point eye, double heightM) {

  /** Width over height of the picture. */
  static final double ASPECT = 4.0 / 3;

  /** Into the picture: down by about 30 degrees. */
  static final Point DIRECTION = unit(1, 1, -0.8);

  static final Point RIGHT = unit(1, -1, 0);
  static final Point UP = cross(RIGHT, DIRECTION);

  private static final double LEAST_M = 4;

  /** What is around the elements should be seen too. */
  private static final double AROUND = 1.3;

  /** How far before the middle the camera stands, over what is seen. */
  private static final double BACK = 2;

  /** The view that shows these elements; the list must not be empty. */
  static View of(List<Trunk> trunks) {
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    trunks.stream()
        .flatMap(
            trunk ->
                Stream.concat(
                    Stream.of(trunk.middle()),
                    trunk.lines().stream().flatMap(l -> Stream.of(l.from(), l.to()))))
        .forEach(
            point -> {
              double[] at = {dot(point, RIGHT), dot(point, UP), dot(point, DIRECTION)};
              for (int i = 0; i < at.length; i++) {
                low[i] = Math.min(low[i], at[i]);
                high[i] = Math.max(high[i], at[i]);
              }
            });
    double heightM =
        AROUND * Math.max(LEAST_M, Math.max(high[1] - low[1], (high[0] - low[0]) / ASPECT));
    double back = low[2] - BACK * heightM;
    double right = (low[0] + high[0]) / 2;
    double up = (low[1] + high[1]) / 2;
    return new View(sum(right, up, back), heightM);
  }

  /** The point so far to the right, up and into the picture. */
  private static Point sum(double right, double up, double into) {
    return new Point(
        right * RIGHT.x() + up * UP.x() + into * DIRECTION.x(),
        right * RIGHT.y() + up * UP.y() + into * DIRECTION.y(),
        right * RIGHT.z() + up * UP.z() + into * DIRECTION.z());
  }

  /** Metres to the right of the middle of the picture. */
  double right(Point point) {
    return dot(point, RIGHT) - dot(eye, RIGHT);
  }

  /** Metres above the middle of the picture. */
  double up(Point point) {
    return dot(point, UP) - dot(eye, UP);
  }

  private static double dot(Point a, Point b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }

  private static Point cross(Point a, Point b) {
    return unit(
        a.y() * b.z() - a.z() * b.y(),
        a.z() * b.x() - a.x() * b.z(),
        a.x() * b.y() - a.y() * b.x());
  }

  private static Point unit(double x, double y, double z) {
    double norm = Math.sqrt(x * x + y * y + z * z);
    return new Point(x / norm, y / norm, z / norm);
  }
}
