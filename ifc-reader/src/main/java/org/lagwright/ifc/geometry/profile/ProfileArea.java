package org.lagwright.ifc.geometry.profile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;

/**
 * A profile's area as loops of points in its own plane: the outer one counter-clockwise, the holes
 * clockwise. Metres.
 */
public record ProfileArea(List<Vec> outer, List<List<Vec>> holes) {

  /** A region whose loops may be written either way round. */
  public static ProfileArea of(List<Vec> outer, List<List<Vec>> holes) {
    List<List<Vec>> turned = new ArrayList<>();
    for (List<Vec> hole : holes) {
      turned.add(wound(hole, false));
    }
    return new ProfileArea(wound(outer, true), List.copyOf(turned));
  }

  private static List<Vec> wound(List<Vec> loop, boolean counterClockwise) {
    boolean is = OutlineFit.areaNormal(loop, Vec.ZERO).z() > 0;
    List<Vec> turned = new ArrayList<>(loop);
    if (is != counterClockwise) {
      Collections.reverse(turned);
    }
    return List.copyOf(turned);
  }

  ProfileArea in(Frame frame) {
    return of(
        outer.stream().map(frame::point).toList(),
        holes.stream().map(hole -> hole.stream().map(frame::point).toList()).toList());
  }

  /** The outer loop and the holes. */
  public List<List<Vec>> loops() {
    List<List<Vec>> loops = new ArrayList<>();
    loops.add(outer);
    loops.addAll(holes);
    return loops;
  }
}
