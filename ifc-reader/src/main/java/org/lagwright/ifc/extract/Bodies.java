package org.lagwright.ifc.extract;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Whether two elements are one and the same body, as far as what was measured tells. */
final class Bodies {

  /** Exporters round coordinates; two pipes of one size never lie this near. */
  static final double SAME_PLACE_M = 0.002;

  private static final double SAME_SIZE_M = 0.0005;

  private Bodies() {}

  /** Same kind, form, size and length; what is unknown on both counts as same. */
  static boolean areAlike(MepElement one, MepElement other) {
    return one.kind() == other.kind()
        && one.form() == other.form()
        && sameSection(one.section(), other.section())
        && sameNumber(one.lengthM(), other.lengthM());
  }

  private static boolean sameSection(
      @Nullable Measured<Section> one, @Nullable Measured<Section> other) {
    return one == null || other == null
        ? one == other
        : Sizes.sameSection(one.value(), other.value())
            && Math.abs(one.value().largestSideM() - other.value().largestSideM()) < SAME_SIZE_M;
  }

  private static boolean sameNumber(
      @Nullable Measured<Double> one, @Nullable Measured<Double> other) {
    return one == null || other == null
        ? one == other
        : Math.abs(one.value() - other.value()) < SAME_PLACE_M;
  }

  /** Distance of their middles in metres, NaN where one has no place. */
  static double apartM(MepElement one, MepElement other) {
    Point a = one.place().positionM();
    Point b = other.place().positionM();
    return a == null || b == null ? Double.NaN : a.distanceM(b);
  }

  /** True for what can be told apart by its body: measured, placed and lagged. */
  static boolean isMeasured(MepElement element) {
    return element.kind().isLagged()
        && element.section() != null
        && element.lengthM() != null
        && element.place().positionM() != null;
  }
}
