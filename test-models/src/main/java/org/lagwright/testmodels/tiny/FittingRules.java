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

/** Rules about the forms of fittings and what they are joined to. */
final class FittingRules {

  private FittingRules() {}

  static Map<String, Supplier<String>> models() {
    Map<String, Supplier<String>> models = new LinkedHashMap<>();
    models.put("words-tell-the-form-of-a-fitting", FittingRules::words);
    models.put("ends-that-touch-are-joined-without-ports", FittingRules::touching);
    models.put("reducer-whose-axes-are-shifted-is-eccentric", FittingRules::eccentric);
    models.put("tee-with-a-slanted-branch-is-a-lateral", FittingRules::lateral);
    models.put("valve-thicker-than-its-pipe-has-the-size-of-the-pipe", FittingRules::valve);
    return models;
  }

  /** No enumeration, no type, no body; the name is German for a cap. */
  private static String words() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    file.element(ElementClass.PIPE_FITTING, "Endkappe DN 50", null, null, null);
    return file.text();
  }

  /** Two pipes of 60.3 mm, 1 m and 0.5 m, end to end. */
  private static String touching() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    file.pipe("Pipe 1", 60.3, 1_000);
    pipe(file, "Pipe 2", 60.3, 500, Frame.at(new Vec(0, 0, 1_000)));
    return file.text();
  }

  /** 88.9 to 60.3 mm over 90 mm, flat on one side: the axes are 14.3 mm apart. */
  private static String eccentric() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    pipe(file, "Pipe 1", 88.9, 400, Frame.at(new Vec(0, 0, -400)));
    Ref part = file.element(ElementClass.PIPE_FITTING, "Part 9", null, null, null);
    Vec far = new Vec(14.3, 0, 90);
    pipe(file, "Pipe 2", 60.3, 400, Frame.at(far));
    Ref in = file.port("in", Vec.ORIGIN, Vec.DOWN, Vec.EAST, false, "PIPE", "HEATING");
    Ref out = file.port("out", far, Vec.UP, Vec.EAST, true, "PIPE", "HEATING");
    file.mep.ownPorts("part", part, List.of(in, out));
    return file.text();
  }

  /** A run of 60.3 mm along z and a branch of 33.7 mm at 45 degrees, joined by its ports. */
  private static String lateral() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Body run = new Body.Extrusion(new Profile.Circle(60.3), 400);
    Ref shape = file.shapes.shape(List.of(run.inPlace()));
    Vec top = new Vec(0, 0, 300);
    for (Vec at : List.of(new Vec(0, 0, -400), top)) {
      Ref placement = file.shapes.placement(null, Frame.at(at));
      file.element(ElementClass.PIPE_SEGMENT, "Pipe " + at.z(), null, placement, shape);
    }
    Vec slant = new Vec(1, 0, 1).unit();
    Vec aside = new Vec(150, 0, 250);
    pipe(file, "Pipe 3", 33.7, 400, new Frame(aside, slant, Vec.NORTH));
    Ref part = file.element(ElementClass.PIPE_FITTING, "Part 4", null, null, null);
    Ref in = file.port("in", Vec.ORIGIN, Vec.DOWN, Vec.EAST, false, "PIPE", "HEATING");
    Ref out = file.port("out", top, Vec.UP, Vec.EAST, true, "PIPE", "HEATING");
    Ref branch = file.port("branch", aside, slant, Vec.NORTH, true, "PIPE", "HEATING");
    file.mep.ownPorts("part", part, List.of(in, out, branch));
    return file.text();
  }

  /** A valve drawn 84.4 mm thick between its pipes of 60.3 mm. */
  private static String valve() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    pipe(file, "Pipe 1", 60.3, 400, Frame.at(new Vec(0, 0, -400)));
    Body body = new Body.Extrusion(new Profile.Circle(84.4), 150);
    file.element(ElementClass.VALVE, "V 17", null, body);
    pipe(file, "Pipe 2", 60.3, 400, Frame.at(new Vec(0, 0, 150)));
    return file.text();
  }

  private static void pipe(TinyFile file, String name, double mm, double lengthMm, Frame at) {
    Body body = new Body.Extrusion(new Profile.Circle(mm), lengthMm);
    file.element(
        ElementClass.PIPE_SEGMENT,
        name,
        "RIGIDSEGMENT",
        file.shapes.placement(null, at),
        file.shapes.shape(List.of(body.inPlace())));
  }
}
