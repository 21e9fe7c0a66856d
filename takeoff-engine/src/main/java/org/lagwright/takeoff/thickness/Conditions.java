package org.lagwright.takeoff.thickness;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;

/**
 * Everything the thickness of one element depends on. Elements with equal conditions get the same
 * thickness, whatever they are called.
 *
 * @param section outer section without insulation
 * @param duct true for ducts, which are lagged with sheet and have no pipe rule; false for pipes
 * @param condensationC temperature of the medium for condensation, degC; null where none is known
 * @param energyC temperature of the medium for the energy rule, degC; null where none is known
 * @param exposure what surrounds it
 * @param marginK how far the surface must stay above the dew point, kelvin, 0 or more
 * @param materialId material family
 * @param energyRuleId id of the energy rule, or {@link ThicknessChooser#NO_ENERGY_RULE}
 * @param userMinimumM thickness the user asks for at least, metres, above 0; null where none
 * @param location location class of the air, carried through to the decision
 * @param family family of the service, which rules by situation go by; empty where none
 * @param asked what the project asks for beside
 */
public record Conditions(
    Section section,
    boolean duct,
    @Nullable Double condensationC,
    @Nullable Double energyC,
    Exposure exposure,
    double marginK,
    String materialId,
    String energyRuleId,
    @Nullable Double userMinimumM,
    String location,
    String family,
    Asked asked) {

  public Conditions {
    require(marginK >= 0 && marginK <= 50, "margin must be from 0 to 50 K", marginK);
    requireMedium(condensationC);
    requireMedium(energyC);
    if (userMinimumM != null) {
      require(
          userMinimumM > 0 && userMinimumM <= 1,
          "minimum thickness must be above 0 and up to 1 m",
          userMinimumM);
    }
  }

  /**
   * The same in air of another humidity, with condensation as the only demand.
   *
   * @param humidityPct relative humidity, 1 to 100 %
   */
  public Conditions onlyCondensationAt(double humidityPct) {
    return new Conditions(
        section,
        duct,
        condensationC,
        null,
        exposure.at(humidityPct),
        marginK,
        materialId,
        ThicknessChooser.NO_ENERGY_RULE,
        null,
        location,
        family,
        Asked.NOTHING);
  }

  /** Design dry bulb of the air, degC. */
  public double airC() {
    return exposure.airC();
  }

  /** Relative humidity of the design air, %. */
  public double relativeHumidityPct() {
    return exposure.relativeHumidityPct();
  }

  /** Long-wave emissivity of the finished surface. */
  public double emissivity() {
    return exposure.emissivity();
  }

  private static void requireMedium(@Nullable Double mediumC) {
    if (mediumC != null) {
      require(mediumC >= -273 && mediumC <= 2000, "medium must be from -273 to 2000 degC", mediumC);
    }
  }

  private static void require(boolean holds, String what, double value) {
    if (!holds) {
      throw new IllegalArgumentException(what + ", was " + value);
    }
  }
}
