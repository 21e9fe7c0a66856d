package org.lagwright.ifc.extract.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * The faces of a pump or valve that is drawn with its motor: of several ends those two of one size
 * that look straight away from each other.
 */
final class Faces {

  /** Cosine of the angle up to which the way between both faces leads out of each, 2 degrees. */
  private static final double STRAIGHT = Math.cos(Math.toRadians(2));

  private Faces() {}

  /**
   * The shape between the faces; null where none are sure, or where nothing is wider than they.
   *
   * @param met the joint at one of them, if any is known
   */
  static @Nullable Shape between(Shape drawn, List<Neighbours.Joint> met) {
    List<ShapeEnd> faces = drawn.ends().size() > 2 ? of(drawn.ends(), met) : List.of();
    Measured<Section> section = drawn.section();
    if (faces.isEmpty()
        || section == null
        || (met.isEmpty() && isSame(faces.get(0).section(), section.value()))) {
      return null;
    }
    return Shape.ofEnds(faces, section.how(), section.evidence());
  }

  private static List<ShapeEnd> of(List<ShapeEnd> ends, List<Neighbours.Joint> met) {
    List<ShapeEnd> faces = List.of();
    for (int i = 0; i < ends.size(); i++) {
      for (int j = i + 1; j < ends.size(); j++) {
        boolean alike = isSame(ends.get(i).section(), ends.get(j).section());
        if (alike && (met.isEmpty() || isAt(met, ends.get(i)) || isAt(met, ends.get(j)))) {
          if (!faces.isEmpty() || !lookApart(ends.get(i), ends.get(j))) {
            return List.of();
          }
          faces = List.of(ends.get(i), ends.get(j));
        }
      }
    }
    return faces;
  }

  private static boolean isAt(List<Neighbours.Joint> met, ShapeEnd end) {
    Point atM = met.get(0).port().positionM();
    return atM != null && atM.distanceM(end.centreM()) < Drawn.SAME_PLACE_M;
  }

  private static boolean isSame(Section a, Section b) {
    return Tolerances.sameSection(a, b);
  }

  /** True if both lie on one axis and face away from each other. */
  static boolean lookApart(ShapeEnd a, ShapeEnd b) {
    return leadsOut(b.centreM(), a) && leadsOut(a.centreM(), b);
  }

  private static boolean leadsOut(Point fromM, ShapeEnd end) {
    Point toM = end.centreM();
    return end.outward().alongM(fromM, toM) > STRAIGHT * fromM.distanceM(toM);
  }
}
