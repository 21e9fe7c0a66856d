package org.lagwright.report.enrich;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.append.GlobalId;
import org.lagwright.ifc.append.IfcAppender;
import org.lagwright.ifc.append.IfcAppender.NewRecord;
import org.lagwright.ifc.append.StepValue;
import org.lagwright.ifc.extract.HostReader;
import org.lagwright.ifc.schema.IfcSchema;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.body.ElementBodies.LayerBodies;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * Writes quantities, properties and materials of coverings. Equal properties and materials are
 * written once and related to all coverings that have them.
 */
final class SetWriter {

  /** Name of the set of properties; the only one that is ours. */
  static final String PROPERTIES = "Lagwright_Insulation";

  /** What is true of a whole element stands on its outermost covering. */
  static final String QUANTITIES = "Lagwright_InsulationQuantities";

  /** IfcLabel has 255 characters in IFC4 and IFC4X3. */
  private static final int LONGEST_LABEL = 255;

  private final IfcAppender to;
  private final HostReader hosts;
  private final long ownerHistory;
  private final String origin;
  private final Map<Map<String, StepValue>, Group> byProperties = new LinkedHashMap<>();
  private final Map<MaterialLayer, Group> byMaterial = new LinkedHashMap<>();

  /** Coverings that share a record. */
  private record Group(String firstId, List<Long> coverings) {}

  private record MaterialLayer(String material, double thicknessM) {}

  SetWriter(IfcAppender to, HostReader hosts, long ownerHistory, String origin) {
    this.to = to;
    this.hosts = hosts;
    this.ownerHistory = ownerHistory;
    this.origin = origin;
  }

  private NewRecord root(String entity, String name, String id) {
    return to.record(entity)
        .text("GlobalId", GlobalId.of("lagwright/" + name + "/" + id))
        .ref("OwnerHistory", ownerHistory);
  }

  /**
   * Writes the quantities of one covering, and notes the rest for {@link #finish}.
   *
   * @param id GlobalId of the covering
   * @param layers how many coverings the element has
   */
  void add(
      long covering,
      String id,
      TakenElement taken,
      TakeoffLine line,
      LayerBodies layer,
      int layers) {
    boolean outermost = layer.number() == layers;
    Quantities quantities = taken.quantities();
    double areaM2 = outermost ? quantities.outerAreaM2() : 0;
    base(covering, id, layer.layer().thicknessM(), areaM2);
    if (outermost) {
      whole(covering, id, quantities);
    }
    byProperties
        .computeIfAbsent(
            properties(taken, line, layer, layers), k -> new Group(id, new ArrayList<>()))
        .coverings
        .add(covering);
    byMaterial
        .computeIfAbsent(
            new MaterialLayer(line.materialName(), layer.layer().thicknessM()),
            k -> new Group(id, new ArrayList<>()))
        .coverings
        .add(covering);
  }

  /** The quantities that the standard has for coverings. */
  private void base(long covering, String id, double thicknessM, double areaM2) {
    List<Long> quantities = new ArrayList<>();
    quantities.add(quantity("Length", "Width", thicknessM));
    if (areaM2 > 0) {
      quantities.add(quantity("Area", "GrossArea", areaM2));
      quantities.add(quantity("Area", "NetArea", areaM2));
    }
    boolean named = to.schema() != IfcSchema.IFC2X3;
    String set = named ? "Qto_CoveringBaseQuantities" : "BaseQuantities";
    relate(quantities(set, "base", id, quantities), covering, "base", id);
  }

  /** What the takeoff says of all layers together. */
  private void whole(long covering, String id, Quantities sum) {
    List<Long> quantities = new ArrayList<>();
    addIf(quantities, "Length", "Length", sum.lengthM());
    addIf(quantities, "Area", "OuterArea", sum.outerAreaM2());
    addIf(quantities, "Volume", "Volume", sum.volumeM3());
    if (sum.pieces() > 0) {
      quantities.add(
          to.record("IfcQuantityCount")
              .text("Name", "Pieces")
              .set("CountValue", StepValue.integer(sum.pieces()))
              .add());
    }
    if (!quantities.isEmpty()) {
      relate(quantities(QUANTITIES, "whole", id, quantities), covering, "whole", id);
    }
  }

  private void addIf(List<Long> quantities, String kind, String name, double value) {
    if (value > 0) {
      quantities.add(quantity(kind, name, value));
    }
  }

