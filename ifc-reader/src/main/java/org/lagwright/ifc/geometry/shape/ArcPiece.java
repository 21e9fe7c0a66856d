package org.lagwright.ifc.geometry.shape;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;

/**
 * A bend without tangents, to be cut.
 *
 * @param radial from the centre of the bend to the middle of its first end
 * @param axis unit vector that it turns about
 */
public record ArcPiece(Shape bend, Vec centre, Vec radial, Vec axis, double turnRad) {

  /** From here on the two ends do not tell which way round a bend turns. */
  private static final double MOST_RAD = Math.toRadians(175);

  /** Relative difference between length and arc of a bend without tangents. */
  private static final double NO_TANGENT = 1e-6;

  /** The bend as an arc, null if it is none, or has tangents. */
  public static @Nullable ArcPiece of(Shape bend) {
    Measured<Double> lengthM = bend.lengthM();
    Measured<Double> angle = bend.angleDeg();
    Measured<Double> radius = bend.bendRadiusM();
    if (bend.form() != Form.BEND || lengthM == null || angle == null || radius == null) {
      return null;
    }
    double turnRad = Math.toRadians(angle.value());
    Vec axis = axis(bend);
    double arcM = radius.value() * turnRad;
    if (turnRad > MOST_RAD
        || axis.isTiny()
        || Math.abs(arcM - lengthM.value()) > NO_TANGENT * arcM) {
      return null;
    }
    Vec centre = centre(bend, radius.value());
    Vec radial = bend.ends().get(0).centre().minus(centre);
    return new ArcPiece(bend, centre, radial, axis, turnRad);
  }

  private static Vec axis(Shape bend) {
    return bend.ends().get(1).out().cross(bend.ends().get(0).out()).unit();
  }

  /** The centre of an arc; not a number where its ends are parallel. */
  public static Vec centre(Shape arc, double radiusM) {
    Vec axis = axis(arc);
    double knownM = axis.isTiny() ? Double.NaN : radiusM;
    return arc.ends().get(0).centre().plus(arc.ends().get(0).out().cross(axis).times(knownM));
  }

  /** A point beside the centre line at a share of the turn; off lies across the first end. */
  public Vec at(Vec off, double share) {
    return centre.plus(radial.plus(off).turned(axis, turnRad * share));
  }

  /** The part of the bend between two shares of its turn. */
  public Shape between(double from, double to, Evidence evidence) {
    Measured<Double> lengthM = known(bend.lengthM());
    Measured<Double> angle = known(bend.angleDeg());
    List<ShapeEnd> ends =
        List.of(
            turned(bend.ends().get(0), from, turnRad * from),
            turned(bend.ends().get(1), to, turnRad * (to - 1)));
    return new Shape(
        Form.BEND,
        bend.section(),
        Measured.of(lengthM.value() * (to - from), lengthM.how(), evidence),
        Measured.of(angle.value() * (to - from), angle.how(), evidence),
        bend.bendRadiusM(),
        ends,
        bend.problems());
  }

  private ShapeEnd turned(ShapeEnd end, double share, double byRad) {
    Point width = end.width();
    return new ShapeEnd(
        at(Vec.ZERO, share).point(),
        end.out().turned(axis, byRad).point(),
        end.section(),
        width == null ? null : Vec.of(width).turned(axis, byRad).point());
  }

  private static Measured<Double> known(@Nullable Measured<Double> figure) {
    if (figure == null) {
      throw new IllegalStateException("a bend that is cut has all its figures");
    }
    return figure;
  }
}
