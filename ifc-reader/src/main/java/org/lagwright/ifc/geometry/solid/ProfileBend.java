package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;

/**
 * A bend of a rectangular duct drawn as its side view: throat and heel are two arcs about one
 * centre, and the extrusion gives the side across.
 */
final class ProfileBend {

  /** Relative differences up to which centres and sweeps of throat and heel agree. */
  private static final double AGREES = 1e-3;

  private ProfileBend() {}

  /** The bend, null if the profile is not one. */
  static @Nullable Shape measure(Path profile, Vec axis, Evidence sides, Evidence depth) {
    List<Leg.Arc> arcs = new ArrayList<>();
    for (Leg leg : profile.legs()) {
      if (leg instanceof Leg.Arc arc && arc.isCircular()) {
        arcs.add(arc);
      }
    }
    if (arcs.size() != 2) {
      return null;
    }
    boolean firstIsHeel = arcs.get(0).radiusM() > arcs.get(1).radiusM();
    Leg.Arc heel = arcs.get(firstIsHeel ? 0 : 1);
    Leg.Arc throat = arcs.get(firstIsHeel ? 1 : 0);
    boolean concentric =
        heel.centre().distanceTo(throat.centre()) < AGREES * heel.radiusM()
            && Math.abs(heel.sweepRad() - throat.sweepRad()) < AGREES * heel.sweepRad()
            && heel.radiusM() - throat.radiusM() > AGREES * heel.radiusM();
    return concentric ? bend(profile, heel, throat, axis, sides, depth) : null;
  }

  private static @Nullable Shape bend(
      Path profile, Leg.Arc heel, Leg.Arc throat, Vec axis, Evidence sides, Evidence depth) {
    double radiusM = (heel.radiusM() + throat.radiusM()) / 2;
    double beforeM = stub(profile, heel, true);
    double afterM = stub(profile, heel, false);
    List<ShapeEnd> ends =
        Ends.known(
            end(heel, throat, heel.start(), heel.startTangent().times(-1), beforeM, axis),
            end(heel, throat, heel.end(), heel.endTangent(), afterM, axis));
    if (ends.size() < 2) {
      return null;
    }
    double lengthM = radiusM * heel.sweepRad() + beforeM + afterM;
    return new Shape(
        Form.BEND,
        Measured.of(
            ends.get(0).section(),
            How.SOLID,
            new Evidence(
                sides.step(),
                sides.path(),
                sides.raw() + " x " + depth.path() + " " + depth.raw())),
        Measured.of(lengthM, How.SOLID, sides),
        Measured.of(Math.toDegrees(heel.sweepRad()), How.SOLID, sides),
        Measured.of(radiusM, How.SOLID, sides),
        ends,
        List.of());
  }

  /** Length of the straight piece that continues the heel, 0 if there is none. */
  private static double stub(Path profile, Leg.Arc heel, boolean before) {
    List<Leg> legs = profile.legs();
    int step = before ? legs.size() - 1 : 1;
    Leg next = legs.get((legs.indexOf(heel) + step) % legs.size());
    Vec tangent = before ? heel.startTangent() : heel.endTangent();
    boolean straightOn =
        next instanceof Leg.Line && next.startTangent().cross(tangent).norm() < AGREES;
    return straightOn ? next.lengthM() : 0;
  }

  private static @Nullable ShapeEnd end(
      Leg.Arc heel, Leg.Arc throat, Vec onHeel, Vec outward, double stubM, Vec axis) {
    Vec radial = onHeel.minus(heel.centre()).unit();
    double middle = (heel.radiusM() + throat.radiusM()) / 2;
    Vec centre =
        heel.centre().plus(radial.times(middle)).plus(outward.times(stubM)).plus(axis.times(0.5));
    Vec half = radial.times((heel.radiusM() - throat.radiusM()) / 2);
    return new Outline(Outline.Kind.RECTANGULAR, centre, half, axis.times(0.5)).end(outward);
  }
}
