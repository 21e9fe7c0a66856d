package org.lagwright.takeoff.clearance;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.order.JacketRule;

/** Which elements get a jacket by the settings. */
final class Jackets {

  private final List<JacketRule> rules;
  private final Map<String, TakeoffLine> lines = new HashMap<>();

  Jackets(Takeoff takeoff) {
    this.rules = takeoff.settings().order().jacketRules();
    takeoff.lines().forEach(line -> lines.put(line.id(), line));
  }

  boolean has(TakenElement taken) {
    TakeoffLine line = taken.lineId() == null ? null : lines.get(taken.lineId());
    return line != null && JacketRule.find(rules, line.location(), line.serviceId()).isPresent();
  }
}
