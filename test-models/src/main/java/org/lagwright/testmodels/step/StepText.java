package org.lagwright.testmodels.step;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Turns Java values into STEP text (ISO 10303-21:2002, clause 6 and 7; from memory, verify). */
final class StepText {

  /** Decimals kept of a real: 1e-10 rad over 100 m is 10 nm. */
  private static final int DECIMALS = 10;

  private StepText() {}

  /**
   * Null becomes {@code $}, a {@link Double} a real, an {@link Integer} or {@link Long} an integer,
   * a {@link List} an aggregate, a {@link String} an escaped string.
   *
   * @throws IllegalArgumentException for any other class and for numbers that are not finite
   */
  static String encode(@Nullable Object value) {
    if (value == null) {
      return "$";
    }
    if (value instanceof Ref ref) {
      return "#" + ref.id();
    }
    if (value instanceof String text) {
      return string(text);
    }
    if (value instanceof Double number) {
      return real(number);
    }
    if (value instanceof Integer || value instanceof Long) {
      return value.toString();
    }
    if (value instanceof List<?> list) {
      return list.stream().map(StepText::encode).collect(Collectors.joining(",", "(", ")"));
    }
    if (value instanceof Value special) {
      return special(special);
    }
    throw new IllegalArgumentException("no STEP form for " + value.getClass());
  }

  private static String special(Value value) {
    if (value instanceof Value.Token token) {
      return "." + token.name() + ".";
    }
    if (value instanceof Value.Typed typed) {
      return typed.type().toUpperCase(Locale.ROOT) + "(" + encode(typed.value()) + ")";
    }
    return ((Value.Verbatim) value).text();
  }

  private static String real(double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("STEP has no " + number);
    }
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    if (rounded.signum() == 0) {
      return "0.";
    }
    String plain = rounded.stripTrailingZeros().toPlainString();
    return plain.contains(".") ? plain : plain + ".";
  }

  private static String string(String text) {
    StringBuilder out = new StringBuilder("'");
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
    return out.append(wide ? "\\X0\\'" : "'").toString();
  }
}
