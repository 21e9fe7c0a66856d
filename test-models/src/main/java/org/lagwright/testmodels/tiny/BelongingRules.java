package org.lagwright.testmodels.tiny;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.step.Ref;
import org.lagwright.testmodels.step.Value;

/** Rules about place, insulation and identity that no relation tells. */
final class BelongingRules {

  private BelongingRules() {}

  static Map<String, Supplier<String>> models() {
    Map<String, Supplier<String>> models = new LinkedHashMap<>();
    models.put("covering-without-relation-belongs-to-the-pipe-on-its-axis", BelongingRules::orphan);
    models.put("insulation-drawn-into-the-body-is-taken-off-the-size", BelongingRules::merged);
    models.put("proxy-named-like-a-pipe-is-no-pipe", BelongingRules::proxy);
    models.put("space-is-found-by-its-geometry", BelongingRules::room);
    models.put("external-space-makes-its-pipes-outdoors", BelongingRules::outside);
    models.put("element-drawn-twice-is-reported-and-counts-twice", BelongingRules::twice);
    models.put("placements-in-a-circle-are-a-finding", BelongingRules::circle);
    return models;
  }

  /** 30 mm of wool around a pipe of 60.3 mm; nothing binds them. */
  private static String orphan() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    file.pipe("Pipe", 60.3, 1_000);
    Body body = new Body.Extrusion(new Profile.Ring(120.3, 30), 1_000);
    file.building.insulation(
        "wool", "Mineral wool", file.world(), file.shapes.shape(List.of(body.inPlace())));
    return file.text();
  }

  /** Stated 60.3 mm with 30 mm of insulation, drawn 120.3 mm. */
  private static String merged() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.pipe("Pipe", 120.3, 1_000);
    Ref set =
        file.properties.set(
            "survey",
            "Survey",
            List.of(
                file.properties.length("OuterDiameter", 60.3),
                file.properties.length("InsulationThickness", 30)));
    file.properties.bind("survey", List.of(pipe), set);
    return file.text();
  }

  private static String proxy() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    file.pipe("Pipe", 60.3, 1_000);
    Body body = new Body.Extrusion(new Profile.Circle(48.3), 2_000);
    file.ifc.root(
        "IfcBuildingElementProxy",
        "proxy",
        "Steel pipe 48.3",
        null,
        null,
        file.world(),
        file.shapes.shape(List.of(body.inPlace())),
        null,
        null);
    return file.text();
  }

  /** The pipe is in no structure and stands in a room of 5 x 5 x 3 m. */
  private static String room() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    file.pipe("Pipe", 60.3, 1_000);
    file.building.space("0.12", "Plant room", file.world(), box(file), false);
    return file.text();
  }

  /** The same, the space is a stretch of air around the building. */
  private static String outside() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.pipe("Pipe", 60.3, 1_000);
    Ref air =
        file.ifc.root(
            "IfcExternalSpatialElement",
            "air",
            "Around",
            null,
            null,
            file.world(),
            null,
            null,
            Value.token("EXTERNAL"));
    file.building.contain("air", List.of(pipe), air);
    return file.text();
  }

  private static Ref box(TinyFile file) {
    Body box = new Body.Extrusion(new Profile.Rectangle(5_000, 5_000), 3_000);
    return file.shapes.shape(List.of(box.inPlace()));
  }

  /** One pipe exactly in the other. */
  private static String twice() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    file.pipe("Pipe 1", 60.3, 1_000);
    file.pipe("Pipe 2", 60.3, 1_000);
    return file.text();
  }

  /** The placement of the pipe is relative to itself. */
  private static String circle() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref axes = file.world();
    Body body = new Body.Extrusion(new Profile.Circle(60.3), 1_000);
    Ref shape = file.shapes.shape(List.of(body.inPlace()));
    file.element(ElementClass.PIPE_SEGMENT, "Pipe", "RIGIDSEGMENT", axes, shape);
    return file.text().replace("=IFCLOCALPLACEMENT($,", "=IFCLOCALPLACEMENT(#" + axes.id() + ",");
  }
}
