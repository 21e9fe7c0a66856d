package org.lagwright.ifc.model;

import java.util.Locale;

/** What an element is, as far as the takeoff cares. */
public enum Kind {
  PIPE_SEGMENT,
  PIPE_FITTING,
  DUCT_SEGMENT,
  DUCT_FITTING,
  VALVE,
  /** Sits in the line and is lagged with it: strainer, damper, meter, pump body, silencer. */
  INLINE,
  /** Boilers, chillers, tanks, exchangers, air handling units. */
  EQUIPMENT,
  /** Radiators, air terminals, taps: where a service ends. */
  TERMINAL,
  /** Existing insulation, jackets, sleeves modelled as objects. */
  COVERING,
  /** Neither pipe nor duct nor part of one: cables, trays, hangers, proxies. */
  OTHER;

  /** True for the straight parts of pipes and ducts. */
  public boolean isSegment() {
    return this == PIPE_SEGMENT || this == DUCT_SEGMENT;
  }

  /** True for straight pieces and fittings of pipes. */
  public boolean isOfPipe() {
    return this == PIPE_SEGMENT || this == PIPE_FITTING;
  }

  /** True for pipe and duct fittings. */
  public boolean isFitting() {
    return this == PIPE_FITTING || this == DUCT_FITTING;
  }

  /** True for what is lagged in the line and counted: fittings, valves, inline items. */
  public boolean isLaggedItem() {
    return isFitting() || this == VALVE || this == INLINE;
  }

  /** True for everything that gets pipe or duct insulation: segments and lagged items. */
  public boolean isLagged() {
    return isSegment() || isLaggedItem();
  }

  /** The name used in files we write: {@code pipe-segment}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
