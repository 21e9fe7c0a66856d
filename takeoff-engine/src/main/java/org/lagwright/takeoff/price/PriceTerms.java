package org.lagwright.takeoff.price;

/**
 * What the user reckons a price with.
 *
 * @param currency word behind money: {@code EUR}
 * @param labourRatePerH cost of one hour
 * @param toolsPct small tools and consumables, percent of the cost of labour
 * @param overheadPct percent of all cost before it
 * @param profitPct percent, see {@code profit}
 * @param profit what the percentage is of
 * @param taxPct percent of the price
 * @param list the user's prices
 */
public record PriceTerms(
    String currency,
    double labourRatePerH,
    double toolsPct,
    double overheadPct,
    double profitPct,
    Profit profit,
    double taxPct,
    PriceList list) {

  /** What a percentage of profit is of. */
  public enum Profit {
    /** Of the cost. */
    MARKUP("markup on cost"),
    /** Of the price. */
    MARGIN("margin in the price");

    private final String words;

    Profit(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  public PriceTerms {
    if (!(labourRatePerH >= 0 && Double.isFinite(labourRatePerH))) {
      throw new IllegalArgumentException("labourRatePerH must be 0 or more.");
    }
    requirePercent("toolsPct", toolsPct, 1000);
    requirePercent("overheadPct", overheadPct, 1000);
    requirePercent("taxPct", taxPct, 100);
    if (profit == Profit.MARGIN) {
      requirePercent("marginPct", profitPct, 99);
    } else {
      requirePercent("markupPct", profitPct, 1000);
    }
  }

  private static void requirePercent(String name, double percent, double most) {
    if (!(percent >= 0 && percent <= most)) {
      throw new IllegalArgumentException(
          name + " must lie between 0 and " + Math.round(most) + ", was " + percent + ".");
    }
  }
}
