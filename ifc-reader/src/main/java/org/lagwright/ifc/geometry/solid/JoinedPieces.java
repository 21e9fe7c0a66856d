package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.BendFit;
import org.lagwright.ifc.geometry.mesh.BranchedRun;
import org.lagwright.ifc.geometry.mesh.MeshMeasurer;
import org.lagwright.ifc.geometry.mesh.Steps;
import org.lagwright.ifc.geometry.shape.BendLegs;
import org.lagwright.ifc.geometry.shape.Prism;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * A fitting that is drawn as a few straight bodies which meet: an elbow, a tee or a cross of boxes
 * or pipes, a reducer in steps. What no other piece closes is an end of the whole. Bodies that run
 * inside one another along one axis are flanges and sockets, and not told here.
 */
public final class JoinedPieces {

  /** Fittings that are drawn so have few pieces. */
  private static final int MOST = 4;

  /** Sine of the angle up to which two pieces run along one another. */
  private static final double PARALLEL = 0.01;

  /** Sine of the angle, less than which a piece leans on another: 5 degrees. */
  private static final double SQUARE = Math.sin(Math.toRadians(5));

  private static final String ONE_CORNER = "pieces meet in one corner, a radius is not known";

  private static final String SIDES = "pieces of the body can be joined in more than one way";

  private final List<Shape> pieces;

  /** True if they run as they were extruded. */
  private final boolean asDrawn;

  private JoinedPieces(List<Shape> pieces, boolean asDrawn) {
    this.pieces = pieces;
    this.asDrawn = asDrawn;
  }

  /** True for a few straight pieces that are no straight segment, nor round about one axis. */
  public static boolean mayBe(List<Shape> pieces, ShapeHints hints) {
    return !hints.straight()
        && pieces.size() <= MOST
        && CoaxialBody.mayBe(pieces)
        && !areTurned(pieces);
  }

  /** True for flanges, couplings and reducers, which are round about one axis. */
  private static boolean areTurned(List<Shape> pieces) {
    Shape first = pieces.get(0);
    for (Shape piece : pieces) {
      Vec off = piece.ends().get(0).centre().minus(first.ends().get(0).centre());
      if (!(piece.ends().get(0).section() instanceof Section.Round)
          || !areParallel(piece, first)
          || off.across(along(first)).norm() > Vec.WELD_M) {
        return false;
      }
    }
    return true;
  }

  /**
   * What the pieces make. Boxes of faces, and boxes that meet in no way as they were extruded, may
   * run along any of their edges unless they have a bore; if they meet in more than one way, their
   * ends are not told.
   *
   * @param step the record that evidence of the whole points to
   * @return null if they make no fitting
   */
  public static @Nullable Shape of(List<CoaxialBody.Part> parts, long step, ShapeHints hints) {
    List<Shape> pieces = new ArrayList<>(parts.size());
    boolean solid = true;
    for (CoaxialBody.Part part : parts) {
      pieces.add(part.shape());
      solid &= howOf(part.shape()) == How.SOLID;
    }
    Shape asDrawn = solid ? new JoinedPieces(pieces, true).whole(step, hints) : null;
    if (asDrawn != null) {
      return asDrawn;
    }
    List<Shape> wholes = new ArrayList<>(2);
    read(parts, new ArrayList<>(), wholes, step, hints);
    if (wholes.size() == 1 || !(wholes.isEmpty() || hints.portsM().isEmpty())) {
      // a box that sticks out at both sides is as likely a motor
      return wholes.get(0).form() == Form.CROSS ? null : wholes.get(0);
    }
    return wholes.isEmpty() || !mayBeTold(pieces) ? null : untold(wholes);
  }

  /** True for boxes, of which nothing tells how they run; of other bodies the whole may. */
  private static boolean mayBeTold(List<Shape> pieces) {
    int boxes = 0;
    for (Shape piece : pieces) {
      boxes += Prism.mayLieOtherwise(piece) ? 1 : 0;
    }
    return pieces.size() == 2 || boxes == pieces.size();
  }

