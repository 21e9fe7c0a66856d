package org.lagwright.report.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a share of a whole: no model could meet more than all of it. */
final class Percent implements ITypeConverter<Double> {

  private static final double WHOLE = 100;

  @Override
  public Double convert(String value) {
    double percent = number(value);
    if (!(percent >= 0 && percent <= WHOLE)) {
      throw new TypeConversionException("expected a number from 0 to 100 but was '" + value + "'");
    }
    return percent;
  }

  private static double number(String value) {
    try {
      return Double.parseDouble(value);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }
}
