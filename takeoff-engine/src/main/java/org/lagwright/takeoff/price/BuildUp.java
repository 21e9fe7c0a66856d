package org.lagwright.takeoff.price;

import org.lagwright.takeoff.price.PriceTerms.Profit;

/**
 * A price from its parts: ((materials + labour and tools) x (1 + overhead)) x (1 + markup), or
 * divided by (1 - margin); tax on top. Common practice of the trade, no source.
 *
 * @param netMaterials what ends up on the pipes
 * @param beyondNet waste, allowances and rests of packs
 * @param hours of labour
 * @param terms rates and percentages
 */
public record BuildUp(double netMaterials, double beyondNet, double hours, PriceTerms terms) {

  private static final double PERCENT = 100;

  /** All materials bought. */
  public double materials() {
    return netMaterials + beyondNet;
  }

  /** Hours times their rate. */
  public double labour() {
    return hours * terms.labourRatePerH();
  }

  /** Small tools and consumables. */
  public double tools() {
    return labour() * terms.toolsPct() / PERCENT;
  }

  /** Materials, labour and tools. */
  public double prime() {
    return materials() + labour() + tools();
  }

  /** Overhead on all of these. */
  public double overhead() {
    return prime() * terms.overheadPct() / PERCENT;
  }

  /** Everything it costs. */
  public double cost() {
    return prime() + overhead();
  }

  /** Profit on the cost. */
  public double profit() {
    return beforeTax() - cost();
  }

  /** The price without tax. */
  public double beforeTax() {
    double share = terms.profitPct() / PERCENT;
    return terms.profit() == Profit.MARGIN ? cost() / (1 - share) : cost() * (1 + share);
  }

  /** Tax on the price. */
  public double tax() {
    return beforeTax() * terms.taxPct() / PERCENT;
  }

  /** The price with tax. */
  public double total() {
    return beforeTax() + tax();
  }
}
