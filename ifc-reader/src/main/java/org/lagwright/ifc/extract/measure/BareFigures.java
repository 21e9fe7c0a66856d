package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.extract.draft.BareSizes;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.InchSizes;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * Figures of sizes that do not say their unit, in files in centimetres, inches or feet: in the unit
 * of the file, unless such a size is not made or not drawn and one in millimetres, or in the inches
 * of a file in feet, is. The limits are common practice, no source.
 */
final class BareFigures {

  private static final double MILLIMETRE_M = 0.001;

  /** Wider ducts are built, of masonry, but none of sheet that would be bought as such. */
  private static final double WIDEST_M = 3;

  /** Round ducts of sheet come up to this diameter. */
  private static final double WIDEST_ROUND_M = 2;

  /** From here on a size is in doubt if in another unit it would be as usual. */
  private static final double DOUBTFUL_M = 1;

  private static final double USUAL_M = 0.1;

  /** Bare pipes that are narrower are none that are insulated. */
  private static final double USUAL_PIPE_M = 0.01;

  /** Wider than what is built at all. */
  private static final double IMPOSSIBLE_M = 10;

  private static final double IMPOSSIBLE_ROUND_M = 3;

  private final double lengthUnitM;

  /** For a file whose unit of length is given in metres. */
  BareFigures(double lengthUnitM) {
    this.lengthUnitM = lengthUnitM;
  }

  /** True for centimetres, inches and feet, in which few write sizes. */
  static boolean isAsked(double lengthUnitM) {
    return lengthUnitM > 2 * MILLIMETRE_M && lengthUnitM < 0.5;
  }

  /**
   * Units in metres that the figures of one size may be in: the more likely one, and another one if
   * that is in doubt. Empty if the figures say their unit or are none, if the file counts in
   * millimetres or metres, or if no such size is made in any of them.
   */
  List<Double> unitsM(Draft draft, Property... sizes) {
    if (!isAsked(lengthUnitM)) {
      return List.of();
    }
    List<Double> figures = new ArrayList<>(sizes.length);
    for (Property size : sizes) {
      if (!PropertyLengths.isBare(size) || !(PropertyLengths.figure(size) > 0)) {
        return List.of();
      }
      figures.add(PropertyLengths.figure(size));
    }
    return unitsM(draft, figures);
  }

  private List<Double> unitsM(Draft draft, List<Double> figures) {
    boolean feet = lengthUnitM > 2 * InchSizes.METRES_PER_INCH;
    List<Double> units =
        feet
            ? List.of(lengthUnitM, MILLIMETRE_M, InchSizes.METRES_PER_INCH)
            : List.of(lengthUnitM, MILLIMETRE_M);
    Measured<Section> drawn = draft.shape().section();
    for (double unitM : units) {
      if (drawn != null && Tolerances.sameSection(drawn.value(), section(figures, unitM))) {
        return List.of(unitM);
      }
    }
    List<Double> made = made(draft, figures, units);
    if (made.isEmpty() || drawn != null) {
      return made.subList(0, Math.min(1, made.size()));
    }
    if (made.get(0) == lengthUnitM) {
      return withAnother(draft, figures, made);
    }
    Section written = section(figures, lengthUnitM);
    double limitM = written instanceof Section.Round ? IMPOSSIBLE_ROUND_M : IMPOSSIBLE_M;
    return written.largestSideM() > limitM ? List.copyOf(made) : List.of(made.get(0), lengthUnitM);
  }

  /** The units in which such a size is made: that of the file, then those in which it is usual. */
  private List<Double> made(Draft draft, List<Double> figures, List<Double> units) {
    List<Double> made = new ArrayList<>(3);
    for (double unitM : units) {
      if (isMade(draft, section(figures, unitM))) {
        boolean last = made.isEmpty() || smallestM(figures, made.get(0)) >= USUAL_M;
        made.add(last || made.get(0) == lengthUnitM ? made.size() : 0, unitM);
      }
    }
    return made;
  }

  /** The unit of the file, and the next one if a size in either is usual. */
  private List<Double> withAnother(Draft draft, List<Double> figures, List<Double> made) {
    double usualM = draft.isDuct() ? USUAL_M : USUAL_PIPE_M;
    boolean wide = section(figures, lengthUnitM).largestSideM() >= DOUBTFUL_M;
    boolean doubtful =
        made.size() > 1 && (wide || !draft.isDuct()) && smallestM(figures, made.get(1)) >= usualM;
    return doubtful ? List.of(lengthUnitM, made.get(1)) : List.of(lengthUnitM);
  }

  /** True for a duct that may be of sheet, and for a pipe that tables have. */
  private static boolean isMade(Draft draft, Section section) {
    if (!draft.isDuct()) {
      return PipeSizes.isOutsideDiameter(section.largestSideM());
    }
    double widestM = section instanceof Section.Round ? WIDEST_ROUND_M : WIDEST_M;
    return section.largestSideM() <= widestM && section.largestSideM() >= BareSizes.NARROWEST_M;
  }

  private static double smallestM(List<Double> figures, double unitM) {
    double smallest = figures.get(0);
    for (double figure : figures) {
      smallest = Math.min(smallest, figure);
    }
    return smallest * unitM;
  }

  private static Section section(List<Double> figures, double unitM) {
    double widthM = figures.get(0) * unitM;
    return figures.size() > 1
        ? new Section.Rectangular(widthM, figures.get(1) * unitM)
        : new Section.Round(widthM);
  }
}
