package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.TangentBend;
import org.lagwright.ifc.geometry.shape.ArcPiece;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;

/**
 * A bend, or a pipe with bends, that is drawn as arcs and straight pieces end to end. Most bends of
 * some exporters are, and their free ends can be told without meshing the pieces.
 */
public final class BendChain {

  /** Ends that meet face each other within this. */
  private static final double FACING_RAD = Math.toRadians(0.1);

  /** Ends of meshes meet within this. */
  private static final double MESH_JOINT_M = 1e-4;

  /** Relative difference of radii, and of places of their centres, that make one bend. */
  private static final double SAME_ARC = 1e-3;

  private final List<Shape> pieces;
  private final ShapeHints hints;
  private final String what;
  private final long step;

  private BendChain(List<Shape> pieces, ShapeHints hints, long step) {
    this.pieces = pieces;
    this.hints = hints;
    this.step = step;
    this.what = "body of " + pieces.size() + " items";
  }

  /**
   * The bend that the pieces make; of a segment also the length of what has several bends, or
   * corners.
   *
   * @param step the record that evidence of the whole points to
   * @return null if the pieces are not in one chain with two free ends, or make no bend
   */
  public static @Nullable Shape of(List<Shape> pieces, ShapeHints hints, long step) {
    return new BendChain(pieces, hints, step).measure();
  }

  private @Nullable Shape measure() {
    List<ShapeEnd> free = new ArrayList<>();
    List<Shape> bent = new ArrayList<>();
    for (Shape piece : pieces) {
      if (piece.section() == null || piece.lengthM() == null || piece.ends().size() != 2) {
        return null;
      }
      free.addAll(piece.ends());
      if (piece.form() == Form.BEND) {
        bent.add(piece);
      } else if (piece.form() != Form.STRAIGHT) {
        return null;
      }
    }
    int joints = takeJoined(free);
    if (joints != pieces.size() - 1) {
      return null;
    }
    Ends.Joined joined = Ends.join(inOrderOfPorts(free, hints.portsM()));
    Shape arc = bent.isEmpty() ? null : bent.size() == 1 ? bent.get(0) : oneArc(bent);
    if (arc != null && joined.form() == Form.BEND) {
      return TangentBend.of(arc, joined.ordered());
    }
    boolean piecewise = hints.straight() && (!bent.isEmpty() || joined.form() != Form.STRAIGHT);
    return piecewise ? severalBends(joined) : null;
  }

  /** Arcs about one axis as one; null if they are not. */
  private @Nullable Shape oneArc(List<Shape> arcs) {
    Shape first = arcs.get(0);
    Measured<Double> radius = first.bendRadiusM();
    Vec centre = radius == null ? Vec.ZERO : ArcPiece.centre(first, radius.value());
    double lengthM = 0;
    double angleDeg = 0;
    List<ShapeEnd> ends = new ArrayList<>();
    for (Shape arc : arcs) {
      ends.addAll(arc.ends());
      Measured<Double> lengthOfArc = arc.lengthM();
      Measured<Double> angle = arc.angleDeg();
      if (radius == null
          || lengthOfArc == null
          || angle == null
          || arc.bendRadiusM() == null
          || !isNear(ArcPiece.centre(arc, arc.bendRadiusM().value()), centre, radius.value())
          || Math.abs(arc.bendRadiusM().value() - radius.value()) > SAME_ARC * radius.value()) {
        return null;
      }
      lengthM += lengthOfArc.value();
      angleDeg += angle.value();
    }
    How how = howOf(arcs);
    takeJoined(ends);
    return radius == null || ends.size() != 2
        ? null
        : new Shape(
            Form.BEND,
            first.section(),
            Parts.number(lengthM, how, step, what, arcs.size() + " arcs"),
            Parts.number(angleDeg, how, step, what, arcs.size() + " arcs"),
            radius,
            ends,
            List.of());
  }

  /** False also where a centre is not known. */
  private static boolean isNear(Vec centre, Vec other, double radiusM) {
    return centre.distanceTo(other) < SAME_ARC * radiusM;
  }

  private Shape severalBends(Ends.Joined joined) {
    double lengthM = 0;
    for (Shape piece : pieces) {
      Measured<Double> own = piece.lengthM();
      lengthM += own == null ? 0 : own.value();
    }
    Evidence evidence = new Evidence(step, what, "end to end");
    return new Shape(
        Form.UNKNOWN,
        pieces.get(0).section(),
        Measured.of(lengthM, howOf(pieces), evidence),
        null,
        null,
        joined.ordered(),
        List.of(what + ", several bends in one element"));
  }

  private static How howOf(List<Shape> shapes) {
    How how = How.SOLID;
    for (Shape shape : shapes) {
      boolean mesh = shape.section() != null && shape.section().how() == How.MESH;
      how = mesh ? How.MESH : how;
    }
    return how;
  }

  /** Removes the ends that meet, and tells how many pairs they were. */
  private int takeJoined(List<ShapeEnd> ends) {
    double withinM = howOf(pieces) == How.SOLID ? Vec.WELD_M : MESH_JOINT_M;
    int joints = 0;
    for (int i = ends.size() - 1; i > 0; i--) {
      for (int j = i - 1; j >= 0; j--) {
        if (meet(ends.get(i), ends.get(j), withinM)) {
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

  /** Pipes are also drawn piece by piece with corners; what makes a bend has none. */
  private boolean meet(ShapeEnd a, ShapeEnd b, double withinM) {
    boolean inLine = Math.PI - a.out().angleTo(b.out()) < FACING_RAD;
    return a.centreM().distanceM(b.centreM()) < withinM
        && Ends.same(a.section(), b.section())
        && (inLine || hints.straight());
  }

  private static List<ShapeEnd> inOrderOfPorts(List<ShapeEnd> ends, List<Point> portsM) {
    boolean turned =
        portsM.size() == 2
            && portsM.get(0).distanceM(ends.get(1).centreM())
                < portsM.get(0).distanceM(ends.get(0).centreM());
    return turned ? List.of(ends.get(1), ends.get(0)) : List.copyOf(ends);
  }
}
