package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.graph.OpenEnds;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Where the width of a section points. In a riser nothing but the drawing tells. */
public final class SectionWidth {

  /** Ends of a run may be out of line by this: 10 degrees. */
  private static final double OPPOSITE = -Math.cos(Math.toRadians(10));

  private SectionWidth() {}

  /** Along the width of the section that was chosen, which may be the height as drawn. */
  public static @Nullable Point of(Draft draft) {
    Measured<Section> chosen = draft.section();
    if (chosen == null || chosen.value() instanceof Section.Round) {
      return null;
    }
    Drawn drawn = draft.drawn();
    ShapeEnd end = drawn.shape().form() == Form.UNKNOWN ? joinedEnd(drawn, chosen.value()) : null;
    end = end == null ? firstEnd(drawn.shape().ends()) : end;
    Point width = end == null ? null : end.width();
    return end == null || width == null || !swapped(chosen.value(), end.section())
        ? width
        : end.outward().cross(width);
  }

  private static @Nullable ShapeEnd firstEnd(List<ShapeEnd> ends) {
    for (ShapeEnd end : ends) {
      if (end.width() != null) {
        return end;
      }
    }
    return null;
  }

  /**
   * Where flat sides of the body look like ends: one of the chosen size that is joined, of a tee
   * one of its run; null if none is.
   */
  private static @Nullable ShapeEnd joinedEnd(Drawn drawn, Section chosen) {
    List<ShapeEnd> ends = new ArrayList<>();
    for (ShapeEnd end : drawn.shape().ends()) {
      if (end.width() != null && OpenEnds.isConnected(drawn.joints(), end.centreM())) {
        ends.add(end);
      }
    }
    ShapeEnd joined = null;
    for (ShapeEnd end : ends) {
      if (Tolerances.sameSection(end.section(), chosen)) {
        if (hasOpposite(end, ends)) {
          return end;
        }
        joined = joined == null ? end : joined;
      }
    }
    return joined;
  }

  private static boolean hasOpposite(ShapeEnd end, List<ShapeEnd> ends) {
    for (ShapeEnd other : ends) {
      if (end.outward().dot(other.outward()) < OPPOSITE) {
        return true;
      }
    }
    return false;
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
}
