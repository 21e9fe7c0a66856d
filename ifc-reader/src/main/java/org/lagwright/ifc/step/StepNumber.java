package org.lagwright.ifc.step;

import java.nio.charset.StandardCharsets;

/** Parses numbers in place: exactly rounded, fast for the usual short decimals. */
final class StepNumber {

  private static final double[] POWERS = new double[23];

  static {
    double power = 1;
    for (int i = 0; i < POWERS.length; i++) {
      POWERS[i] = power;
      power *= 10;
    }
  }

  /** So many digits fit into a long. */
  private static final int MOST_DIGITS = 18;

  private static final long MOST_EXACT = 1L << 53;

  /** More than what the rest of a division is wrong by, as a part of it. */
  private static final double DOUBT = 1e-9;

  private static final long ZEROS = StepScanner.LOW * '0';

  private StepNumber() {}

  /** How many of eight bytes are digits, counted from the first one to the first that is none. */
  static int leadingDigits(long word) {
    long values = word ^ ZEROS;
    long others = ((values + StepScanner.LOW * 0x76) | values) & StepScanner.HIGH;
    return others == 0 ? 8 : StepScanner.firstByte(others);
  }

  /**
   * The whole number written by the first bytes of a word.
   *
   * @param digits how many, 1 to 8, and all of them digits
   */
  static long wholeNumber(long word, int digits) {
    // leading zeros come in from below; then neighbours are joined to 2, 4 and 8 digits
    long values = (word ^ ZEROS) << (Long.SIZE - 8 * digits);
    values = (values * 10 + (values >>> 8)) & 0x00FF00FF00FF00FFL;
    values = (values * 100 + (values >>> 16)) & 0x0000FFFF0000FFFFL;
    return (values * 10_000 + (values >>> 32)) & 0xFFFFFFFFL;
  }

  /** The number in {@code [from, to)}, NaN if there is none (such as {@code 1.#INF}). */
  static double parse(byte[] bytes, int from, int to) {
    long digits = 0;
    int count = 0;
    int scale = 0;
    boolean point = false;
    int i = from;
    boolean negative = i < to && bytes[i] == '-';
    if (i < to && (bytes[i] == '-' || bytes[i] == '+')) {
      i++;
    }
    for (; i < to; i++) {
      int b = bytes[i];
      if (b >= '0' && b <= '9') {
        digits = digits * 10 + (b - '0');
        count++;
        scale += point ? 1 : 0;
      } else if (b == '.' && !point) {
        point = true;
      } else {
        return exact(bytes, from, to);
      }
    }
    if (count == 0 || count > MOST_DIGITS || scale >= POWERS.length) {
      return exact(bytes, from, to);
    }
    // up to 2^53 and 10^22 are exact in a double, so one division rounds correctly
    double value = digits <= MOST_EXACT ? digits / POWERS[scale] : quotient(digits, POWERS[scale]);
    return Double.isNaN(value) ? exact(bytes, from, to) : negative ? -value : value;
  }

  /**
   * More digits than a double holds, divided by an exact power of ten.
   *
   * @return NaN where the quotient lies so close to the middle between two doubles that it is not
   *     sure how it is rounded
   */
  private static double quotient(long digits, double power) {
    double high = digits;
    double low = digits - (long) high;
    double first = high / power;
    double rest = (Math.fma(-first, power, high) + low) / power;
    double rounded = first + rest * (1 - DOUBT);
    return rounded == first + rest * (1 + DOUBT) ? rounded : Double.NaN;
  }

  private static double exact(byte[] bytes, int from, int to) {
    String number =
        new String(bytes, from, to - from, StandardCharsets.US_ASCII).trim().replace('d', 'e');
    try {
      return number.isEmpty() ? Double.NaN : Double.parseDouble(number.replace('D', 'E'));
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }
}
