package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Point;

/**
 * A bend that is drawn as an arc and straight pieces end to end. Most bends of some exporters are,
 * and their free ends can be told without meshing the pieces.
 */
final class BendChain {

  /** Ends that meet face each other within this. */
  private static final double FACING_RAD = Math.toRadians(0.1);

  private BendChain() {}

  /**
   * The bend that the pieces make.
   *
   * @param bent the piece with the arc
   * @return null if the pieces are not solids in one chain with two free ends at an angle
   */
  static @Nullable Shape of(List<Shape> pieces, Shape bent, ShapeHints hints) {
    List<ShapeEnd> free = new ArrayList<>();
    for (Shape piece : pieces) {
      boolean solid = piece.section() != null && piece.section().how() == How.SOLID;
      if (!solid || piece.ends().size() != 2) {
        return null;
      }
      free.addAll(piece.ends());
    }
    int joints = takeJoined(free);
    if (joints != pieces.size() - 1) {
      return null;
    }
    Ends.Joined joined = Ends.join(inOrderOfPorts(free, hints.portsM()));
    return joined.form() == Form.BEND ? TangentBend.of(bent, joined.ordered()) : null;
  }

  /** Removes the ends that meet, and tells how many pairs they were. */
  private static int takeJoined(List<ShapeEnd> ends) {
    int joints = 0;
    for (int i = ends.size() - 1; i > 0; i--) {
      for (int j = i - 1; j >= 0; j--) {
        if (meet(ends.get(i), ends.get(j))) {
          ends.remove(i);
          ends.remove(j);
          joints++;
          i--;
          break;
        }
      }
    }
    return joints;
  }

  private static boolean meet(ShapeEnd a, ShapeEnd b) {
    return a.centreM().distanceM(b.centreM()) < Mesh.WELD_M
        && a.section().equals(b.section())
        && Math.PI - a.out().angleTo(b.out()) < FACING_RAD;
  }

  private static List<ShapeEnd> inOrderOfPorts(List<ShapeEnd> ends, List<Point> portsM) {
    boolean turned =
        portsM.size() == 2
            && portsM.get(0).distanceM(ends.get(1).centreM())
                < portsM.get(0).distanceM(ends.get(0).centreM());
    return turned ? List.of(ends.get(1), ends.get(0)) : List.copyOf(ends);
  }
}
