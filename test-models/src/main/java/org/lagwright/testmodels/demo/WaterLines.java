package org.lagwright.testmodels.demo;

import static org.lagwright.testmodels.demo.Plan.what;
import static org.lagwright.testmodels.demo.Size.steel;
import static org.lagwright.testmodels.ifc.Vec.DOWN;
import static org.lagwright.testmodels.ifc.Vec.EAST;
import static org.lagwright.testmodels.ifc.Vec.NORTH;
import static org.lagwright.testmodels.ifc.Vec.UP;
import static org.lagwright.testmodels.ifc.Vec.WEST;

import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Vec;

/** Chilled water from the roof to the air handling unit and two fan coils; heating. */
final class WaterLines {

  private static final double[] FAN_COILS_X = {16_000, 24_000};
  private static final double[] RADIATORS_X = {12_000, 18_000, 24_000};

  private final Plan plan;
  private final Piece[] fanCoils = new Piece[FAN_COILS_X.length];
  private final Piece[] radiators = new Piece[RADIATORS_X.length];

  private WaterLines(Plan plan) {
    this.plan = plan;
  }

  /** Lays all water lines. The condensate drain hangs on the first fan coil. */
  static void lay(Plan plan, Piece airHandlingUnit) {
    WaterLines water = new WaterLines(plan);
    water.placeApparatus();
    Piece chiller =
        plan.box(
            what(ElementClass.CHILLER, "AIRCOOLED", "apparatus", "Chiller"),
            Place.ROOF,
            new Vec(1_000, 1_000, 8_200),
            new Vec(4_000, 3_000, 10_200));
    water.chilledFlow(chiller, airHandlingUnit);
    water.chilledReturn(chiller, airHandlingUnit);
    Piece boiler =
        plan.box(
            what(ElementClass.BOILER, "WATER", "apparatus", "Boiler"),
            Place.PLANT_ROOM,
            new Vec(500, 500, 100),
            new Vec(1_500, 1_700, 2_000));
    water.heatingFlow(boiler);
    water.heatingReturn(boiler);
    water.condensate();
    hangers(plan);
  }

  private void placeApparatus() {
    for (int i = 0; i < fanCoils.length; i++) {
      double x = FAN_COILS_X[i];
      fanCoils[i] =
          plan.box(
              what(
                  ElementClass.UNITARY_EQUIPMENT,
                  "AIRCONDITIONINGUNIT",
                  "apparatus",
                  "Fan coil unit " + (i + 1)),
              Place.HALL,
              new Vec(x - 600, 4_000, 2_500),
              new Vec(x + 600, 4_600, 3_050));
    }
    for (int i = 0; i < radiators.length; i++) {
      double x = RADIATORS_X[i];
      radiators[i] =
          plan.box(
              what(ElementClass.SPACE_HEATER, "RADIATOR", "apparatus", "Radiator " + (i + 1)),
              Place.HALL,
              new Vec(x, 14_600, 150),
              new Vec(x + 1_000, 14_700, 750));
    }
  }

  private void chilledFlow(Piece chiller, Piece airHandlingUnit) {
    Vec start = new Vec(4_000, 1_500, 8_600);
    Line main =
        plan.from(chiller, DemoSystem.CHILLED_FLOW, steel(100), start, EAST, Line.across(EAST))
            .flange()
            .straight(500)
            .valve("ISOLATING", "Butterfly valve", 52)
            .straight(400)
            .fixture(ElementClass.FILTER, "STRAINER", "strainer", "Strainer", 350)
            .turnAt(7_000, DOWN)
            .to(8_000)
            .in(Place.OFFICES)
            .to(4_000)
            .in(Place.PLANT_ROOM)
            .turnAt(3_000, EAST)
            .straight(300)
            .flange()
            .fixture(ElementClass.PUMP, "CIRCULATOR", "pump", "Chilled water pump", 450)
            .flange()
            .straight(250)
            .valve("CHECK", "Check valve", 64);
    main.teeAt(9_300, steel(65), NORTH)
        .turnAt(3_000, DOWN)
        .turnAt(800, NORTH)
        .straight(300)
        .valve("REGULATING", "Control valve", 290)
        .to(4_000)
        .into(airHandlingUnit);
    main.reduce(steel(80), 100).to(10_000).in(Place.HALL);
    for (int i = 0; i < fanCoils.length; i++) {
      main.teeAt(FAN_COILS_X[i], steel(25), NORTH)
          .straight(500)
          .valve("ISOLATING", "Ball valve", 80)
          .to(4_000)
          .into(fanCoils[i]);
      if (i == 0) {
        main.reduce(steel(65), 90);
      }
    }
    main.straight(500).cap();
  }

