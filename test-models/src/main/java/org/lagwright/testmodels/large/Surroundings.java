package org.lagwright.testmodels.large;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.BuildingWriter;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.MepWriter;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.ShapeWriter;
import org.lagwright.testmodels.ifc.Vec;
import org.lagwright.testmodels.step.Ref;

/** What stands beside each line and is no part of a takeoff: a lamp, a cable tray, a wall. */
final class Surroundings {

  private static final int SIDES = 16;
  private static final int RINGS = 14;
  private static final double RING_HEIGHT_MM = 25;
  private static final double BESIDE_MM = 20_000;

  private final IfcWriter ifc;
  private final ShapeWriter shapes;
  private final MepWriter mep;
  private final BuildingWriter building;
  private final LargeStoreys storeys;
  private final Ref lampType;
  private final Ref trayType;

  Surroundings(IfcWriter ifc, LargeStoreys storeys) {
    this.ifc = ifc;
    this.storeys = storeys;
    shapes = new ShapeWriter(ifc);
    mep = new MepWriter(ifc);
    building = new BuildingWriter(ifc);
    lampType = type(ElementClass.LIGHT_FIXTURE, "Pendant lamp", "POINTSOURCE");
    trayType = type(ElementClass.CABLE_CARRIER_SEGMENT, "Cable tray", "CABLETRAYSEGMENT");
  }

  private Ref type(ElementClass what, String name, String predefined) {
    MepWriter.Label label = MepWriter.Label.of("type " + name, name);
    return mep.type(what, label, predefined, List.of(), List.of());
  }

  /** Writes what stands beside one line. */
  void write(Run run) {
    String key = " " + (run.index() + 1);
    Vec at = run.parts().get(0).start().origin().plus(new Vec(0, -BESIDE_MM, 0));
    Frame frame = Frame.at(at).within(Frame.at(new Vec(0, 0, Run.elevationMm(run.storey()))));
    Ref placement = shapes.placement(storeys.placement(run.storey()), frame);
    Ref lamp = element(ElementClass.LIGHT_FIXTURE, "Lamp" + key, placement, lamp(run));
    Body trough = new Body.Extrusion(new Profile.Rectangle(200, 60), 3000);
    Ref tray = element(ElementClass.CABLE_CARRIER_SEGMENT, "Tray" + key, placement, trough);
    Body panel = new Body.Extrusion(new Profile.Rectangle(6000, 240), 3000);
    Ref wall = building.wall("Wall" + key, placement, shapes.shape(List.of(panel.inPlace())));
    mep.assignType("lamp" + key, List.of(lamp), lampType);
    mep.assignType("tray" + key, List.of(tray), trayType);
    building.contain("beside" + key, List.of(lamp, tray, wall), storeys.storey(run.storey()));
  }

  private Ref element(ElementClass what, String name, Ref placement, Body body) {
    Ref shape = shapes.shape(List.of(body.inPlace()));
    return mep.element(what, MepWriter.Label.of(name, name), placement, shape, null);
  }

  /**
   * Rings of flat faces around an axis; wider and narrower from ring to ring, and from lamp to
   * lamp.
   */
  private static Body lamp(Run run) {
    List<List<Vec>> rings = new ArrayList<>();
    for (int i = 0; i <= RINGS; i++) {
      double diameter = 100 + (i * 37 + run.index() * 11) % 150;
      Vec up = new Vec(0, 0, i * RING_HEIGHT_MM);
      rings.add(Profile.circlePoints(diameter, SIDES).stream().map(p -> p.plus(up)).toList());
    }
    List<Vec> bottom = new ArrayList<>(rings.get(0));
    Collections.reverse(bottom);
    List<List<Vec>> faces = new ArrayList<>(List.of(bottom, rings.get(RINGS)));
    for (int i = 0; i < RINGS; i++) {
      for (int j = 0; j < SIDES; j++) {
        int k = (j + 1) % SIDES;
        List<Vec> low = rings.get(i);
        List<Vec> high = rings.get(i + 1);
        faces.add(List.of(low.get(j), low.get(k), high.get(k), high.get(j)));
      }
    }
    return new Body.Faceted(faces);
  }
}