  /** Collects what the pieces make, each read along each of the edges that it may run along. */
  private static void read(
      List<CoaxialBody.Part> parts,
      List<Shape> chosen,
      List<Shape> wholes,
      long step,
      ShapeHints hints) {
    if (chosen.size() == parts.size()) {
      Shape whole = new JoinedPieces(List.copyOf(chosen), false).whole(step, hints);
      if (whole != null && isAtAll(hints.portsM(), whole.ends())) {
        wholes.add(whole);
      }
      return;
    }
    CoaxialBody.Part part = parts.get(chosen.size());
    List<Shape> readings = new ArrayList<>(3);
    readings.add(part.shape());
    readings.addAll(part.bore() == null ? Prism.otherReadings(part.shape()) : List.of());
    for (Shape reading : readings) {
      chosen.add(reading);
      read(parts, chosen, wholes, step, hints);
      chosen.remove(chosen.size() - 1);
    }
  }

  private static boolean isAtAll(List<Point> portsM, List<ShapeEnd> ends) {
    for (Point portM : portsM) {
      boolean met = false;
      for (ShapeEnd end : ends) {
        met |= MeshMeasurer.isAt(portM, end);
      }
      if (!met) {
        return false;
      }
    }
    return true;
  }

  /** What may be ends is kept, for neighbours to tell which of them are. */
  private static Shape untold(List<Shape> wholes) {
    List<ShapeEnd> ends = new ArrayList<>();
    for (Shape whole : wholes) {
      for (ShapeEnd end : whole.ends()) {
        if (!end.isAmong(ends, Vec.WELD_M)) {
          ends.add(end);
        }
      }
    }
    return new Shape(Form.UNKNOWN, null, null, null, null, ends, List.of(SIDES));
  }

  private static How howOf(Shape piece) {
    Measured<Section> section = piece.section();
    return section == null ? How.MESH : section.how();
  }

  private @Nullable Shape whole(long step, ShapeHints hints) {
    List<ShapeEnd> free = free();
    if (free == null || free.size() < 2 || free.size() > MOST) {
      return null;
    }
    free.sort(BranchedRun.LARGEST_FIRST);
    How how = How.SOLID;
    for (Shape piece : pieces) {
      how = howOf(piece) == How.SOLID ? how : How.MESH;
    }
    Evidence evidence =
        new Evidence(step, "body of " + pieces.size() + " items", "the ends that stay free");
    Shape whole = Shape.ofEnds(BranchedRun.atPorts(free, hints.portsM()), how, evidence);
    return switch (whole.form()) {
      case BEND -> elbow(whole, how, evidence);
      case TEE, LATERAL, WYE, CROSS, REDUCER, TRANSITION, OFFSET -> whole;
      default -> null;
    };
  }

  /** Straight pieces make a corner, and no arc. */
  private Shape elbow(Shape bend, How how, Evidence evidence) {
    BendLegs legs = BendFit.legs(bend.ends().get(0), bend.ends().get(1));
    boolean oneCorner = pieces.size() == 2 && legs.leastM() > 0;
    Measured<Double> lengthM =
        oneCorner ? Measured.of(legs.legA() + legs.legB(), how, evidence) : null;
    return new Shape(
        Form.BEND,
        bend.section(),
        lengthM,
        bend.angleDeg(),
        null,
        bend.ends(),
        List.of(ONE_CORNER));
  }

