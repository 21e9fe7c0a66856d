package org.lagwright.takeoff.thickness;

import java.util.Optional;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.heat.AmbientAir;
import org.lagwright.takeoff.heat.TransientHeat;
import org.lagwright.takeoff.thickness.Demand.Kind;

/** Thickness that delays the freezing of standing water in a pipe. */
final class FrostDemand {

  private static final String SOURCE =
      "time of the project (demands: frost); cooling to 0 degC and freezing of a share of the bore"
          + " after ISO 12241 (from memory, verify). Insulation only delays freezing";

  /** Of water near freezing, kg/m3 times J/(kg K). */
  private static final double WATER_J_PER_M3_K = 1000.0 * 4210;

  private static final double SECONDS_PER_HOUR = 3600;
  private static final double THINNEST_M = 1e-4;
  private static final double ACCURACY_M = 1e-7;
  private static final int MAX_EVALUATIONS = 200;
  private static final int SOLVER_ORDER = 5;

  private FrostDemand() {}

  static Optional<Demand> find(Surround surround) {
    Conditions conditions = surround.conditions();
    Asked.Frost frost = conditions.asked().frost();
    if (frost == null
        || conditions.duct()
        || !(conditions.section() instanceof Section.Round round)) {
      return Optional.empty();
    }
    double boreM = SituationRulePack.BORES.boreM(round.outsideDiameterM());
    double thicknessM = thicknessM(surround, frost, boreM);
    Figures figures =
        new Figures()
            .number("air temperature degC", frost.airC(), 1)
            .number("wind m/s", conditions.exposure().windMPerS(), 1)
            .number("water at the beginning degC", frost.waterC(), 1)
            .number("time wanted h", frost.hours(), 1)
            .number("share of ice", frost.iceShare(), 2)
            .millimetres("inside diameter", boreM)
            .millimetres("thickness needed", thicknessM);
    return Optional.of(new Demand(Kind.FROST, thicknessM, "frost-time", SOURCE, figures.toMap()));
  }

  private static double thicknessM(Surround surround, Asked.Frost frost, double boreM) {
    double wantedS = frost.hours() * SECONDS_PER_HOUR;
    if (timeS(surround, frost, boreM, THINNEST_M) >= wantedS) {
      return 0;
    }
    if (timeS(surround, frost, boreM, Surround.THICKEST_LOOKED_AT_M) < wantedS) {
      return Double.POSITIVE_INFINITY;
    }
    return new BracketingNthOrderBrentSolver(ACCURACY_M, SOLVER_ORDER)
        .solve(
            MAX_EVALUATIONS,
            d -> timeS(surround, frost, boreM, d) / wantedS - 1,
            THINNEST_M,
            Surround.THICKEST_LOOKED_AT_M,
            AllowedSolution.ABOVE_SIDE);
  }

  /** Time until the share of ice, with the heat flow from 0 degC, seconds. */
  private static double timeS(
      Surround surround, Asked.Frost frost, double boreM, double thicknessM) {
    AmbientAir air = surround.meanAt(frost.airC());
    double flow = air.insulated(surround.whole(), surround.cover(thicknessM), 0).flow();
    double capacity = WATER_J_PER_M3_K * Math.PI * boreM * boreM / 4;
    double coolingS =
        TransientHeat.timeToReachS(frost.waterC(), 0, frost.airC(), flow / -frost.airC(), capacity);
    return coolingS + TransientHeat.freezingTimeS(frost.iceShare(), boreM, flow);
  }
}
