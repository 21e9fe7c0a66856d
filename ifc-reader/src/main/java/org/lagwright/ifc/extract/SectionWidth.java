package org.lagwright.ifc.extract;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.ShapeEnd;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Where the width of a section points. In a riser nothing but the drawing tells. */
final class SectionWidth {

  private SectionWidth() {}

  /** Along the width of the section that was chosen, which may be the height as drawn. */
  static @Nullable Point of(Draft draft) {
    Measured<Section> chosen = draft.section();
    if (chosen == null || chosen.value() instanceof Section.Round) {
      return null;
    }
    for (ShapeEnd end : draft.shape().ends()) {
      Point width = end.width();
      if (width != null) {
        return swapped(chosen.value(), end.section()) ? across(end.outward(), width) : width;
      }
    }
    return null;
  }

  private static boolean swapped(Section chosen, Section drawn) {
    if (chosen instanceof Section.Rectangular c && drawn instanceof Section.Rectangular d) {
      return isSwapped(c.widthM(), c.heightM(), d.widthM(), d.heightM());
    }
    return chosen instanceof Section.Oval c
        && drawn instanceof Section.Oval d
        && isSwapped(c.widthM(), c.heightM(), d.widthM(), d.heightM());
  }

  private static boolean isSwapped(double widthM, double heightM, double drawnM, double otherM) {
    return Math.abs(widthM - otherM) + Math.abs(heightM - drawnM)
        < Math.abs(widthM - drawnM) + Math.abs(heightM - otherM);
  }

  private static Point across(Point a, Point b) {
    return new Point(
        a.y() * b.z() - a.z() * b.y(),
        a.z() * b.x() - a.x() * b.z(),
        a.x() * b.y() - a.y() * b.x());
  }
}
