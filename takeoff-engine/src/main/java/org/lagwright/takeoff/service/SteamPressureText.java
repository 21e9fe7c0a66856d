package org.lagwright.takeoff.service;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lagwright.takeoff.moistair.SteamSaturation;

/**
 * Pressures of steam in names, as designers write them: {@code 6 bar}, {@code 10 barg}, {@code 1,5
 * bar(ü)}, {@code 7 bar abs}, {@code 100 psig}. Without a word for it a pressure is taken as gauge,
 * as in the trade (common practice, no source): that is the hotter reading.
 */
final class SteamPressureText {

  /**
   * What a text tells.
   *
   * @param saturatedC saturation temperature, degC
   * @param coldestC the same where an untold kind of pressure is absolute, which no steam is below
   * @param text the part of the text that tells it
   * @param gaugeAssumed true where it does not say gauge or absolute
   */
  record Found(double saturatedC, double coldestC, String text, boolean gaugeAssumed) {}

  private static final Pattern PRESSURE =
      Pattern.compile(
          "(?<![\\p{L}\\d.,/–-])(\\d{1,4}(?:[.,]\\d{1,2})?)\\s?(bar|psi|kpa|mpa)"
              + "(?:\\s?[(\\[]?\\s?(gauge|abs(?:olute|olut|olu)?|eff|[gaüu])\\.?\\s?[)\\]]?(?!\\p{L}))?"
              + "(?![\\p{L}/])",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  /** What a part is fit for, or is tested or opens at, is no pressure of its service. */
  private static final Pattern LIMIT =
      Pattern.compile(
          "(?<!\\p{L})(?:pn|ps|mawp|max\\w*|min\\w*|rat(?:ed|ing)|class|design|test|safety|relief|set"
              + "|up\\s?to|nenn\\p{L}*|prüf\\p{L}*|auslegung\\p{L}*|sicherheit\\p{L}*|bis|zul\\p{L}*"
              + "|épreuve|prueba|diseño|progetto|prova)(?!\\p{L})",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private SteamPressureText() {}

  /** The one pressure a text tells; empty where it tells none, several, or a limit. */
  static Optional<Found> find(String text) {
    Matcher pressure = PRESSURE.matcher(text);
    if (LIMIT.matcher(text).find() || !pressure.find()) {
      return Optional.empty();
    }
    String kind = pressure.group(3) == null ? "" : pressure.group(3).toLowerCase(Locale.ROOT);
    double pascal = pascal(pressure.group(1), pressure.group(2));
    String told = pressure.group().strip();
    if (pressure.find()) {
      return Optional.empty();
    }
    double absolutePa = kind.startsWith("a") ? pascal : pascal + SteamSaturation.ATMOSPHERE_PA;
    if (!SteamSaturation.isSaturatedAt(absolutePa)) {
      return Optional.empty();
    }
    double saturatedC = SteamSaturation.temperatureC(absolutePa);
    boolean assumed = kind.isEmpty() && SteamSaturation.isSaturatedAt(pascal);
    double coldestC = assumed ? SteamSaturation.temperatureC(pascal) : saturatedC;
    return Optional.of(new Found(saturatedC, coldestC, told, kind.isEmpty()));
  }

  private static double pascal(String number, String unit) {
    double value = Double.parseDouble(number.replace(',', '.'));
    return value
        * switch (unit.toLowerCase(Locale.ROOT)) {
          case "bar" -> 1e5;
          case "kpa" -> 1e3;
          case "mpa" -> 1e6;
          // one pound-force per square inch, exact factors of pound, gravity and inch
          default -> 4.4482216152605 / (0.0254 * 0.0254);
        };
  }
}
