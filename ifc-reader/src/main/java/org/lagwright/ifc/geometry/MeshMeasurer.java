package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.EndFinder.Found;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Measures a mesh by its ends. */
final class MeshMeasurer {

  /** A port belongs to an end within this share of the end's half size, or within 10 mm. */
  private static final double PORT_REACH = 0.3;

  private static final double PORT_REACH_M = 0.01;

  /** Walls this parallel to the axis (sine) make a body cut at a slant, not a bend. */
  private static final double WALL_PARALLEL = 0.01;

  /** Flat walls and ends of a mitred duct, inside and outside; machines have more. */
  private static final int MOST_WALLS = 24;

  /** Ends this square to the line between them are those of a straight body or a reducer. */
  private static final double SQUARE_RAD = Math.toRadians(0.2);

  /** How far a face may lie off the axis at the end of an arc: angle, and share of the width. */
  private static final double ON_AXIS_RAD = Math.toRadians(2);

  private static final double ON_AXIS = 0.03;

  private final Mesh mesh;
  private final long step;
  private final String what;
  private final ShapeHints hints;
  private final How how;
  private final MeshTopology topology;

  /**
   * @param step the record that findings point to
   * @param what what the faces belong to, for the evidence
   */
  MeshMeasurer(Mesh mesh, long step, String what, ShapeHints hints, How how) {
    this.mesh = mesh;
    this.step = step;
    this.what = what;
    this.hints = hints;
    this.how = how;
    this.topology = new MeshTopology(mesh);
  }

  Shape measure() {
    List<Found> found = new EndFinder(mesh, topology).find();
    List<Found> ends = asCircles(choose(found));
    Prism prism = prism(ends);
    if (prism != null) {
      return prism.measure(hints);
    }
    Shape byWalls = areEndsTold(ends) ? null : byWalls(ends);
    if (byWalls != null) {
      return byWalls;
    }
    Shape shape = Parts.fromEnds(inWorld(ends), how, loops(ends), distances(), List.of());
    if (shape.form() == Form.BEND) {
      return bend(shape, ends.get(0));
    }
    boolean untold = shape.form() == Form.UNKNOWN || shape.form() == Form.CAP;
    Shape bent = untold && areEndsTold(ends) ? bentByWalls() : null;
    return bent == null ? shape : bent;
  }

  /** A body whose ends do not tell it; a slight bend passes for a straight piece too. */
  private @Nullable Shape byWalls(List<Found> ends) {
    Shape bent = hints.straight() ? null : bentByWalls();
    if (bent != null) {
      return bent;
    }
    List<Found> straight = WallFit.ends(mesh, topology, !areSquare(ends));
    if (!straight.isEmpty()) {
      return straight(straight);
    }
    return hints.straight() ? bentByWalls() : null;
  }

  /** A round bend by its walls, null if they make none. */
  private @Nullable Shape bentByWalls() {
    BendWalls.Bend bend = BendWalls.of(mesh, topology);
    if (bend == null) {
      return null;
    }
    Evidence walls = walls(bend);
    List<ShapeEnd> ends = inWorld(asCircles(bend.ends()));
    return new Shape(
        Form.BEND,
        Parts.largest(ends, how, walls),
        Measured.of(bend.radiusM() * bend.angleRad(), how, walls),
        Measured.of(Math.toDegrees(bend.angleRad()), how, walls),
        Measured.of(bend.radiusM(), how, walls),
        ends,
        List.of());
  }

  /** Flanges hide the pipe between them: the arc that leads from end to end, null if none does. */
  private @Nullable Shape betweenEnds(Shape ends) {
    Shape arc = bentByWalls();
    if (arc == null || arc.section() == null) {
      return null;
    }
    Section section = arc.section().value();
    List<ShapeEnd> faces = new ArrayList<>();
    double lengthM = Objects.requireNonNull(arc.lengthM()).value();
    for (ShapeEnd end : ends.ends()) {
      double alongM = beyondM(arc, end, section.largestSideM());
      if (Double.isNaN(alongM)) {
        return null;
      }
      faces.add(new ShapeEnd(end.centreM(), end.outward(), section));
      lengthM += alongM;
    }
    return new Shape(
        Form.BEND,
        arc.section(),
        Measured.of(lengthM, how, distances()),
        ends.angleDeg(),
        arc.bendRadiusM(),
        faces,
        List.of());
  }

