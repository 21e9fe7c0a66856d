package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;

/** Finds sizes among the figures of a text. {@link Sizes} asks where a text may hold one at all. */
public final class SizesInText {

  private static final String INCH_SIGNS = "\"\u2033\u201D";

  /** Signs of a diameter that stand before it; the last two are letters of words too. */
  private static final String SIGNS_BEFORE = Sizes.ROUND_SIGNS + "\u03A6\u03C6";

  private static final String BETWEEN_SIDES = ",;/";

  /** From here on a third figure in millimetres is a length. */
  private static final double SHORTEST_PIECE_M = 1;

  private SizesInText() {}

  /**
   * Two sides with a sign of multiplication between them, or behind their letters.
   *
   * @param bareUnit of figures without one; null for millimetres
   */
  public static Optional<Section> sides(String text, @Nullable String bareUnit) {
    FigureCursor cursor = new FigureCursor(text);
    while (cursor.next()) {
      FigureCursor.Figure width = cursor.takeSide(false);
      boolean metres = width != null && width.unit() == null && cursor.takeMetres();
      int behindWidth = cursor.at();
      cursor.takeSideLetter();
      FigureCursor.Figure height =
          width != null && cursor.takeSign(Sizes.TIMES_SIGNS) ? cursor.takeSide(true) : null;
      Optional<Section> sides =
          metres ? metres(width, height, cursor) : rectangle(width, height, cursor, bareUnit);
      if (sides.isPresent()) {
        return sides;
      }
      if (metres) {
        // what was taken for the height may be the width
        cursor.goTo(behindWidth);
      }
    }
    return letteredSides(text, bareUnit);
  }

  /** Two sides of which the first is in metres, if the second is too. */
  private static Optional<Section> metres(
      FigureCursor.@Nullable Figure width,
      FigureCursor.@Nullable Figure height,
      FigureCursor cursor) {
    if (width == null || height == null || height.unit() != null || !cursor.takeMetres()) {
      return Optional.empty();
    }
    return isPossible(width.value()) && isPossible(height.value())
        ? Optional.of(new Section.Rectangular(width.value(), height.value()))
        : Optional.empty();
  }

  private static Optional<Section> rectangle(
      FigureCursor.@Nullable Figure width,
      FigureCursor.@Nullable Figure height,
      FigureCursor cursor,
      @Nullable String bareUnit) {
    if (width == null || height == null || isFeetAndBare(width, height)) {
      return Optional.empty();
    }
    boolean metres = areMetres(width, height) && cursor.takeMetres();
    String unit = width.unit() == null ? height.unit() : width.unit();
    String otherUnit = unit == null ? bareUnit : unit;
    double widthM = metres ? width.value() : width.metres(otherUnit);
    double heightM = metres ? height.value() : height.metres(otherUnit);
    return isPossible(widthM) && isPossible(heightM)
        ? Optional.of(new Section.Rectangular(widthM, heightM))
        : Optional.empty();
  }

  /** A bare figure beside feet may be inches. */
  private static boolean isFeetAndBare(FigureCursor.Figure a, FigureCursor.Figure b) {
    return (FigureCursor.FEET.equals(a.unit()) && b.unit() == null)
        || (FigureCursor.FEET.equals(b.unit()) && a.unit() == null);
  }

  /** True if two sides without unit can be metres; a whole figure may be a number of pieces. */
  private static boolean areMetres(FigureCursor.Figure a, FigureCursor.Figure b) {
    boolean bare = a.unit() == null && b.unit() == null;
    return bare
        && Math.max(a.value(), b.value()) < 10
        && a.value() != Math.rint(a.value())
        && b.value() != Math.rint(b.value());
  }

  /**
   * Two sides as {@code B=400 H=200} or {@code W400 x H200}. With a space behind its letter a
   * figure may be the number of a room, unless a sign of multiplication follows it.
   */
  private static Optional<Section> letteredSides(String text, @Nullable String bareUnit) {
    FigureCursor cursor = new FigureCursor(text);
    for (int i = 0; i < text.length(); i++) {
      cursor.goTo(i);
      FigureCursor.Figure width = lettered("BbWw", text, cursor);
      boolean times = width != null && cursor.takeSign(Sizes.TIMES_SIGNS);
      boolean apart = i + 1 < text.length() && Sizes.SPACES.indexOf(text.charAt(i + 1)) >= 0;
      if (width != null) {
        cursor.takeSign(BETWEEN_SIDES);
        cursor.skipSpace();
      }
      FigureCursor.Figure height =
          width == null || (apart && !times) ? null : lettered("Hh", text, cursor);
      Optional<Section> sides = rectangle(width, height, cursor, bareUnit);
      if (sides.isPresent()) {
        return sides;
      }
    }
    return Optional.empty();
  }

