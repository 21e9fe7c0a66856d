package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Temperatures in names, as designers write them: {@code 70/55}, {@code 6-12 °C}, {@code 180/160
 * °F}, {@code 60°C}. A pair without a unit is one only between two numbers and a stroke.
 */
final class TemperatureText {

  /**
   * What a text tells, degC.
   *
   * @param values one value, or two: the flow and the return in the order written
   * @param unitGiven true where a degree sign or C, F stands with them
   * @param text the part of the text that tells it
   */
  record Found(List<Double> values, boolean unitGiven, String text) {
    Found {
      values = List.copyOf(values);
    }

    boolean isPair() {
      return values.size() == 2;
    }

    double lower() {
      return isPair() ? Math.min(values.get(0), values.get(1)) : values.get(0);
    }

    double higher() {
      return isPair() ? Math.max(values.get(0), values.get(1)) : values.get(0);
    }
  }

  private static final String NUMBER = "([-−]?\\d{1,3}(?:[.,]\\d{1,2})?)";
  private static final String NO_SIZE = "(?<!(?:DN|ND|Ø|⌀|NPS)\\s?)";
  private static final String UNIT = "(?:°\\s?|º\\s?|deg\\s?)([CF])\\b|\\s(C)\\b|(°)(?!\\s?[CF])";
  private static final String OPTIONAL_UNIT = "\\s?(?:(?:°|º|deg)\\s?[CF]?)?";
  private static final Pattern PAIR =
      Pattern.compile(
          "(?<![\\p{L}\\d.,/])"
              + NO_SIZE
              + NUMBER
              + OPTIONAL_UNIT
              + "\\s?([/–-])\\s?"
              + NUMBER
              + "(?![\\d.,/])\\s?(?:"
              + UNIT
              + ")?");
  private static final Pattern SINGLE =
      Pattern.compile("(?<![\\p{L}\\d.,/])" + NUMBER + "\\s?(?:" + UNIT + ")");

  private static final Pattern CYRILLIC_C = Pattern.compile("([°º]\\s?)\u0421");

  private static final Pattern PLAIN = Pattern.compile(NUMBER + "\\s?(?:°|º|deg)?\\s?(C|F|K)?");

  /** Less is a difference of temperatures. */
  private static final double COLDEST_KELVIN = 150;

  private static final double ZERO_CELSIUS_K = 273.15;

  private TemperatureText() {}

  /** The first temperature or pair in a text, empty where it tells none. */
  static Optional<Found> find(String written) {
    String text = withPlainUnits(written);
    Matcher pair = PAIR.matcher(text);
    while (pair.find()) {
      boolean unit = pair.group(4) != null || pair.group(5) != null || pair.group(6) != null;
      if (unit || pair.group(2).equals("/")) {
        List<Double> values =
            List.of(celsius(pair.group(1), pair.group(4)), celsius(pair.group(3), pair.group(4)));
        return Optional.of(new Found(values, unit, pair.group().strip()));
      }
    }
    Matcher single = SINGLE.matcher(text);
    if (single.find()) {
      List<Double> values = new ArrayList<>();
      values.add(celsius(single.group(1), single.group(2)));
      return Optional.of(new Found(values, true, single.group().strip()));
    }
    return Optional.empty();
  }

  /** A plain number, with or without a unit, degC; empty for other texts. */
  static Optional<Double> number(String text) {
    Matcher plain = PLAIN.matcher(withPlainUnits(text).strip());
    if (!plain.matches()) {
      return Optional.empty();
    }
    double celsius = celsius(plain.group(1), plain.group(2));
    if (!"K".equals(plain.group(2))) {
      return Optional.of(celsius);
    }
    return celsius < COLDEST_KELVIN ? Optional.empty() : Optional.of(celsius - ZERO_CELSIUS_K);
  }

  /** Degrees as one sign, and with the Cyrillic letter that looks like C, as °C. */
  private static String withPlainUnits(String text) {
    String signs = text.replace("\u2103", "°C").replace("\u2109", "°F");
    return CYRILLIC_C.matcher(signs).replaceAll("$1C");
  }

  private static double celsius(String number, @Nullable String unit) {
    double value = Double.parseDouble(number.replace(',', '.').replace('−', '-'));
    boolean fahrenheit = unit != null && unit.toUpperCase(Locale.ROOT).equals("F");
    return fahrenheit ? (value - 32) / 1.8 : value;
  }
}
