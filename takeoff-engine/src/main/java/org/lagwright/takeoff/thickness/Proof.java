package org.lagwright.takeoff.thickness;

import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.economy.EnergyTariff;
import org.lagwright.takeoff.heat.HeatFlow;
import org.lagwright.takeoff.moistair.MoistAir;

/**
 * What the thickness bought does, per metre of run.
 *
 * @param conditions what it was computed for
 * @param mediumC medium, degC: for a cold one that of condensation, else that of energy
 * @param airC air, degC
 * @param relativeHumidityPct of that air
 * @param dewPointC of that air, degC
 * @param surfaceC surface as bought, the one farthest from the air, degC
 * @param bareWPerM heat flow bare, W/m, positive outwards
 * @param insulatedWPerM heat flow as bought
 * @param saving per metre and year; null where the project names no tariff
 */
public record Proof(
    Conditions conditions,
    double mediumC,
    double airC,
    double relativeHumidityPct,
    double dewPointC,
    double surfaceC,
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
    HeatFlow surface = surround.worstSurface(boughtM, mediumC);
    double bare = surround.flowWPerM(0, mediumC);
    double insulated = surround.flowWPerM(boughtM, mediumC);
    return new Proof(
        conditions,
        mediumC,
        conditions.airC(),
        conditions.relativeHumidityPct(),
        MoistAir.dewPointC(conditions.airC(), conditions.relativeHumidityPct()),
        surface.surfaceC(),
        bare,
        insulated,
        saving(conditions.asked().tariff(), Math.abs(bare) - Math.abs(insulated)));
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