  private long quantity(String kind, String name, double value) {
    double unit =
        switch (kind) {
          case "Length" -> hosts.units().lengthM();
          case "Area" -> hosts.areaUnitM2();
          default -> hosts.volumeUnitM3();
        };
    return to.record("IfcQuantity" + kind)
        .text("Name", name)
        .real(kind + "Value", SharedRecords.length(value, unit))
        .add();
  }

  private long quantities(String set, String name, String id, List<Long> quantities) {
    return root("IfcElementQuantity", name, id)
        .text("Name", set)
        .text("MethodOfMeasurement", set.equals(QUANTITIES) ? origin : "BaseQuantities")
        .refs("Quantities", quantities)
        .add();
  }

  private void relate(long set, long covering, String name, String id) {
    relate(set, List.of(covering), name, id);
  }

  private void relate(long set, List<Long> coverings, String name, String id) {
    root("IfcRelDefinesByProperties", name + "-of", id)
        .refs("RelatedObjects", coverings)
        .ref("RelatingPropertyDefinition", set)
        .add();
  }

  private Map<String, StepValue> properties(
      TakenElement taken, TakeoffLine line, LayerBodies layer, int layers) {
    Map<String, StepValue> values = new LinkedHashMap<>();
    values.put("Line", label(line.id()));
    values.put("Service", label(line.serviceName()));
    values.put("Location", label(line.location()));
    values.put("Material", label(line.materialName()));
    values.put("StockForm", label(layer.layer().form().label()));
    values.put("LayerNumber", typed("IfcInteger", StepValue.integer(layer.number())));
    values.put("LayerCount", typed("IfcInteger", StepValue.integer(layers)));
    values.put("LayerThickness", length(layer.layer().thicknessM()));
    ThicknessDecision decision = taken.thickness();
    if (decision != null) {
      values.put("BuildUpThickness", length(decision.totalM()));
      addDemand(values, decision, decision.governing());
    }
    if (taken.making() != null) {
      values.put("Making", label(taken.making().inWords()));
    }
    values.put("Origin", label(origin));
    return values;
  }

  private void addDemand(
      Map<String, StepValue> values, ThicknessDecision decision, @Nullable Demand governing) {
    if (governing != null) {
      if (decision.requiredM() > 0 && Double.isFinite(decision.requiredM())) {
        values.put("RequiredThickness", length(decision.requiredM()));
      }
      values.put("GoverningDemand", label(governing.kind().label()));
      values.put("GoverningRule", label(governing.rule()));
    }
  }

  private static StepValue typed(String type, StepValue value) {
    return StepValue.typed(type, value);
  }

  private static StepValue label(String text) {
    String allowed = text.length() > LONGEST_LABEL ? text.substring(0, LONGEST_LABEL) : text;
    return typed("IfcLabel", StepValue.text(allowed));
  }

  private StepValue length(double lengthM) {
    double written = SharedRecords.length(lengthM, hosts.units().lengthM());
    return typed("IfcPositiveLengthMeasure", StepValue.real(written));
  }

  /** Writes properties and materials. */
  void finish() {
    byProperties.forEach(this::writeProperties);
    Map<String, Long> materials = new LinkedHashMap<>();
    byMaterial.forEach((layer, group) -> writeMaterial(layer, group, materials));
  }

  private void writeProperties(Map<String, StepValue> values, Group group) {
    List<Long> properties = new ArrayList<>();
    values.forEach(
        (name, value) ->
            properties.add(
                to.record("IfcPropertySingleValue")
                    .text("Name", name)
                    .set("NominalValue", value)
                    .add()));
    long set =
        root("IfcPropertySet", "properties", group.firstId)
            .text("Name", PROPERTIES)
            .refs("HasProperties", properties)
            .add();
    relate(set, group.coverings, "properties", group.firstId);
  }

  private void writeMaterial(MaterialLayer layer, Group group, Map<String, Long> materials) {
    Long material = materials.get(layer.material);
    if (material == null) {
      material = to.record("IfcMaterial").text("Name", layer.material).add();
      materials.put(layer.material, material);
    }
    long its =
        to.record("IfcMaterialLayer")
            .ref("Material", material)
            .real("LayerThickness", SharedRecords.length(layer.thicknessM, hosts.units().lengthM()))
            .add();
    long set = to.record("IfcMaterialLayerSet").refs("MaterialLayers", List.of(its)).add();
    root("IfcRelAssociatesMaterial", "material", group.firstId)
        .refs("RelatedObjects", group.coverings)
        .ref("RelatingMaterial", set)
        .add();
  }
}