  /** The figure right behind a letter that stands by itself, or behind a sign; null if none is. */
  private static FigureCursor.@Nullable Figure lettered(
      String letters, String text, FigureCursor cursor) {
    int at = cursor.at();
    boolean free =
        at == 0 || !Character.isLetter(text.charAt(at - 1)) || isTimesSign(text.charAt(at - 1));
    if (!free || at >= text.length() || letters.indexOf(text.charAt(at)) < 0) {
      return null;
    }
    cursor.goTo(at + 1);
    cursor.takeSign("=:");
    cursor.skipSpace();
    return cursor.take();
  }

  private static boolean isTimesSign(char c) {
    return Sizes.TIMES_SIGNS.indexOf(c) >= 0;
  }

  /**
   * A figure behind a diameter sign or {@code d =}, else before a sign, else beside a word.
   *
   * @param bareUnit of a figure without one; null for millimetres
   */
  public static Optional<Section> diameter(String text, @Nullable String bareUnit) {
    Optional<Section> signed = signedDiameter(text, bareUnit);
    DiameterInWords.Found worded = signed.isPresent() ? null : DiameterInWords.find(text);
    return worded == null ? signed : round(worded.figure(), bareUnit);
  }

  private static Optional<Section> signedDiameter(String text, @Nullable String bareUnit) {
    Optional<Section> behindSign = round(behindSign(text), bareUnit);
    return behindSign.isPresent() ? behindSign : round(beforeSign(text), bareUnit);
  }

  /**
   * True for a diameter of which but a word tells that it is one, and nothing that it is outside.
   */
  static boolean isPlainDiameter(String text) {
    DiameterInWords.Found worded = DiameterInWords.find(text);
    return worded != null && !worded.outside() && signedDiameter(text, null).isEmpty();
  }

  /**
   * The ends of a fitting, of which sides or a diameter stand each in a part of a text.
   *
   * @param bareUnit of figures without one; null for millimetres
   */
  public static List<Section> ends(String text, @Nullable String bareUnit) {
    List<Section> ends = new ArrayList<>();
    for (String part : parts(text)) {
      Optional<Section> sides = sides(part, bareUnit);
      Optional<Section> end = sides.isPresent() ? sides : diameter(part, bareUnit);
      if (end.isPresent()) {
        ends.add(end.get());
      }
    }
    return ends;
  }