  /** How far a face lies beyond the nearer end of an arc, NaN if it is not the end of its pipe. */
  private static double beyondM(Shape arc, ShapeEnd face, double sizeM) {
    ShapeEnd own = arc.ends().get(0);
    for (ShapeEnd end : arc.ends()) {
      boolean nearer =
          end.centre().distanceTo(face.centre()) < own.centre().distanceTo(face.centre());
      own = nearer ? end : own;
    }
    Vec beyond = face.centre().minus(own.centre());
    double alongM = beyond.dot(own.out());
    boolean onAxis =
        own.out().angleTo(face.out()) < ON_AXIS_RAD
            && beyond.across(own.out()).norm() < ON_AXIS * sizeM
            && alongM > -ON_AXIS * sizeM
            && face.section().largestSideM() > (1 - ON_AXIS) * sizeM;
    return onAxis ? alongM : Double.NaN;
  }

  private Evidence walls(BendWalls.Bend bend) {
    String spread =
        String.format(
            Locale.ROOT,
            "%d of %d faces on an arc, normals spread over %.1f degrees",
            bend.faces(),
            mesh.faces().size(),
            Math.toDegrees(bend.spreadRad()));
    return new Evidence(step, what + " walls of a bend", spread);
  }

  /**
   * Holes in the wall of a straight piece look like ends; a pipe has two, and one that is round.
   */
  private boolean areEndsTold(List<Found> ends) {
    return hints.straight()
        ? ends.size() == 2 && (isRound(ends.get(0)) || isRound(ends.get(1)))
        : !ends.isEmpty();
  }

  private static boolean areSquare(List<Found> ends) {
    return ends.size() == 2 && isRectangular(ends.get(0)) && isRectangular(ends.get(1));
  }

  private static boolean isRound(Found end) {
    return end.outline().kind() == Outline.Kind.ROUND;
  }

  private static boolean isRectangular(Found end) {
    return end.outline().kind() == Outline.Kind.RECTANGULAR;
  }

  private List<ShapeEnd> inWorld(List<Found> ends) {
    List<ShapeEnd> world = new ArrayList<>(ends.size());
    for (Found each : ends) {
      Outline outline = each.outline();
      ShapeEnd end = outline.at(mesh.origin().plus(outline.centre())).end(each.outward());
      if (end != null) {
        world.add(end);
      }
    }
    return world;
  }

  /** A body without ends that can be told, by its walls. */
  private Shape straight(List<Found> ends) {
    Evidence walls = new Evidence(step, what + " walls", mesh.faces().size() + " faces");
    return Parts.fromEnds(inWorld(ends), how, walls, walls, List.of());
  }

  /** Round ends with the diameter that their polygon stands for. */
  private List<Found> asCircles(List<Found> ends) {
    List<Found> circles = new ArrayList<>(ends.size());
    for (Found end : ends) {
      circles.add(asCircle(end));
    }
    return circles;
  }

  private Found asCircle(Found end) {
    Outline outline = end.outline();
    if (!isRound(end) || end.loop().size() > PolygonReading.MOST_CORNERS) {
      return end;
    }
    double factor =
        PolygonReading.factor(
            end.loop().size(), 2 * outline.radiusM(), hints.stated().diametersM());
    Outline read =
        new Outline(
            outline.kind(), outline.centre(), outline.u().times(factor), outline.v().times(factor));
    return factor == 1 ? end : new Found(read, end.outward(), end.loop());
  }

  /** With the radius of the arc between its tangents if round; without one if it is no arc. */
  private Shape bend(Shape shape, Found end) {
    List<Vec> corners = new ArrayList<>(mesh.vertices().size());
    for (Vec vertex : mesh.vertices()) {
      corners.add(mesh.origin().plus(vertex));
    }
    ShapeEnd a = shape.ends().get(0);
    ShapeEnd b = shape.ends().get(1);
    BendFit.Fit fit = BendFit.of(corners, a, b);
    if (fit != null) {
      return withArc(shape, fit.lengthM(), fit.radiusM(), List.of());
    }
    Shape between = end.outline().isRound() ? betweenEnds(shape) : null;
    if (between != null) {
      return between;
    }
    Vec across = a.out().cross(b.out()).cross(a.out()).unit();
    double half = Math.abs(end.outline().u().dot(across)) + Math.abs(end.outline().v().dot(across));
    if (shape.bendRadiusM() == null || BendFit.followsArc(corners, a, b, half)) {
      return shape;
    }
    List<String> problems = new ArrayList<>(shape.problems());
    problems.add("body does not follow an arc between its ends, its radius is not known");
    return withArc(shape, Double.NaN, Double.NaN, problems);
  }

  private Shape withArc(Shape bend, double lengthM, double radiusM, List<String> problems) {
    return new Shape(
        bend.form(),
        bend.section(),
        Double.isNaN(lengthM) ? null : Measured.of(lengthM, how, distances()),
        bend.angleDeg(),
        Double.isNaN(radiusM) ? null : Measured.of(radiusM, how, distances()),
        bend.ends(),
        problems);
  }

  private Evidence loops(List<Found> ends) {
    Set<Integer> vertices = new LinkedHashSet<>();
    for (Found end : ends) {
      vertices.add(end.loop().size());
    }
    return new Evidence(step, what + " end loops", "loops of " + vertices + " vertices");
  }

