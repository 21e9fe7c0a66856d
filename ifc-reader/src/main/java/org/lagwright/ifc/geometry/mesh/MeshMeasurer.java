package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Prism;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/** Measures a mesh by its ends. */
public final class MeshMeasurer {

  /** A port belongs to an end within this share of the end's half size, or within 10 mm. */
  private static final double PORT_REACH = 0.3;

  private static final double PORT_REACH_M = 0.01;

  /** Flat walls and ends of a mitred duct, inside and outside; machines have more. */
  private static final int MOST_WALLS = 24;

  private static final String SIDES = "flat sides of the body look like ends too";

  private static final String COARSE =
      "corners are rounded to a millimetre or so, sizes and ends are no surer than that";

  private static final String NESTED =
      "bodies lie inside one another, which of them is the outside of the pipe is not told";

  private static final String STANDS_BACK =
      "front of a flange or socket is torn, its end may lie farther out and be narrower";

  private static final String HOLES = "faces of the body are missing, sizes and ends are less sure";

  /** Share of a step by which a side may be longer or shorter than whole ones. */
  private static final double WHOLE = 0.05;

  private static final String CURVED =
      "body is curved between its ends, length is the distance between them";

  /** Cosine between the ends of a straight run, which face away from each other. */
  private static final double OPPOSITE = Math.cos(Math.toRadians(175));

  /** Ends that turn by less are parallel. */
  private static final double PARALLEL_RAD = Math.toRadians(0.2);

  private final Mesh mesh;
  private final ShapeHints hints;
  private final MeshTopology topology;
  private final MeshEvidence from;
  private final MeshPrism prism;
  private final MeshBend bend;

  /**
   * @param step the record that findings point to
   * @param what what the faces belong to, for the evidence
   */
  public MeshMeasurer(Mesh mesh, long step, String what, ShapeHints hints, How how) {
    MeshTopology drawn = new MeshTopology(mesh);
    this.mesh = Seams.sewn(mesh, drawn);
    this.hints = hints;
    this.topology = this.mesh == mesh ? drawn : new MeshTopology(this.mesh);
    this.from = new MeshEvidence(this.mesh, step, what, how);
    this.prism = new MeshPrism(topology, from, hints.straight());
    this.bend = new MeshBend(topology, from, hints.stated().diametersM());
  }

  /** Sections, length, form and ends, as far as the mesh tells. */
  public Shape measure() {
    Shape shape = withNested(withStrays(measured()));
    shape = topology.hasHoles() ? Parts.withProblem(shape, HOLES) : shape;
    return mesh.rounding().isTooCoarse() && isRounded(shape)
        ? Parts.withProblem(shape, COARSE)
        : shape;
  }

  /** A segment of which a straight run is measured, with what is drawn besides, if untold yet. */
  private Shape withStrays(Shape shape) {
    boolean straight =
        hints.straight()
            && shape.problems().isEmpty()
            && shape.lengthM() != null
            && shape.ends().size() > 1
            && shape.ends().get(0).out().dot(shape.ends().get(1).out()) < OPPOSITE;
    String problem = straight ? Strays.in(mesh, topology, shape) : null;
    return problem == null ? shape : Parts.withProblem(shape, problem);
  }

  /**
   * A fitting of which the outermost of several bodies is measured. Valves and unions are drawn as
   * several bodies too, and of a pipe its wall tells.
   */
  private Shape withNested(Shape shape) {
    boolean told =
        shape.form() == Form.STRAIGHT
            || shape.form() == Form.REDUCER
            || !shape.problems().isEmpty();
    for (int i = 0; !told && i < shape.ends().size(); i++) {
      if (NestedPlates.at(mesh, shape.ends().get(i))) {
        return Parts.withProblem(shape, NESTED);
      }
    }
    return shape;
  }

  /**
   * True if the corners of an end do not lie on whole steps by design: those of a round one, and of
   * a flat one whose sides are no whole steps long, unless it may be a slanted side of the body.
   */
  private boolean isRounded(Shape shape) {
    for (ShapeEnd end : shape.ends()) {
      Section section = end.section();
      boolean flat = section instanceof Section.Rectangular;
      boolean whole = isWhole(section.largestSideM()) && isWhole(section.smallestSideM());
      if (!flat || !whole && shape.form() != Form.UNKNOWN) {
        return true;
      }
    }
    return false;
  }

  private boolean isWhole(double sideM) {
    double stepM = mesh.rounding().writtenM();
    return Math.abs(sideM - stepM * Math.rint(sideM / stepM)) < WHOLE * stepM;
  }

  private Shape measured() {
    EndFinder finder = new EndFinder(mesh, topology);
    Shape shape = measured(finder);
    return finder.standsBack() && !hints.straight() ? Parts.withProblem(shape, STANDS_BACK) : shape;
  }

