package org.lagwright.takeoff.fitting.pattern;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece cut from sheet that stays flat or is bent without cutting: panels of ducts, cheeks,
 * strips, discs, rings.
 *
 * @param outline outer edge
 * @param holes edges of holes
 * @param wallM thickness
 */
public record FlatPanel(Curve outline, List<Curve> holes, double wallM) implements PieceShape {

  public FlatPanel {
    holes = List.copyOf(holes);
    if (!(wallM > 0) || !(outline.areaM2() > 0)) {
      throw new IllegalArgumentException("a panel needs an area and a thickness");
    }
  }

  private static FlatPanel of(Curve outline, double wallM) {
    return new FlatPanel(outline, List.of(), wallM);
  }

  /** A rectangle. */
  public static FlatPanel rectangle(double widthM, double heightM, double wallM) {
    return trapezoid(widthM, widthM, heightM, 0, wallM);
  }

  /**
   * A panel between two parallel edges.
   *
   * @param shiftM how far the middle of the upper edge lies to the right of that of the lower one
   */
  public static FlatPanel trapezoid(
      double lowerM, double upperM, double heightM, double shiftM, double wallM) {
    return of(
        Curve.polygon(
            new FlatPoint(-lowerM / 2, 0),
            new FlatPoint(lowerM / 2, 0),
            new FlatPoint(shiftM + upperM / 2, heightM),
            new FlatPoint(shiftM - upperM / 2, heightM)),
        wallM);
  }

  /** Any outline of straight edges. */
  public static FlatPanel polygon(double wallM, FlatPoint... corners) {
    return of(Curve.polygon(corners), wallM);
  }

  /** A disc. */
  public static FlatPanel disc(double radiusM, double wallM) {
    return of(Curve.circle(new FlatPoint(0, 0), radiusM), wallM);
  }

  /** A ring. */
  public static FlatPanel ring(double outerM, double innerM, double wallM) {
    return disc(outerM, wallM).withHole(new FlatPoint(0, 0), innerM);
  }

  /** Part of a ring, such as the cheek of a duct bend. */
  public static FlatPanel ringSector(double outerM, double innerM, double angleRad, double wallM) {
    return of(Curve.ringSector(outerM, innerM, angleRad), wallM);
  }

  /** This panel with one more round hole. */
  public FlatPanel withHole(FlatPoint centre, double radiusM) {
    List<Curve> more = new ArrayList<>(holes);
    more.add(Curve.circle(centre, radiusM));
    return new FlatPanel(outline, more, wallM);
  }

  /** This panel with one more rectangular hole. */
  public FlatPanel withHole(FlatPoint centre, double widthM, double heightM) {
    List<Curve> more = new ArrayList<>(holes);
    more.add(
        Curve.polygon(
            centre.plus(-widthM / 2, -heightM / 2),
            centre.plus(widthM / 2, -heightM / 2),
            centre.plus(widthM / 2, heightM / 2),
            centre.plus(-widthM / 2, heightM / 2)));
    return new FlatPanel(outline, more, wallM);
  }

  @Override
  public double areaM2() {
    return outline.areaM2() - holes.stream().mapToDouble(Curve::areaM2).sum();
  }

  @Override
  public double volumeM3() {
    return areaM2() * wallM;
  }

  @Override
  public double cutLengthM() {
    return outline.lengthM() + holes.stream().mapToDouble(Curve::lengthM).sum();
  }

  @Override
  public double stockLengthM() {
    return 0;
  }

  @Override
  public Pattern pattern() {
    List<Curve> curves = new ArrayList<>();
    curves.add(outline);
    curves.addAll(holes);
    return Pattern.of(curves);
  }
}
