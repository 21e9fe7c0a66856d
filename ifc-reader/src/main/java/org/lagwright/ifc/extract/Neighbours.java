package org.lagwright.ifc.extract;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/** Looks along connected ports for the pipe or duct that gives a fitting its size. */
final class Neighbours {

  /** Flange, gasket, valve, flange: four steps are usual; chains beyond this are not one size. */
  private static final int FARTHEST = 8;

  /** A size found next door. */
  record Found(Section section, Evidence evidence) {}

  private final Map<ElementKey, Draft> drafts;

  Neighbours(Map<ElementKey, Draft> drafts) {
    this.drafts = drafts;
  }

  /**
   * The section of the segment that a port leads to, directly or through items that do not change
   * the size; empty if there is none.
   */
  Optional<Found> behind(Draft from, Port port) {
    Draft before = from;
    ElementKey at = port.connectedTo();
    for (int i = 0; i < FARTHEST && at != null; i++) {
      Draft next = drafts.get(at);
      if (next == null) {
        return Optional.empty();
      }
      Measured<Section> section = next.section;
      if (next.isSegment() && section != null) {
        return Optional.of(
            new Found(
                section.value(),
                new Evidence(next.key.step(), "neighbour", Sizes.inWords(section.value()))));
      }
      at = keepsSize(next) ? onwards(next, before) : null;
      before = next;
    }
    return Optional.empty();
  }

  private static boolean keepsSize(Draft item) {
    return switch (item.form) {
      case REDUCER, TRANSITION, TEE, CROSS, LATERAL, WYE, APPARATUS -> false;
      default -> item.isLaggedItem() && item.ports.size() == 2;
    };
  }

  private static @Nullable ElementKey onwards(Draft item, Draft cameFrom) {
    for (Port port : item.ports) {
      ElementKey other = port.connectedTo();
      if (other != null && !other.equals(cameFrom.key)) {
        return other;
      }
    }
    return null;
  }
}
