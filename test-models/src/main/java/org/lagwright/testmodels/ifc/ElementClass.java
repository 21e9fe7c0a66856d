package org.lagwright.testmodels.ifc;

/** The classes of element we write, with the IFC2X3 family that holds their occurrences. */
public enum ElementClass {
  PIPE_SEGMENT("IfcPipeSegment", "IfcFlowSegment"),
  PIPE_FITTING("IfcPipeFitting", "IfcFlowFitting"),
  DUCT_SEGMENT("IfcDuctSegment", "IfcFlowSegment"),
  DUCT_FITTING("IfcDuctFitting", "IfcFlowFitting"),
  CABLE_CARRIER_SEGMENT("IfcCableCarrierSegment", "IfcFlowSegment"),
  LIGHT_FIXTURE("IfcLightFixture", "IfcFlowTerminal"),
  VALVE("IfcValve", "IfcFlowController"),
  DAMPER("IfcDamper", "IfcFlowController"),
  FLOW_METER("IfcFlowMeter", "IfcFlowController"),
  PUMP("IfcPump", "IfcFlowMovingDevice"),
  FILTER("IfcFilter", "IfcFlowTreatmentDevice"),
  TANK("IfcTank", "IfcFlowStorageDevice"),
  BOILER("IfcBoiler", "IfcEnergyConversionDevice"),
  CHILLER("IfcChiller", "IfcEnergyConversionDevice"),
  UNITARY_EQUIPMENT("IfcUnitaryEquipment", "IfcEnergyConversionDevice"),
  SPACE_HEATER("IfcSpaceHeater", "IfcFlowTerminal"),
  AIR_TERMINAL("IfcAirTerminal", "IfcFlowTerminal"),
  SANITARY_TERMINAL("IfcSanitaryTerminal", "IfcFlowTerminal"),
  WASTE_TERMINAL("IfcWasteTerminal", "IfcFlowTerminal"),
  DISCRETE_ACCESSORY("IfcDiscreteAccessory", "IfcDiscreteAccessory");

  private final String leaf;
  private final String family;

  ElementClass(String leaf, String family) {
    this.leaf = leaf;
    this.family = family;
  }

  /** Entity of an occurrence. */
  public String occurrence(Schema schema) {
    return schema.isOld() ? family : leaf;
  }

  /** Entity of a type object, in every schema. */
  public String type() {
    return leaf + "Type";
  }

  /** True where the IFC2X3 type object has no PredefinedType. */
  boolean isWithoutPredefinedType(Schema schema) {
    return schema.isOld() && this == DISCRETE_ACCESSORY;
  }

  /** The IFC4 value under the name it has in the given schema. */
  String predefined(Schema schema, String value) {
    if (!schema.isOld()) {
      return value;
    }
    return switch (value) {
      case "RADIATOR" -> "PANELRADIATOR";
      case "STORAGE" -> "PRESSUREVESSEL";
      case "LOUVRE" -> "GRILLE";
      default -> value;
    };
  }
}
