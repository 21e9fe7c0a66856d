package org.lagwright.ifc.geometry.mesh;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.OutlineFit;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Prism;
import org.lagwright.ifc.geometry.surface.Facet;
import org.lagwright.ifc.model.Section;

/** A mesh that is an outline moved along an axis: a box, or a body cut at a slant. */
final class MeshPrism {

  /** Walls this parallel to the axis (sine) make a body cut at a slant, not a bend. */
  private static final double WALL_PARALLEL = 0.01;

  /** Rounded corners lie this many steps off the plane of their end, as it is fitted. */
  private static final double STEPS_OFF = 3;

  /** Share of the surface in faces so small that rounded corners tilt them. */
  private static final double TILTED = 0.01;

  /** Corners of circles are as far from the middle but for this share. */
  private static final double UNEVEN = 0.005;

  /**
   * The lowest ducts, in floors, are about 50 mm high; less is a plate. Common practice, no source.
   */
  private static final double LOWEST_DUCT_M = 0.03;

  /** What a box holds, by one pair of its sides and by another, is one but for rounded corners. */
  private static final double SAME_VOLUME = 0.05;

  /** Sides of a plate over its thickness, at least. */
  private static final double THIN = 3;

  /** Ends this square to the line between them are those of a straight body or a reducer. */
  private static final double SQUARE_RAD = Math.toRadians(0.2);

  private final Mesh mesh;
  private final MeshTopology topology;
  private final MeshEvidence from;

  /** True of a segment, which is straight whatever is set on it. */
  private final boolean straight;

  MeshPrism(MeshTopology topology, MeshEvidence from, boolean straight) {
    this.mesh = from.mesh();
    this.topology = topology;
    this.from = from;
    this.straight = straight;
  }

  /** Boxes, and straight bodies with slanted ends; null for anything else. */
  @Nullable Prism of(List<Found> ends) {
    if (ends.size() == 6) {
      return box(ends);
    }
    return ends.size() == 2 ? slanted(ends.get(0), ends.get(1)) : null;
  }

  /**
   * From mouth to mouth if one pair of sides is open, else along the longest edge; but a plate,
   * which along its edges is lower than any duct, lies across the run.
   */
  private @Nullable Prism box(List<Found> ends) {
    Found first = null;
    Found opposite = null;
    double longest = 0;
    double leastM3 = Double.MAX_VALUE;
    double mostM3 = 0;
    Found mouth = null;
    Found otherMouth = null;
    int mouths = 0;
    for (Found a : ends) {
      Found partner = partner(a, ends);
      if (partner == null || !a.isRectangular()) {
        return null;
      }
      if (a.isMouth() && partner.isMouth()) {
        mouths++;
        mouth = partner;
        otherMouth = a;
      }
      double distance = a.outline().centre().distanceTo(partner.outline().centre());
      if (isPlate(distance, a.outline().section())) {
        return between(a, partner);
      }
      double volumeM3 = distance * areaM2(a.outline().section());
      leastM3 = Math.min(leastM3, volumeM3);
      mostM3 = Math.max(mostM3, volumeM3);
      if (distance > longest) {
        longest = distance;
        first = a;
        opposite = partner;
      }
    }
    if (mouth != null && otherMouth != null && mouths == 2) {
      return between(mouth, otherMouth);
    }
    if (!straight && mostM3 - leastM3 > SAME_VOLUME * mostM3) {
      return null;
    }
    return first == null || opposite == null ? null : between(first, opposite);
  }

  private static double areaM2(Section sides) {
    return sides.largestSideM() * sides.smallestSideM();
  }

  private static boolean isPlate(double thicknessM, Section sides) {
    return thicknessM < LOWEST_DUCT_M && thicknessM * THIN < sides.smallestSideM();
  }

  private static @Nullable Found partner(Found a, List<Found> ends) {
    Found partner = null;
    for (Found b : ends) {
      boolean faces = a.outward().angleTo(b.outward().times(-1)) < Math.toRadians(1);
      boolean alike = Ends.same(a.outline().section(), b.outline().section());
      partner = faces && alike ? b : partner;
    }
    return partner;
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
    boolean isOpen = a.isMouth() && b.isMouth();
    return new Prism(start, axis, isOpen, from.how(), from.loops(List.of(a, b)), from.distances());
  }

  private @Nullable Prism slanted(Found a, Found b) {
    Vec axis = b.outline().centre().minus(a.outline().centre()).unit();
    boolean square =
        a.outward().angleTo(axis.times(-1)) < SQUARE_RAD && b.outward().angleTo(axis) < SQUARE_RAD;
    if (square || axis.equals(Vec.ZERO) || isRoundAtItsEnds(a, axis)) {
      return null;
    }
    double leaningM2 = 0;
    for (int face = 0; face < mesh.faces().size(); face++) {
      Vec normal = topology.normal(face);
      boolean atEnd = liesIn(a, face, normal) || liesIn(b, face, normal);
      boolean leans = !atEnd && lean(face, axis) > WALL_PARALLEL;
      if (leans && mesh.stepM() == 0) {
        return null;
      }
      leaningM2 += leans ? topology.area(face) : 0;
    }
    return leaningM2 < TILTED * topology.areaM2() ? between(a, b) : null;
  }

  /** A pipe that is cut at a slant is round across its axis; a bend drawn in one step is not. */
  private static boolean isRoundAtItsEnds(Found end, Vec axis) {
    double across = unevenness(end, axis);
    return end.isRound() && across > UNEVEN && unevenness(end, end.outward()) < across / 2;
  }

  /** Difference between the corners farthest from and nearest to the middle, over the farthest. */
  private static double unevenness(Found end, Vec axis) {
    double nearest = Double.MAX_VALUE;
    double farthest = 0;
    for (Vec corner : end.loop()) {
      double offM = corner.minus(end.outline().centre()).across(axis).norm();
      nearest = Math.min(nearest, offM);
      farthest = Math.max(farthest, offM);
    }
    return 1 - nearest / farthest;
  }

  /**
   * Mean sine by which a face leans along an axis. What the edges of a curved face tell is no more
   * than its chord, which of a bend runs from end to end.
   */
  private double lean(int face, Vec axis) {
    double leaning = 0;
    double areaM2 = 0;
    for (List<List<Vec>> tile : mesh.faces().get(face).tiles()) {
      Vec areaNormal = Facet.areaNormal(tile);
      leaning += Math.abs(areaNormal.dot(axis));
      areaM2 += areaNormal.norm();
    }
    return areaM2 > 0 ? leaning / areaM2 : Math.abs(topology.normal(face).dot(axis));
  }

  private boolean liesIn(Found end, int face, Vec normal) {
    int[] loop = mesh.faces().get(face).loops().get(0);
    double within = WALL_PARALLEL * end.outline().largestHalfM();
    if (!mesh.faces().get(face).plane() || Math.abs(offM(loop[0], end)) >= within) {
      return false;
    }
    return normal.cross(end.outward()).norm() < WALL_PARALLEL
        || mesh.stepM() > 0 && isFlushWith(end, loop);
  }

  /** True of a face of rounded corners that all lie in the plane of an end, however it leans. */
  private boolean isFlushWith(Found end, int[] loop) {
    for (int corner : loop) {
      if (Math.abs(offM(corner, end)) > STEPS_OFF * mesh.stepM()) {
        return false;
      }
    }
    return true;
  }

  private double offM(int corner, Found end) {
    return mesh.vertices().get(corner).minus(end.outline().centre()).dot(end.outward());
  }
}
