package org.lagwright.report.enrich;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lagwright.ifc.append.GlobalId;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.TakenElement;

/**
 * GlobalIds of coverings: from that of the element and the number of the layer, so that writing
 * again gives the same ones. Elements whose own GlobalId is missing or taken by an earlier one
 * count by their instance number besides.
 */
final class CoveringIds {

  private final Set<ElementKey> ambiguous = new HashSet<>();

  CoveringIds(List<TakenElement> elements) {
    Set<String> seen = new HashSet<>();
    for (TakenElement taken : elements) {
      String globalId = taken.element().globalId();
      if (globalId.isEmpty() || !seen.add(globalId)) {
        ambiguous.add(taken.element().key());
      }
    }
  }

  /** The ids of all layers, the innermost first. */
  List<String> of(TakenElement taken, int layers) {
    ElementKey key = taken.element().key();
    String host = taken.element().globalId() + (ambiguous.contains(key) ? "#" + key.step() : "");
    List<String> ids = new ArrayList<>();
    for (int layer = 1; layer <= layers; layer++) {
      ids.add(GlobalId.of("lagwright/covering/" + host + "/" + layer));
    }
    return ids;
  }
}
