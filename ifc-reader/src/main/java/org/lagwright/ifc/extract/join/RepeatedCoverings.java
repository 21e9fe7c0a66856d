package org.lagwright.ifc.extract.join;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.Remeasurer;
import org.lagwright.ifc.extract.insulation.LooseCovering;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Coverings that several files hold by one GlobalId. Only where a file holds nothing that a
 * covering lies around its body was measured and tells its place; else that is its placement.
 */
final class RepeatedCoverings {

  private static final Point ZERO = new Point(0, 0, 0);

  private final Joining joining;

  /** Coverings without host; found when first asked. */
  private @Nullable Set<ElementKey> orphans;

  /** What is drawn of coverings that name no host; found when first asked. */
  private @Nullable Map<ElementKey, Box> drawn;

  RepeatedCoverings(Joining joining) {
    this.joining = joining;
  }

  /** True for two coverings of one GlobalId, one of which has no host and is drawn at the other. */
  boolean areOne(MepElement first, MepElement element) {
    return first.kind() == Kind.COVERING
        && element.kind() == Kind.COVERING
        && (isPlacedAt(first, element) || isPlacedAt(element, first));
  }

  private boolean isPlacedAt(MepElement orphan, MepElement hosted) {
    Box box = isOrphan(orphan) && !isOrphan(hosted) ? drawn().get(orphan.key()) : null;
    Point placed = hosted.place().positionM();
    return box != null
        && (placed == null
            || ZERO.equals(placed)
            || box.gapM(Box.around(List.of(placed))) <= Bodies.NEAR_BODY_M);
  }

  /** True for a covering of which only this file holds what it lies around. */
  boolean isOnlyHosted(MepElement covering, MepElement other) {
    return covering.kind() == Kind.COVERING && isOrphan(other) && !isOrphan(covering);
  }

  private boolean isOrphan(MepElement covering) {
    Set<ElementKey> found = orphans;
    if (found == null) {
      found = new HashSet<>();
      for (MepModel model : joining.read()) {
        for (Finding finding : model.findings()) {
          if (finding.code() == ReadFinding.COVERING_WITHOUT_HOST && finding.element() != null) {
            found.add(finding.element());
          }
        }
      }
      orphans = found;
    }
    return found.contains(covering.key());
  }

  private Map<ElementKey, Box> drawn() {
    Map<ElementKey, Box> found = drawn;
    if (found == null) {
      found = new HashMap<>();
      for (MepModel model : joining.read()) {
        if (model.origin() instanceof Remeasurer origin) {
          for (LooseCovering each : origin.loose()) {
            found.put(each.key(), each.reach());
          }
        }
      }
      drawn = found;
    }
    return found;
  }
}
