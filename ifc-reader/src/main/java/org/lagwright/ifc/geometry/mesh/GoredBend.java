package org.lagwright.ifc.geometry.mesh;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.BendLegs;

/**
 * A bend of straight pieces that are cut at a slant and joined. All joints turn by the same angle,
 * so the pieces touch an arc, those at the ends where it begins and stops. Their corners lie on the
 * pieces and tell no arc: of three pieces all lie on the straight legs. What tells is that each
 * wall runs along a piece.
 */
final class GoredBend {

  /** More pieces are as good as an arc. */
  private static final int MOST_PIECES = 8;

  /** Sine by which a wall may lean along its piece. */
  private static final double LEAN = 0.01;

  /** Share of the radius by which corners may lie outside of their piece. */
  private static final double OUTSIDE = 0.01;

  /** Walls whose corners lie this far out, over the radius, are no bore. */
  private static final double OUTER = 0.97;

  /** Share of the walls in faces so small that rounded corners tilt them. */
  private static final double TILTED = 0.02;

  /** Cosine of the angle up to which a wall is level with the plane of the bend. */
  private static final double CHEEK = 0.9;

  private final Mesh mesh;
  private final MeshTopology topology;
  private final BendLegs legs;
  private final double radiusM;

  private GoredBend(Mesh mesh, MeshTopology topology, BendLegs legs, double radiusM) {
    this.mesh = mesh;
    this.topology = topology;
    this.legs = legs;
    this.radiusM = radiusM;
  }

  /**
   * The radius of the arc and the length along it; null if the body is no bend of pieces. Of two
   * pieces the radius is NaN and the length that of both legs.
   *
   * @param legs in local coordinates of the mesh
   * @param radiusM of the corners of its round ends about their centres
   */
  static BendFit.@Nullable Fit of(Mesh mesh, MeshTopology topology, BendLegs legs, double radiusM) {
    return new GoredBend(mesh, topology, legs, radiusM).find();
  }

  private BendFit.@Nullable Fit find() {
    Vec last = lastOfFirstPiece();
    if (last == null) {
      return null;
    }
    if (isMadeOf(new Vec[] {legs.at(legs.legA()), legs.corner(), legs.atB(legs.legB())})) {
      return new BendFit.Fit(Double.NaN, legs.legA() + legs.legB());
    }
    for (int pieces = 3; pieces <= MOST_PIECES; pieces++) {
      double toldM = arcRadiusM(last, pieces);
      double arcM = Math.min(toldM, legs.largestRadiusM());
      boolean possible = arcM > radiusM && toldM - arcM < OUTSIDE * arcM;
      if (possible && isMadeOf(centreLine(arcM, pieces))) {
        return new BendFit.Fit(arcM, legs.lengthM(arcM));
      }
    }
    return null;
  }

  /** The corner nearest to the other leg of those whose walls run along the first leg. */
  private @Nullable Vec lastOfFirstPiece() {
    Vec last = null;
    Vec[] leg = {legs.at(legs.legA()), legs.corner()};
    for (int face = 0; face < mesh.faces().size(); face++) {
      if (!isCheek(face) && runsAlong(face, leg[0], leg[1])) {
        for (int vertex : mesh.faces().get(face).loops().get(0)) {
          Vec corner = mesh.vertices().get(vertex);
          boolean nearer = last == null || corner.minus(last).dot(legs.toA()) < 0;
          last = nearer ? corner : last;
        }
      }
    }
    return last;
  }

  /** Level with the plane of the bend, walls run along every piece. */
  private boolean isCheek(int face) {
    Vec axis = legs.toA().cross(legs.toB()).unit();
    return Math.abs(topology.normal(face).dot(axis)) > CHEEK;
  }

  /**
   * The joint halves the angle between its pieces, so each of its corners tells where it lies: a
   * joint in the distance {@code m} from the corner of the legs belongs to the arc of the radius
   * {@code m / (tan(turn / 2) - tan(joint / 2))}.
   */
  private double arcRadiusM(Vec onJoint, int pieces) {
    double slope = Math.tan(legs.turn() / (pieces - 1) / 2);
    Vec off = onJoint.minus(legs.corner());
    Vec inwards = legs.toB().across(legs.toA()).unit();
    double jointM = off.dot(legs.toA()) - off.dot(inwards) * slope;
    return jointM / (Math.tan(legs.turn() / 2) - slope);
  }

