package org.lagwright.report;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.Trace;
import org.lagwright.takeoff.thickness.Asked;
import org.lagwright.takeoff.thickness.Conditions;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Exposure;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Layer.LayerForm;
import org.lagwright.takeoff.thickness.Proof;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** How the numbers of {@link SampleTakeoff} are said to have come about. */
final class SampleDecisions {

  private SampleDecisions() {}

  /** Why the chilled water pipes have their thickness. */
  static ThicknessDecision cold() {
    Demand dew =
        new Demand(
            Demand.Kind.CONDENSATION,
            0.0213,
            "dew-point",
            "heat flow through a cylinder, ISO 12241",
            new TreeMap<>(Map.of("dewPointC", "18.2", "mediumC", "6")));
    Demand energy =
        new Demand(Demand.Kind.ENERGY_RULE, 0.019, "sample-rule", "sample pack", Map.of());
    return new ThicknessDecision(
        List.of(dew, energy),
        dew,
        0.0213,
        List.of(new Layer("flexible-foam", LayerForm.TUBE, 0.025)),
        "plant-room",
        new Proof(
            new Conditions(
                new Section.Round(0.0603),
                false,
                6.0,
                6.0,
                Exposure.still(28, 65.5, 0.9),
                1,
                "fef_nbr",
                "none",
                null,
                "plant-room",
                "chilled",
                Asked.NOTHING),
            6,
            28,
            20.96,
            25.9,
            6,
            -42.1,
            -7.3,
            new Proof.Saving(70, 23, 5.5, 8)));
  }

  /** Why the supply air duct has its thickness. */
  static ThicknessDecision air() {
    Demand user = new Demand(Demand.Kind.USER, 0.045, "thicknessesM", "settings", Map.of());
    return new ThicknessDecision(
        List.of(user),
        user,
        0.045,
        List.of(
            new Layer("flexible-foam", LayerForm.SHEET, 0.032),
            new Layer("flexible-foam", LayerForm.SHEET, 0.019)),
        "indoor",
        null);
  }

  /** The steps by which the numbers of an element came about. */
  static Trace trace() {
    return Trace.of(
        List.of(
            new Trace.Read(
                "outside diameter",
                "60.3 mm",
                How.SOLID,
                new Evidence(301, "IfcCircleProfileDef.Radius", "30.15")),
            new Trace.Lost(
                "outside diameter",
                "50 mm",
                How.PROPERTY,
                new Evidence(302, "Dimensions.Diameter", "50."),
                "is the nominal size"),
            new Trace.Decided(
                "service", "Chilled water flow", "services", "chw-name", "common practice"),
            new Trace.Assumed("surroundings", "plant-room", "the space is called Plant room"),
            new Trace.Given("air temperature", "28 degC", "air.plant-room.temperatureC"),
            new Trace.Computed("thickness", "21.3 mm", "least thickness above the dew point")));
  }
}
