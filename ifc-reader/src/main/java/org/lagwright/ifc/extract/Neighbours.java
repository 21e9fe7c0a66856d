package org.lagwright.ifc.extract;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/** Looks along connected ports for the pipe or duct that gives a fitting its size. */
final class Neighbours {

  /** Flange, gasket, valve, flange: four steps are usual; chains beyond this are not one size. */
  private static final int FARTHEST = 8;

  /** Joined ports and ends lie up to 15 mm apart in public files. */
  private static final double SAME_PLACE_M = 0.02;

  /** A size found next door. */
  record Found(Section section, Evidence evidence) {}

  private final Map<ElementKey, Draft> drafts;

  Neighbours(Map<ElementKey, Draft> drafts) {
    this.drafts = drafts;
  }

  /**
   * The section that a port meets: that of the segment behind it, directly or through items that do
   * not change the size, or that of the nearest end of a fitting whose ends were measured; empty if
   * nothing tells.
   */
  Optional<Found> behind(Draft from, Port port) {
    Draft before = from;
    Port out = port;
    for (int i = 0; i < FARTHEST; i++) {
      ElementKey at = out.connectedTo();
      Draft next = at == null ? null : drafts.get(at);
      if (next == null) {
        return Optional.empty();
      }
      Measured<Section> section = next.section;
      if (next.isSegment() && section != null) {
        return Optional.of(found(next, section.value()));
      }
      if (!keepsSize(next)) {
        return endAt(next, out.positionM());
      }
      Port onwards = onwards(next, before);
      if (onwards == null) {
        return endAt(next, out.positionM());
      }
      out = onwards;
      before = next;
    }
    return Optional.empty();
  }

  private static Found found(Draft neighbour, Section section) {
    return new Found(
        section, new Evidence(neighbour.key.step(), "neighbour", Sizes.inWords(section)));
  }

  /** The drawn end of a tee, reducer or the like that lies at a port. */
  private static Optional<Found> endAt(Draft fitting, @Nullable Point portM) {
    if (portM == null) {
      return Optional.empty();
    }
    return fitting.shape.ends().stream()
        .filter(end -> end.centreM().distanceM(portM) < SAME_PLACE_M)
        .min(Comparator.comparingDouble(end -> end.centreM().distanceM(portM)))
        .map(end -> found(fitting, end.section()));
  }

  private static boolean keepsSize(Draft item) {
    return switch (item.form) {
      case REDUCER, TRANSITION, TEE, CROSS, LATERAL, WYE, APPARATUS -> false;
      default -> item.isLaggedItem() && item.joints.size() == 2;
    };
  }

  private static @Nullable Port onwards(Draft item, Draft cameFrom) {
    for (Port port : item.joints) {
      ElementKey other = port.connectedTo();
      if (other != null && !other.equals(cameFrom.key)) {
        return port;
      }
    }
    return null;
  }
}
