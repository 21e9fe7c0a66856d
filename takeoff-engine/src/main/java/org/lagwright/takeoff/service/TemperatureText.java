package org.lagwright.takeoff.service;

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
   * @param further a second temperature that stands apart from a single one, null where none does:
   *     {@code RL 50°C VL 70°C}
   */
  record Found(List<Double> values, boolean unitGiven, @Nullable Double further) {
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

    /** A single temperature and the one that stands apart from it as a pair. */
    Found paired() {
      return further == null ? this : new Found(List.of(values.get(0), further), unitGiven, null);
    }
  }

  private static final String NUMBER = "([-−–+]?\\d{1,3}(?:[.,]\\d{1,2})?)";
  private static final String NO_SIZE = "(?<!(?:DN|ND|PN|Ø|⌀|NPS)\\s?)";

  /** A rating behind a temperature is no second one: {@code 14 °C / 6 bar}. */
  private static final String NO_RATING = "(?!\\s?(?:bar|[kM]Pa|psi|kW|MW|mm)(?!\\p{L}))";

  private static final String LIMIT =
      "T?(?:MAX|MIN)(?:IMUM|IMAL)?(?:[.:=]?\\s(?:\\p{L}{1,12}\\s)?\\p{L}{0,10}TEMP\\p{L}{0,8})?|ZUL|TS"
          + "|[D\u0394\u2206]T|DELTA\\s?T";

  /** The air around is not how warm the medium is. */
  private static final String AROUND = "RAUM|ROOM|AUSSEN|AU\u00DFEN|OUTDOOR|AMBIENT|UMGEBUNG";

  private static final String NOT_AROUND = "(?!\\s?(?iu:" + AROUND + "))";

  /** What it is fit for, or how far temperatures lie apart, is not how warm the medium is. */
  private static final String NO_LIMIT =
      "(?<!(?<!\\p{L})(?iu:" + LIMIT + "|" + AROUND + ")[.:=]?\\s?[:=]?\\s?|[\u2264<]=?\\s?)";

  private static final String DEGREE = "(?:°|º|(?i:deg(?:rees?|\\.)?|grad))";
  private static final String NO_LETTER = "(?!\\p{L}|\\s?[CF]\\b)";

  /** The room behind flow and return as EN 442-2 names radiators by: {@code 75/65/20}. */
  private static final String ROOM = "(?:\\s?/\\s?(?:1[5-9]|2[0-6])(?!\\d))?";

  /** Without a degree sign or a gap other figures may be numbers of flats or axes. */
  private static final String GLUED = "((?:[4-9]\\d)(?=C\\b)|(?:1\\d\\d|2[0-4]\\d)(?=F\\b))([CF])";

  private static final String UNIT =
      DEGREE
          + "\\s?([CF])(?:elsius|ahrenheit)?\\b|\\s(C)(?:elsius)?\\b|("
          + DEGREE
          + ")"
          + NO_LETTER;
  private static final String OPTIONAL_UNIT = "\\s?(?:" + DEGREE + "\\s?[CF]?|[CF]\\b)?";
  private static final Pattern PAIR =
      Pattern.compile(
          "(?<![\\p{L}\\d.,/])"
              + NO_SIZE
              + NO_LIMIT
              + NUMBER
              + OPTIONAL_UNIT
              + "\\s?([/–-]|bis|to|à)\\s?"
              + NUMBER
              + ROOM
              + "(?![\\d.,/])"
              + NO_RATING
              + "\\s?(?:"
              + UNIT
              + "|(F)\\b)?");

  /** A figure is not read without the sign that stands before it. */
  private static final String UNSIGNED = "(?<!(?:^|\\s)[-−–+])";

  private static final Pattern SINGLE =
      Pattern.compile(
          "(?<![\\p{L}\\d.,/])"
              + UNSIGNED
              + NO_LIMIT
              + NUMBER
              + "\\s?(?:"
              + UNIT
              + ")"
              + NOT_AROUND);

  private static final Pattern GLUED_SINGLE =
      Pattern.compile("(?<![\\p{L}\\d.,/–-])" + NO_SIZE + NO_LIMIT + GLUED);

  private static final String BETWEEN = "\\s?[=:]?\\s?" + NUMBER + "(?![\\d.,])\\s?[/,;–-]?\\s?";
  private static final String LAST = "\\s?[=:]?\\s?" + NUMBER + "(?![\\d.,/])";
  private static final String FLOW = "(?:VL|Vorlauf|[Ff]low|[Ss]upply)";
  private static final String RETURN = "(?:RL|Rücklauf|[Rr]eturn)";

  /** {@code VL 70 RL 50}: the words beside the figures say what they are. */
  private static final Pattern NAMED =
      Pattern.compile(
          "(?<!\\p{L})(?:%1$s%3$s%2$s%4$s|%2$s%3$s%1$s%4$s)"
              .formatted(FLOW, RETURN, BETWEEN, LAST));

  private static final Pattern CYRILLIC_C = Pattern.compile("([°º]\\s?)\u0421");

  private static final Pattern PLAIN =
      Pattern.compile(NUMBER + "\\s?" + DEGREE + "?\\s?(?:(C|F|K)(?:elsius|ahrenheit|elvin)?)?");

  /** Circuits and floors are numbered 1/2; a flow and its return lie further apart, kelvin. */
  private static final double COUNTED = 1;

  /** Less is a difference of temperatures. */
  private static final double COLDEST_KELVIN = 150;

  private static final double ZERO_CELSIUS_K = 273.15;
  private static final double FREEZING_F = 32;

  private TemperatureText() {}

  /** The first temperature or pair in a text, empty where it tells none. */
  static Optional<Found> find(String written) {
    String text = withPlainUnits(written);
    Optional<Found> paired = pair(PAIR.matcher(text));
    if (paired.isPresent()) {
      return paired;
    }
    Matcher named = NAMED.matcher(text);
    if (named.find()) {
      int first = named.group(1) == null ? 3 : 1;
      List<Double> values =
          List.of(celsius(named.group(first), null), celsius(named.group(first + 1), null));
      return Optional.of(new Found(values, false, null));
    }
    return single(text);
  }

  /** The first pair with a unit, else the first one that is more than numbers counted upwards. */
  private static Optional<Found> pair(Matcher pair) {
    Optional<Found> bare = Optional.empty();
    while (pair.find()) {
      boolean unit = pair.group(4) != null || pair.group(5) != null || pair.group(6) != null;
      String letter = pair.group(4) == null ? bareF(pair) : pair.group(4);
      List<Double> values = List.of(celsius(pair.group(1), letter), celsius(pair.group(3), letter));
      if (unit || (letter != null && isWithStroke(pair))) {
        return Optional.of(new Found(values, true, null));
      }
      boolean apart = Math.abs(values.get(0) - values.get(1)) > COUNTED;
      if (bare.isEmpty() && apart && isWithStroke(pair)) {
        bare = Optional.of(new Found(values, false, null));
      }
    }
    return bare;
  }

  private static boolean isWithStroke(Matcher pair) {
    return pair.group(2).equals("/");
  }

  /** An F behind figures below freezing is no degF but, for one, a floor. */
  private static @Nullable String bareF(Matcher pair) {
    boolean liquid =
        celsius(pair.group(1), null) >= FREEZING_F && celsius(pair.group(3), null) >= FREEZING_F;
    return liquid ? pair.group(7) : null;
  }

  private static Optional<Found> single(String text) {
    Matcher single = SINGLE.matcher(text);
    if (!single.find()) {
      Matcher glued = GLUED_SINGLE.matcher(text);
      return glued.find()
          ? Optional.of(new Found(List.of(celsius(glued.group(1), glued.group(2))), true, null))
          : Optional.empty();
    }
    double first = celsius(single.group(1), single.group(2));
    Double further = single.find() ? celsius(single.group(1), single.group(2)) : null;
    return Optional.of(new Found(List.of(first), true, further));
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
    double value = Double.parseDouble(number.replace(',', '.').replace('−', '-').replace('–', '-'));
    boolean fahrenheit = unit != null && unit.toUpperCase(Locale.ROOT).equals("F");
    return fahrenheit ? (value - FREEZING_F) / 1.8 : value;
  }
}
