package org.lagwright.takeoff.fitting.pattern;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Integrals of functions that are smooth between known breaks. Fixed composite Gauss-Legendre rule;
 * the ends of panels are never evaluated, so a kink or a 0/0 at a break does no harm.
 */
final class Quadrature {

  private static final int NODES = 24;
  private static final int PANELS = 4;
  private static final GaussIntegratorFactory RULES = new GaussIntegratorFactory();

  private Quadrature() {}

  /** Integral over all intervals between neighbouring breaks. */
  static double over(List<Double> breaks, DoubleUnaryOperator f) {
    double sum = 0;
    for (int i = 1; i < breaks.size(); i++) {
      sum += between(breaks.get(i - 1), breaks.get(i), f);
    }
    return sum;
  }

  /** Integral over one interval without breaks. */
  static double between(double from, double to, DoubleUnaryOperator f) {
    double step = (to - from) / PANELS;
    double sum = 0;
    for (int i = 0; i < PANELS; i++) {
      sum += panel(from + i * step, from + (i + 1) * step, f);
    }
    return sum;
  }

  /** Integral over one short interval. */
  static double panel(double from, double to, DoubleUnaryOperator f) {
    if (from == to) {
      return 0;
    }
    GaussIntegrator rule = RULES.legendre(NODES, from, to);
    return rule.integrate(f::applyAsDouble);
  }
}
