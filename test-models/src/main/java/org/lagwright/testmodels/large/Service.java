package org.lagwright.testmodels.large;

/** What flows in a line; the sizes it comes in follow from that. Invented. */
enum Service {
  HEATING_FLOW("Heating flow", "HEATING"),
  HEATING_RETURN("Heating return", "HEATING"),
  SUPPLY_AIR("Supply air", "VENTILATION"),
  CHILLED_FLOW("Chilled water flow", "CHILLEDWATER"),
  CHILLED_RETURN("Chilled water return", "CHILLEDWATER"),
  EXTRACT_AIR("Extract air", "VENTILATION"),
  HOT_WATER("Domestic hot water", "DOMESTICHOTWATER"),
  COLD_WATER("Domestic cold water", "DOMESTICCOLDWATER");

  /** The words at the beginning of the name of each of its systems. */
  final String words;

  /** IfcDistributionSystemEnum value. */
  final String predefined;

  Service(String words, String predefined) {
    this.words = words;
    this.predefined = predefined;
  }

  boolean isAir() {
    return predefined.equals("VENTILATION");
  }
}
