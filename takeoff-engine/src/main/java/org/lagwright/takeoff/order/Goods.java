package org.lagwright.takeoff.order;

import java.util.Locale;

/** What an item of the order is, in the order in which items are listed. */
public enum Goods {
  TUBE("tube"),
  SECTION("pipe section"),
  SHEET("sheet"),
  INSERT("load-bearing insert"),
  ADHESIVE("adhesive"),
  CLEANER("cleaner"),
  TAPE("joint tape"),
  SEALANT("sealant"),
  WIRE("binding wire"),
  PIN("insulation pin"),
  JACKET("jacket"),
  BAND("jacket band"),
  FIXING("jacket screw or rivet");

  private final String words;

  Goods(String words) {
    this.words = words;
  }

  /** In words. */
  public String words() {
    return words;
  }

  /** The name used in files we write: {@code tube}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
