package org.lagwright.testmodels.large;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.lagwright.testmodels.demo.Shapes;
import org.lagwright.testmodels.demo.Size;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.Vec;

/**
 * A line of {@link #PARTS} connected elements: five straight pieces, three bends, and one tee,
 * reducer, valve or damper. It lies level and turns left and right.
 *
 * @param index from 0
 */
record Run(int index, Service service, List<Part> parts) {

  static final int PARTS = 9;
  static final int STOREYS = 8;

  private static final double STOREY_HEIGHT_MM = 4000;

  /** Lines lie on a grid, too far apart to touch. */
  private static final double GRID_MM = 60_000;

  private static final int GRID_COLUMNS = 100;
  private static final int SHORTEST_TENTHS = 3_000;
  private static final int LONGEST_TENTHS = 60_000;
  private static final double REDUCER_MM = 300;
  private static final double VALVE_MM = 200;

  private static final List<Size> WATER =
      List.of(
          Size.steel(100),
          Size.steel(80),
          Size.steel(65),
          Size.steel(50),
          Size.steel(40),
          Size.steel(25),
          Size.steel(15),
          Size.copper(28),
          Size.copper(22),
          Size.copper(15));

  private static final List<Size> AIR =
      List.of(
          new Size.Round(500),
          new Size.Round(315),
          new Size.Round(200),
          new Size.Round(125),
          new Size.Rectangular(800, 300),
          new Size.Rectangular(600, 300),
          new Size.Rectangular(400, 300),
          new Size.Rectangular(250, 300));

  /** The next line of a model; takes its sizes and lengths from the random numbers. */
  static Run of(int index, Random random) {
    Service service = Service.values()[index % Service.values().length];
    List<Size> sizes = service.isAir() ? AIR : WATER;
    int pick = random.nextInt(sizes.size() - 1);
    Size size = sizes.get(pick);
    Size next = sizes.get(pick + 1);
    boolean reduces = next.getClass().equals(size.getClass()) && next.largest() < size.largest();
    Size smaller = reduces ? next : size;
    return new Walk(index, service, size, smaller, random).run();
  }

  int storey() {
    return index % STOREYS;
  }

  /** Height of a storey above the ground. */
  static double elevationMm(int storey) {
    return storey * STOREY_HEIGHT_MM;
  }

  String systemName() {
    return service.words + " " + (index + 1);
  }

  /** Puts part after part. */
  private static final class Walk {
    private final int index;
    private final Service service;
    private Size size;
    private final Size smaller;
    private final Random random;
    private final List<Part> parts = new ArrayList<>();
    private Frame at;

    Walk(int index, Service service, Size size, Size smaller, Random random) {
      this.index = index;
      this.service = service;
      this.size = size;
      this.smaller = smaller;
      this.random = random;
      double x = GRID_MM * (index % GRID_COLUMNS);
      double y = GRID_MM * (index / GRID_COLUMNS);
      double z = elevationMm(index % STOREYS) + 2800;
      at = new Frame(new Vec(x, y, z), Vec.EAST, Vec.NORTH);
    }

    Run run() {
      straight();
      bend();
      straight();
      bend();
      straight();
      special();
      straight();
      bend();
      straight();
      return new Run(index, service, List.copyOf(parts));
    }

    private void straight() {
      int tenths = SHORTEST_TENTHS + random.nextInt(LONGEST_TENTHS - SHORTEST_TENTHS + 1);
      add("straight", size, tenths);
    }

    private void bend() {
      add("bend", size, 0);
    }

    private void special() {
      boolean reduces = !size.equals(smaller);
      int turn = random.nextInt(3);
      if (turn == 0) {
        add("tee", smaller, Math.round(20 * Shapes.teeHalfRun(size, smaller)));
      } else if (turn == 1 && reduces) {
        add("reducer", smaller, Math.round(10 * REDUCER_MM));
        size = smaller;
      } else {
        add(service.isAir() ? "damper" : "valve-body", size, Math.round(10 * VALVE_MM));
      }
    }

    private void add(String form, Size to, long lengthTenths) {
      long mark = (long) index * PARTS + parts.size() + 1;
      parts.add(new Part(mark, form, service.isAir(), size, to, lengthTenths, at));
      at = parts.get(parts.size() - 1).end();
    }
  }
}
