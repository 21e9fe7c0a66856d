package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lagwright.takeoff.thickness.Proof;

/** What the thickness bought does, in words. */
final class ProofText {

  private ProofText() {}

  static List<String> lines(String below, Proof proof) {
    List<String> lines = new ArrayList<>();
    lines.addAll(
        Wrapped.lines(
            below + "surface ",
            shown(
                "%.1f degC with a medium of %.1f degC in air of %.1f degC and %.0f %%, dew point %.1f"
                    + " degC",
                proof.surfaceC(),
                proof.mediumC(),
                proof.airC(),
                proof.relativeHumidityPct(),
                proof.dewPointC())));
    lines.addAll(
        Wrapped.lines(
            below + "heat    ",
            shown("%.1f W/m bare, %.1f W/m insulated", proof.bareWPerM(), proof.insulatedWPerM())));
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

  private static String shown(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
