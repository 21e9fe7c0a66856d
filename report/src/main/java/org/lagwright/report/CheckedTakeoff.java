package org.lagwright.report;

import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.clearance.Clearance;
import org.lagwright.takeoff.verify.Coverage;

/**
 * A takeoff with what it is checked for, so that several outputs of one run share one reckoning.
 *
 * @param coverage what the models show as insulated against what is required
 * @param clearance where insulated surfaces do not fit beside each other
 */
public record CheckedTakeoff(Takeoff takeoff, Coverage coverage, Clearance clearance) {

  /** Checks a takeoff. */
  public static CheckedTakeoff of(Takeoff takeoff) {
    return new CheckedTakeoff(takeoff, Coverage.of(takeoff), Clearance.of(takeoff));
  }
}
