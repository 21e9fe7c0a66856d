package org.lagwright.report;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.Takeoff;

/** What of the models no price covers: nobody is to take the price of a part for that of all. */
public final class NotPriced {

  private NotPriced() {}

  /** One sentence: how many elements are in no quantity, and how many have no material. */
  public static String inWords(Takeoff takeoff) {
    int leftOut = takeoff.totals().leftOut();
    int onSite = takeoff.order().withoutPieces().size();
    if (leftOut == 0 && onSite == 0) {
      return "No element is left out of this price.";
    }
    List<String> missing = new ArrayList<>();
    if (leftOut > 0) {
      missing.add(Words.counted(leftOut, "element") + " left out (sheet Scope)");
    }
    if (onSite > 0) {
      missing.add("material of " + Words.counted(onSite, "element") + " cut on site");
    }
    return "NOT in this price: " + String.join("; ", missing) + ".";
  }
}
