package org.lagwright.ifc.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Holds what we measure of bodies against the triangles of another program. */
final class Comparison {

  /** Round bodies become polygons: of 25 sides their volume is 1.1 % short. */
  private static final double VOLUME_TOLERANCE = 0.015;

  /** Round bends, whose triangles are bent onto the surface that their corners lie on. */
  private static final double BENT_TOLERANCE = 0.005;

  /** Over the diagonal of the box; a polygon's corners need not lie on the axes. */
  private static final double BOX_TOLERANCE = 0.005;

  /** Of 48 sides the circumference is 0.07 % short; in a bend there are steps along it too. */
  private static final double AREA_TOLERANCE = 0.005;

  /** Rounding of single precision in large coordinates. */
  private static final double ROUNDING_M = 1e-4;

  private final List<String> differences = new ArrayList<>();
  private int boxes;
  private int volumes;
  private int areas;

  /** One sentence for each figure that differs. */
  List<String> differences() {
    return List.copyOf(differences);
  }

  int boxes() {
    return boxes;
  }

  int volumes() {
    return volumes;
  }

  int areas() {
    return areas;
  }

  /** Compares how many records there are of each class that we know of. */
  void counts(Map<String, Long> ours, Map<String, Long> theirs) {
    ours.forEach(
        (keyword, count) -> {
          long other = theirs.getOrDefault(keyword, 0L);
          if (count != other) {
            differences.add(count + " " + keyword + ", theirs " + other);
          }
        });
  }

  /** Compares the six sides of the boxes. */
  void box(OurBody ours, OracleMesh theirs) {
    Box mine = ours.figures().box();
    if (mine == null) {
      differences.add(ours.name() + ": no box of ours, " + ours.figures().problems());
      return;
    }
    boxes++;
    Box other = theirs.box();
    double allowedM = BOX_TOLERANCE * mine.low().distanceM(mine.high()) + ROUNDING_M;
    double offM = Math.max(off(mine.low(), other.low()), off(mine.high(), other.high()));
    if (!(offM <= allowedM)) {
      differences.add(ours.name() + ": box " + mine + ", theirs " + other);
    }
  }

  /** Compares volumes of closed bodies. */
  void volume(OurBody ours, OracleMesh theirs) {
    Double mine = ours.figures().volumeM3();
    if (mine != null) {
      volumes++;
      boolean round = isRoundBend(ours);
      double other = round ? BentTriangles.volumeM3(theirs, ours.shape()) : theirs.volumeM3();
      compare(ours, "volume m3", mine, other, round ? BENT_TOLERANCE : VOLUME_TOLERANCE);
    }
  }

  private static boolean isRoundBend(OurBody ours) {
    Measured<Section> section = ours.shape().section();
    return ours.shape().form() == Form.BEND
        && ours.isOneItem()
        && ours.shape().bendRadiusM() != null
        && section != null
        && section.value() instanceof Section.Round;
  }

  /**
   * Compares outer areas of bodies of one item without bores: of those with bores the other
   * program's triangles hold the inside too.
   */
  void lateralArea(OurBody ours, OracleMesh theirs) {
    List<ShapeEnd> ends = ours.shape().ends();
    Double mine = ours.figures().lateralAreaM2();
    if (mine != null && !ends.isEmpty() && ours.isOneItem() && isSolid(ours)) {
      areas++;
      compare(ours, "lateral area m2", mine, theirs.areaWithoutM2(ends), AREA_TOLERANCE);
    }
  }

  /** Outside and ends make up the whole surface. */
  private static boolean isSolid(OurBody ours) {
    Double lateral = ours.figures().lateralAreaM2();
    Double surface = ours.figures().surfaceAreaM2();
    double ends = ours.shape().ends().stream().mapToDouble(e -> area(e.section())).sum();
    return lateral != null
        && surface != null
        && Math.abs(surface - lateral - ends) < VOLUME_TOLERANCE * surface;
  }

  private static double area(Section section) {
    if (section instanceof Section.Round round) {
      return Math.PI / 4 * round.outsideDiameterM() * round.outsideDiameterM();
    }
    if (section instanceof Section.Rectangular duct) {
      return duct.widthM() * duct.heightM();
    }
    Section.Oval oval = (Section.Oval) section;
    double small = Math.min(oval.widthM(), oval.heightM());
    return Math.PI / 4 * small * small + Math.abs(oval.widthM() - oval.heightM()) * small;
  }

  private void compare(OurBody ours, String what, double mine, double theirs, double tolerance) {
    if (!(Math.abs(mine - theirs) <= tolerance * mine)) {
      differences.add(
          String.format(
              Locale.ROOT,
              "%s: %s %.6f, theirs %.6f, %.2f %% of ours",
              ours.name(),
              what,
              mine,
              theirs,
              100 * theirs / mine));
    }
  }

  private static double off(Point a, Point b) {
    return Math.max(
        Math.abs(a.x() - b.x()), Math.max(Math.abs(a.y() - b.y()), Math.abs(a.z() - b.z())));
  }
}