  private Shape measured(EndFinder finder) {
    List<Found> found = finder.find(hints.straight());
    List<Found> atPorts = atPorts(found);
    if (!hints.straight()
        && !atPorts.isEmpty()
        && atPorts.size() < 3
        && hints.portsM().size() == 3) {
      // the mouth of a branch that a slanted side of its shoe reaches
      List<Found> branched = atPorts(finder.findSlanted(false));
      atPorts = branched.size() == 3 ? branched : atPorts;
    }
    // a cap has an end without a port, which tells its length
    boolean onePort = atPorts.size() == 1 && found.size() == 2;
    boolean allMet = !atPorts.isEmpty() && atPorts.size() == hints.portsM().size() && !onePort;
    List<Found> ends =
        PolygonReading.asCircles(allMet ? atPorts : choose(found), hints.stated().diametersM());
    List<Found> cut = hints.straight() && !allMet ? CutDuct.ends(mesh, topology) : List.of();
    if (!cut.isEmpty()) {
      return straight(cut);
    }
    Prism straight = isSheared(ends) ? null : prism.of(ends);
    if (straight != null) {
      return straight.measure(hints);
    }
    Shape byWalls = areEndsTold(ends) ? null : byWalls(ends);
    if (byWalls != null) {
      return byWalls;
    }
    Shape shape =
        Parts.fromEnds(
            mesh.inWorld(ends), from.how(), from.loops(ends), from.distances(), List.of());
    if (shape.form() == Form.BEND) {
      return wound(bend.between(shape, ends.get(0)), ends);
    }
    if (hints.straight()
        && shape.form() == Form.STRAIGHT
        && finder.isCurvedBetween(ends.get(0), ends.get(1))) {
      return wound(Parts.withProblem(shape, CURVED), ends);
    }
    if (shape.form() == Form.OFFSET) {
      return wound(shape, ends);
    }
    boolean untold = shape.form() == Form.UNKNOWN || shape.form() == Form.CAP;
    Shape bent = untold && areEndsTold(ends) ? bend.byWalls() : null;
    if (bent != null) {
      return bent;
    }
    return !allMet && ends.size() > 2 && areSides(ends) ? untold(ends, finder) : shape;
  }

  /** A segment that is not straight may have more bends than one. */
  private Shape wound(Shape shape, List<Found> ends) {
    return hints.straight() ? WoundPiece.of(shape, ends, mesh, topology, from) : shape;
  }

  /**
   * True for a fitting between parallel ends that are flat or oval. Ducts meet them squarely, so
   * one that leans is an offset; a segment that leans on its ends is a duct cut at a slant.
   */
  private boolean isSheared(List<Found> ends) {
    return !hints.straight()
        && ends.size() == 2
        && !ends.get(0).isRound()
        && !ends.get(1).isRound()
        && ends.get(0).outward().angleTo(ends.get(1).outward().times(-1)) < PARALLEL_RAD;
  }

  /** True if two flat ends share an edge: one of them at least is a side of the body. */
  private static boolean areSides(List<Found> ends) {
    for (int i = 0; i < ends.size(); i++) {
      for (int j = i + 1; j < ends.size(); j++) {
        List<Vec> common = new ArrayList<>(ends.get(i).loop());
        common.retainAll(ends.get(j).loop());
        if (ends.get(i).isRectangular() && ends.get(j).isRectangular() && common.size() > 1) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * What may be ends is kept, for neighbours to tell which of them are: also the mouth of a branch
   * that a slanted side of its shoe reaches.
   */
  private Shape untold(List<Found> ends, EndFinder finder) {
    List<Found> all =
        ends.size() > MOST_WALLS
            ? ends
            : PolygonReading.asCircles(
                finder.findSlanted(hints.straight()), hints.stated().diametersM());
    return new Shape(Form.UNKNOWN, null, null, null, null, mesh.inWorld(all), List.of(SIDES));
  }

  /** A body whose ends do not tell it; a slight bend passes for a straight piece too. */
  private @Nullable Shape byWalls(List<Found> ends) {
    Shape bent = hints.straight() ? null : bend.byWalls();
    if (bent != null) {
      return bent;
    }
    List<Found> straight = WallFit.ends(mesh, topology, !areSquare(ends));
    if (!straight.isEmpty()) {
      return straight(straight);
    }
    return hints.straight() ? bend.byWalls() : null;
  }

  /**
   * Holes in the wall of a straight piece look like ends; a pipe has two, and one that is round,
   * and a flat oval duct two of one size that face each other.
   */
  private boolean areEndsTold(List<Found> ends) {
    return hints.straight()
        ? ends.size() == 2 && (ends.get(0).isRound() || ends.get(1).isRound() || areOvalAlike(ends))
        : !ends.isEmpty();
  }

  private static boolean areOvalAlike(List<Found> ends) {
    Found a = ends.get(0);
    Found b = ends.get(1);
    return !a.isRectangular()
        && !b.isRectangular()
        && CoaxialEnds.onOneAxis(a, b)
        && Ends.same(a.outline().section(), b.outline().section());
  }

  private static boolean areSquare(List<Found> ends) {
    return ends.size() == 2 && ends.get(0).isRectangular() && ends.get(1).isRectangular();
  }

  /** A body without ends that can be told, by its walls. */
  private Shape straight(List<Found> ends) {
    return Parts.fromEnds(mesh.inWorld(ends), from.how(), from.walls(), from.walls(), List.of());
  }

  /** Where ports do not tell: round and open ends before flat sides of the body. */
  private List<Found> choose(List<Found> found) {
    boolean fewEnough = found.size() > 2 && found.size() <= MOST_WALLS;
    List<Found> elbow =
        fewEnough && prism.of(found) == null ? MitredElbow.ends(mesh, topology, found) : List.of();
    if (!elbow.isEmpty()) {
      return elbow;
    }
    List<Found> round = new ArrayList<>(found.size());
    List<Found> open = new ArrayList<>(found.size());
    for (Found end : found) {
      if (!end.isRectangular()) {
        round.add(end);
      }
      if (!end.isRectangular() || end.isMouth()) {
        open.add(end);
      }
    }
    if (round.size() >= 2) {
      return round;
    }
    // a segment has two; any third is a hole in its wall
    boolean areTold = open.size() == 2 || (open.size() > 2 && !hints.straight());
    return areTold && prism.of(found) == null ? open : found;
  }

  /** The end at each port that has one. */
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
  public static boolean isAt(Point portM, ShapeEnd end) {
    return end.centreM().distanceM(portM) < reachM(end.section().largestSideM() / 2);
  }
}
