package org.lagwright.takeoff.thickness;

import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.economy.EnergyTariff;

/**
 * Demands the project makes on one element beside condensation and energy rule; null is not asked.
 *
 * @param heatLossWPerM largest heat flow per metre of run in either direction, W/m
 * @param touchLimitC hottest surface allowed, degC
 * @param frost how long standing water must not freeze
 * @param tariff what heat or cold costs, for the yearly saving
 * @param insulation what insulation costs, for the thickness of least cost; only with a tariff
 * @param specified thickness of the project's own table
 */
public record Asked(
    @Nullable Double heatLossWPerM,
    @Nullable Double touchLimitC,
    @Nullable Frost frost,
    @Nullable EnergyTariff tariff,
    @Nullable InsulationPrice insulation,
    @Nullable Specified specified) {

  /** Nothing beside condensation and energy rule. */
  public static final Asked NOTHING = new Asked(null, null, null, null, null, null);

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new IllegalArgumentException(what);
    }
  }

  /**
   * Frost protection of standing water. Insulation only delays freezing.
   *
   * @param airC air, degC, below 0
   * @param waterC water at the beginning, degC, 0 or more
   * @param hours time until the share of ice is reached at the earliest, above 0
   * @param iceShare share of the bore that may freeze, above 0, up to 1; a quarter is usual
   */
  public record Frost(double airC, double waterC, double hours, double iceShare) {
    public Frost {
      require(airC < 0 && airC >= -60, "frost: airC must be from -60 to below 0.");
      require(waterC >= 0 && waterC < 100, "frost: waterC must be from 0 to below 100.");
      require(hours > 0 && hours <= 1000, "frost: hours must be above 0, up to 1000.");
      require(iceShare > 0 && iceShare <= 1, "frost: iceShare must be above 0, up to 1.");
    }
  }

  /**
   * What insulation costs, installed.
   *
   * @param perM3 money per cubic metre of insulation
   * @param perM2 money per square metre of outer surface: jacket and labour
   * @param interest per year, 0 or more: 0.05
   * @param years of use, above 0
   */
  public record InsulationPrice(double perM3, double perM2, double interest, double years) {
    public InsulationPrice {
      require(perM3 >= 0 && perM2 >= 0 && perM3 + perM2 > 0, "insulation needs a price above 0.");
      require(interest >= 0 && interest < 1, "insulation: interest must be from 0 to below 1.");
      require(years > 0 && years <= 100, "insulation: years must be above 0, up to 100.");
    }
  }

  /**
   * Thickness of the project's own table.
   *
   * @param thicknessM metres, above 0
   * @param source clause, row or cell it stands in
   */
  public record Specified(double thicknessM, String source) {
    public Specified {
      require(
          thicknessM > 0 && thicknessM <= 1, "a specified thickness must be above 0, up to 1 m.");
    }
  }
}
