package org.lagwright.testmodels.tiny;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.BuildingWriter;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.MepWriter;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.PropertyWriter;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.ifc.ShapeWriter;
import org.lagwright.testmodels.ifc.Units;
import org.lagwright.testmodels.ifc.Vec;
import org.lagwright.testmodels.step.Ref;

/** A file with a project and little else. */
final class TinyFile {

  final IfcWriter ifc;
  final ShapeWriter shapes;
  final MepWriter mep;
  final PropertyWriter properties;
  final BuildingWriter building;

  TinyFile(Schema schema, Units units, long firstNumber) {
    ifc = new IfcWriter(schema, units, "tiny", firstNumber);
    shapes = new ShapeWriter(ifc);
    mep = new MepWriter(ifc);
    properties = new PropertyWriter(ifc);
    building = new BuildingWriter(ifc);
  }

  /** Millimetres and radians. */
  static TinyFile of(Schema schema) {
    return new TinyFile(schema, Units.MILLIMETRE_RADIAN, 1);
  }

  /** An element with a body at the world origin. */
  Ref element(ElementClass what, String name, @Nullable String predefined, Body body) {
    return element(what, name, predefined, world(), shapes.shape(List.of(body.inPlace())));
  }

  /** An element whose name is its key. */
  Ref element(
      ElementClass what,
      String name,
      @Nullable String predefined,
      @Nullable Ref placement,
      @Nullable Ref shape) {
    return mep.element(what, MepWriter.Label.of(name, name), placement, shape, predefined);
  }

  /** A steel pipe drawn as a full circle along z. */
  Ref pipe(String name, double diameterMm, double lengthMm) {
    return element(
        ElementClass.PIPE_SEGMENT,
        name,
        "RIGIDSEGMENT",
        new Body.Extrusion(new Profile.Circle(diameterMm), lengthMm));
  }

  /** A type with one occurrence. */
  void type(ElementClass what, String name, String predefined, Ref element, List<Ref> sets) {
    Ref type =
        mep.type(what, MepWriter.Label.of("type " + name, name), predefined, sets, List.of());
    mep.assignType(name, List.of(element), type);
  }

  /** A port at a point, pointing out of its element. */
  Ref port(String key, Vec at, Vec out, Vec across, boolean source, String medium, String system) {
    Frame frame = new Frame(at, source ? out : out.times(-1), across);
    return mep.port(key, shapes.placement(null, frame), source ? "SOURCE" : "SINK", medium, system);
  }

  Ref world() {
    return shapes.placement(null, Frame.WORLD);
  }

  String text() {
    return ifc.text();
  }
}
