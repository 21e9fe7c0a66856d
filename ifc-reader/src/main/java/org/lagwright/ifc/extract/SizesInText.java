package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;

/** Finds sizes among the figures of a text. {@link Sizes} asks where a text may hold one at all. */
final class SizesInText {

  private static final String INCH_SIGNS = "\"\u2033\u201D";

  private SizesInText() {}

  /** Two sides with a sign of multiplication between them. */
  static Optional<Section> sides(String text) {
    FigureCursor cursor = new FigureCursor(text);
    while (cursor.next()) {
      FigureCursor.Figure width = cursor.take();
      FigureCursor.Figure height =
          width != null && cursor.takeSign(Sizes.TIMES_SIGNS) ? cursor.take() : null;
      if (width != null && height != null) {
        double widthM = width.metres(height.unit());
        double heightM = height.metres(width.unit());
        if (Math.min(widthM, heightM) >= Sizes.SMALLEST_SIDE_M) {
          return Optional.of(new Section.Rectangular(widthM, heightM));
        }
      }
    }
    return Optional.empty();
  }

  /** A figure behind a diameter sign or {@code d =}, else before a sign. */
  static Optional<Section> diameter(String text) {
    Optional<Section> behindSign = round(behindSign(text));
    return behindSign.isPresent() ? behindSign : round(beforeSign(text));
  }

  /** The first figure behind a diameter sign or {@code d =}, null if there is none. */
  private static FigureCursor.@Nullable Figure behindSign(String text) {
    FigureCursor cursor = new FigureCursor(text);
    for (int i = 0; i < text.length(); i++) {
      boolean named = (text.charAt(i) | 0x20) == 'd' && !Sizes.isInWord(text, i - 1);
      cursor.goTo(named ? i + 1 : i);
      FigureCursor.Figure found =
          cursor.takeSign(named ? "=" : Sizes.ROUND_SIGNS) ? cursor.take() : null;
      if (found != null) {
        return found;
      }
    }
    return null;
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

  private static Optional<Section> round(FigureCursor.@Nullable Figure diameter) {
    double diameterM = diameter == null ? 0 : diameter.metres(null);
    return diameterM >= Sizes.SMALLEST_SIDE_M
        ? Optional.of(new Section.Round(diameterM))
        : Optional.empty();
  }

  /** A figure, metres, and behind a sign of multiplication one that can be its wall. */
  static Optional<Double> outsideDiameterBeforeWall(String text) {
    FigureCursor cursor = new FigureCursor(text);
    while (cursor.next()) {
      FigureCursor.Figure outside = cursor.take();
      int behind = cursor.at();
      FigureCursor.Figure wall =
          outside != null && cursor.takeSign(Sizes.TIMES_SIGNS) ? cursor.take() : null;
      if (outside != null && wall != null && wall.isShort() && !isTimes(cursor)) {
        double outsideM = outside.metres(null);
        double wallM = wall.metres(outside.unit());
        if (wallM > 0 && wallM <= outsideM / 4) {
          return Optional.of(outsideM);
        }
      } else {
        // what was taken for the wall may be the diameter
        cursor.goTo(behind);
      }
    }
    return Optional.empty();
  }

  /** True if another sign of multiplication and a figure follow. */
  private static boolean isTimes(FigureCursor cursor) {
    return cursor.takeSign(Sizes.TIMES_SIGNS) && cursor.take() != null;
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
}