  /**
   * The ends that no other piece closes; null if some piece does not meet the others from outside.
   */
  private @Nullable List<ShapeEnd> free() {
    boolean[] met = new boolean[pieces.size()];
    List<ShapeEnd> free = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      List<ShapeEnd> open = new ArrayList<>(pieces.get(i).ends());
      for (int j = 0; j < pieces.size(); j++) {
        if (i == j) {
          continue;
        }
        List<ShapeEnd> closed = closed(pieces.get(i), pieces.get(j));
        boolean meet = !closed.isEmpty();
        if (runAlongEachOther(pieces.get(i), pieces.get(j))
            || endsInside(pieces.get(i), pieces.get(j))
            || (meet && isFlange(pieces.get(i), pieces.get(j)))) {
          return null;
        }
        open.removeAll(closed);
        met[i] |= meet;
        met[j] |= meet;
      }
      free.addAll(open);
    }
    for (boolean piece : met) {
      if (!piece) {
        return null;
      }
    }
    return free;
  }

  private static boolean areParallel(Shape a, Shape b) {
    return along(a).cross(along(b)).norm() < PARALLEL;
  }

  private static Vec along(Shape piece) {
    return piece.ends().get(1).out();
  }

  /** How far from its start a place lies along a piece. */
  private static double atM(Shape piece, Vec place) {
    return place.minus(piece.ends().get(0).centre()).dot(along(piece));
  }

  private static boolean runAlongEachOther(Shape a, Shape b) {
    if (!areParallel(a, b)) {
      return false;
    }
    double oneM = atM(a, b.ends().get(0).centre());
    double otherM = atM(a, b.ends().get(1).centre());
    return Math.min(oneM, otherM) < atM(a, a.ends().get(1).centre()) - Vec.WELD_M
        && Math.max(oneM, otherM) > Vec.WELD_M;
  }

  /**
   * True for a box both of whose ends would lie inside another piece: it sticks out of that with
   * its sides, so that these are its ends, as those of a duct in a wider frame.
   */
  private boolean endsInside(Shape piece, Shape other) {
    return !asDrawn
        && !areParallel(piece, other)
        && isIn(other, piece.ends().get(0).centre())
        && isIn(other, piece.ends().get(1).centre());
  }

  /** True of a flat piece that is wider than the one on it, which runs the same way. */
  private static boolean isFlange(Shape piece, Shape on) {
    Section section = piece.ends().get(0).section();
    double lengthM = atM(piece, piece.ends().get(1).centre());
    return areParallel(piece, on)
        && lengthM < Steps.FLAT * section.largestSideM()
        && section.perimeterM() > on.ends().get(0).section().perimeterM();
  }

  /** The ends of a piece that another one closes. */
  private List<ShapeEnd> closed(Shape piece, Shape by) {
    List<ShapeEnd> closed = new ArrayList<>(2);
    int flush = 0;
    boolean parallel = areParallel(piece, by);
    for (ShapeEnd end : piece.ends()) {
      boolean isFlush = !parallel && isFlush(piece, end, by);
      flush += isFlush ? 1 : 0;
      if (isFlush || (parallel ? isStep(end, by) : isIn(by, end.centre()))) {
        closed.add(end);
      }
    }
    // a run as short as its branch is wide is flush with it at both ends
    return flush == 2 && asDrawn ? List.of() : closed;
  }

  /** True if the end lies on one of the other piece, the smaller of the two within the larger. */
  private static boolean isStep(ShapeEnd end, Shape by) {
    for (ShapeEnd other : by.ends()) {
      Vec between = other.centre().minus(end.centre());
      boolean larger = end.section().perimeterM() >= other.section().perimeterM();
      if (end.out().dot(other.out()) < 0
          && Math.abs(between.dot(end.out())) < Vec.WELD_M
          && (larger ? end : other).contains(between)) {
        return true;
      }
    }
    return false;
  }

  /** True of a place inside a piece, or on its surface. */
  private static boolean isIn(Shape piece, Vec place) {
    double at = atM(piece, place);
    return at > -Vec.WELD_M
        && at < atM(piece, piece.ends().get(1).centre()) + Vec.WELD_M
        && piece.ends().get(1).contains(place.minus(piece.ends().get(0).centre()));
  }

  /** True if a piece that starts at right angles on this one reaches to its end or beyond. */
  private static boolean isFlush(Shape piece, ShapeEnd end, Shape by) {
    Vec along = along(piece);
    for (ShapeEnd start : by.ends()) {
      double beforeM = Math.abs(start.centre().minus(end.centre()).dot(along));
      if (Math.abs(start.out().dot(along)) < SQUARE
          && isIn(piece, start.centre())
          && beforeM < start.halfM(along) + Vec.WELD_M) {
        return true;
      }
    }
    return false;
  }
}