  private void chilledReturn(Piece chiller, Piece airHandlingUnit) {
    Vec start = new Vec(4_000, 2_500, 8_600);
    Line main =
        plan.from(chiller, DemoSystem.CHILLED_RETURN, steel(100), start, EAST, Line.across(EAST))
            .flange()
            .straight(900)
            .valve("ISOLATING", "Butterfly valve", 52)
            .turnAt(7_600, DOWN)
            .to(8_000)
            .in(Place.OFFICES)
            .to(4_000)
            .in(Place.PLANT_ROOM)
            .turnAt(2_600, EAST);
    main.teeAt(8_700, steel(65), NORTH)
        .turnAt(3_000, DOWN)
        .turnAt(1_600, NORTH)
        .straight(300)
        .valve("DOUBLEREGULATING", "Balancing valve", 290)
        .to(4_000)
        .into(airHandlingUnit);
    main.reduce(steel(80), 100).to(10_000).in(Place.HALL);
    for (int i = 0; i < fanCoils.length; i++) {
      main.teeAt(FAN_COILS_X[i] + 400, steel(25), NORTH)
          .straight(500)
          .valve("ISOLATING", "Ball valve", 80)
          .to(4_000)
          .into(fanCoils[i]);
      if (i == 0) {
        main.reduce(steel(65), 90);
      }
    }
    main.straight(500).cap();
  }

  private void heatingFlow(Piece boiler) {
    Vec start = new Vec(800, 1_100, 2_000);
    Line main =
        plan.from(boiler, DemoSystem.HEATING_FLOW, steel(50), start, UP, EAST)
            .straight(200)
            .valve("ISOLATING", "Ball valve", 150)
            .turnAt(2_900, NORTH)
            .straight(400)
            .insulated(30, "Mineral wool")
            .fixture(ElementClass.PUMP, "CIRCULATOR", "pump", "Heating pump", 280)
            .straight(1_000)
            .insulated(30, "Mineral wool");
    Line riser = main.tee(steel(25), UP).to(4_000).in(Place.OFFICES).turnAt(4_200, WEST);
    riser.straight(150).terminal(ElementClass.SPACE_HEATER, "RADIATOR", "Towel rail", 300, 60);
    main.to(8_000).in(Place.ROPE_STORE).turnAt(14_000, EAST).to(10_000).in(Place.HALL);
    for (int i = 0; i < radiators.length; i++) {
      double x = RADIATORS_X[i];
      main.teeAt(x - 300, steel(15), NORTH)
          .turnAt(14_650, DOWN)
          .turnAt(650, EAST)
          .straight(100)
          .valve("REGULATING", "Radiator valve", 60)
          .to(x)
          .into(radiators[i]);
      if (i == 1) {
        main.reduce(steel(32), 80);
      }
    }
    main.straight(300).cap();
  }

  private void heatingReturn(Piece boiler) {
    Vec start = new Vec(1_200, 1_100, 2_000);
    Line main =
        plan.from(boiler, DemoSystem.HEATING_RETURN, steel(50), start, UP, EAST)
            .straight(150)
            .valve("ISOLATING", "Ball valve", 150)
            .turnAt(2_750, NORTH)
            .to(8_000)
            .in(Place.ROPE_STORE)
            .turnAt(13_700, EAST)
            .to(10_000)
            .in(Place.HALL);
    for (int i = 0; i < radiators.length; i++) {
      double x = RADIATORS_X[i];
      main.teeAt(x + 1_300, steel(15), NORTH)
          .turnAt(14_650, DOWN)
          .turnAt(250, WEST)
          .to(x + 1_000)
          .into(radiators[i]);
      if (i == 1) {
        main.reduce(steel(32), 80);
      }
    }
    main.straight(300).cap();
  }

  private void condensate() {
    Size drain = new Size.Pipe("PVC-U", 32, 32, 1.8);
    Vec slant = new Vec(0, 1, -1).unit();
    Vec start = new Vec(FAN_COILS_X[0] - 400, 4_300, 2_500);
    plan.from(fanCoils[0], DemoSystem.CONDENSATE, drain, start, DOWN, EAST)
        .straight(150)
        .turn(slant)
        .straight(400)
        .turn(DOWN)
        .straight(1_500)
        .terminal(ElementClass.WASTE_TERMINAL, "FLOORTRAP", "Floor trap", 200, 60);
  }

  private static void hangers(Plan plan) {
    for (int i = 0; i < 6; i++) {
      plan.hanger(Place.HALL, new Vec(11_500 + 3_000 * i, 1_500, 3_050), i + 1);
    }
  }
}
