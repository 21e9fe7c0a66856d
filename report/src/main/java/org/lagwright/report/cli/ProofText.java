package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.thickness.Exposure;
import org.lagwright.takeoff.thickness.Proof;

/** What the thickness bought does, in words. */
final class ProofText {

  private ProofText() {}

  static List<String> lines(String below, Proof proof) {
    List<String> lines = new ArrayList<>(Wrapped.lines(below + "surface ", surface(proof)));
    lines.addAll(Wrapped.lines(below + "heat    ", heat(proof)));
    Proof.Saving saving = proof.saving();
    if (saving != null) {
      lines.addAll(
          Wrapped.lines(
              below + "saved   ",
              shown(
                  "a metre and year: %.1f kWh heat or cold, %.1f kWh energy, %.2f money, %.1f kg CO2",
                  saving.heatKWh(), saving.energyKWh(), saving.cost(), saving.co2Kg())));
    }
    return lines;
  }

  private static String surface(Proof proof) {
    String start =
        shown("%.1f degC with a medium of %.1f degC in ", proof.surfaceC(), proof.mediumC());
    return proof.dewPointC() == null
        ? start + shown("soil of %.1f degC", proof.airC())
        : start
            + shown(
                "air of %.1f degC and %.0f %%, dew point %.1f degC",
                proof.airC(), proof.relativeHumidityPct(), proof.dewPointC());
  }

  private static String heat(Proof proof) {
    Exposure exposure = proof.conditions().exposure();
    String into =
        exposure.isBuried()
            ? shown("soil of %.1f degC", exposure.meanC())
            : shown("air of %.1f degC, wind %.1f m/s", exposure.meanC(), exposure.windMPerS());
    return shown(
            "%.1f W/m bare, %.1f W/m insulated, medium %.1f degC, over the year in ",
            proof.bareWPerM(), proof.insulatedWPerM(), proof.heatMediumC())
        + into;
  }

  private static String shown(String format, @Nullable Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
