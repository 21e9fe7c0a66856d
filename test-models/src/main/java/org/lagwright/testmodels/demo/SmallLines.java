package org.lagwright.testmodels.demo;

import static org.lagwright.testmodels.demo.Plan.what;
import static org.lagwright.testmodels.demo.Size.copper;
import static org.lagwright.testmodels.ifc.Vec.DOWN;
import static org.lagwright.testmodels.ifc.Vec.EAST;
import static org.lagwright.testmodels.ifc.Vec.NORTH;
import static org.lagwright.testmodels.ifc.Vec.SOUTH;
import static org.lagwright.testmodels.ifc.Vec.UP;

import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Vec;

/** Domestic water, the refrigerant line, and what a real model has that it should not. */
final class SmallLines {

  private static final double[] BASINS_X = {11_500, 13_000};

  private final Plan plan;
  private final Piece cylinder;
  private final Piece[] basins = new Piece[BASINS_X.length];

  private SmallLines(Plan plan) {
    this.plan = plan;
    cylinder =
        plan.box(
            what(ElementClass.TANK, "STORAGE", "apparatus", "Hot water cylinder"),
            Place.PLANT_ROOM,
            new Vec(2_500, 500, 100),
            new Vec(3_300, 1_300, 1_900));
    for (int i = 0; i < basins.length; i++) {
      basins[i] =
          plan.box(
              what(
                  ElementClass.SANITARY_TERMINAL,
                  "WASHHANDBASIN",
                  "apparatus",
                  "Wash basin " + (i + 1)),
              Place.HALL,
              new Vec(BASINS_X[i] - 250, 6_300, 700),
              new Vec(BASINS_X[i] + 250, 6_700, 850));
    }
  }

  static void lay(Plan plan) {
    SmallLines small = new SmallLines(plan);
    small.hotWater().meet(small.circulation());
    small.coldWater();
    small.suction();
    flaws(plan);
  }

  private Line hotWater() {
    Vec start = new Vec(2_900, 900, 1_900);
    Line main =
        plan.from(cylinder, DemoSystem.HOT_WATER, copper(28), start, UP, EAST)
            .straight(200)
            .valve("ISOLATING", "Ball valve", 70)
            .turnAt(2_500, NORTH)
            .turnAt(6_400, EAST)
            .to(10_000)
            .in(Place.HALL);
    for (int i = 0; i < basins.length; i++) {
      main.teeAt(BASINS_X[i] - 100, copper(15), DOWN).to(850).into(basins[i]);
      main.reduce(i == 0 ? copper(22) : copper(15), 40);
    }
    return main.turnAt(14_000, SOUTH).to(6_300);
  }

  private Line circulation() {
    Vec start = new Vec(3_300, 900, 1_200);
    return plan.from(cylinder, DemoSystem.CIRCULATION, copper(15), start, EAST, Line.across(EAST))
        .turnAt(3_600, UP)
        .turnAt(2_500, NORTH)
        .straight(300)
        .fixture(ElementClass.PUMP, "CIRCULATOR", "pump", "Circulation pump", 110)
        .straight(150)
        .valve("CHECK", "Check valve", 50)
        .turnAt(6_200, EAST)
        .to(10_000)
        .in(Place.HALL)
        .turnAt(14_000, NORTH)
        .to(6_300);
  }

  private void coldWater() {
    Vec start = new Vec(200, 6_600, 2_500);
    Line main =
        plan.open(DemoSystem.COLD_WATER, Place.PLANT_ROOM, copper(28), start, EAST)
            .straight(400)
            .valve("STOPCOCK", "Stop valve", 70)
            .straight(200)
            .saidToBe(30_000)
            .fixture(ElementClass.FLOW_METER, "WATERMETER", "meter", "Water meter", 190);
    main.teeAt(2_700, copper(22), SOUTH)
        .turnAt(1_800, DOWN)
        .turnAt(300, SOUTH)
        .to(1_300)
        .into(cylinder);
    main.to(10_000).in(Place.HALL);
    for (int i = 0; i < basins.length; i++) {
      main.teeAt(BASINS_X[i] + 100, copper(15), DOWN).to(850).into(basins[i]);
    }
    main.straight(100).cap();
  }

  private void suction() {
    Piece outdoorUnit =
        plan.box(
            what(ElementClass.UNITARY_EQUIPMENT, "SPLITSYSTEM", "apparatus", "Outdoor unit"),
            Place.ROOF,
            new Vec(12_000, 1_000, 8_200),
            new Vec(13_000, 1_400, 9_000));
    Piece indoorUnit =
        plan.box(
            what(ElementClass.UNITARY_EQUIPMENT, "SPLITSYSTEM", "apparatus", "Indoor unit"),
            Place.OFFICES,
            new Vec(18_000, 1_800, 7_250),
            new Vec(19_000, 2_200, 7_550));
    Vec start = new Vec(12_500, 1_400, 8_400);
    plan.from(outdoorUnit, DemoSystem.SUCTION, copper(22), start, NORTH, Line.across(NORTH))
        .turnAt(2_000, DOWN)
        .to(8_000)
        .in(Place.OFFICES)
        .turnAt(7_400, EAST)
        .straight(2_500)
        .to(18_000)
        .into(indoorUnit);
  }

  private static void flaws(Plan plan) {
    plan.open(DemoSystem.NAMELESS, Place.HALL, Size.steel(40), new Vec(20_000, 9_000, 3_200), EAST)
        .straight(2_500)
        .turn(NORTH)
        .straight(1_800);
    plan.withoutGeometry(DemoSystem.HEATING_FLOW, Place.ROPE_STORE, Size.steel(32), 1_750);
  }
}