  private Evidence distances() {
    return new Evidence(step, what + " ends", mesh.faces().size() + " faces");
  }

  /** Ends at ports if there are more; round ones before flat sides; of two with one port both. */
  private List<Found> choose(List<Found> found) {
    List<Found> atPorts = atPorts(found);
    boolean onePort = atPorts.size() == 1 && found.size() == 2;
    if (atPorts.size() == hints.portsM().size() && !atPorts.isEmpty() && !onePort) {
      return atPorts;
    }
    boolean fewEnough = found.size() > 2 && found.size() <= MOST_WALLS;
    List<Found> elbow =
        fewEnough && prism(found) == null ? MitredElbow.ends(mesh, found) : List.of();
    if (!elbow.isEmpty()) {
      return elbow;
    }
    List<Found> round = new ArrayList<>(found.size());
    for (Found end : found) {
      if (!isRectangular(end)) {
        round.add(end);
      }
    }
    return round.size() >= 2 ? round : found;
  }

  private List<Found> atPorts(List<Found> found) {
    List<Found> chosen = new ArrayList<>();
    for (Point port : hints.portsM()) {
      Vec local = Vec.of(port).minus(mesh.origin());
      Found nearest = null;
      double leastM = Double.MAX_VALUE;
      for (Found end : found) {
        double awayM = end.outline().centre().distanceTo(local);
        boolean reached = awayM < reachM(end.outline().largestHalfM());
        if (reached && awayM < leastM && !chosen.contains(end)) {
          nearest = end;
          leastM = awayM;
        }
      }
      if (nearest != null) {
        chosen.add(nearest);
      }
    }
    return chosen;
  }

  private static double reachM(double halfM) {
    return Math.max(PORT_REACH_M, PORT_REACH * halfM);
  }

  /** True if a port belongs to an end. */
  static boolean isAt(Point portM, ShapeEnd end) {
    return end.centreM().distanceM(portM) < reachM(end.section().largestSideM() / 2);
  }

  /** Boxes, and straight bodies with slanted ends; null for anything else. */
  private @Nullable Prism prism(List<Found> ends) {
    if (ends.size() == 6) {
      return box(ends);
    }
    return ends.size() == 2 ? slanted(ends.get(0), ends.get(1)) : null;
  }

  private @Nullable Prism box(List<Found> ends) {
    Found first = null;
    Found opposite = null;
    double longest = 0;
    for (Found a : ends) {
      Found partner = null;
      for (Found b : ends) {
        boolean faces = a.outward().angleTo(b.outward().times(-1)) < Math.toRadians(1);
        boolean alike = Ends.same(a.outline().section(), b.outline().section());
        partner = faces && alike ? b : partner;
      }
      if (partner == null || !isRectangular(a)) {
        return null;
      }
      double distance = a.outline().centre().distanceTo(partner.outline().centre());
      if (distance > longest) {
        longest = distance;
        first = a;
        opposite = partner;
      }
    }
    return first == null || opposite == null ? null : between(first, opposite);
  }

  private Prism between(Found a, Found b) {
    Vec axis = b.outline().centre().minus(a.outline().centre());
    Vec along = axis.unit();
    List<Vec> across = new ArrayList<>(a.loop().size());
    for (Vec corner : a.loop()) {
      across.add(corner.across(along));
    }
    Outline square = OutlineFit.fit(across);
    Outline start =
        (square == null ? a.outline() : square).at(a.outline().centre().plus(mesh.origin()));
    return new Prism(start, axis, how, loops(List.of(a, b)), distances());
  }

  private @Nullable Prism slanted(Found a, Found b) {
    Vec axis = b.outline().centre().minus(a.outline().centre()).unit();
    boolean square =
        a.outward().angleTo(axis.times(-1)) < SQUARE_RAD && b.outward().angleTo(axis) < SQUARE_RAD;
    if (square || axis.equals(Vec.ZERO)) {
      return null;
    }
    for (int face = 0; face < mesh.faces().size(); face++) {
      Vec normal = topology.normal(face);
      boolean atEnd = liesIn(a, face, normal) || liesIn(b, face, normal);
      if (!atEnd && Math.abs(normal.dot(axis)) > WALL_PARALLEL) {
        return null;
      }
    }
    return between(a, b);
  }

  private boolean liesIn(Found end, int face, Vec normal) {
    Vec corner = mesh.vertices().get(mesh.faces().get(face).loops().get(0)[0]);
    double off = corner.minus(end.outline().centre()).dot(end.outward());
    return normal.cross(end.outward()).norm() < WALL_PARALLEL
        && Math.abs(off) < WALL_PARALLEL * end.outline().largestHalfM();
  }
}
