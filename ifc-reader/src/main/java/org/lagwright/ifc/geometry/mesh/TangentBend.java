package org.lagwright.ifc.geometry.mesh;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;

/**
 * A bend of several items: angle and radius are those of the bent one, because straight tangents
 * and sleeves would falsify them; the ends are those of the whole, and the tangents count as
 * length.
 */
public final class TangentBend {

  /** Ends of the bent item and of the whole that point the same way within this belong together. */
  private static final double SAME_WAY_RAD = Math.toRadians(1);

  private TangentBend() {}

  /**
   * True if an item is a bend whose ends look the same ways as those of the whole; if not, it is
   * only a part of the bend that the whole makes.
   */
  public static boolean turnsLike(Shape item, List<ShapeEnd> ends) {
    for (ShapeEnd end : ends) {
      if (onAxisOf(end, item.ends()) == null) {
        return false;
      }
    }
    return item.form() == Form.BEND;
  }

  /**
   * @param ends of the whole
   */
  public static Shape of(Shape bent, List<ShapeEnd> ends) {
    return new Shape(
        Form.BEND,
        bent.section(),
        lengthM(bent, ends),
        bent.angleDeg(),
        bent.bendRadiusM(),
        ends,
        bent.problems());
  }

  private static @Nullable Measured<Double> lengthM(Shape bent, List<ShapeEnd> ends) {
    Measured<Double> arc = bent.lengthM();
    if (arc == null) {
      return null;
    }
    double tangentsM = 0;
    for (ShapeEnd end : ends) {
      ShapeEnd from = onAxisOf(end, bent.ends());
      tangentsM += from == null ? 0 : end.centre().minus(from.centre()).dot(end.out());
    }
    if (tangentsM < Vec.WELD_M) {
      return arc;
    }
    Evidence of = arc.evidence();
    Evidence evidence = new Evidence(of.step(), of.path() + " and tangents", of.raw());
    return new Measured<>(arc.value() + tangentsM, arc.how(), evidence, arc.lost());
  }

  /** The end that a tangent leads from: both ends of a return bend look the same way. */
  private static @Nullable ShapeEnd onAxisOf(ShapeEnd end, List<ShapeEnd> ofBent) {
    ShapeEnd nearest = null;
    double leastM = Double.MAX_VALUE;
    for (ShapeEnd from : ofBent) {
      double asideM = end.centre().minus(from.centre()).across(end.out()).norm();
      if (end.out().angleTo(from.out()) < SAME_WAY_RAD && asideM < leastM) {
        nearest = from;
        leastM = asideM;
      }
    }
    return nearest;
  }
}
