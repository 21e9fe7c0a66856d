package org.lagwright.ifc.geometry.shape;

import org.lagwright.ifc.geometry.frame.Vec;

/**
 * The straight legs of a bend, from its ends to the corner where they meet or pass each other, and
 * the arc between them. Metres.
 *
 * @param corner where the legs meet
 * @param toA unit vector from the corner to the first end
 * @param toB unit vector from the corner to the other end
 * @param turn angle that the bend turns through, radians
 */
public record BendLegs(Vec corner, Vec toA, Vec toB, double legA, double legB, double turn) {

  /** The legs of two ends that are not parallel. */
  public static BendLegs of(Vec centreA, Vec toA, Vec centreB, Vec toB) {
    Vec normal = toA.cross(toB);
    Vec between = centreB.minus(centreA);
    double legA = -between.cross(toB).dot(normal) / normal.dot(normal);
    double legB = -between.cross(toA).dot(normal) / normal.dot(normal);
    Vec corner = centreA.minus(toA.times(legA));
    return new BendLegs(corner, toA, toB, legA, legB, Math.PI - toA.angleTo(toB));
  }

  /** The shorter of the two legs, in metres. */
  public double leastM() {
    return Math.min(legA, legB);
  }

  /** From the corner to where an arc begins. */
  public double tangentM(double radiusM) {
    return radiusM * Math.tan(turn / 2);
  }

  /** The largest arc that begins and stops within the legs. */
  public double largestRadiusM() {
    return leastM() / Math.tan(turn / 2);
  }

  /** Along the arc and what of the legs is left beside it. */
  public double lengthM(double radiusM) {
    return legA + legB - 2 * tangentM(radiusM) + radiusM * turn;
  }

  /** Where the axis of an arc of this radius in metres turns about. */
  public Vec arcCentre(double radiusM) {
    return corner.plus(toA.plus(toB).unit().times(radiusM / Math.cos(turn / 2)));
  }

  /** A place on the first leg. */
  public Vec at(double fromCornerM) {
    return corner.plus(toA.times(fromCornerM));
  }

  /** A place on the other leg. */
  public Vec atB(double fromCornerM) {
    return corner.plus(toB.times(fromCornerM));
  }

  /** The same legs elsewhere. */
  public BendLegs moved(Vec by) {
    return new BendLegs(corner.plus(by), toA, toB, legA, legB, turn);
  }

  /** Distance of a point from the centre line of leg, arc, leg. */
  public double fromAxisM(Vec point, double radiusM) {
    double tangentM = tangentM(radiusM);
    Vec v = point.minus(corner);
    if (v.dot(toA) >= tangentM && v.dot(toA) >= v.dot(toB)) {
      return v.across(toA).norm();
    }
    if (v.dot(toB) >= tangentM) {
      return v.across(toB).norm();
    }
    Vec normal = toA.cross(toB).unit();
    Vec fromCentre = point.minus(arcCentre(radiusM));
    double inPlane = fromCentre.across(normal).norm() - radiusM;
    return Math.hypot(inPlane, fromCentre.dot(normal));
  }
}
