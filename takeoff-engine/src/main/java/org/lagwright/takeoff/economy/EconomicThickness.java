package org.lagwright.takeoff.economy;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/** The thickness at which insulation and heat together cost least per year. */
public final class EconomicThickness {

  private static final double RELATIVE_ACCURACY = 1e-5;
  private static final double ACCURACY_M = 1e-6;
  private static final int MAX_EVALUATIONS = 500;

  private EconomicThickness() {}

  /**
   * Share of an investment that is paid each year: i (1 + i)^n/((1 + i)^n - 1), or 1/n without
   * interest. Source: VDI 2055 and every textbook of engineering economy.
   *
   * @param interest per year, 0 or more: 0.05
   * @param years of use, above 0
   */
  public static double annuity(double interest, double years) {
    if (!(interest >= 0 && years > 0)) {
      throw new IllegalArgumentException(
          "interest must be 0 or more and years above 0, not " + interest + " and " + years + ".");
    }
    return interest == 0 ? 1 / years : interest / -Math.expm1(-years * Math.log1p(interest));
  }

  /**
   * The thickness of least cost.
   *
   * @param costPerYear by thickness in metres; with one minimum
   * @param fromM thinnest looked at, metres
   * @param toM thickest looked at, metres
   * @return metres
   */
  public static double leastCostM(DoubleUnaryOperator costPerYear, double fromM, double toM) {
    return new BrentOptimizer(RELATIVE_ACCURACY, ACCURACY_M)
        .optimize(
            new MaxEval(MAX_EVALUATIONS),
            GoalType.MINIMIZE,
            new UnivariateObjectiveFunction(costPerYear::applyAsDouble),
            new SearchInterval(fromM, toM))
        .getPoint();
  }
}
