package org.lagwright.testmodels.demo;

import static org.lagwright.testmodels.demo.Plan.what;

import java.util.List;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.GlobalIds;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.ifc.Vec;

/** The Alder Quay ferry terminal, an invented building. */
public final class AlderQuay {

  /** Name of the project; it goes into every GlobalId. */
  static final String NAME = "Alder Quay ferry terminal";

  private AlderQuay() {}

  /** The model as the text of an IFC file. */
  public static String write(Schema schema) {
    return new AlderQuayFile(schema, plan(), true).write();
  }

  /** The same model as programs export it that write no ports: nothing says what is connected. */
  public static String writeWithoutPorts(Schema schema) {
    return new AlderQuayFile(schema, plan(), false).write();
  }

  /** Every quantity that follows from the design, in the order of quantities.csv. */
  public static List<DemoQuantity> quantities() {
    return DemoQuantity.sum(plan().pieces());
  }

  /** Every element of the design that is pipe, duct, apparatus, hanger or tray. */
  public static List<Piece> pieces() {
    return plan().pieces();
  }

  /** The GlobalId of a piece, the same in all schemas. */
  public static String globalId(Piece piece) {
    return GlobalIds.of(NAME + "/" + piece.key());
  }

  static Plan plan() {
    Plan plan = new Plan();
    Piece airHandlingUnit =
        plan.box(
            what(ElementClass.UNITARY_EQUIPMENT, "AIRHANDLER", "apparatus", "Air handling unit"),
            Place.PLANT_ROOM,
            new Vec(6_000, 4_000, 300),
            new Vec(9_800, 6_000, 2_300));
    WaterLines.lay(plan, airHandlingUnit);
    AirLines.lay(plan, airHandlingUnit);
    SmallLines.lay(plan);
    for (int i = 0; i < 2; i++) {
      plan.loose(
          what(
              ElementClass.CABLE_CARRIER_SEGMENT,
              "CABLETRAYSEGMENT",
              "straight",
              "Cable tray " + (i + 1)),
          Place.HALL,
          new Frame(new Vec(12_000 + 3_000 * i, 8_000, 3_500), Vec.EAST, Vec.NORTH),
          new Body.Extrusion(new Profile.Rectangle(300, 60), 3_000));
    }
    return plan;
  }
}
