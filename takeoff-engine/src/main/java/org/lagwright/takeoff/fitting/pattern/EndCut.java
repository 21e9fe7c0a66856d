package org.lagwright.takeoff.fitting.pattern;

import java.util.List;

/**
 * How one end of a tube is cut: how far the tube reaches beyond a reference point on its axis, at
 * each point of the cross-section. One function gives the edge on the outer face and on the bore.
 */
public sealed interface EndCut {

  /**
   * Reach beyond the reference point, metres; negative where the tube ends before it.
   *
   * @param at point of the cross-section, +x towards the heel or the acute side
   */
  double reachM(FlatPoint at);

  /** A cut square to the axis at the reference point. */
  EndCut SQUARE = new Planes(List.of(0.0));

  /**
   * Plane cuts through the reference point, all square to the plane of the fitting: mitres of
   * bends, points and notches of tees, crosses and wyes of equal tubes. Of several planes each cuts
   * away its part.
   *
   * @param slopes how fast each plane moves along the tube towards +x; the tube keeps what lies
   *     beyond all of them
   */
  record Planes(List<Double> slopes) implements EndCut {

    public Planes {
      slopes = List.copyOf(slopes);
      if (slopes.isEmpty() || !slopes.stream().allMatch(Double::isFinite)) {
        throw new IllegalArgumentException("plane cuts need finite slopes, not " + slopes);
      }
    }

    @Override
    public double reachM(FlatPoint at) {
      double deepest = Double.NEGATIVE_INFINITY;
      for (double slope : slopes) {
        deepest = Math.max(deepest, slope * at.xM());
      }
      return -deepest;
    }
  }

  /**
   * The mitre of a bend: longest at the heel.
   *
   * @param offSquareRad angle between the cut and a square one, radians
   */
  static EndCut mitre(double offSquareRad) {
    return new Planes(List.of(-Math.tan(offSquareRad)));
  }

  /**
   * The end of a tube that meets tubes of its own size in one point: cut along the planes half way
   * to each of them.
   *
   * @param towardsRad angle to each neighbour in the plane of the fitting, from this tube, positive
   *     towards +x, within a half turn, not 0
   */
  static EndCut halfWayTo(double... towardsRad) {
    Double[] slopes = new Double[towardsRad.length];
    for (int i = 0; i < towardsRad.length; i++) {
      slopes[i] = 1 / Math.tan(towardsRad[i] / 2);
    }
    return new Planes(List.of(slopes));
  }

  /**
   * The saddle of a branch on the outer face of a round main. The reference point is where the axis
   * of the branch passes the axis of the main.
   *
   * <p>reach = -(sqrt(a^2 - (e + z)^2) + x cos(beta)) / sin(beta). Derived from the intersection of
   * two cylinders.
   *
   * @param mainRadiusM outer radius a of the main, metres
   * @param offsetM distance e of the two axes, metres
   * @param angleRad angle beta between the axes, above 0, at most a right angle
   */
  record Saddle(double mainRadiusM, double offsetM, double angleRad) implements EndCut {

    public Saddle {
      if (!(mainRadiusM > 0) || !(angleRad > 0 && angleRad <= Math.PI / 2 + 1e-12)) {
        throw new IllegalArgumentException(
            "no saddle on radius " + mainRadiusM + " at angle " + angleRad);
      }
    }

    @Override
    public double reachM(FlatPoint at) {
      double acrossM = offsetM + at.yM();
      double heightM = Math.sqrt(Math.max(0, mainRadiusM * mainRadiusM - acrossM * acrossM));
      return -(heightM + at.xM() * Math.cos(angleRad)) / Math.sin(angleRad);
    }
  }
}
