package org.lagwright.takeoff.body;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.body.Body.Prism;
import org.lagwright.takeoff.body.Body.Turn;
import org.lagwright.takeoff.body.Ends.End;
import org.lagwright.takeoff.fitting.Direction;

/**
 * A bend: turned where its insulation stays clear of the axis of the bend; swept in flat faces and
 * cut off at that axis where only the pipe does; two mitred legs where not even the pipe does. Legs
 * between arc and ends are straight.
 */
final class BendBody {

  private static final double LEAST_M = 0.001;

  /** Radii within this share of what the ends allow reach to the ends. */
  private static final double SAME = 0.02;

  /** Turn of one flat piece: volumes within 0.5 %. */
  private static final double PIECE_RAD = Math.toRadians(9);

  /** Sections are cut off this much before the axis, so that no face has a side without length. */
  private static final double CLEAR = 0.999;

  private final Point start;
  private final Point way;
  private final Point wayOut;
  private final double startLegM;
  private final double endLegM;
  private final double angleRad;
  private final double radiusM;
  private final Point corner;
  private final Lie lie;

  /**
   * @param corner where the axes of the ends meet
   * @param toldM radius of the centre line as read, 0 where it is not
   */
  BendBody(End a, Point corner, End b, double toldM, Lie lie) {
    this.corner = corner;
    this.lie = lie;
    this.way = Direction.unit(Direction.between(a.at(), corner));
    this.wayOut = Direction.unit(Direction.between(corner, b.at()));
    this.angleRad = Direction.angleRad(way, wayOut);
    double tangent = Math.tan(angleRad / 2);
    double legA = a.at().distanceM(corner);
    double legB = corner.distanceM(b.at());
    double widestM = Math.min(legA, legB) / tangent;
    boolean toEnds = toldM <= 0 || toldM > widestM * (1 - SAME);
    this.radiusM = toEnds ? widestM : toldM;
    this.startLegM = legA - radiusM * tangent;
    this.endLegM = legB - radiusM * tangent;
    this.start = a.at();
  }

  List<Body> bodies(Section bare, double belowM, double totalM) {
    Frame frame = frame();
    Ring ring = Ring.around(lie.inFrame(bare, frame), belowM, totalM);
    Point inwards = inwards();
    double alongU = Direction.dot(inwards, frame.u());
    double alongV = Direction.dot(inwards, frame.v());
    double outerM = Outline.of(ring.outer()).reachM(alongU, alongV);
    double innerM = Outline.of(inner(ring)).reachM(alongU, alongV);
    if (innerM >= radiusM * CLEAR) {
      return mitred(ring, frame);
    }
    List<Body> bodies = new ArrayList<>();
    Pose pose = new Pose(Direction.plus(start, way, startLegM), frame);
    if (startLegM > LEAST_M) {
      bodies.add(new Prism(ring, new Pose(start, frame), startLegM));
    }
    bodies.add(
        outerM < radiusM * CLEAR
            ? new Turn(ring, pose, inwards, radiusM, angleRad)
            : swept(ring, pose, alongU, alongV));
    if (endLegM > LEAST_M) {
      Point from = Direction.plus(corner, wayOut, radiusM * Math.tan(angleRad / 2));
      bodies.add(new Prism(ring, new Pose(from, turned(frame, wayOut)), endLegM));
    }
    return bodies;
  }

  private static Section inner(Ring ring) {
    Section inner = ring.inner();
    return inner == null ? ring.outer() : inner;
  }

  /** From the middle of the start towards the axis of the bend. */
  private Point inwards() {
    return Direction.unit(Direction.plus(wayOut, way, -Direction.dot(wayOut, way)));
  }

  /** At the start; where it stands upright, as the end carries it there. */
  private Frame frame() {
    if (!lie.isGuess(way)) {
      return lie.across(way);
    }
    return lie.across(wayOut).turned(Direction.unit(Direction.cross(wayOut, way)), way);
  }

  private Frame turned(Frame frame, Point to) {
    return frame.turned(Direction.unit(Direction.cross(way, wayOut)), to);
  }

  private Body swept(Ring ring, Pose pose, double alongU, double alongV) {
    Outline outer = Outline.of(ring.outer()).within(radiusM * CLEAR, alongU, alongV);
    Outline inner = Outline.of(inner(ring));
    int pieces = (int) Math.ceil(angleRad / PIECE_RAD);
    Point centre = Direction.plus(pose.at(), inwards(), radiusM);
    List<Pose> poses = new ArrayList<>();
    List<Outline> outers = new ArrayList<>();
    List<Outline> inners = new ArrayList<>();
    for (int i = 0; i <= pieces; i++) {
      double turn = angleRad * i / pieces;
      Point outwards =
          Direction.plus(
              Direction.plus(new Point(0, 0, 0), inwards(), -Math.cos(turn)), way, Math.sin(turn));
      Point axis =
          Direction.plus(
              Direction.plus(new Point(0, 0, 0), way, Math.cos(turn)), inwards(), Math.sin(turn));
      Point at = Direction.plus(centre, outwards, radiusM);
      poses.add(new Pose(at, turned(pose.frame(), axis)));
      outers.add(outer);
      inners.add(inner);
    }
    return FacetMaker.sweep(poses, outers, inners, true);
  }

  /** Both legs up to the plane half way between them, cut off where the planes of the ends meet. */
  private List<Body> mitred(Ring ring, Frame frame) {
    Pose first =
        new Pose(
            corner, new Frame(Direction.opposite(way), Direction.opposite(frame.u()), frame.v()));
    Pose second = new Pose(corner, turned(frame, wayOut));
    double tangent = Math.tan(angleRad / 2);
    return List.of(
        mitredLeg(ring, first, wayOut, startLegM + radiusM * tangent),
        mitredLeg(ring, second, Direction.opposite(way), endLegM + radiusM * tangent));
  }

  private Body mitredLeg(Ring ring, Pose pose, Point other, double lengthM) {
    Point inside =
        Direction.unit(
            Direction.plus(other, pose.frame().axis(), -Direction.dot(other, pose.frame().axis())));
    double alongU = Direction.dot(inside, pose.frame().u());
    double alongV = Direction.dot(inside, pose.frame().v());
    double tangent = Math.tan(angleRad / 2);
    double limitM = lengthM / tangent * CLEAR;
    return FacetMaker.leg(
        pose,
        Outline.of(ring.outer()).within(limitM, alongU, alongV),
        Outline.of(inner(ring)).within(limitM, alongU, alongV),
        (u, v) -> (u * alongU + v * alongV) * tangent,
        lengthM);
  }
}
