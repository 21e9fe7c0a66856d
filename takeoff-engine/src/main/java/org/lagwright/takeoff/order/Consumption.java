package org.lagwright.takeoff.order;

/**
 * How much of what closes and holds insulation. Elementary geometry; figures come from the pack.
 */
public final class Consumption {

  private Consumption() {}

  /**
   * Adhesive for faces that are coated, litres.
   *
   * @param facesM2 all coated faces, both sides of each joint
   * @param m2PerL faces that a litre covers
   */
  public static double adhesiveL(double facesM2, double m2PerL) {
    return facesM2 / m2PerL;
  }

  /**
   * Tape for one joint round a pipe, metres.
   *
   * @param diameterM outside diameter of the insulation
   * @param lapM how far the tape laps on itself
   */
  public static double tapeRingM(double diameterM, double lapM) {
    return Math.PI * diameterM + lapM;
  }

  /**
   * Jacket sheet over the area it covers: laps round the girth and at the end of each sheet.
   *
   * @param girthM outer girth of the insulation
   * @param lapM lap of both seams
   * @param courseM length of one sheet along the pipe
   */
  public static double lapFactor(double girthM, double lapM, double courseM) {
    return (girthM + lapM) / girthM * courseM / (courseM - lapM);
  }

  /** Volume of a round bead, cubic metres for each metre. */
  public static double beadM3PerM(double diameterM) {
    return Math.PI * diameterM * diameterM / 4;
  }
}