  private Vec[] centreLine(double arcM, int pieces) {
    Vec[] line = new Vec[pieces + 1];
    double joint = legs.turn() / (pieces - 1);
    Vec start = legs.at(legs.tangentM(arcM));
    Vec centre = legs.arcCentre(arcM);
    Vec out = start.minus(centre).unit();
    line[0] = legs.at(legs.legA());
    for (int k = 1; k < pieces; k++) {
      double angle = (k - 0.5) * joint;
      Vec radius = out.times(Math.cos(angle)).minus(legs.toA().times(Math.sin(angle)));
      line[k] = centre.plus(radius.times(arcM / Math.cos(joint / 2)));
    }
    line[pieces] = legs.atB(legs.legB());
    return line;
  }

  /**
   * True if all faces between the ends are walls of a piece, most of them outer ones, and each
   * piece has some: an arc between legs turns by half a step first, so that the pieces of twice as
   * many joints are there, and others between them are not.
   */
  private boolean isMadeOf(Vec[] line) {
    boolean[] walled = new boolean[line.length - 1];
    double outerM2 = 0;
    double wholeM2 = 0;
    double leaningM2 = 0;
    for (int face = 0; face < mesh.faces().size(); face++) {
      double areaM2 = topology.area(face);
      if (areaM2 > 0 && !isEnd(face) && !isOnJoint(face, line)) {
        int piece = pieceOf(face, line);
        if (piece < 0 && mesh.stepM() == 0) {
          return false;
        }
        if (piece >= 0 && !isCheek(face)) {
          walled[piece] = true;
        }
        leaningM2 += piece < 0 ? areaM2 : 0;
        wholeM2 += areaM2;
        outerM2 += piece >= 0 && isOuter(face, line[piece], line[piece + 1]) ? areaM2 : 0;
      }
    }
    return areAll(walled) && outerM2 > wholeM2 / 2 && leaningM2 <= TILTED * wholeM2;
  }

  private static boolean areAll(boolean[] walled) {
    for (boolean piece : walled) {
      if (!piece) {
        return false;
      }
    }
    return true;
  }

  private boolean isEnd(int face) {
    Vec normal = topology.normal(face);
    Vec off = mesh.vertices().get(mesh.faces().get(face).loops().get(0)[0]).minus(legs.corner());
    return normal.cross(legs.toA()).norm() < LEAN
            && Math.abs(off.dot(legs.toA()) - legs.legA()) < OUTSIDE * radiusM
        || normal.cross(legs.toB()).norm() < LEAN
            && Math.abs(off.dot(legs.toB()) - legs.legB()) < OUTSIDE * radiusM;
  }

  /** True of an end of a piece, where each of them is a body of its own, or of a sliver there. */
  private boolean isOnJoint(int face, Vec[] line) {
    for (int joint = 1; joint + 1 < line.length; joint++) {
      Vec to = line[joint].minus(line[joint - 1]).unit();
      Vec across = to.plus(line[joint + 1].minus(line[joint]).unit()).unit();
      boolean within = true;
      for (int vertex : mesh.faces().get(face).loops().get(0)) {
        Vec off = mesh.vertices().get(vertex).minus(line[joint]);
        within &= Math.abs(off.dot(across)) < OUTSIDE * radiusM;
      }
      if (within) {
        return true;
      }
    }
    return false;
  }

  /** Number of the piece that a wall runs along, -1 if there is none. */
  private int pieceOf(int face, Vec[] line) {
    for (int piece = 0; piece + 1 < line.length; piece++) {
      if (runsAlong(face, line[piece], line[piece + 1])) {
        return piece;
      }
    }
    return -1;
  }

  private boolean runsAlong(int face, Vec from, Vec to) {
    Vec along = to.minus(from).unit();
    if (!mesh.faces().get(face).plane() || Math.abs(topology.normal(face).dot(along)) > LEAN) {
      return false;
    }
    for (int vertex : mesh.faces().get(face).loops().get(0)) {
      Vec off = mesh.vertices().get(vertex).minus(from);
      if (off.across(along).norm() > (1 + OUTSIDE) * radiusM) {
        return false;
      }
    }
    return true;
  }

  private boolean isOuter(int face, Vec from, Vec to) {
    Vec along = to.minus(from).unit();
    for (int vertex : mesh.faces().get(face).loops().get(0)) {
      if (mesh.vertices().get(vertex).minus(from).across(along).norm() < OUTER * radiusM) {
        return false;
      }
    }
    return true;
  }
}
