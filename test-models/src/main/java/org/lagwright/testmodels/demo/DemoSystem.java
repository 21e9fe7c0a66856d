package org.lagwright.testmodels.demo;

/** The systems of the terminal. */
public enum DemoSystem {
  CHILLED_FLOW("CHW-F", "Chilled water flow", "CHILLEDWATER", true),
  CHILLED_RETURN("CHW-R", "Chilled water return", "CHILLEDWATER", false),
  HEATING_FLOW("HTG-F", "Heating flow", "HEATING", true),
  HEATING_RETURN("HTG-R", "Heating return", "HEATING", false),
  HOT_WATER("DHW", "Domestic hot water", "DOMESTICHOTWATER", true),
  CIRCULATION("DHW-C", "Domestic hot water circulation", "DOMESTICHOTWATER", false),
  COLD_WATER("DCW", "Domestic cold water", "DOMESTICCOLDWATER", true),
  SUCTION("REF-S", "Refrigerant suction line", "REFRIGERATION", false),
  CONDENSATE("CON", "Condensate drain", "DRAINAGE", true),
  SUPPLY_AIR("SUP", "Supply air", "VENTILATION", true),
  EXTRACT_AIR("EXT", "Extract air", "VENTILATION", false),
  OUTDOOR_AIR("ODA", "Outdoor air", "VENTILATION", false),
  /** A deliberate flaw: nothing tells what flows in it. */
  NAMELESS("?", "?", "NOTDEFINED", true);

  final String code;
  final String title;
  final String predefined;

  /** True where the medium flows the way our lines are laid, away from the plant. */
  final boolean outward;

  DemoSystem(String code, String title, String predefined, boolean outward) {
    this.code = code;
    this.title = title;
    this.predefined = predefined;
    this.outward = outward;
  }

  /** The name in the model and in quantities.csv. */
  public String title() {
    return title;
  }
}
