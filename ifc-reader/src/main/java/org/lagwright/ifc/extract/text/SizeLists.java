package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.PropertyNames.Role;
import org.lagwright.ifc.model.Property;

/**
 * Tells texts that name several sizes side by side, such as the range of a catalogue in {@code
 * DN15-DN50}, and properties that list them: they are on pieces of all these sizes and tell that of
 * none.
 */
public final class SizeLists {

  /** What stands between two sizes of a range or a list. */
  private static final Set<String> BETWEEN =
      Set.of(
          "-", "\u2013", "\u2014", "/", ",", ";", "+", "..", "...", "\u2026", "bis", "to", "und",
          "and");

  /** What stands between the two ends of a range. */
  private static final Set<String> RANGE =
      Set.of("-", "\u2013", "\u2014", "..", "...", "\u2026", "bis", "to");

  private static final int LONGEST_BETWEEN = 9;

  /** Of a straight piece, what has one figure and no more. */
  private static final int ONE_FIGURE =
      PropertyNames.bit(Role.OUTSIDE_DIAMETER)
          | PropertyNames.bit(Role.INSIDE_DIAMETER)
          | PropertyNames.bit(Role.WALL)
          | PropertyNames.bit(Role.NOMINAL)
          | PropertyNames.bit(Role.DIAMETER)
          | PropertyNames.bit(Role.WIDTH)
          | PropertyNames.bit(Role.HEIGHT)
          | PropertyNames.bit(Role.LENGTH);

  /** Two figures of a list that are one, as a share of it. */
  private static final double SAME_FIGURE = 0.001;

  private static final Remembered<Boolean> KNOWN = new Remembered<>();

  private SizeLists() {}

  /**
   * A size within a text.
   *
   * @param mark 'D' of a nominal diameter, 'R' of a diameter behind its sign, 'X' of two sides, or
   *     of a diameter and a wall
   * @param mm its first figure
   * @param otherMm its second figure, 0 if it has one only
   */
  private record Named(char mark, double mm, double otherMm, int from, int to) {

    boolean isOther(Named other) {
      return mark == other.mark
          && !(same(mm, other.mm) && same(otherMm, other.otherMm))
          && !(same(mm, other.otherMm) && same(otherMm, other.mm));
    }

    /** Sizes in two units differ a little. */
    private static boolean same(double a, double b) {
      return Math.abs(a - b) <= Math.max(0.05, 0.01 * Math.max(a, b));
    }
  }

  /** Properties of a straight piece, without those that list different sizes or lengths of it. */
  public static List<Property> withoutListed(List<Property> properties) {
    List<Property> others = null;
    for (int i = 0; i < properties.size(); i++) {
      boolean listed = areListed(properties.get(i));
      if (listed && others == null) {
        others = new ArrayList<>(properties.subList(0, i));
      } else if (!listed && others != null) {
        others.add(properties.get(i));
      }
    }
    return others == null ? properties : others;
  }

  private static boolean areListed(Property p) {
    boolean several = p.text().contains(", ") || p.number() == null;
    return several
        && (PropertyNames.roles(p.name()) & ONE_FIGURE) != 0
        && (differ(p.text()) || isIn(p.text()));
  }

  /** True for different figures of a list. */
  private static boolean differ(String text) {
    double[] figures = PropertyLengths.leadingNumbers(text);
    for (double figure : figures) {
      if (Math.abs(figure - figures[0]) > SAME_FIGURE * Math.abs(figures[0])) {
        return true;
      }
    }
    return false;
  }

  /** True for a text with different sizes of one kind, and but a sign or word between them. */
  public static boolean isIn(String text) {
    if (!mayHoldTwo(text)) {
      return false;
    }
    Boolean known = KNOWN.find(text);
    return known == null ? KNOWN.keep(text, read(text)) : known;
  }

  /** Most names hold one number at most, or no sign that a size is told by. */
  private static boolean mayHoldTwo(String text) {
    int figures = 0;
    boolean within = false;
    boolean signed = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean digit = Sizes.isDigit(c);
      figures += digit && !within ? 1 : 0;
      within = digit;
      signed |= c == 'x' || c == 'X' || c == '*' || c == 'N' || c == 'n' || c > '\u007F';
    }
    return figures > 1 && signed && (Sizes.hasPairOrRound(text) || DnInText.mayBeIn(text));
  }

  private static boolean read(String text) {
    FigureCursor cursor = new FigureCursor(text);
    Named last = null;
    int at = 0;
    while (at < text.length()) {
      Named size = sizeAt(text, at, cursor);
      if (size != null) {
        boolean listed = last != null && isBetween(text, last.to, size.from, BETWEEN);
        if (listed && last != null && size.isOther(last) || goesOnTo(text, size, cursor)) {
          return true;
        }
        last = size;
      }
      at = size == null ? at + 1 : size.to;
    }
    return false;
  }

  private static @Nullable Named sizeAt(String text, int at, FigureCursor cursor) {
    DnInText.Dn dn = DnInText.at(text, at);
    if (dn != null) {
      return new Named('D', dn.dn(), 0, at, dn.to());
    }
    cursor.goTo(at);
    if (cursor.takeSign(Sizes.ROUND_SIGNS)) {
      FigureCursor.Figure round = cursor.take();
      return round == null ? null : new Named('R', mm(round, null), 0, at, cursor.at());
    }
    return cursor.isAtFigure() ? pairAt(at, cursor) : null;
  }

  private static @Nullable Named pairAt(int at, FigureCursor cursor) {
    FigureCursor.Figure one = cursor.take();
    FigureCursor.Figure other =
        one != null && cursor.takeSign(Sizes.TIMES_SIGNS) ? cursor.take() : null;
    return one == null || other == null
        ? null
        : new Named('X', mm(one, other.unit()), mm(other, one.unit()), at, cursor.at());
  }

  private static double mm(FigureCursor.Figure figure, @Nullable String otherUnit) {
    return figure.metres(otherUnit) * 1000;
  }

  /** True if a range ends in a larger nominal size without letters, as DN15-50. */
  private static boolean goesOnTo(String text, Named size, FigureCursor cursor) {
    if (size.mark != 'D') {
      return false;
    }
    cursor.goTo(size.to);
    cursor.next();
    int from = cursor.at();
    FigureCursor.Figure end =
        isBetween(text, size.to, from, RANGE) && cursor.isAtFigure() ? cursor.take() : null;
    return end != null
        && end.unit() == null
        && end.value() > size.mm
        && end.value() == Math.rint(end.value())
        && PipeSizes.forNominal((int) end.value()).isPresent()
        && !cursor.takeSign(Sizes.TIMES_SIGNS);
  }

  private static boolean isBetween(String text, int from, int to, Set<String> signs) {
    return to - from <= LONGEST_BETWEEN && signs.contains(text.substring(from, to).strip());
  }
}
