package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Coaxiality.Extent;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.BendLegs;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;

/**
 * A covering that is drawn as one bend with straight legs: it may lie around a pipe, the bend
 * behind it and the next pipe.
 *
 * @param legs from its ends to the corner where they meet
 * @param arcM from the corner to where the arc begins
 */
record BentCovering(BendLegs legs, double arcM) {

  /** Two angles of one bend, as its ends and its body tell them. */
  private static final double SAME_ANGLE_RAD = Math.toRadians(2);

  /** Ends that turn less or nearly right round meet nowhere. */
  private static final double LEAST_TURN_RAD = Math.toRadians(5);

  /** Null if it is no bend, or one whose angle and radius do not tell where the arc begins. */
  static @Nullable BentCovering of(Shape covering) {
    if (covering.form() != Form.BEND
        || covering.ends().size() != 2
        || covering.angleDeg() == null
        || covering.bendRadiusM() == null) {
      return null;
    }
    ShapeEnd a = covering.ends().get(0);
    ShapeEnd b = covering.ends().get(1);
    double turn = Math.PI - a.out().angleTo(b.out());
    boolean once =
        Math.abs(turn - Math.toRadians(covering.angleDeg().value())) < SAME_ANGLE_RAD
            && turn > LEAST_TURN_RAD
            && turn < Math.PI - LEAST_TURN_RAD;
    if (!once) {
      return null;
    }
    BendLegs legs = BendLegs.of(a.centre(), a.out(), b.centre(), b.out());
    return new BentCovering(legs, legs.tangentM(covering.bendRadiusM().value()));
  }

  /** Its ends and its corner; between them lies all of its axis. */
  List<Point> corners() {
    return List.of(
        legs.at(legs.legA()).point(), legs.corner().point(), legs.atB(legs.legB()).point());
  }

  /** The part of a pipe beside one of the legs, or a bend between them; null if elsewhere. */
  @Nullable Extent extent(Shape host, double toleranceM) {
    if (Coaxiality.isStraight(host)) {
      for (Vec[] leg : legs(toleranceM)) {
        Extent extent = Coaxiality.alongAxis(leg[0], leg[1], host.ends(), toleranceM);
        if (extent != null) {
          return extent;
        }
      }
      return null;
    }
    return host.form() == Form.BEND && holds(host.ends(), toleranceM) ? Extent.WHOLE : null;
  }

  /** What is straight, from the arc to the end. */
  private List<Vec[]> legs(double toleranceM) {
    List<Vec[]> straight = new ArrayList<>(2);
    if (legs.legA() - arcM > toleranceM) {
      straight.add(new Vec[] {legs.at(arcM), legs.at(legs.legA())});
    }
    if (legs.legB() - arcM > toleranceM) {
      straight.add(new Vec[] {legs.atB(arcM), legs.atB(legs.legB())});
    }
    return straight;
  }

  /** True if one end lies on each leg and looks along it. */
  private boolean holds(List<ShapeEnd> ends, double toleranceM) {
    if (ends.size() != 2) {
      return false;
    }
    ShapeEnd one = ends.get(0);
    ShapeEnd other = ends.get(1);
    return (isOn(one, legs.toA(), legs.legA(), toleranceM)
            && isOn(other, legs.toB(), legs.legB(), toleranceM))
        || (isOn(other, legs.toA(), legs.legA(), toleranceM)
            && isOn(one, legs.toB(), legs.legB(), toleranceM));
  }

  private boolean isOn(ShapeEnd end, Vec way, double legM, double toleranceM) {
    Vec off = end.centre().minus(legs.corner());
    double alongM = off.dot(way);
    return off.across(way).norm() < toleranceM
        && end.out().dot(way) > 0
        && Coaxiality.areParallel(end.out(), way)
        && alongM > arcM - 2 * toleranceM
        && alongM < legM + 2 * toleranceM;
  }
}
