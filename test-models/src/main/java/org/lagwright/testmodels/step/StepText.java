package org.lagwright.testmodels.step;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Turns Java values into STEP text (ISO 10303-21:2002, clause 6 and 7; from memory, verify). */
final class StepText {

  /** Decimals kept of a real: 1e-10 rad over 100 m is 10 nm. */
  private static final int DECIMALS = 10;

  /** Whole numbers below this are exact in a double. */
  private static final double EXACT = 1L << 53;

  private StepText() {}

  /** What {@link #append} adds, alone. */
  static String encode(@Nullable Object value) {
    StringBuilder out = new StringBuilder();
    append(out, value);
    return out.toString();
  }

  /**
   * Null becomes {@code $}, a {@link Double} a real, an {@link Integer} or {@link Long} an integer,
   * a {@link List} an aggregate, a {@link String} an escaped string.
   *
   * @throws IllegalArgumentException for any other class and for numbers that are not finite
   */
  static void append(StringBuilder out, @Nullable Object value) {
    if (value == null) {
      out.append('$');
    } else if (value instanceof Ref ref) {
      out.append('#').append(ref.id());
    } else if (value instanceof String text) {
      string(out, text);
    } else if (value instanceof Double number) {
      real(out, number);
    } else if (value instanceof Integer || value instanceof Long) {
      out.append(value);
    } else if (value instanceof List<?> list) {
      list(out, list);
    } else if (value instanceof Value special) {
      special(out, special);
    } else {
      throw new IllegalArgumentException("no STEP form for " + value.getClass());
    }
  }

  /** An aggregate, or the arguments of a record. */
  static void list(StringBuilder out, List<?> values) {
    out.append('(');
    for (int i = 0; i < values.size(); i++) {
      if (i > 0) {
        out.append(',');
      }
      append(out, values.get(i));
    }
    out.append(')');
  }

  private static void special(StringBuilder out, Value special) {
    if (special instanceof Value.Token token) {
      out.append('.').append(token.name()).append('.');
    } else if (special instanceof Value.Typed typed) {
      out.append(typed.type().toUpperCase(Locale.ROOT)).append('(');
      append(out, typed.value());
      out.append(')');
    } else {
      out.append(((Value.Verbatim) special).text());
    }
  }

  private static void real(StringBuilder out, double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("STEP has no " + number);
    }
    if (number == Math.rint(number) && Math.abs(number) < EXACT) {
      out.append((long) number).append('.');
      return;
    }
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    if (rounded.signum() == 0) {
      out.append("0.");
      return;
    }
    String plain = rounded.stripTrailingZeros().toPlainString();
    out.append(plain).append(plain.contains(".") ? "" : ".");
  }

  private static void string(StringBuilder out, String text) {
    out.append('\'');
    boolean wide = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = c >= 0x20 && c <= 0x7e;
      if (plain == wide) {
        out.append(wide ? "\\X0\\" : "\\X2\\");
        wide = !wide;
      }
      if (!plain) {
        out.append(String.format(Locale.ROOT, "%04X", (int) c));
      } else if (c == '\'' || c == '\\') {
        out.append(c).append(c);
      } else {
        out.append(c);
      }
    }
    out.append(wide ? "\\X0\\'" : "'");
  }
}
