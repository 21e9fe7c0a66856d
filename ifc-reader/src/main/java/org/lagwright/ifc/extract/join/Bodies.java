package org.lagwright.ifc.extract.join;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.graph.Axis;
import org.lagwright.ifc.extract.graph.ReadEnds;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/** Whether two elements are one and the same body, as far as what was measured tells. */
final class Bodies {

  /** Exporters round coordinates; two pipes of one size never lie this near. */
  static final double SAME_PLACE_M = 0.002;

  private static final double SAME_SIZE_M = 0.0005;

  /** From a body to a placement that may still be its own; storeys lie farther apart. */
  static final double NEAR_BODY_M = 1;

  /** What runs in directions that differ by more is another piece; ends of ports are rounded. */
  private static final double CROSSING_RAD = Math.toRadians(10);

  private static final Point ZERO = new Point(0, 0, 0);

  private Bodies() {}

  /** Same kind, form, size and length; what is unknown on both counts as same. */
  static boolean areAlike(MepElement one, MepElement other) {
    return areOfOneSize(one, other) && sameNumber(one.lengthM(), other.lengthM());
  }

  /** Same kind, form and size, whatever their lengths. */
  static boolean areOfOneSize(MepElement one, MepElement other) {
    return one.kind() == other.kind()
        && one.form() == other.form()
        && sameSection(one.section(), other.section());
  }

  /**
   * Same kind; form, size and length are the same or known of one only, as what it is joined to in
   * another file may tell them. So it may the form of a fitting.
   */
  static boolean mayBeOne(MepElement one, MepElement other) {
    boolean sameForm =
        one.form() == other.form()
            || one.form() == Form.UNKNOWN
            || other.form() == Form.UNKNOWN
            || one.kind().isFitting();
    boolean sameSize =
        isMet(one.section())
            || isMet(other.section())
            || sameSection(one.section(), other.section());
    boolean sameLength =
        one.lengthM() == null
            || other.lengthM() == null
            || sameNumber(one.lengthM(), other.lengthM());
    return one.kind() == other.kind() && sameForm && sameSize && sameLength;
  }

  /**
   * True if one of two elements has no body, and the body of the other is where it is placed. Of
   * what has no body only the placement tells where it is, and that of the zero of its file tells
   * nothing.
   */
  static boolean isOneWithoutBody(MepElement one, MepElement other) {
    if (isOnlyDrawn(one, other)) {
      return isPlacedAt(one, other);
    }
    return isOnlyDrawn(other, one) && isPlacedAt(other, one);
  }

  /** True if of two elements of one kind it is this one that has a body. */
  static boolean isOnlyDrawn(MepElement drawn, MepElement bare) {
    return drawn.kind() == bare.kind()
        && drawn.kind().isLagged()
        && isDrawn(drawn)
        && !isDrawn(bare);
  }

  static boolean isPlacedAt(MepElement drawn, MepElement bare) {
    Double storeyM = drawn.place().storeyElevationM();
    Double bareStoreyM = bare.place().storeyElevationM();
    if (storeyM != null && bareStoreyM != null && Math.abs(storeyM - bareStoreyM) > NEAR_BODY_M) {
      return false;
    }
    double apartM = apartM(drawn, bare);
    return Double.isNaN(apartM)
        || ZERO.equals(bare.place().positionM())
        || apartM <= reachM(drawn) + NEAR_BODY_M;
  }

  /** From the middle of a body to the farthest of its ends. */
  private static double reachM(MepElement drawn) {
    double reachM = drawn.lengthM() == null ? 0 : drawn.lengthM().value() / 2;
    Point middle = drawn.place().positionM();
    if (middle != null) {
      for (OpenEnd end : ReadEnds.of(drawn)) {
        reachM = Math.max(reachM, end.positionM().distanceM(middle));
      }
    }
    return reachM;
  }

  /** True if a body tells a figure of an element, whether that was chosen or not, or its ends. */
  private static boolean isDrawn(MepElement element) {
    return isDrawn(element.section())
        || isDrawn(element.lengthM())
        || isDrawn(element.endSections())
        || isDrawn(element.angleDeg())
        || hasEndsOfBody(element);
  }

  /** True for an end that no port of the file tells. */
  private static boolean hasEndsOfBody(MepElement element) {
    for (Port port : element.ports()) {
      if (!port.isInFile()) {
        return true;
      }
    }
    return element.ports().isEmpty() && !element.openEnds().isEmpty();
  }

  private static <T> boolean isDrawn(@Nullable Measured<T> measured) {
    return measured != null && drawn(measured) != null;
  }

  /** True for a size that is not known, or only by what is joined to the element. */
  private static boolean isMet(@Nullable Measured<Section> measured) {
    return measured == null || (measured.how() == How.NEIGHBOUR && drawn(measured) == null);
  }

  /** The same size was chosen, or drawn: that of a valve is its body where no pipe tells. */
  private static boolean sameSection(
      @Nullable Measured<Section> one, @Nullable Measured<Section> other) {
    return one == null || other == null
        ? one == other
        : same(one.value(), other.value()) || same(drawn(one), drawn(other));
  }

  private static boolean same(@Nullable Section one, @Nullable Section other) {
    return one != null
        && other != null
        && Tolerances.sameSection(one, other)
        && Math.abs(one.largestSideM() - other.largestSideM()) < SAME_SIZE_M;
  }

  /** What the body is, whether it was chosen or not; null if none was measured. */
  private static <T> @Nullable T drawn(Measured<T> measured) {
    if (measured.how().isDrawn()) {
      return measured.value();
    }
    for (Candidate<T> lost : measured.lost()) {
      if (lost.how().isDrawn()) {
        return lost.value();
      }
    }
    return null;
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

  /**
   * True if two ends of one lie where the other has ends. The middle of a body with a stem or a
   * motor is another one where the stem counts as an end, which depends on what it is joined to.
   */
  static boolean haveCommonEnds(MepElement one, MepElement other) {
    int common = 0;
    for (OpenEnd end : ReadEnds.of(one)) {
      for (OpenEnd each : ReadEnds.of(other)) {
        common += end.positionM().distanceM(each.positionM()) < SAME_PLACE_M ? 1 : 0;
      }
    }
    return common > 1;
  }

  /** True if both have two ends and do not run in one direction. */
  static boolean areCrossing(MepElement one, MepElement other) {
    Point along = one == other ? null : along(one);
    Point alongOther = along == null ? null : along(other);
    return along != null
        && alongOther != null
        && Math.abs(along.dot(alongOther)) < Math.cos(CROSSING_RAD);
  }

  /** From end to end, null unless there are two that are known and lie apart. */
  private static @Nullable Point along(MepElement element) {
    List<OpenEnd> ends = ReadEnds.of(element);
    if (ends.size() != 2) {
      return null;
    }
    Point from = ends.get(0).positionM();
    Point to = ends.get(1).positionM();
    return from.distanceM(to) < Drawn.SAME_PLACE_M ? null : Axis.between(from, to).unit();
  }

  /**
   * True for what can be told apart by its body: measured, placed and lagged. A cap has one end and
   * often no length; two of them never lie at one place, nor do two whose ends are known.
   */
  static boolean isMeasured(MepElement element) {
    return element.kind().isLagged()
        && element.section() != null
        && (element.lengthM() != null || isToldByEnds(element))
        && element.place().positionM() != null;
  }

  private static boolean isToldByEnds(MepElement element) {
    return element.form() == Form.CAP
        ? isDrawn(element.section())
        : ReadEnds.of(element).size() > 1;
  }
}
