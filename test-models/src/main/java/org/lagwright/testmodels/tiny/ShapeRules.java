package org.lagwright.testmodels.tiny;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.MepWriter;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.ifc.Units;
import org.lagwright.testmodels.ifc.Vec;
import org.lagwright.testmodels.step.Ref;

/** Rules about what the geometry says. */
final class ShapeRules {

  private ShapeRules() {}

  static Map<String, Supplier<String>> models() {
    Map<String, Supplier<String>> models = new LinkedHashMap<>();
    models.put("extruded-circle-gives-diameter-and-length", ShapeRules::circle);
    models.put("hollow-circle-diameter-is-the-outer-one", ShapeRules::hollow);
    models.put("polygon-of-24-points-is-a-circle", ShapeRules::polygon);
    models.put("four-corners-on-a-circle-are-a-rectangle", ShapeRules::fourCorners);
    models.put("vertical-extrusion-of-a-duct-is-not-its-length", ShapeRules::verticalDuct);
    models.put("bend-without-predefined-type-is-known-by-its-revolved-solid", ShapeRules::revolved);
    models.put("bend-angle-in-degrees-through-conversion-unit", ShapeRules::degrees);
    models.put("length-in-feet-through-conversion-unit", ShapeRules::feet);
    models.put("tapered-extrusion-is-a-reducer", ShapeRules::tapered);
    models.put("swept-disk-length-is-its-directrix", ShapeRules::sweptDisk);
    models.put("scale-of-a-mapped-item-multiplies-its-lengths", ShapeRules::scaled);
    models.put("mapped-fitting-takes-its-form-from-its-type-name", ShapeRules::mapped);
    return models;
  }

