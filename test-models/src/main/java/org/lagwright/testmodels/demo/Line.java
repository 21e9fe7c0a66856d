package org.lagwright.testmodels.demo;

import static org.lagwright.testmodels.demo.Plan.what;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.Vec;

/**
 * Lays a run piece by piece: each piece starts where the last one ended, so that the run is whole
 * by construction. Lengths in millimetres.
 */
final class Line {

  /** Where the run has come to. */
  record End(Vec at, Vec direction, Vec across) {}

  private final Plan plan;
  private final DemoSystem system;
  private Place place;
  private Size size;
  private End end;
  private Plan.@Nullable Port open;

  Line(Plan plan, DemoSystem system, Place place, Size size, End end, Plan.@Nullable Port open) {
    this.plan = plan;
    this.system = system;
    this.place = place;
    this.size = size;
    this.end = end;
    this.open = open;
  }

  /** The pieces that follow are in this room. */
  Line in(Place next) {
    place = next;
    return this;
  }

  /** A straight piece. */
  Line straight(double lengthMm) {
    if (!(lengthMm > 0)) {
      throw new IllegalArgumentException("straight of " + lengthMm + " mm at " + end);
    }
    ElementClass segment = size.isDuct() ? ElementClass.DUCT_SEGMENT : ElementClass.PIPE_SEGMENT;
    String name = (size.isDuct() ? "Duct " : "Pipe ") + words();
    Body body = new Body.Extrusion(size.drawn(), lengthMm);
    return inline(
        what(segment, "RIGIDSEGMENT", "straight", name),
        new Piece.Measure(size.label(), lengthMm, 0, 0),
        List.of(body.inPlace()),
        lengthMm);
  }

  /** Straight on to where the coordinate along the run has this value. */
  Line to(double coordinate) {
    return straight(distanceTo(coordinate));
  }

  /** Straight on, then a bend of 90 degrees whose corner is at this coordinate. */
  Line turnAt(double coordinate, Vec direction) {
    return straight(distanceTo(coordinate) - bendRadius(direction)).turn(direction);
  }

  /** A bend into a new direction. */
  Line turn(Vec direction) {
    Vec from = end.direction;
    double cos = from.dot(direction);
    Vec inward = direction.minus(from.times(cos)).unit();
    double degrees = Math.rint(Math.toDegrees(Math.acos(cos)));
    double radius = bendRadius(direction);
    double sin = Math.sqrt(1 - cos * cos);
    Vec next = end.at.plus(from.times(radius * sin)).plus(inward.times(radius * (1 - cos)));
    double lean = end.across.dot(inward);
    boolean swings = Math.abs(lean) > 0.5;
    Vec across =
        swings ? from.times(-sin).plus(inward.times(cos)).times(Math.signum(lean)) : end.across;
    Piece bend =
        plan.add(
            what(fitting(), "BEND", "bend", "Bend " + Size.text(degrees) + " " + words()),
            system,
            place,
            new Piece.Measure(size.label(), 0, degrees, radius),
            size,
            new Frame(end.at, from, inward),
            List.of(new Body.Revolution(bendProfile(swings), radius, degrees).inPlace()));
    return advance(bend, new End(next, direction, across));
  }

  /** A tee whose centre is at this coordinate; gives the branch, this line goes straight on. */
  Line teeAt(double coordinate, Size branch, Vec direction) {
    straight(distanceTo(coordinate) - Shapes.teeHalfRun(size, branch));
    return tee(branch, direction);
  }

  /** A tee right here; gives the branch, this line goes straight on. */
  Line tee(Size branch, Vec direction) {
    double half = Shapes.teeHalfRun(size, branch);
    boolean asUnion = system == DemoSystem.HEATING_FLOW || system == DemoSystem.HEATING_RETURN;
    Vec centre = end.at.plus(end.direction.times(half));
    Piece tee =
        plan.add(
            what(fitting(), "JUNCTION", "tee", "Tee " + words() + " / " + branch.words()),
            system,
            place,
            Piece.Measure.of(size.label() + "/" + size.label() + "/" + branch.label()),
            size,
            new Frame(end.at, end.direction, direction),
            Shapes.tee(size, branch, asUnion));
    Vec along = end.direction;
    advance(tee, new End(end.at.plus(along.times(2 * half)), along, end.across));
    Vec mouth = centre.plus(direction.times(Shapes.teeBranch(size, branch)));
    Vec across = size instanceof Size.Rectangular ? along : across(direction);
    Plan.Port port = plan.port(tee, system, mouth, direction, across, system.outward);
    return new Line(plan, system, place, branch, new End(mouth, direction, across), port);
  }

  /** A reducer, or the piece from a rectangular to a round duct. */
  Line reduce(Size next, double lengthMm) {
    boolean sameShape = next.getClass() == size.getClass();
    String name = (sameShape ? "Reducer " : "Transition ") + words() + " - " + next.words();
    Line line =
        inline(
            what(fitting(), "TRANSITION", sameShape ? "reducer" : "transition", name),
            Piece.Measure.of(size.label() + "/" + next.label()),
            List.of(Shapes.reducer(size, next, lengthMm).inPlace()),
            lengthMm);
    size = next;
    return line;
  }

