package org.lagwright.takeoff.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.economy.EnergyTariff;
import org.lagwright.takeoff.thickness.Asked;

/**
 * What the project asks for beside condensation and energy rule, as written in the settings; null
 * is not asked.
 *
 * @param heatLossWPerM largest heat flow per metre of run by service id, W/m
 * @param touchLimitC hottest surface allowed, degC
 * @param frost which pipes must not freeze for how long
 * @param tariffs what heat or cold costs, by kind of service ({@code cold}, {@code hot}, {@code
 *     air})
 * @param insulation what insulation costs, for the thickness of least cost
 * @param currency word behind money: {@code EUR}
 * @param specification the project's own table of thicknesses; the first row that fits wins
 * @param specificationFile file with more rows of that table, beside the settings
 */
public record DemandSettings(
    @Nullable Map<String, Double> heatLossWPerM,
    @Nullable Double touchLimitC,
    @Nullable FrostRule frost,
    @Nullable Map<String, EnergyTariff> tariffs,
    Asked.@Nullable InsulationPrice insulation,
    @Nullable String currency,
    @Nullable List<SpecificationRow> specification,
    @Nullable String specificationFile) {

  /** Nothing beside condensation and energy rule. */
  public static final DemandSettings NONE =
      new DemandSettings(null, null, null, null, null, null, null, null);

  public DemandSettings {
    if (touchLimitC != null && !(touchLimitC >= 30 && touchLimitC <= 100)) {
      throw new IllegalArgumentException("touchLimitC must lie between 30 and 100 degC.");
    }
  }

  /** The same with more rows of the project's own table. */
  DemandSettings plusRows(List<SpecificationRow> more) {
    List<SpecificationRow> all = new ArrayList<>(rows());
    all.addAll(more);
    return new DemandSettings(
        heatLossWPerM,
        touchLimitC,
        frost,
        tariffs,
        insulation,
        currency,
        List.copyOf(all),
        specificationFile);
  }

  /** Limits of the heat flow by service id, W/m. */
  public Map<String, Double> heatLosses() {
    return heatLossWPerM == null ? Map.of() : heatLossWPerM;
  }

  /** What heat or cold costs for a kind of service, null where the project does not tell. */
  public @Nullable EnergyTariff tariff(String kind) {
    return tariffs == null ? null : tariffs.get(kind);
  }

  /** The rows of the project's own table. */
  public List<SpecificationRow> rows() {
    return specification == null ? List.of() : specification;
  }

  /**
   * Frost protection.
   *
   * @param locations location classes it holds in
   * @param services service ids it holds for; null for all that carry water
   */
  public record FrostRule(
      double airC,
      double waterC,
      double hours,
      double iceShare,
      List<String> locations,
      @Nullable List<String> services) {

    public FrostRule {
      frost(airC, waterC, hours, iceShare);
    }

    /** What it asks for. */
    public Asked.Frost asked() {
      return frost(airC, waterC, hours, iceShare);
    }

    private static Asked.Frost frost(double airC, double waterC, double hours, double iceShare) {
      return new Asked.Frost(airC, waterC, hours, iceShare);
    }
  }

  /**
   * One row of the project's own table.
   *
   * @param service service id; null for all
   * @param location location class; null for all
   * @param aboveMm sizes above this: outside diameter of pipes, longest side of ducts; null from 0
   * @param upToMm sizes up to this, included; null without end
   * @param thicknessMm thickness, millimetres
   * @param source clause or cell, null where the row stands in the settings
   */
  public record SpecificationRow(
      @Nullable String service,
      @Nullable String location,
      @Nullable Double aboveMm,
      @Nullable Double upToMm,
      double thicknessMm,
      @Nullable String source) {

    public SpecificationRow {
      if (!(thicknessMm > 0 && thicknessMm <= 1000)) {
        throw new IllegalArgumentException("thicknessMm must be above 0 and at most 1000.");
      }
      if (aboveMm != null && upToMm != null && !(aboveMm < upToMm)) {
        throw new IllegalArgumentException("aboveMm must be below upToMm.");
      }
    }

    /** True where the row holds for a service, a location and a size in metres. */
    public boolean fits(String serviceId, String locationClass, double sizeM) {
      double mm = sizeM * 1000;
      return (service == null || service.equals(serviceId))
          && (location == null || location.equals(locationClass))
          && (aboveMm == null || mm > aboveMm)
          && (upToMm == null || mm <= upToMm + 1e-9);
    }
  }
}
