package org.lagwright.takeoff.heat;

/**
 * What layers of insulation lie on. All figures are per metre of run for pipes and ducts and per
 * square metre for flat surfaces.
 */
public sealed interface Body {

  /**
   * Surface at a distance from the bare surface: square metres per metre of run, or 1 for a flat
   * surface.
   *
   * @param coverM thickness of everything below, metres, 0 or more
   */
  double surfaceM2(double coverM);

  /**
   * Resistance of one layer: metre kelvin per watt for pipes and ducts, square metre kelvin per
   * watt for flat surfaces.
   *
   * @param belowM thickness of the layers below it, metres
   * @param thicknessM its own thickness, metres
   * @param conductivityWPerMK its conductivity
   */
  double layerResistance(double belowM, double thicknessM, double conductivityWPerMK);

  /**
   * Length that decides the convection at the outer surface, metres: the outer diameter of a pipe,
   * the height of a side.
   *
   * @param coverM thickness of the cover, metres
   */
  double convectionLengthM(double coverM);

  /**
   * A pipe or round duct. Resistance ln(De/Di)/(2 pi lambda): ISO 12241, clause 4, and every
   * textbook.
   *
   * @param diameterM diameter of the surface the first layer lies on, metres
   */
  record Cylinder(double diameterM) implements Body {

    public Cylinder {
      requirePositive(diameterM, "diameter");
    }

    @Override
    public double surfaceM2(double coverM) {
      return Math.PI * (diameterM + 2 * coverM);
    }

    @Override
    public double layerResistance(double belowM, double thicknessM, double conductivityWPerMK) {
      double insideM = diameterM + 2 * belowM;
      return Math.log1p(2 * thicknessM / insideM) / (2 * Math.PI * conductivityWPerMK);
    }

    @Override
    public double convectionLengthM(double coverM) {
      return diameterM + 2 * coverM;
    }
  }

  /**
   * A flat surface: resistance d/lambda.
   *
   * @param heightM extent that the air travels along, metres
   */
  record Flat(double heightM) implements Body {

    public Flat {
      requirePositive(heightM, "height");
    }

    @Override
    public double surfaceM2(double coverM) {
      return 1;
    }

    @Override
    public double layerResistance(double belowM, double thicknessM, double conductivityWPerMK) {
      return thicknessM / conductivityWPerMK;
    }

    @Override
    public double convectionLengthM(double coverM) {
      return heightM;
    }
  }

  /**
   * A rectangular duct as a whole: outer perimeter Pe = Pi + 8 d, resistance 2 d/(lambda (Pi +
   * Pe)), the form of ISO 12241:2022 as the UK Home Energy Model uses it. The corners make its
   * surface a little warmer than {@link Flat} for a cold duct, so condensation is checked with
   * {@link Flat}.
   *
   * @param perimeterM perimeter of the bare duct, metres
   * @param heightM side that decides the convection, metres
   */
  record RectangularDuct(double perimeterM, double heightM) implements Body {

    public RectangularDuct {
      requirePositive(perimeterM, "perimeter");
      requirePositive(heightM, "height");
    }

    @Override
    public double surfaceM2(double coverM) {
      return perimeterM + 8 * coverM;
    }

    @Override
    public double layerResistance(double belowM, double thicknessM, double conductivityWPerMK) {
      double both = surfaceM2(belowM) + surfaceM2(belowM + thicknessM);
      return 2 * thicknessM / (conductivityWPerMK * both);
    }

    @Override
    public double convectionLengthM(double coverM) {
      return heightM;
    }
  }

  private static void requirePositive(double lengthM, String what) {
    if (!(lengthM > 0 && Double.isFinite(lengthM))) {
      throw new IllegalArgumentException(what + " must be above zero and finite, was " + lengthM);
    }
  }
}