  /**
   * The first figure behind a diameter sign, {@code d =}, {@code da =} or OD, null if there is
   * none.
   */
  private static FigureCursor.@Nullable Figure behindSign(String text) {
    FigureCursor cursor = new FigureCursor(text);
    for (int i = 0; i < text.length(); i++) {
      boolean named = (text.charAt(i) | 0x20) == 'd' && !Sizes.isInWord(text, i - 1);
      boolean outside =
          text.startsWith("OD", i)
              && !Sizes.isInWord(text, i - 1)
              && DiameterInWords.before(text, i) == null;
      boolean ofOutside = named && i + 1 < text.length() && (text.charAt(i + 1) | 0x20) == 'a';
      cursor.goTo(ofOutside ? i + 2 : named ? i + 1 : i);
      outside |= named && DiameterInWords.isOutsideBefore(text, i);
      boolean signed =
          outside ? takeOutside(i + 2, cursor) : cursor.takeSign(named ? "=" : SIGNS_BEFORE);
      FigureCursor.Figure found = signed ? cursor.take() : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private static boolean takeOutside(int figure, FigureCursor cursor) {
    cursor.goTo(figure);
    cursor.takeSign("=:");
    cursor.skipSpace();
    return true;
  }

  /** The first figure before a diameter sign, null if there is none. */
  private static FigureCursor.@Nullable Figure beforeSign(String text) {
    FigureCursor cursor = new FigureCursor(text);
    while (cursor.next()) {
      FigureCursor.Figure found = cursor.take();
      if (found != null && cursor.takeSign(Sizes.ROUND_SIGNS)) {
        return found;
      }
    }
    return null;
  }

  private static Optional<Section> round(
      FigureCursor.@Nullable Figure diameter, @Nullable String bareUnit) {
    double diameterM = diameter == null ? 0 : diameter.metres(bareUnit);
    return isPossible(diameterM) ? Optional.of(new Section.Round(diameterM)) : Optional.empty();
  }

  /** A figure, metres, and behind a sign of multiplication one that can be its wall. */
  static Optional<Double> outsideDiameterBeforeWall(String text) {
    FigureCursor cursor = new FigureCursor(text);
    while (nextDiameter(text, cursor)) {
      boolean nominal = isBehindDn(text, cursor.at());
      FigureCursor.Figure outside = cursor.take();
      int behind = cursor.at();
      FigureCursor.Figure wall =
          outside != null && cursor.takeSign(Sizes.TIMES_SIGNS) ? cursor.take() : null;
      if (outside != null && wall != null && wall.isShort() && !isTimes(cursor)) {
        double outsideM = outside.metres(null);
        double wallM = wall.metres(outside.unit());
        if (wallM > 0 && wallM <= outsideM / 4 && !nominal) {
          return Optional.of(outsideM);
        }
      } else {
        // what was taken for the wall may be the diameter
        cursor.goTo(behind);
      }
    }
    return Optional.empty();
  }

  /** Goes on to the next figure that stands by itself or behind the letter of a diameter. */
  private static boolean nextDiameter(String text, FigureCursor cursor) {
    int from = cursor.at();
    boolean found = cursor.next();
    for (int i = from; i + 1 < cursor.at(); i++) {
      boolean letter = (text.charAt(i) | 0x20) == 'd' && !Sizes.isInWord(text, i - 1);
      if (letter && Sizes.isDigit(text.charAt(i + 1))) {
        cursor.goTo(i + 1);
        return true;
      }
    }
    return found;
  }

  /** True for the figure of a nominal size, which is no outside diameter. */
  private static boolean isBehindDn(String text, int at) {
    return (at > 1 && DnInText.at(text, at - 2) != null)
        || (at > 2 && DnInText.at(text, at - 3) != null);
  }

  /** True if another sign of multiplication and a figure follow, unless it is the length. */
  private static boolean isTimes(FigureCursor cursor) {
    FigureCursor.Figure third = cursor.takeSign(Sizes.TIMES_SIGNS) ? cursor.take() : null;
    return third != null && third.metres(null) < SHORTEST_PIECE_M;
  }

  /** What stands between dashes and strokes, but for those within inches as {@code 1-1/2"}. */
  static List<String> parts(String text) {
    List<String> parts = new ArrayList<>(3);
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean figure = i > 0 && Sizes.isDigit(text.charAt(i - 1));
      boolean between =
          c == '-'
              ? !(figure && isPart(text, i + 1))
              : c == '/' && !(figure && isInches(text, i + 1));
      if (between) {
        parts.add(text.substring(from, i));
        from = i + 1;
      }
    }
    parts.add(text.substring(from));
    return parts;
  }

  /** True if a part of an inch stands at a place. */
  private static boolean isPart(String text, int at) {
    int stroke = behindDigits(text, at);
    return stroke > at
        && stroke < text.length()
        && text.charAt(stroke) == '/'
        && isInches(text, stroke + 1);
  }

  /** True if a figure of inches stands at a place. */
  private static boolean isInches(String text, int at) {
    int sign = behindDigits(text, at);
    boolean figure = sign > at && sign - at <= 2;
    while (sign < text.length() && text.charAt(sign) == ' ') {
      sign++;
    }
    return figure && sign < text.length() && INCH_SIGNS.indexOf(text.charAt(sign)) >= 0;
  }

  private static int behindDigits(String text, int from) {
    int at = from;
    while (at < text.length() && Sizes.isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isPossible(double sideM) {
    return sideM >= Sizes.SMALLEST_SIDE_M && sideM <= Sizes.LARGEST_SIDE_M;
  }
}
