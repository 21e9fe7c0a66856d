package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Column generation after Gilmore and Gomory (A linear programming approach to the cutting-stock
 * problem, Operations Research 9, 1961): prices of the sizes come from a linear programme over the
 * columns known so far, the column worth most at these prices from the caller, until none is worth
 * more than a stock piece. In each round several columns are added that share no size, which takes
 * far fewer rounds.
 *
 * @param <C> what a column is
 */
final class ColumnGeneration<C extends Column> {

  private static final int MOST_ROUNDS = 100;

  /** A column must be worth this much more than a stock piece; also guards the rounding. */
  private static final double TOLERANCE = 1e-6;

  private final int[] demand;
  private final List<C> columns;
  private final Function<double[], C> worthMost;
  private double bound;

  /**
   * Generates the columns.
   *
   * @param demand pieces wanted of each size
   * @param start columns that meet every demand
   * @param worthMost the column worth most at prices of the sizes; sizes without price do not count
   */
  ColumnGeneration(int[] demand, List<? extends C> start, Function<double[], C> worthMost) {
    this.demand = demand.clone();
    this.columns = new ArrayList<>(start);
    this.worthMost = worthMost;
    generate();
  }

  /** Stock pieces that no cutting by such columns can do with less than. */
  int lowerBound() {
    return (int) Math.ceil(bound - TOLERANCE);
  }

  /** Columns as often as the programme cuts them whole, rounded down. */
  List<C> wholeColumns() {
    double[] often = solveForColumns();
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
      double[] prices = solveForPrices();
      C best = worthMost.apply(prices);
      double worth = worth(best, prices);
      double all = worthOfDemand(prices);
      bound = Math.max(bound, all / Math.max(1, worth));
      if (worth <= 1 + TOLERANCE || lowerBound() >= Math.ceil(all - TOLERANCE)) {
        return;
      }
      addColumnsApart(best, prices);
    }
  }

  /** The best column, the best without its sizes, and so on while they pay. */
  private void addColumnsApart(C best, double[] prices) {
    double[] left = prices.clone();
    C column = best;
    while (worth(column, left) > 1 + TOLERANCE) {
      columns.add(column);
      for (int size = 0; size < left.length; size++) {
        if (column.count(size) > 0) {
          left[size] = 0;
        }
      }
      column = worthMost.apply(left);
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

  /** Highest total of prices at which no known column is worth more than one stock piece. */
  private double[] solveForPrices() {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> prices = new ArrayList<>();
    for (int size = 0; size < demand.length; size++) {
      prices.add(model.addVariable("p" + size).lower(0).upper(1).weight(demand[size]));
    }
    for (int c = 0; c < columns.size(); c++) {
      Expression worth = model.addExpression("w" + c).upper(1);
      for (int size = 0; size < demand.length; size++) {
        if (columns.get(c).count(size) != 0) {
          worth.set(prices.get(size), columns.get(c).count(size));
        }
      }
    }
    return values(model.maximise(), demand.length);
  }

  /** How often to cut each column so that the demand is met with the least stock pieces. */
  private double[] solveForColumns() {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> often = new ArrayList<>();
    for (int c = 0; c < columns.size(); c++) {
      often.add(model.addVariable("x" + c).lower(0).weight(1));
    }
    for (int size = 0; size < demand.length; size++) {
      Expression made = model.addExpression("d" + size).lower(demand[size]);
      for (int c = 0; c < columns.size(); c++) {
        if (columns.get(c).count(size) != 0) {
          made.set(often.get(c), columns.get(c).count(size));
        }
      }
    }
    return values(model.minimise(), columns.size());
  }

  private static double[] values(Optimisation.Result result, int count) {
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = Math.max(0, result.doubleValue(i));
    }
    return values;
  }
}
