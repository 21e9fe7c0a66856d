package org.lagwright.takeoff.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Section;

/**
 * Corners of a section in its plane, counterclockwise. Circles become polygons of the same area, so
 * that volumes stay.
 *
 * @param corners along width and height from the middle, metres
 */
public record Outline(List<Corner> corners) {

  /** Corners of a circle: few, as files grow with them. */
  static final int ROUND_CORNERS = 24;

  /** Corners of a circle where they lie on it: its area within 0.3 %. */
  private static final int CORNERS_ON_CIRCLE = 48;

  public Outline {
    corners = List.copyOf(corners);
  }

  /** A point of a section. */
  public record Corner(double uM, double vM) {}

  /** The corners of a section; a polygon for a circle has its area. */
  public static Outline of(Section section) {
    double sectorRad = 2 * Math.PI / ROUND_CORNERS;
    return of(section, ROUND_CORNERS, Math.sqrt(sectorRad / Math.sin(sectorRad)));
  }

  /** The corners of a section; those of a circle lie on it, so that they show its diameter. */
  static Outline onCircle(Section section) {
    return of(section, CORNERS_ON_CIRCLE, 1);
  }

  private static Outline of(Section section, int count, double wider) {
    if (section instanceof Section.Rectangular r) {
      double u = r.widthM() / 2;
      double v = r.heightM() / 2;
      return new Outline(
          List.of(new Corner(u, v), new Corner(-u, v), new Corner(-u, -v), new Corner(u, -v)));
    }
    if (section instanceof Section.Oval o) {
      double radiusM = o.smallestSideM() / 2;
      return round(radiusM * wider, o.widthM() / 2 - radiusM, o.heightM() / 2 - radiusM, count);
    }
    return round(section.largestSideM() / 2 * wider, 0, 0, count);
  }

  /** Four quarters, moved apart along width or height. */
  private static Outline round(double radiusM, double apartUM, double apartVM, int count) {
    List<Corner> corners = new ArrayList<>();
    boolean apart = apartUM + apartVM > 0;
    int quarter = count / 4;
    for (int i = 0; i < count; i++) {
      Corner corner = polar(radiusM, 2 * Math.PI * i / count);
      if (apart && i % quarter == 0) {
        corners.add(moved(corner, (i + 3 * quarter) % count / quarter, apartUM, apartVM));
      }
      corners.add(moved(corner, i / quarter, apartUM, apartVM));
    }
    return new Outline(corners.stream().distinct().toList());
  }

  private static Corner polar(double radiusM, double angleRad) {
    return new Corner(radiusM * Math.cos(angleRad), radiusM * Math.sin(angleRad));
  }

  private static Corner moved(Corner corner, int quarter, double uM, double vM) {
    boolean right = quarter == 0 || quarter == 3;
    boolean up = quarter < 2;
    return new Corner(corner.uM + (right ? uM : -uM), corner.vM + (up ? vM : -vM));
  }

  /**
   * A rectangle or a circle as corners that belong to each other, quarter by quarter; those of a
   * rectangle lie in its four corners. Empty for other sections.
   */
  static Optional<Outline> inQuarters(Section section) {
    if (section instanceof Section.Oval) {
      return Optional.empty();
    }
    List<Corner> corners = new ArrayList<>();
    int quarter = ROUND_CORNERS / 4;
    List<Corner> square = of(section).corners;
    for (int q = 0; q < 4; q++) {
      for (int i = 0; i <= quarter; i++) {
        boolean round = section instanceof Section.Round;
        corners.add(square.get(round ? (q * quarter + i) % ROUND_CORNERS : q));
      }
    }
    return Optional.of(new Outline(corners));
  }

  /** The outline cut off where it reaches further than this in a direction. */
  Outline within(double limitM, double alongU, double alongV) {
    return new Outline(
        corners.stream()
            .map(
                c -> {
                  double beyond = Math.max(0, c.uM * alongU + c.vM * alongV - limitM);
                  return new Corner(c.uM - beyond * alongU, c.vM - beyond * alongV);
                })
            .toList());
  }

  /** How far it reaches in a direction. */
  double reachM(double alongU, double alongV) {
    return corners.stream().mapToDouble(c -> c.uM * alongU + c.vM * alongV).max().orElse(0);
  }
}
