package org.lagwright.ifc.geometry.solid;

import java.util.List;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.Profile;
import org.lagwright.ifc.geometry.profile.Profiles;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Measures revolved solids as bends, unless they are turned all the way round: the angle is
 * written, the radius is the distance of the profile's centre to the axis, the length is the arc
 * {@code R theta}.
 */
public final class Revolutions {

  /** From here on it is a body of revolution, such as a valve, and no bend. */
  private static final double FULL_TURN_RAD = Math.toRadians(355);

  /** Share by which scales along and across an arc may differ: what rounding leaves of a turn. */
  private static final double EVEN = 1e-4;

  private static final String STRETCHED = "its map stretches it unevenly, so that it is no arc";

  private final Coordinates coordinates;
  private final Profiles profiles;

  /** Reads revolved bodies of one file. */
  public Revolutions(Coordinates coordinates, Profiles profiles) {
    this.coordinates = coordinates;
    this.profiles = profiles;
  }

  /** What a revolved body tells of sections, angle, radius and ends. */
  public Shape measure(Item item) {
    IfcRecord solid = item.record();
    Frame own = coordinates.position(solid, "Position");
    Frame axis = coordinates.axes(solid, "Axis").frame();
    double turn = Math.abs(solid.number("Angle")) * coordinates.units().angleRad();
    Profile profile = profiles.read(solid, "SweptArea");
    if (own == null || axis == null || profile == null || !(turn > 0)) {
      return Shape.unmeasured(solid + ": position, axis, angle or profile missing");
    }
    if (turn >= FULL_TURN_RAD) {
      Evidence length = new Evidence(solid.id(), solid.entityName() + ".Axis", solid.raw("Axis"));
      Shape turned = TurnedBody.of(profile, axis, item.frame().times(own), length);
      return turned == null ? Shape.unmeasured(solid + " is a body of revolution") : turned;
    }
    if (profile.outline() == null) {
      return Shape.unmeasured(
          solid + ": profile " + profile.evidence() + " is neither circle, rectangle nor oval");
    }
    double signed = Math.copySign(turn, solid.number("Angle"));
    Profile last = solid.has("EndSweptArea") ? profiles.read(solid, "EndSweptArea") : profile;
    Outline far = last == null || last.outline() == null ? profile.outline() : last.outline();
    Shape bend = bend(solid, profile, far, item.frame().times(own), axis, signed);
    return far.equals(profile.outline())
        ? bend
        : Parts.withProblem(bend, "ends of the bend differ in size");
  }

  private static Shape bend(
      IfcRecord solid, Profile profile, Outline far, Frame frame, Frame axis, double angleRad) {
    Outline start = profile.outline();
    if (start == null) {
      return Shape.unmeasured(solid + ": no profile");
    }
    Vec origin = Vec.of(axis.origin());
    Vec direction = Vec.of(axis.ez());
    Vec radial = start.centre().minus(origin).across(direction);
    if (radial.norm() < Path.SAME_POINT_M) {
      return Shape.unmeasured(solid + ": the profile's centre lies on the axis");
    }
    Outline end = turned(far, origin, direction, angleRad);
    Vec travel = direction.cross(radial).times(Math.signum(angleRad));
    Vec arrival = travel.turned(direction, angleRad);
    List<ShapeEnd> ends =
        Ends.known(
            start.in(frame).end(frame.vector(travel.times(-1))),
            end.in(frame).end(frame.vector(arrival)));
    if (isStretched(frame, radial, travel)) {
      Evidence map = new Evidence(solid.id(), solid.entityName(), "uneven scales");
      return Parts.fromEnds(ends, How.SOLID, profile.evidence(), map, List.of(STRETCHED));
    }
    double radiusM = frame.vector(radial).norm();
    Evidence angle = new Evidence(solid.id(), solid.entityName() + ".Angle", solid.raw("Angle"));
    Evidence figures =
        new Evidence(
            solid.id(), solid.entityName() + ".Axis,Angle", "profile to axis, " + angle.raw());
    double turn = Math.abs(angleRad);
    return new Shape(
        Form.BEND,
        Parts.largest(ends, How.SOLID, profile.evidence()),
        Measured.of(radiusM * turn, How.SOLID, figures),
        Measured.of(Math.toDegrees(turn), How.SOLID, angle),
        Measured.of(radiusM, How.SOLID, figures),
        ends,
        List.of());
  }

  /**
   * True if a circle in the plane of two vectors of equal length and square to each other is none.
   */
  private static boolean isStretched(Frame frame, Vec radial, Vec travel) {
    Vec a = frame.vector(radial);
    Vec b = frame.vector(travel);
    return Math.abs(a.norm() - b.norm()) > EVEN * a.norm()
        || Math.abs(a.dot(b)) > EVEN * a.norm() * b.norm();
  }

  private static Outline turned(Outline outline, Vec origin, Vec axis, double angleRad) {
    Vec arm = outline.centre().minus(origin).turned(axis, angleRad);
    return new Outline(
        outline.kind(),
        origin.plus(arm),
        outline.u().turned(axis, angleRad),
        outline.v().turned(axis, angleRad));
  }
}
