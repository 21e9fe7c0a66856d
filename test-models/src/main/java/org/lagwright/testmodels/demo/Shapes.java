package org.lagwright.testmodels.demo;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.Faces;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.Vec;

/** The solids of fittings and fixtures, each in a frame at its start with z along the run. */
public final class Shapes {

  private Shapes() {}

  /** From the centre of a tee to each end of its run, in millimetres. */
  public static double teeHalfRun(Size run, Size branch) {
    return run instanceof Size.Rectangular ? branch.largest() / 2 + 100 : Math.ceil(run.largest());
  }

  /** From the centre of a tee to the end of its branch, in millimetres. */
  public static double teeBranch(Size run, Size branch) {
    return run instanceof Size.Rectangular ? run.largest() / 2 + 100 : teeHalfRun(run, branch);
  }

  /** A tee with its branch along x. Pipes in two styles, as different programs draw them. */
  public static List<Body.Placed> tee(Size run, Size branch, boolean asUnion) {
    if (run instanceof Size.Rectangular wide) {
      return List.of(rectangularTee(wide, (Size.Rectangular) branch));
    }
    double half = teeHalfRun(run, branch);
    Body.Placed straight = new Body.Extrusion(run.outer(), 2 * half).inPlace();
    Frame side = new Frame(new Vec(0, 0, half), Vec.EAST, Vec.NORTH);
    Body.Placed stub =
        new Body.Placed(side, new Body.Extrusion(branch.outer(), teeBranch(run, branch)));
    return asUnion ? List.of(new Body.Union(straight, stub).inPlace()) : List.of(straight, stub);
  }

  /** The T seen from above, extruded upwards by the height both arms share. */
  private static Body.Placed rectangularTee(Size.Rectangular run, Size.Rectangular branch) {
    if (run.height() != branch.height()) {
      throw new IllegalArgumentException("both arms of a T must be equally high");
    }
    double half = teeHalfRun(run, branch);
    double side = run.width() / 2;
    double end = teeBranch(run, branch);
    double near = half - branch.width() / 2;
    double far = half + branch.width() / 2;
    double[][] outline = {
      {-side, 0}, {-side, 2 * half}, {side, 2 * half}, {side, far},
      {end, far}, {end, near}, {side, near}, {side, 0}
    };
    List<Vec> points = new ArrayList<>();
    for (double[] corner : outline) {
      // the plane of the profile has its second axis against the run
      points.add(new Vec(corner[0], -corner[1], 0));
    }
    Frame upright = new Frame(new Vec(0, -run.height() / 2, 0), Vec.NORTH, Vec.EAST);
    return new Body.Placed(upright, new Body.Extrusion(new Profile.Polygon(points), run.height()));
  }

  /** From one size to another, both centred. */
  public static Body reducer(Size from, Size to, double depthMm) {
    if (from instanceof Size.Rectangular wide && to instanceof Size.Round round) {
      return Faces.rectangleToRound(wide.width(), wide.height(), round.diameter(), depthMm);
    }
    return new Body.Taper(from.outer(), to.outer(), depthMm);
  }

  /** A body along the run with a spindle along x. */
  public static List<Body.Placed> valve(Size pipe, double lengthMm) {
    double diameter = 1.4 * pipe.largest();
    Body.Placed trunk = new Body.Extrusion(new Profile.Circle(diameter), lengthMm).inPlace();
    Frame side = new Frame(new Vec(0, 0, lengthMm / 2), Vec.EAST, Vec.NORTH);
    Body.Placed spindle =
        new Body.Placed(
            side, new Body.Extrusion(new Profile.Circle(0.4 * pipe.largest()), 2 * diameter));
    return List.of(trunk, spindle);
  }

  /** One cylinder around the run, thicker than the pipe or duct. */
  static List<Body.Placed> drum(Size pipe, double factor, double lengthMm) {
    Profile around = new Profile.Circle(factor * pipe.largest());
    return List.of(new Body.Extrusion(around, lengthMm).inPlace());
  }
}