  /** A pair of flanges, drawn as one disc. */
  Line flange() {
    return inline(
        what(ElementClass.PIPE_FITTING, "CONNECTOR", "flange", "Flange " + words()),
        Piece.Measure.of(size.label()),
        Shapes.drum(size, 1.9, 40),
        40);
  }

  /** A valve of the given kind and face-to-face length. */
  Line valve(String predefined, String name, double lengthMm) {
    return inline(
        what(ElementClass.VALVE, predefined, "valve-body", name + " " + words()),
        Piece.Measure.of(size.label()),
        Shapes.valve(size, lengthMm),
        lengthMm);
  }

  /** Pump, strainer, meter or damper, drawn as a drum. */
  Line fixture(ElementClass ifcClass, String predefined, String form, String name, double length) {
    return inline(
        what(ifcClass, predefined, form, name + " " + words()),
        Piece.Measure.of(size.label()),
        Shapes.drum(size, size.isDuct() ? 1.05 : 1.8, length),
        length);
  }

  /** Closes the line with a cap. */
  void cap() {
    double depth = Math.ceil(size.largest() / 4);
    Piece cap =
        plan.add(
            what(fitting(), "USERDEFINED", "cap", "Cap " + words()),
            system,
            place,
            Piece.Measure.of(size.label()),
            size,
            frame(),
            List.of(new Body.Extrusion(size.outer(), depth).inPlace()));
    enter(cap);
  }

  /** Ends the line in a terminal that stands across it. */
  void terminal(ElementClass ifcClass, String predefined, String name, double side, double depth) {
    Piece terminal =
        plan.add(
            what(ifcClass, predefined, "apparatus", name),
            system,
            place,
            Piece.Measure.of(""),
            null,
            frame(),
            List.of(new Body.Extrusion(new Profile.Rectangle(side, side), depth).inPlace()));
    enter(terminal);
  }

  /** Ends the line at an apparatus that stands where it has come to. */
  void into(Piece apparatus) {
    enter(apparatus);
  }

  /** Ends this line at the end of another one of a system that flows on from it. */
  void meet(Line other) {
    if (open == null || other.open == null) {
      throw new IllegalStateException("nothing to join");
    }
    plan.join(open, other.open);
  }

  /** The last piece laid already has insulation in the model. */
  Line insulated(double thicknessMm, String material) {
    if (open == null) {
      throw new IllegalStateException("nothing to insulate");
    }
    plan.insulate(open.piece(), thicknessMm, material);
    return this;
  }

  /** A deliberate flaw: the quantity set of the last piece laid will give this length. */
  Line saidToBe(double lengthMm) {
    if (open == null) {
      throw new IllegalStateException("nothing to contradict");
    }
    plan.contradict(open.piece(), lengthMm);
    return this;
  }

  private Line inline(
      Piece.What what, Piece.Measure measure, List<Body.Placed> bodies, double lengthMm) {
    Piece piece = plan.add(what, system, place, measure, size, frame(), bodies);
    Vec next = end.at.plus(end.direction.times(lengthMm));
    return advance(piece, new End(next, end.direction, end.across));
  }

  private Line advance(Piece piece, End next) {
    enter(piece);
    end = next;
    open = plan.port(piece, system, next.at, next.direction, next.across, system.outward);
    return this;
  }

  private void enter(Piece piece) {
    Vec back = end.direction.times(-1);
    Plan.Port port = plan.port(piece, system, end.at, back, end.across, !system.outward);
    if (open != null) {
      plan.join(open, port);
    }
  }

  private Frame frame() {
    return new Frame(end.at, end.direction, end.across);
  }

  private ElementClass fitting() {
    return size.isDuct() ? ElementClass.DUCT_FITTING : ElementClass.PIPE_FITTING;
  }

  private String words() {
    return system == DemoSystem.NAMELESS ? size.label() : size.words();
  }

  private double distanceTo(double coordinate) {
    double sign = Math.rint(end.direction.x() + end.direction.y() + end.direction.z());
    return coordinate * sign - end.at.dot(end.direction);
  }

  private double bendRadius(Vec direction) {
    if (size instanceof Size.Rectangular duct) {
      boolean swings = Math.abs(end.across.dot(direction)) > 0.5;
      return duct.bendRadius(swings ? duct.width() : duct.height());
    }
    return size.bendRadius(size.largest());
  }

  private Profile bendProfile(boolean swings) {
    if (size instanceof Size.Rectangular duct && !swings) {
      return new Profile.Rectangle(duct.height(), duct.width());
    }
    return size.drawn();
  }

  /** A level direction across a run; west to east for a run straight up or down. */
  static Vec across(Vec direction) {
    boolean upright = Math.abs(direction.z()) > 0.999;
    return upright ? Vec.EAST : direction.cross(Vec.UP).unit();
  }
}