  /** 60.3 mm, 2.5 m. */
  private static String circle() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    file.pipe("Pipe", 60.3, 2_500);
    return file.text();
  }

  /** 60.3 mm outside, 53.1 mm inside, 2.5 m. */
  private static String hollow() {
    TinyFile file = TinyFile.of(Schema.IFC2X3);
    Body body = new Body.Extrusion(new Profile.Ring(60.3, 3.6), 2_500);
    Ref pipe = file.element(ElementClass.PIPE_SEGMENT, "Pipe", null, body);
    file.type(ElementClass.PIPE_SEGMENT, "Pipe", "RIGIDSEGMENT", pipe, List.of());
    return file.text();
  }

  /** 88.9 mm, corners on the circle, 1.2 m. */
  private static String polygon() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Profile profile = new Profile.Polygon(Profile.circlePoints(88.9, 24));
    file.element(
        ElementClass.PIPE_SEGMENT, "Pipe", "RIGIDSEGMENT", new Body.Extrusion(profile, 1_200));
    return file.text();
  }

  /** 400 x 300 mm, 1.5 m; the corners of any rectangle lie on a circle. */
  private static String fourCorners() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Profile profile = new Profile.Polygon(Profile.rectanglePoints(400, 300));
    file.element(
        ElementClass.DUCT_SEGMENT, "Duct", "RIGIDSEGMENT", new Body.Extrusion(profile, 1_500));
    return file.text();
  }

  /** 400 x 300 mm, 2.5 m long from port to port; the extrusion is 300 mm up. */
  private static String verticalDuct() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Body body = new Body.Extrusion(new Profile.Rectangle(2_500, 400), 300);
    Ref duct = file.element(ElementClass.DUCT_SEGMENT, "Duct", "RIGIDSEGMENT", body);
    Vec west = new Vec(-1_250, 0, 150);
    Vec east = new Vec(1_250, 0, 150);
    Ref in = file.port("in", west, Vec.WEST, Vec.NORTH, false, "DUCT", "VENTILATION");
    Ref out = file.port("out", east, Vec.EAST, Vec.NORTH, true, "DUCT", "VENTILATION");
    file.mep.ownPorts("Duct", duct, List.of(in, out));
    return file.text();
  }

  /** 60.3 mm, 90 degrees, radius 75 mm. */
  private static String revolved() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Body body = new Body.Revolution(new Profile.Circle(60.3), 75, 90);
    file.element(ElementClass.PIPE_FITTING, "Part 7", null, body);
    return file.text();
  }

  /** 48.3 mm, 45 degrees, radius 60 mm. */
  private static String degrees() {
    TinyFile file = new TinyFile(Schema.IFC2X3, Units.MILLIMETRE_DEGREE, 1);
    Body body = new Body.Revolution(new Profile.Circle(48.3), 60, 45);
    Ref bend = file.element(ElementClass.PIPE_FITTING, "Bend", null, body);
    file.type(ElementClass.PIPE_FITTING, "Bend", "BEND", bend, List.of());
    return file.text();
  }

  /** 10 ft = 3.048 m; 60.325 mm, which is 2 3/8 inch. */
  private static String feet() {
    Units units = new Units(Units.Length.FOOT, Units.Angle.RADIAN);
    TinyFile file = new TinyFile(Schema.IFC4, units, 1);
    file.pipe("Pipe", 60.325, 3_048);
    return file.text();
  }

  /** 88.9 to 60.3 mm over 90 mm. */
  private static String tapered() {
    TinyFile file = TinyFile.of(Schema.IFC4X3);
    Body body = new Body.Taper(new Profile.Circle(88.9), new Profile.Circle(60.3), 90);
    file.element(ElementClass.PIPE_FITTING, "Part 9", null, body);
    return file.text();
  }

  /** 28 mm, along a line of 3 m and 4 m: 7 m. */
  private static String sweptDisk() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref start = file.ifc.step().share("IfcCartesianPoint", List.of(0.0, 0.0, 0.0));
    Ref corner = file.ifc.step().share("IfcCartesianPoint", List.of(3_000.0, 0.0, 0.0));
    Ref end = file.ifc.step().share("IfcCartesianPoint", List.of(3_000.0, 4_000.0, 0.0));
    Ref line = file.ifc.step().add("IfcPolyline", List.of(start, corner, end));
    Ref disk = file.ifc.step().add("IfcSweptDiskSolid", line, 14.0, null, null, null);
    Ref product = product(file, "AdvancedSweptSolid", disk);
    file.element(ElementClass.PIPE_SEGMENT, "Pipe", "RIGIDSEGMENT", file.world(), product);
    return file.text();
  }

  /** Drawn 30 mm and 1 m, repeated with scale 2: 60 mm and 2 m. */
  private static String scaled() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Body body = new Body.Extrusion(new Profile.Circle(30), 1_000);
    Ref map = file.shapes.map(List.of(body.inPlace()));
    Ref origin = file.ifc.step().share("IfcCartesianPoint", List.of(0.0, 0.0, 0.0));
    Ref twice =
        file.ifc.step().add("IfcCartesianTransformationOperator3D", null, null, origin, 2.0, null);
    Ref item = file.ifc.step().add("IfcMappedItem", map, twice);
    file.element(
        ElementClass.PIPE_SEGMENT,
        "Pipe",
        "RIGIDSEGMENT",
        file.world(),
        product(file, "MappedRepresentation", item));
    return file.text();
  }

  private static Ref product(TinyFile file, String type, Ref item) {
    Ref shape =
        file.ifc
            .step()
            .add("IfcShapeRepresentation", file.ifc.bodyContext(), "Body", type, List.of(item));
    return file.ifc.step().add("IfcProductDefinitionShape", null, null, List.of(shape));
  }

  /** A tee by its type name only: predefined type NOTDEFINED, a box for a shape. */
  private static String mapped() {
    TinyFile file = TinyFile.of(Schema.IFC2X3);
    Body body = new Body.Extrusion(new Profile.Rectangle(120, 60), 60);
    Ref map = file.shapes.map(List.of(body.inPlace()));
    Ref tee =
        file.element(
            ElementClass.PIPE_FITTING, "Part 11", null, file.world(), file.shapes.mapped(map));
    Ref type =
        file.mep.type(
            ElementClass.PIPE_FITTING,
            MepWriter.Label.of("type", "Tee DN 50/50/25"),
            "NOTDEFINED",
            List.of(),
            List.of(map));
    file.mep.assignType("tee", List.of(tee), type);
    return file.text();
  }
}
