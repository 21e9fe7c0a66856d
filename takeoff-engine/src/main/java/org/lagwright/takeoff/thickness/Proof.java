package org.lagwright.takeoff.thickness;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.economy.EnergyTariff;
import org.lagwright.takeoff.moistair.MoistAir;

/**
 * What the thickness bought does. Surface: in still design air. Heat flow: over the year, per metre
 * of run.
 *
 * @param conditions what it was computed for
 * @param mediumC medium at the surface, degC: for a cold one that of condensation, else that of
 *     energy
 * @param airC design air, or the soil round a buried pipe, degC
 * @param dewPointC of that air, degC; null in the ground
 * @param surfaceC surface as bought, the one farthest from the air, degC
 * @param heatMediumC medium for the heat flow, degC
 * @param bareWPerM heat flow bare, W/m, positive outwards
 * @param insulatedWPerM heat flow as bought
 * @param saving per metre and year; null where the project names no tariff
 */
public record Proof(
    Conditions conditions,
    double mediumC,
    double airC,
    @Nullable Double dewPointC,
    double surfaceC,
    double heatMediumC,
    double bareWPerM,
    double insulatedWPerM,
    @Nullable Saving saving) {

  /**
   * What is saved per metre and year.
   *
   * @param heatKWh heat or cold
   * @param energyKWh energy bought
   * @param cost money
   * @param co2Kg carbon dioxide
   */
  public record Saving(double heatKWh, double energyKWh, double cost, double co2Kg) {}

  /** Null where no temperature of the medium is known. */
  static @Nullable Proof of(Surround surround, double boughtM) {
    Conditions conditions = surround.conditions();
    Double mediumC = medium(conditions);
    if (mediumC == null) {
      return null;
    }
    Exposure exposure = conditions.exposure();
    double airC = exposure.isBuried() ? exposure.meanC() : exposure.airC();
    double heatMediumC = Objects.requireNonNullElse(conditions.energyC(), mediumC);
    double bare = surround.flowWPerM(0, heatMediumC);
    double insulated = surround.flowWPerM(boughtM, heatMediumC);
    return new Proof(
        conditions,
        mediumC,
        airC,
        exposure.isBuried() ? null : MoistAir.dewPointC(airC, exposure.relativeHumidityPct()),
        surround.worstSurface(boughtM, mediumC).surfaceC(),
        heatMediumC,
        bare,
        insulated,
        saving(conditions.asked().tariff(), Math.abs(bare) - Math.abs(insulated)));
  }

  /** Relative humidity of the design air, %; null in the ground. */
  public @Nullable Double relativeHumidityPct() {
    return dewPointC == null ? null : conditions.relativeHumidityPct();
  }

  /** Surface above the dew point, kelvin; null in the ground. */
  public @Nullable Double aboveDewPointK() {
    return dewPointC == null ? null : surfaceC - dewPointC;
  }

  /** True where so thin a pipe loses more with this insulation than bare. */
  public boolean raisesHeatFlow() {
    return Math.abs(insulatedWPerM) > Math.abs(bareWPerM);
  }

  private static @Nullable Double medium(Conditions conditions) {
    Double coldC = conditions.condensationC();
    Double energyC = conditions.energyC();
    boolean cold = coldC != null && coldC < conditions.airC();
    return cold || energyC == null ? coldC : energyC;
  }

  private static @Nullable Saving saving(@Nullable EnergyTariff tariff, double savedW) {
    if (tariff == null) {
      return null;
    }
    double sign = Math.signum(savedW);
    return new Saving(
        sign * tariff.heatKWh(savedW),
        sign * tariff.energyKWh(savedW),
        sign * tariff.costPerYear(savedW),
        sign * tariff.co2KgPerYear(savedW));
  }
}
