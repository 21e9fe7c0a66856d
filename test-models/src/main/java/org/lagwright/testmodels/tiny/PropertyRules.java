package org.lagwright.testmodels.tiny;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.step.Ref;
import org.lagwright.testmodels.step.Value;

/** Rules about what property and quantity sets say. */
final class PropertyRules {

  private static final String PIPE_SET = "Pset_PipeSegmentTypeCommon";

  private PropertyRules() {}

  static Map<String, Supplier<String>> models() {
    Map<String, Supplier<String>> models = new LinkedHashMap<>();
    models.put("pipe-without-geometry-is-measured-from-properties", PropertyRules::noGeometry);
    models.put(
        "occurrence-property-wins-over-type-property-of-the-same-set",
        PropertyRules::occurrenceWins);
    models.put(
        "same-placeholder-length-on-every-element-loses-against-geometry",
        PropertyRules::placeholder);
    models.put("sizes-of-an-ifc2x3-type-are-list-values", PropertyRules::listValues);
    models.put("property-sets-may-come-as-an-inline-list", PropertyRules::inlineList);
    models.put("kelvin-unit-with-a-value-of-70-means-celsius", PropertyRules::notKelvin);
    return models;
  }

  /** 42.4 mm, 1.75 m; no placement either. */
  private static String noGeometry() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.element(ElementClass.PIPE_SEGMENT, "Pipe", "RIGIDSEGMENT", null, null);
    survey(file, pipe, 42.4, 1_750);
    return file.text();
  }

  /** The type says DN 50 and 60.3 mm, the occurrence 57 mm: DN 50 and 57 mm; 2 m. */
  private static String occurrenceWins() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.element(ElementClass.PIPE_SEGMENT, "Pipe", null, null, null);
    Ref ofType =
        file.properties.set(
            "type",
            PIPE_SET,
            List.of(
                file.properties.length("NominalDiameter", 50),
                file.properties.length("OuterDiameter", 60.3)));
    file.type(ElementClass.PIPE_SEGMENT, "Pipe", "RIGIDSEGMENT", pipe, List.of(ofType));
    Ref own =
        file.properties.set("own", PIPE_SET, List.of(file.properties.length("OuterDiameter", 57)));
    file.properties.bind("own", List.of(pipe), own);
    Ref length =
        file.properties.set("survey", "Survey", List.of(file.properties.length("Length", 2_000)));
    file.properties.bind("survey", List.of(pipe), length);
    return file.text();
  }

  /** Drawn 1 m, 1.7 m and 2.6 m; the quantity sets say 30 m three times. */
  private static String placeholder() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    double[] lengths = {1_000, 1_700, 2_600};
    for (int i = 0; i < lengths.length; i++) {
      String name = "Pipe " + (i + 1);
      Ref pipe = file.pipe(name, 48.3, lengths[i]);
      Ref set =
          file.properties.lengthQuantity(name, "Qto_PipeSegmentBaseQuantities", "Length", 30_000);
      file.properties.bind(name, List.of(pipe), set);
    }
    return file.text();
  }

  /** DN 50 and 60.3 mm as lists of one on the type, 3 m as a property. */
  private static String listValues() {
    TinyFile file = TinyFile.of(Schema.IFC2X3);
    Ref pipe = file.element(ElementClass.PIPE_SEGMENT, "Pipe", null, null, null);
    Ref set =
        file.properties.set(
            "type",
            PIPE_SET,
            List.of(
                file.properties.typeSize("NominalDiameter", 50),
                file.properties.typeSize("OuterDiameter", 60.3)));
    file.type(ElementClass.PIPE_SEGMENT, "Pipe", "RIGIDSEGMENT", pipe, List.of(set));
    Ref length =
        file.properties.set(
            "occurrence",
            "Pset_FlowSegmentPipeSegment",
            List.of(file.properties.length("Length", 3_000)));
    file.properties.bind("occurrence", List.of(pipe), length);
    return file.text();
  }

  /** 42.4 mm in one set and 1.75 m in another, bound by one relation. */
  private static String inlineList() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.element(ElementClass.PIPE_SEGMENT, "Pipe", "RIGIDSEGMENT", null, null);
    Ref size =
        file.properties.set(
            "size", PIPE_SET, List.of(file.properties.length("OuterDiameter", 42.4)));
    Ref length =
        file.properties.set("length", "Survey", List.of(file.properties.length("Length", 1_750)));
    file.ifc.root(
        "IfcRelDefinesByProperties",
        "both",
        null,
        null,
        List.of(pipe),
        Value.typed("IfcPropertySetDefinitionSet", List.of(size, length)));
    return file.text();
  }

  /** The property carries its own unit, kelvin, and the value 70. */
  private static String notKelvin() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.pipe("Pipe", 60.3, 1_000);
    Ref kelvin =
        file.ifc
            .step()
            .add(
                "IfcSIUnit",
                Value.DERIVED,
                Value.token("THERMODYNAMICTEMPERATUREUNIT"),
                null,
                Value.token("KELVIN"));
    Ref temperature =
        file.ifc
            .step()
            .add(
                "IfcPropertySingleValue",
                "Operating temperature",
                null,
                Value.typed("IfcThermodynamicTemperatureMeasure", 70.0),
                kelvin);
    Ref set = file.properties.set("heat", "Survey", List.of(temperature));
    file.properties.bind("heat", List.of(pipe), set);
    return file.text();
  }

  private static void survey(TinyFile file, Ref pipe, double diameterMm, double lengthMm) {
    Ref set =
        file.properties.set(
            "survey",
            "Survey",
            List.of(
                file.properties.length("Length", lengthMm),
                file.properties.length("OuterDiameter", diameterMm)));
    file.properties.bind("survey", List.of(pipe), set);
  }
}
