package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * The sizes of the lines that a fitting meets, end by end.
 *
 * @param joined what the joints make, null if they do not tell
 * @param ways how many ends the fitting has
 */
record MetEnds(Draft draft, List<Neighbours.Joint> joints, @Nullable Shape joined, int ways) {

  /** The sizes met, in the order of the ends; empty unless every end is known. */
  List<Section> sections() {
    List<Section> sections =
        draft.form().isWiderThanItsPipe() || draft.shape().ends().size() != ways
            ? metAtJoints()
            : metAtEnds();
    return FittingEnds.withoutNoise(sections);
  }

  private List<Section> metAtJoints() {
    List<Section> known = new ArrayList<>(joints.size());
    for (Neighbours.Joint joint : joints) {
      if (joint.met() != null) {
        known.add(joint.met().section());
      }
    }
    if (known.size() == joints.size() && joints.size() == ways && joints.size() > 1) {
      return joined == null || joined.ends().size() != joints.size()
          ? known
          : FittingEnds.sections(joined.ends());
    }
    if (!draft.form().isWiderThanItsPipe()) {
      return List.of();
    }
    // what sits in a line has its size at both ends, also where only one of them is joined
    if (known.size() == 1 && joints.size() <= 2) {
      Section other = unlikeMet();
      return List.of(known.get(0), other == null ? known.get(0) : other);
    }
    // drains and taps of a valve that lead nowhere are no ends of the line
    return known.size() > 1 ? known : List.of();
  }

  /**
   * The drawn end across from the only one that meets something, if one is round and the other has
   * sides, as of boxes that share out air: no line has both. Or, of what is drawn as a reducer, if
   * the one is drawn as wide as its pipe, so that the other one is too. Null if there is none.
   */
  @Nullable Section unlikeMet() {
    boolean reduces = draft.shape().form() == Form.REDUCER && draft.shape().ends().size() == 2;
    List<ShapeEnd> ends = reduces || mayChangeShape() ? draft.shape().ends() : List.of();
    ShapeEnd joined = null;
    boolean asWide = false;
    for (Neighbours.Joint joint : joints) {
      joined = joint.met() == null ? joined : drawnAt(joint, ends);
      asWide |=
          joined != null
              && joint.met() != null
              && Tolerances.sameSection(joined.section(), joint.met().section());
    }
    if (joined == null) {
      return null;
    }
    boolean round = joined.section() instanceof Section.Round;
    for (ShapeEnd end : ends) {
      boolean unlike = end.section() instanceof Section.Round != round;
      boolean counts = unlike ? mayChangeShape() : reduces && asWide && isPipe(end.section());
      if (counts && Faces.lookApart(joined, end)) {
        return end.section();
      }
    }
    return null;
  }

  private static boolean isPipe(Section section) {
    return section instanceof Section.Round round
        && PipeSizes.isOutsideDiameter(round.outsideDiameterM());
  }

  /** Pipes are round all the way: what has sides at the end of a valve or pump is its motor. */
  private boolean mayChangeShape() {
    return draft.isDuct()
        || draft.form() == Form.DAMPER
        || draft.form() == Form.SILENCER
        || draft.form() == Form.STRAINER;
  }

  private static @Nullable ShapeEnd drawnAt(Neighbours.Joint joint, List<ShapeEnd> ends) {
    for (ShapeEnd end : ends) {
      if (distanceM(joint, end.centreM()) < Drawn.SAME_PLACE_M) {
        return end;
      }
    }
    return null;
  }

  /** At each drawn end what is met there, or what is met at an end drawn alike. */
  private List<Section> metAtEnds() {
    List<ShapeEnd> ends = draft.shape().ends();
    List<@Nullable Section> direct = new ArrayList<>();
    for (ShapeEnd end : ends) {
      direct.add(metAt(end, ends));
    }
    List<Section> sections = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      Section met = direct.get(i);
      for (int j = 0; j < ends.size() && met == null; j++) {
        met =
            Tolerances.sameSection(ends.get(i).section(), ends.get(j).section())
                ? direct.get(j)
                : met;
      }
      if (met != null) {
        sections.add(met);
      }
    }
    return sections.size() == ends.size() ? sections : metAtJoints();
  }

  /**
   * What is met at a drawn end: at no other one, as those of a short reducer lie close. In the
   * socket of a fitting it is that end itself.
   */
  private @Nullable Section metAt(ShapeEnd end, List<ShapeEnd> ends) {
    Section nearest = null;
    double leastM = Drawn.SAME_PLACE_M;
    for (Neighbours.Joint joint : joints) {
      double distanceM = distanceM(joint, end.centreM());
      if (joint.met() != null && distanceM < leastM && !isNearerToAnother(joint, distanceM, ends)) {
        boolean inSocket = joint.met().isSocketOf(end.section());
        nearest = inSocket ? end.section() : joint.met().section();
        leastM = distanceM;
      }
    }
    return nearest;
  }

  private static boolean isNearerToAnother(
      Neighbours.Joint joint, double thanM, List<ShapeEnd> ends) {
    for (ShapeEnd other : ends) {
      if (distanceM(joint, other.centreM()) < thanM) {
        return true;
      }
    }
    return false;
  }

  private static double distanceM(Neighbours.Joint joint, Point atM) {
    Point at = joint.port().positionM();
    return at == null ? Double.MAX_VALUE : at.distanceM(atM);
  }
}
