package org.lagwright.report.workbook;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.lagwright.takeoff.settings.UnitSystem;

/**
 * The one place where figures, headings, words and formulas become those of the units that the
 * settings choose. Formulas are the same in both systems, as all cells that they add up are.
 */
final class ShownUnits {

  private static final Pattern SIZES =
      Pattern.compile(
          "(?<![\\w.])(\\d+(?:\\.\\d+)?(?:(?: x | / )\\d+(?:\\.\\d+)?)*) (mm|m2|m|l)\\b");
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  /** Units as criteria of formulas: {@code "m2"}. */
  private static final Pattern CRITERION = Pattern.compile("\"(m|m2|m3|l)\"");

  /** Thicknesses and sizes: a thousandth of an inch tells a tenth of a millimetre. */
  private static final double INCH_STEPS = 1000;

  private static final double DEGREE_STEPS = 10;

  private final boolean us;

  ShownUnits(UnitSystem system) {
    us = system == UnitSystem.US;
  }

  /** What stands in a cell instead of an entry in SI. */
  Entry entry(Entry entry, Unit unit) {
    if (!us) {
      return entry;
    }
    if (entry instanceof Entry.Figure figure) {
      return new Entry.Figure(rounded(figure.number(), unit), figure.look());
    }
    if (entry instanceof Entry.Live live) {
      return new Entry.Live(criteria(live.formula()), unit.toUs(live.computed()), live.look());
    }
    if (entry instanceof Entry.LiveText live) {
      return new Entry.LiveText(criteria(live.formula()), live.computed(), live.look());
    }
    return entry instanceof Entry.Text text ? new Entry.Text(text(text, unit), text.look()) : entry;
  }

  /** A number that no formula stands behind. */
  double number(double figure, Unit unit) {
    return us ? unit.toUs(figure) : figure;
  }

  private static double rounded(double figure, Unit unit) {
    double shown = unit.toUs(figure);
    return switch (unit) {
      case MILLIMETRE -> Math.rint(shown * INCH_STEPS) / INCH_STEPS;
      case CELSIUS, KELVIN -> Math.rint(shown * DEGREE_STEPS) / DEGREE_STEPS;
      default -> shown;
    };
  }

  private String text(Entry.Text text, Unit unit) {
    boolean heading = text.look() == Look.HEADING || text.look() == Look.HEADING_RIGHT;
    if (heading) {
      return heading(text.text());
    }
    return switch (unit) {
      case WORD -> word(text.text());
      case SIZES -> sizes(text.text());
      default -> text.text();
    };
  }

  /** A heading with the unit that stands below it. */
  String heading(String heading) {
    return us
        ? Arrays.stream(heading.split(" ")).map(ShownUnits::word).collect(Collectors.joining(" "))
        : heading;
  }

  private static String word(String word) {
    Unit unit = Unit.ofWord(word);
    return unit == Unit.NONE ? word : unit.us();
  }

  private static String criteria(String formula) {
    return CRITERION.matcher(formula).replaceAll(m -> "\"" + word(m.group(1)) + "\"");
  }

  private static String sizes(String text) {
    return SIZES.matcher(text).replaceAll(size -> Matcher.quoteReplacement(size(size)));
  }

  private static String size(MatchResult size) {
    Unit unit = Unit.ofWord(size.group(2));
    String numbers =
        NUMBER
            .matcher(size.group(1))
            .replaceAll(n -> plain(unit.toUs(Double.parseDouble(n.group()))));
    return numbers + " " + unit.us();
  }

  private static String plain(double number) {
    String text = String.format(Locale.ROOT, "%.3f", number);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
