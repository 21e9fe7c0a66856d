package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Port;
import org.lagwright.takeoff.fitting.Making;

/**
 * Which flanges lie under the box of another element. A box over a flange has room for the pair,
 * one over a valve or strainer for the flanges on both its sides; models draw each of them as an
 * element of its own.
 */
final class SharedBoxes {

  /** For flanges under the box of another element, this stands for the scope rule. */
  static final String RULE = "shared-box";

  private final Map<ElementKey, MepElement> flanges = new HashMap<>();
  private final Map<ElementKey, Judgement> boxes = new HashMap<>();

  /** Remembers the flanges among these elements. */
  SharedBoxes(List<MepElement> elements) {
    for (MepElement element : elements) {
      if (element.form() == Form.FLANGE) {
        flanges.put(element.key(), element);
      }
    }
  }

  /**
   * All elements in the order in which they are to be judged: flanges behind what may cover them.
   */
  List<MepElement> inOrder(List<MepElement> elements) {
    List<MepElement> ordered = new ArrayList<>(elements);
    ordered.removeIf(element -> flanges.containsKey(element.key()));
    flanges.values().stream().sorted(Comparator.comparing(MepElement::key)).forEach(ordered::add);
    return ordered;
  }

  /** Remembers what gets a box that flanges beside it find room in. */
  void add(Judgement judged) {
    Making making = judged.making();
    if (judged.lineKey() == null || making == null) {
      return;
    }
    ElementKey key = judged.element().key();
    if (flanges.containsKey(key) || making.layers().get(0).method().hasRoomForFlanges()) {
      boxes.put(key, judged);
    }
  }

  /** The elements of a takeoff that lie under the box of another one. */
  static Set<ElementKey> under(List<TakenElement> elements) {
    Set<ElementKey> under = new HashSet<>();
    for (TakenElement taken : elements) {
      if (taken.isUnderBox()) {
        under.add(taken.element().key());
      }
    }
    return under;
  }

  /** What has the box that covers this flange too; null where the flange gets one of its own. */
  @Nullable Judgement over(MepElement flange) {
    Judgement box = beside(flange, true);
    for (Port port : flange.ports()) {
      MepElement other = joined(port, flanges);
      if (box == null && other != null) {
        box = beside(other, true);
      }
    }
    return box == null ? beside(flange, false) : box;
  }

  private @Nullable Judgement beside(MepElement flange, boolean bodiesOnly) {
    for (Port port : flange.ports()) {
      Judgement other = joined(port, boxes);
      if (other != null && !(bodiesOnly && flanges.containsKey(other.element().key()))) {
        return other;
      }
    }
    return null;
  }

  private static <T> @Nullable T joined(Port port, Map<ElementKey, T> among) {
    return port.connectedTo() == null || port.tap() ? null : among.get(port.connectedTo());
  }
}
