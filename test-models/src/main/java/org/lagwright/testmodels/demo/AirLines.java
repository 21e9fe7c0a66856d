package org.lagwright.testmodels.demo;

import static org.lagwright.testmodels.ifc.Vec.DOWN;
import static org.lagwright.testmodels.ifc.Vec.EAST;
import static org.lagwright.testmodels.ifc.Vec.NORTH;
import static org.lagwright.testmodels.ifc.Vec.SOUTH;
import static org.lagwright.testmodels.ifc.Vec.UP;
import static org.lagwright.testmodels.ifc.Vec.WEST;

import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Vec;

/** Supply, extract and outdoor air ducts of the air handling unit. */
final class AirLines {

  private final Plan plan;
  private final Piece airHandlingUnit;

  private AirLines(Plan plan, Piece airHandlingUnit) {
    this.plan = plan;
    this.airHandlingUnit = airHandlingUnit;
  }

  static void lay(Plan plan, Piece airHandlingUnit) {
    AirLines air = new AirLines(plan, airHandlingUnit);
    air.supply();
    air.extract();
    air.outdoor();
  }

  private void supply() {
    Vec start = new Vec(7_000, 4_500, 2_300);
    Size first = new Size.Rectangular(800, 400);
    Line main =
        plan.from(airHandlingUnit, DemoSystem.SUPPLY_AIR, first, start, UP, NORTH)
            .straight(400)
            .turnAt(3_350, EAST)
            .to(10_000)
            .in(Place.HALL);
    diffuser(main.teeAt(13_500, new Size.Rectangular(400, 400), SOUTH), 1);
    main.reduce(new Size.Rectangular(600, 400), 300);
    diffuser(main.teeAt(20_000, new Size.Rectangular(400, 400), SOUTH), 2);
    main.reduce(new Size.Rectangular(400, 400), 300);
    diffuser(main.teeAt(27_000, new Size.Rectangular(400, 400), SOUTH), 3);
    Vec slant = new Vec(1, 1, 0).unit();
    main.straight(600)
        .reduce(new Size.Round(355), 400)
        .straight(800)
        .fixture(ElementClass.DAMPER, "BALANCINGDAMPER", "damper", "Damper", 300)
        .straight(700)
        .turn(slant)
        .straight(900)
        .turn(EAST)
        .straight(1_200)
        .reduce(new Size.Round(315), 200)
        .turn(DOWN)
        .straight(150)
        .terminal(ElementClass.AIR_TERMINAL, "DIFFUSER", "Air diffuser 4", 500, 120);
  }

  private static void diffuser(Line branch, int number) {
    branch
        .reduce(new Size.Round(315), 350)
        .straight(250)
        .turn(DOWN)
        .straight(150)
        .terminal(ElementClass.AIR_TERMINAL, "DIFFUSER", "Air diffuser " + number, 500, 120);
  }

  private void extract() {
    Vec start = new Vec(8_000, 5_500, 2_300);
    Size first = new Size.Rectangular(600, 300);
    Line main =
        plan.from(airHandlingUnit, DemoSystem.EXTRACT_AIR, first, start, UP, NORTH)
            .straight(500)
            .turnAt(3_350, EAST)
            .to(10_000)
            .in(Place.HALL);
    grille(main.teeAt(15_000, new Size.Rectangular(300, 300), NORTH), 1);
    main.reduce(new Size.Rectangular(400, 300), 300);
    grille(main.teeAt(23_000, new Size.Rectangular(300, 300), NORTH), 2);
    main.straight(1_000).cap();
  }

  private static void grille(Line branch, int number) {
    branch
        .straight(1_500)
        .turn(DOWN)
        .straight(200)
        .terminal(ElementClass.AIR_TERMINAL, "GRILLE", "Extract grille " + number, 400, 60);
  }

  private void outdoor() {
    Vec start = new Vec(6_000, 5_000, 1_500);
    Size first = new Size.Rectangular(800, 500);
    plan.from(airHandlingUnit, DemoSystem.OUTDOOR_AIR, first, start, WEST, Line.across(WEST))
        .straight(300)
        .reduce(new Size.Round(500), 400)
        .turnAt(4_600, UP)
        .to(4_000)
        .in(Place.OFFICES)
        .to(8_000)
        .in(Place.ROOF)
        .turnAt(9_500, NORTH)
        .straight(2_500)
        .straight(1_000)
        .terminal(ElementClass.AIR_TERMINAL, "LOUVRE", "Weather louvre", 700, 200);
  }
}
