package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Access1D;

/**
 * Column generation after Gilmore and Gomory (A linear programming approach to the cutting-stock
 * problem, Operations Research 9, 1961): prices of the sizes come from a linear programme over the
 * columns known so far, the column worth most at these prices from the caller, until none is worth
 * more than a stock piece. In each round several columns are added that share no size, and prices
 * are drawn towards those that proved the best bound (Wentges, Weighted Dantzig-Wolfe decomposition
 * for linear mixed-integer programming, International Transactions in Operational Research 4, 1997;
 * from memory): both take far fewer rounds.
 *
 * @param <C> what a column is
 */
final class ColumnGeneration<C extends Column> {

  private static final int MOST_ROUNDS = 100;

  /** A column must be worth this much more than a stock piece; also guards the rounding. */
  private static final double TOLERANCE = 1e-6;

  /** Share of the prices of the best bound in those at which columns are looked for. */
  private static final double STEADINESS = 0.5;

  private final int[] demand;
  private final List<C> columns;
  private final Function<double[], C> worthMost;
  private final int enough;
  private double bound;
  private final double[] boundPrices;
  private double[] often = {};

  /**
   * Generates the columns.
   *
   * @param demand pieces wanted of each size
   * @param start columns that meet every demand
   * @param worthMost the column worth most at prices of the sizes; sizes without price do not count
   * @param enough a bound from which on no further column is of use, as so few are already known
   */
  ColumnGeneration(
      int[] demand, Collection<? extends C> start, Function<double[], C> worthMost, int enough) {
    this.demand = demand.clone();
    this.columns = new ArrayList<>(start);
    this.worthMost = worthMost;
    this.enough = enough;
    this.boundPrices = new double[demand.length];
    generate();
  }

  /** Stock pieces that no cutting by such columns can do with less than. */
  int lowerBound() {
    return (int) Math.ceil(bound - TOLERANCE);
  }

  /** Columns as often as the programme cuts them whole, rounded down. */
  List<C> wholeColumns() {
    List<C> whole = new ArrayList<>();
    for (int c = 0; c < often.length; c++) {
      for (int times = (int) Math.floor(often[c] + TOLERANCE); times > 0; times--) {
        whole.add(columns.get(c));
      }
    }
    return whole;
  }

  private void generate() {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] prices = solve();
      double[] steady = steady(prices, round);
      C best = worthMost.apply(steady);
      prove(best, steady);
      if (worth(best, prices) <= 1 + TOLERANCE) {
        steady = prices;
        best = worthMost.apply(prices);
        prove(best, prices);
      }
      boolean closed = lowerBound() >= Math.ceil(worthOfDemand(prices) - TOLERANCE);
      if (closed || lowerBound() >= enough || worth(best, prices) <= 1 + TOLERANCE) {
        return;
      }
      addColumnsApart(best, steady, prices);
    }
  }

  private double[] steady(double[] prices, int round) {
    double share = round == 0 ? 0 : STEADINESS;
    double[] steady = new double[prices.length];
    for (int size = 0; size < prices.length; size++) {
      steady[size] = share * boundPrices[size] + (1 - share) * prices[size];
    }
    return steady;
  }

  /**
   * Prices at which no column is worth more than a stock piece prove that the demand takes as many
   * stock pieces as it is worth; any prices do, divided by what the best column is worth.
   */
  private void prove(C best, double[] prices) {
    double worth = Math.max(1, worth(best, prices));
    double proven = worthOfDemand(prices) / worth;
    if (proven > bound) {
      bound = proven;
      for (int size = 0; size < prices.length; size++) {
        boundPrices[size] = prices[size] / worth;
      }
    }
  }

  /**
   * The best column, the best without its sizes, and so on while they pay.
   *
   * @param at prices at which they are looked for
   * @param prices prices at which they must pay
   */
  private void addColumnsApart(C best, double[] at, double[] prices) {
    double[] leftAt = at.clone();
    double[] left = prices.clone();
    C column = best;
    while (worth(column, left) > 1 + TOLERANCE) {
      columns.add(column);
      for (int size = 0; size < left.length; size++) {
        if (column.count(size) > 0) {
          leftAt[size] = 0;
          left[size] = 0;
        }
      }
      column = worthMost.apply(leftAt);
    }
  }

  private static double worth(Column column, double[] prices) {
    double worth = 0;
    for (int size = 0; size < prices.length; size++) {
      worth += column.count(size) * prices[size];
    }
    return worth;
  }

  private double worthOfDemand(double[] prices) {
    double worth = 0;
    for (int size = 0; size < prices.length; size++) {
      worth += demand[size] * prices[size];
    }
    return worth;
  }

  /**
   * How often to cut each column so that the demand is met with the least stock pieces, and the
   * prices: what one more piece of each size would take.
   */
  private double[] solve() {
    double[] cost = new double[columns.size()];
    Arrays.fill(cost, 1);
    LinearSolver.Builder programme = LinearSolver.newBuilder(cost);
    for (int size = 0; size < demand.length; size++) {
      double[] lessMade = new double[columns.size()];
      for (int c = 0; c < lessMade.length; c++) {
        lessMade[c] = -columns.get(c).count(size);
      }
      programme.inequality(-demand[size], lessMade);
    }
    Optimisation.Options options = new Optimisation.Options();
    options.linear().dual();
    Optimisation.Result result = programme.build(options).solve();
    often = values(result, columns.size());
    return values(result.getDualSolution().orElseThrow().get(), demand.length);
  }

  private static double[] values(Access1D<?> solution, int count) {
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = Math.max(0, solution.doubleValue(i));
    }
    return values;
  }
}
