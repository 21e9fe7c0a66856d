package org.lagwright.takeoff.order;

/**
 * What a cutting plan buys, divided. An allowance is taken from usable rests first, then from the
 * other offcuts; only what is still missing is bought in addition.
 *
 * @param wasteQuantity offcuts that neither are usable nor serve the allowance
 * @param packs stock pieces to buy
 */
record Planned(double wasteQuantity, int packs) {

  /**
   * Divides what is bought.
   *
   * @param pieces stock pieces of the plan
   * @param net what is cut and used
   * @param usable rests that can be used again
   * @param allowance what the settings add
   */
  static Planned of(int pieces, PackSize pack, double net, double usable, double allowance) {
    double offcuts = Math.max(0, pieces * pack.contents() - net - usable);
    double missing = Math.max(0, allowance - usable);
    double waste = Math.max(0, offcuts - missing);
    return new Planned(waste, Math.max(pieces, pack.countFor(net + waste + allowance)));
  }
}
