package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.Profile;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;

/**
 * A body that is turned all the way round its own axis: a rectangle makes a cylinder or a tube, a
 * polygon a reducer. It ends where the profile stands square on the axis.
 */
final class TurnedBody {

  private final Vec origin;
  private final Vec along;
  private final List<Vec> corners;

  private TurnedBody(Vec origin, Vec along, List<Vec> corners) {
    this.origin = origin;
    this.along = along;
    this.corners = corners;
  }

  /**
   * Measures the body.
   *
   * @param frame frame of the profile and its axis
   * @param length where the length stands
   * @return null if it has no two flat ends, or is a ring and no tube
   */
  static @Nullable Shape of(Profile profile, Frame axis, Frame frame, Evidence length) {
    List<Vec> corners = new ArrayList<>();
    for (Vec corner : corners(profile)) {
      corners.add(frame.point(corner));
    }
    Vec along = frame.vector(Vec.of(axis.ez())).unit();
    TurnedBody body = new TurnedBody(frame.point(Vec.of(axis.origin())), along, corners);
    return body.measure(profile.evidence(), length);
  }

  private static List<Vec> corners(Profile profile) {
    if (profile.path() != null) {
      return profile.path().points();
    }
    Outline outline = profile.outline();
    return outline != null && outline.kind() == Outline.Kind.RECTANGULAR
        ? outline.corners()
        : List.of();
  }

  private @Nullable Shape measure(Evidence section, Evidence length) {
    double fromM = Double.MAX_VALUE;
    double toM = -Double.MAX_VALUE;
    double boreM = Double.MAX_VALUE;
    double farM = 0;
    for (Vec corner : corners) {
      fromM = Math.min(fromM, alongM(corner));
      toM = Math.max(toM, alongM(corner));
      boreM = Math.min(boreM, offM(corner));
      farM = Math.max(farM, offM(corner));
    }
    boolean ring = boreM > Vec.WELD_M && toM - fromM < farM - boreM;
    double startM = endM(fromM);
    double finishM = endM(toM);
    if (ring || !(startM > 0) || !(finishM > 0)) {
      return null;
    }
    Outline start = Outline.circle(origin.plus(along.times(fromM)), along, startM);
    Outline finish = Outline.circle(origin.plus(along.times(toM)), along, finishM);
    return Parts.fromEnds(
        Ends.known(start.end(along.times(-1)), finish.end(along)),
        How.SOLID,
        section,
        length,
        List.of());
  }

  /** Outer radius of the flat end at a place along the axis, 0 if there is no flat one. */
  private double endM(double atM) {
    double nearM = Double.MAX_VALUE;
    double farM = 0;
    for (Vec corner : corners) {
      if (Math.abs(alongM(corner) - atM) < Vec.WELD_M) {
        nearM = Math.min(nearM, offM(corner));
        farM = Math.max(farM, offM(corner));
      }
    }
    return farM - nearM > Vec.WELD_M ? farM : 0;
  }

  private double alongM(Vec corner) {
    return corner.minus(origin).dot(along);
  }

  private double offM(Vec corner) {
    return corner.minus(origin).across(along).norm();
  }
}
