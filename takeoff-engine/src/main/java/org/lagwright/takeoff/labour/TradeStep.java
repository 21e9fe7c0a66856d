package org.lagwright.takeoff.labour;

/** Steps of the trade that hours are divided over. */
public enum TradeStep {
  MEASURE_AND_CUT("measure and cut"),
  FIT("fit"),
  GLUE_AND_SEAL("glue and seal"),
  JACKET("jacket");

  private final String words;

  TradeStep(String words) {
    this.words = words;
  }

  /** In words. */
  public String words() {
    return words;
  }
}
