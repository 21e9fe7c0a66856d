package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Point;

/**
 * A tee, or a valve with its motor, that is drawn as two straight bodies, one starting inside the
 * other or on its surface. Its free ends can be told without meshing the two.
 */
public final class BranchedRun {

  /** Cosine of the least angle between run and branch: 85 degrees, as for a tee. */
  private static final double SQUARE = Math.cos(Math.toRadians(85));

  /** By the larger side of their sections, falling. */
  public static final Comparator<ShapeEnd> LARGEST_FIRST = new LargestFirst();

  private BranchedRun() {}

  /**
   * What two bodies make: a tee, or a straight piece if only the ends of the run have ports.
   *
   * @param step the record that evidence points to
   * @return null if they are no such bodies
   */
  public static @Nullable Shape of(List<Shape> pieces, Shape run, long step, ShapeHints hints) {
    Shape branch = pieces.get(pieces.get(0) == run ? 1 : 0);
    if (pieces.size() != 2 || !isStraight(run) || !isStraight(branch)) {
      return null;
    }
    // a long branch is larger than a short run
    boolean swapped = freeEnd(run, branch) == null;
    Shape through = swapped ? branch : run;
    ShapeEnd free = swapped ? freeEnd(branch, run) : freeEnd(run, branch);
    if (free == null) {
      return null;
    }
    List<ShapeEnd> ends = new ArrayList<>(through.ends());
    ends.add(pieces.get(0) == through ? 2 : 0, free);
    ends.sort(LARGEST_FIRST);
    String body = "body of " + pieces.size() + " items";
    Evidence evidence = new Evidence(step, body, "the ends that stay free");
    Shape whole = Shape.ofEnds(atPorts(ends, hints.portsM()), How.SOLID, evidence);
    return whole.form() == Form.TEE || whole.form() == Form.STRAIGHT ? whole : null;
  }

  /** Ends of unequal size are sorted so, as those of meshes are. */
  private static final class LargestFirst implements Comparator<ShapeEnd> {
    @Override
    public int compare(ShapeEnd a, ShapeEnd b) {
      return Double.compare(-a.section().largestSideM(), -b.section().largestSideM());
    }
  }

  private static boolean isStraight(Shape piece) {
    return piece.form() == Form.STRAIGHT
        && piece.section() != null
        && piece.section().how() == How.SOLID
        && piece.ends().size() == 2
        && piece.ends().get(0).section().equals(piece.ends().get(1).section());
  }

  /** The end of the branch outside the run, if the other one lies inside and it fits between. */
  private static @Nullable ShapeEnd freeEnd(Shape run, Shape branch) {
    Vec from = run.ends().get(0).centre();
    Vec along = run.ends().get(1).out();
    double lengthM = run.ends().get(1).centre().minus(from).dot(along);
    double branchM = branch.ends().get(0).halfM(along);
    for (int i = 0; i < 2; i++) {
      ShapeEnd inner = branch.ends().get(i);
      ShapeEnd outer = branch.ends().get(1 - i);
      Vec toInner = inner.centre().minus(from);
      Vec toOuter = outer.centre().minus(from);
      double at = toInner.dot(along);
      double leastM = branchM + Vec.WELD_M;
      boolean between = at > leastM && at < lengthM - leastM;
      boolean square = Math.abs(outer.out().dot(along)) < SQUARE;
      boolean starts = run.ends().get(1).contains(toInner);
      boolean leaves = !run.ends().get(1).contains(toOuter) && toOuter.dot(outer.out()) > 0;
      if (between && square && starts && leaves) {
        return outer;
      }
    }
    return null;
  }

  /** The end nearest to each port; all of them unless each port has one of its own. */
  public static List<ShapeEnd> atPorts(List<ShapeEnd> ends, List<Point> portsM) {
    List<ShapeEnd> left = new ArrayList<>(ends);
    List<ShapeEnd> chosen = new ArrayList<>();
    for (Point portM : portsM) {
      int nearest = -1;
      double leastM = Double.MAX_VALUE;
      for (int i = 0; i < left.size(); i++) {
        double awayM = left.get(i).centreM().distanceM(portM);
        if (awayM < leastM && MeshMeasurer.isAt(portM, left.get(i))) {
          nearest = i;
          leastM = awayM;
        }
      }
      if (nearest >= 0) {
        chosen.add(left.remove(nearest));
      }
    }
    return chosen.isEmpty() || chosen.size() < portsM.size() ? ends : chosen;
  }
}
