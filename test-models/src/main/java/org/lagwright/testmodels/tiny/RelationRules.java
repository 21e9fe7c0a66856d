package org.lagwright.testmodels.tiny;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.ifc.Vec;
import org.lagwright.testmodels.step.Ref;

/** Rules about what belongs to what. */
final class RelationRules {

  private RelationRules() {}

  static Map<String, Supplier<String>> models() {
    Map<String, Supplier<String>> models = new LinkedHashMap<>();
    models.put("cable-tray-typed-flow-segment-is-no-pipe", RelationRules::cableTray);
    models.put("covering-related-to-pipe-is-existing-insulation", RelationRules::covering);
    models.put("covering-that-is-part-of-a-pipe-is-existing-insulation", RelationRules::part);
    models.put("port-in-ifc4-file-connected-the-ifc2x3-way", RelationRules::oldPorts);
    models.put("system-group-contains-ports-too", RelationRules::portsInGroup);
    models.put("system-named-chilled-but-typed-heating-is-a-contradiction", RelationRules::twisted);
    models.put("duplicate-global-ids-stay-two-elements", RelationRules::duplicateIds);
    models.put("space-outdoors-makes-its-pipes-outdoors", RelationRules::outdoors);
    return models;
  }

  private static String cableTray() {
    TinyFile file = TinyFile.of(Schema.IFC2X3);
    Body body = new Body.Extrusion(new Profile.Rectangle(300, 60), 3_000);
    Ref tray = file.element(ElementClass.CABLE_CARRIER_SEGMENT, "Segment", null, body);
    file.type(ElementClass.CABLE_CARRIER_SEGMENT, "Tray 300", "CABLETRAYSEGMENT", tray, List.of());
    return file.text();
  }

  /** 30 mm of mineral wool on a pipe of 60.3 mm. */
  private static String covering() {
    TinyFile file = TinyFile.of(Schema.IFC2X3);
    Ref pipe = file.pipe("Pipe", 60.3, 1_000);
    file.type(ElementClass.PIPE_SEGMENT, "Pipe", "RIGIDSEGMENT", pipe, List.of());
    Ref wool = wool(file);
    file.building.cover("pipe", pipe, wool);
    Ref set =
        file.properties.set(
            "wool", "Pset_CoveringCommon", List.of(file.properties.length("TotalThickness", 30)));
    file.properties.bind("wool", List.of(wool), set);
    return file.text();
  }

  /** The same, bound as IFC4 recommends, the thickness as a quantity. */
  private static String part() {
    TinyFile file = TinyFile.of(Schema.IFC4X3);
    Ref pipe = file.pipe("Pipe", 60.3, 1_000);
    Ref wool = wool(file);
    file.building.aggregate("pipe", pipe, List.of(wool));
    Ref width = file.properties.lengthQuantity("wool", "Qto_CoveringBaseQuantities", "Width", 30);
    file.properties.bind("wool", List.of(wool), width);
    return file.text();
  }

  private static Ref wool(TinyFile file) {
    Body body = new Body.Extrusion(new Profile.Ring(120.3, 30), 1_000);
    return file.building.insulation(
        "wool", "Mineral wool", file.world(), file.shapes.shape(List.of(body.inPlace())));
  }

  /** Two pipes joined at z = 1000 mm; ports bound by IfcRelConnectsPortToElement. */
  private static String oldPorts() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref lower = file.pipe("Pipe 1", 60.3, 1_000);
    Vec joint = new Vec(0, 0, 1_000);
    Body body = new Body.Extrusion(new Profile.Circle(60.3), 500);
    Ref upper =
        file.element(
            ElementClass.PIPE_SEGMENT,
            "Pipe 2",
            "RIGIDSEGMENT",
            file.shapes.placement(null, Frame.at(joint)),
            file.shapes.shape(List.of(body.inPlace())));
    Ref source = file.port("1", joint, Vec.UP, Vec.EAST, true, "PIPE", "HEATING");
    Ref sink = file.port("2", joint, Vec.DOWN, Vec.EAST, false, "PIPE", "HEATING");
    file.mep.ownPortsTheOldWay("Pipe 1", lower, List.of(source));
    file.mep.ownPortsTheOldWay("Pipe 2", upper, List.of(sink));
    file.mep.connect("1-2", source, sink);
    return file.text();
  }

  /** One pipe and its two ports in one group. */
  private static String portsInGroup() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.pipe("Pipe", 60.3, 1_000);
    Ref in = file.port("in", Vec.ORIGIN, Vec.DOWN, Vec.EAST, false, "PIPE", "CHILLEDWATER");
    Vec top = new Vec(0, 0, 1_000);
    Ref out = file.port("out", top, Vec.UP, Vec.EAST, true, "PIPE", "CHILLEDWATER");
    file.mep.ownPorts("Pipe", pipe, List.of(in, out));
    Ref system = file.mep.system("CHW", "Chilled water flow", "CHW 6/12", "CHILLEDWATER");
    file.mep.group("CHW", List.of(in, pipe, out), system);
    return file.text();
  }

  private static String twisted() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.pipe("Pipe", 60.3, 1_000);
    Ref system = file.mep.system("S1", "Chilled water flow", null, "HEATING");
    file.mep.group("S1", List.of(pipe), system);
    return file.text();
  }

  /** Two pipes of 1 m and 2 m with the same GlobalId. */
  private static String duplicateIds() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    String id = file.ifc.globalId("twin");
    for (double lengthMm : new double[] {1_000, 2_000}) {
      Body body = new Body.Extrusion(new Profile.Circle(60.3), lengthMm);
      Ref shape = file.shapes.shape(List.of(body.inPlace()));
      file.ifc.rootWithId(
          "IfcPipeSegment", id, "Pipe", null, null, file.world(), shape, null, null);
    }
    return file.text();
  }

  private static String outdoors() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.pipe("Pipe", 60.3, 1_000);
    Body box = new Body.Extrusion(new Profile.Rectangle(5_000, 5_000), 3_000);
    Ref shape = file.shapes.shape(List.of(box.inPlace()));
    Ref roof = file.building.space("R.01", "Area 7", file.world(), shape, true);
    Ref set =
        file.properties.set(
            "roof", "Pset_SpaceCommon", List.of(file.properties.truth("IsExternal", true)));
    file.properties.bind("roof", List.of(roof), set);
    file.building.contain("roof", List.of(pipe), roof);
    return file.text();
  }
}
