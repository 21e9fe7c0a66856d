package org.lagwright.ifc.extract.insulation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Names;
import org.lagwright.ifc.geometry.Coaxiality.Extent;

/**
 * A covering without a body: only what it states tells whether it is a layer, a piece of one, or
 * written once more.
 *
 * @param lengthM length that it states, null if none
 */
record Undrawn(Layers.Covering covering, Names names, @Nullable Double lengthM) {

  /** Joints between pieces, and lengths that are rounded up. */
  private static final double LONGER = 1.02;

  /**
   * Coverings of one element: pieces after each other, if all lengths together fit; else layers, of
   * which those that are alike in all that they tell count once.
   *
   * @param elementM length of the element, null if not known
   */
  static List<Layers.Covering> arranged(List<Undrawn> coverings, @Nullable Double elementM) {
    if (elementM != null && coverings.size() > 1 && sumM(coverings) <= LONGER * elementM) {
      return afterEachOther(coverings, elementM);
    }
    List<Layers.Covering> layers = new ArrayList<>();
    for (Undrawn each : withoutRepeats(coverings)) {
      layers.add(each.covering);
    }
    return layers;
  }

  /** Not a number if one of them states no length. */
  private static double sumM(List<Undrawn> coverings) {
    double sumM = 0;
    for (Undrawn each : coverings) {
      sumM += each.lengthM == null ? Double.NaN : each.lengthM;
    }
    return sumM;
  }

  private static List<Layers.Covering> afterEachOther(List<Undrawn> pieces, double elementM) {
    List<Layers.Covering> arranged = new ArrayList<>();
    double lengthM = Math.max(elementM, sumM(pieces));
    double fromM = 0;
    for (Undrawn each : pieces) {
      double toM = fromM + (each.lengthM == null ? 0 : each.lengthM);
      Extent extent = new Extent(fromM / lengthM, toM / lengthM);
      arranged.add(new Layers.Covering(null, each.covering.statedM(), null, extent));
      fromM = toM;
    }
    return arranged;
  }

  /** One of each. */
  static List<Undrawn> withoutRepeats(List<Undrawn> coverings) {
    List<Undrawn> different = new ArrayList<>();
    for (Undrawn each : coverings) {
      boolean repeated = false;
      for (Undrawn before : different) {
        repeated |= each.isLike(before);
      }
      if (!repeated) {
        different.add(each);
      }
    }
    return different;
  }

  private boolean isLike(Undrawn other) {
    Double thicknessM = covering.statedM();
    return thicknessM != null
        && thicknessM.equals(other.covering.statedM())
        && names.own().equals(other.names.own())
        && names.ofType().equals(other.names.ofType());
  }
}
