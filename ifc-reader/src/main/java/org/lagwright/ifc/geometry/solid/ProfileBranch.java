package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.OutlineFit;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;

/**
 * A tee or cross of a rectangular duct drawn as its side view: straight walls that meet in reflex
 * corners where a branch leaves, extruded by the side that all ends share. A mouth is a side whose
 * two walls both run on from outside corners; what turns by less there is the wall of a reducer.
 */
final class ProfileBranch {

  /** Corners of a T; a cross has twelve. */
  private static final int CORNERS_OF_A_TEE = 8;

  private static final int CORNERS_OF_A_CROSS = 12;

  /** Sine of the least turn from a wall to its mouth, 44 degrees; a shoe is slanted by 45. */
  private static final double LEAST_TURN = Math.sin(Math.toRadians(44));

  private final List<Vec> corners;
  private final Vec axis;
  private final boolean[] reflex;

  private ProfileBranch(List<Vec> corners, Vec axis) {
    this.corners = corners;
    this.axis = axis;
    this.reflex = new boolean[corners.size()];
    Vec normal = OutlineFit.areaNormal(corners, corners.get(0));
    for (int i = 0; i < reflex.length; i++) {
      Vec before = corner(i).minus(corner(i - 1));
      Vec after = corner(i + 1).minus(corner(i));
      reflex[i] = before.cross(after).dot(normal) < 0;
    }
  }

  /** The branched piece, null if the profile is not one. */
  static @Nullable Shape measure(Path profile, Vec axis, Evidence sides, Evidence depth) {
    List<Vec> corners = isOfLines(profile) ? profile.points() : List.of();
    if (corners.size() != CORNERS_OF_A_TEE && corners.size() != CORNERS_OF_A_CROSS) {
      return null;
    }
    List<ShapeEnd> ends = new ProfileBranch(corners, axis).ends();
    boolean tee = corners.size() == CORNERS_OF_A_TEE && ends.size() == 3;
    boolean cross = corners.size() == CORNERS_OF_A_CROSS && ends.size() == 4;
    Evidence size =
        new Evidence(
            sides.step(), sides.path(), sides.raw() + " x " + depth.path() + " " + depth.raw());
    return tee || cross ? Parts.fromEnds(ends, How.SOLID, size, sides, List.of()) : null;
  }

  private static boolean isOfLines(Path profile) {
    for (Leg leg : profile.legs()) {
      if (!(leg instanceof Leg.Line)) {
        return false;
      }
    }
    return true;
  }

  private Vec corner(int i) {
    return corners.get(Math.floorMod(i, corners.size()));
  }

  private boolean isReflex(int i) {
    return reflex[Math.floorMod(i, reflex.length)];
  }

  /** True for an outside corner that does not merely bend a wall. */
  private boolean turnsInto(int i) {
    Vec before = corner(i).minus(corner(i - 1)).unit();
    Vec after = corner(i + 1).minus(corner(i)).unit();
    return !isReflex(i) && (before.dot(after) < 0 || before.cross(after).norm() > LEAST_TURN);
  }

  /** Sides between two outside corners, next to at least one inside corner: the mouths. */
  private List<ShapeEnd> ends() {
    List<ShapeEnd> ends = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      boolean outside = turnsInto(i) && turnsInto(i + 1);
      if (outside && (isReflex(i - 1) || isReflex(i + 2))) {
        ShapeEnd end = end(corner(i), corner(i + 1));
        if (end != null) {
          ends.add(end);
        }
      }
    }
    return ends;
  }

  private @Nullable ShapeEnd end(Vec from, Vec to) {
    Vec middle = from.plus(to).times(0.5);
    Vec outward = to.minus(from).cross(OutlineFit.areaNormal(corners, corners.get(0))).unit();
    Vec half = to.minus(from).times(0.5);
    return new Outline(
            Outline.Kind.RECTANGULAR, middle.plus(axis.times(0.5)), half, axis.times(0.5))
        .end(outward);
  }
}
