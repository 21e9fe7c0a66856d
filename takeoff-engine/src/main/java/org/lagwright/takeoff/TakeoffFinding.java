package org.lagwright.takeoff;

import org.lagwright.ifc.model.FindingCode;

/** What the takeoff can notice. Names are stable; the README lists them. */
public enum TakeoffFinding implements FindingCode {
  SERVICE_UNKNOWN(Severity.WARNING, "{0}. {1}, or map it under 'services' in the settings."),
  SERVICE_CONTRADICTION(
      Severity.WARNING,
      "Votes contradict: {0} against {1}. The colder reading is used for condensation. Ask the"
          + " designer which is right."),
  STEAM_PRESSURE_ASSUMED(
      Severity.INFO,
      "The steam pressure {0} in '{1}' says neither gauge nor absolute; gauge is taken, {2} saturated."
          + " Set its temperature under 'temperaturesC' in the settings if that is wrong."),
  TEMPERATURE_NOT_USED(
      Severity.WARNING,
      "The model tells {0} by {1}, but no {2} is that warm or cold, so it is not used. Ask the designer"
          + " whether the service or the temperature is wrong."),
  TEMPERATURE_CONFLICT(
      Severity.WARNING,
      "Temperature {0} is used ({1}), but the model also says {2}. Ask the designer which holds."),
  STATUS_CONFLICT(
      Severity.WARNING,
      "Its status is taken to be '{0}', but {2} says '{1}'. Ask the designer whether it is new, there"
          + " already or to be demolished."),
  MAPPING_WITHOUT_EFFECT(
      Severity.WARNING,
      "The settings map '{0}' under '{1}', but {2}. Check the spelling and the order."),
  MAPPING_OVERRULES(
      Severity.INFO,
      "The mapping of '{0}' to {1} overrules what the model says of {2} elements, such as {3}. Check"
          + " that they are meant."),
  LOCATION_ASSUMED(
      Severity.INFO,
      "The air around {0} elements on lines is assumed to be that of location class {1}, as neither"
          + " the model nor 'places' tells. Map names of storeys, spaces or systems under 'places'."),
  SCOPE_UNDECIDED(
      Severity.WARNING,
      "{0}. In the settings, map its name to a service under 'services', or set 'in' or 'out' for"
          + " {1} under 'scope'."),
  SIZE_UNKNOWN(
      Severity.WARNING,
      "No size could be measured or read, so no thickness can be chosen. Ask the designer for the"
          + " size."),
  LENGTH_UNKNOWN(
      Severity.WARNING, "No length could be measured or read. Measure it on the drawing."),
  SIZE_IMPLAUSIBLE(
      Severity.ERROR,
      "{0} is beyond what is built ({1}), so nothing is reckoned with it. Check the length unit of the"
          + " file, then the element on the drawing."),
  EQUIPMENT_BY_DRAWING(
      Severity.INFO,
      "Insulation of apparatus is not measured from the model. Take this one, on {0}, off its"
          + " drawing."),
  NO_STOCK_THICKNESS(
      Severity.ERROR,
      "{0} of insulation needed, which no stock build-up of {1} reaches. Choose another material in"
          + " the settings."),
  CONDENSATION_OUT_OF_REACH(
      Severity.ERROR,
      "No thickness keeps the surface of {0} above the dew point with the margin in this air ({1})."
          + " Change the air of the location or the margin in the settings, or accept condensation."),
  DEMAND_OUT_OF_REACH(
      Severity.ERROR,
      "No thickness up to 1 m meets the {0} demand on {1}. Change what the settings ask for, or choose"
          + " another material."),
  VAPOUR_BARRIER_NEEDED(
      Severity.INFO,
      "{0} on {1} needs a separate vapour barrier without a gap, at joints, hangers and ends too."),
  NO_STOCK_BORE(
      Severity.INFO,
      "No stock bore of {0} goes over {1}, so sheet is taken. Choose another material, or name the"
          + " stock you buy under 'catalogue' in the settings."),
  ENERGY_RULE_SILENT(
      Severity.WARNING,
      "The energy rule {0} says nothing on {1} with {2}; the other demands decide (elements: {3}). Ask"
          + " what the local code asks for, and set it under 'demands: specification' or"
          + " 'thicknessesMm'."),
  BURIED_IN_SOIL(
      Severity.WARNING,
      "{0} in the ground, taken in by the settings: heat flow through soil of {2} to the axis {1}"
          + " deep, no condensation, no touch. The insulation must stand water and load; ask the"
          + " engineer whether pre-insulated pipe is meant."),
  BELOW_CRITICAL_RADIUS(
      Severity.WARNING,
      "{0} of insulation let more heat through here than none: the pipe is thinner than the critical"
          + " radius. Ask the engineer whether it is wanted."),
  SPECIFICATION_SILENT(
      Severity.WARNING,
      "The specification in the settings has no row for {0}, {1}, {2}. The other demands decide; ask"
          + " the engineer."),
  MATERIAL_LIMIT(
      Severity.ERROR,
      "{0} lies outside the service range of {1} ({2}). Choose another material in the"
          + " settings."),
  NO_INSULATION_NEEDED(
      Severity.INFO,
      "Every demand on {0} ({1}) is met without insulation, so it is out of scope. Set a thickness"
          + " for {2} in the settings if it is lagged all the same."),
  FITTING_SIZE_ASSUMED(
      Severity.INFO,
      "Pieces and area rest on assumed dimensions: {0}. Measure the body on site before cutting, or"
          + " change the limits under 'making' in the settings."),
  WIDTH_ASSUMED(
      Severity.INFO,
      "The covers of {0} elements rest on what no model tells: {1}. Measure on site before cutting,"
          + " or change that limit under 'making' in the settings."),
  ADHESIVE_LIMIT(
      Severity.WARNING,
      "{0} of {1} is hotter than the adhesive stands ({2}, unverified unless it is yours). Choose"
          + " another adhesive and set 'adhesiveLimitC' under 'making', or hold the insulation without"
          + " adhesive."),
  LABOUR_NORM_MISSING(
      Severity.WARNING,
      "No labour norm covers {0}, so its hours are missing. Add a row to your norms, key 'labour' in"
          + " the settings."),
  HEIGHT_UNKNOWN(
      Severity.INFO,
      "The height above the floor is not known for {0} elements on lines; their hours carry no factor"
          + " for it."),
  PRICE_MISSING(
      Severity.WARNING,
      "The price list has no price for {0}; the total lacks it. Add a row to the list, with its unit"
          + " {1} or pack."),
  ALREADY_INSULATED(
      Severity.INFO,
      "The model already shows insulation here ({0}). The takeoff still counts what is required;"
          + " check before ordering."),
  COVERING_WITHOUT_BODY(
      Severity.INFO,
      "In the enriched model the covering of this element has no body: {0}. Its quantities and"
          + " material are there; draw it by hand if it must be seen."),
  NO_DEMAND(
      Severity.WARNING,
      "No demand applies to {0} ({1}). Choose an energy rule, or set a thickness or 'out' for {2} in"
          + " the settings.");

  private final Severity severity;
  private final String template;

  TakeoffFinding(Severity severity, String template) {
    this.severity = severity;
    this.template = template;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public String template() {
    return template;
  }
}
