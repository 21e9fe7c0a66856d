package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Port;

/** Which elements are joined, and through which of them a service goes on. */
final class Connections {

  /** More ports than this on a valve: it mixes or diverts. */
  private static final int PORTS_OF_A_PLAIN_VALVE = 2;

  private final Map<ElementKey, MepElement> elements = new HashMap<>();
  private final Map<ElementKey, Set<ElementKey>> joined = new HashMap<>();
  private final Map<ElementKey, List<Port>> portsTowards = new HashMap<>();
  private final Set<ElementKey> passing = new HashSet<>();

  Connections(List<MepElement> all, Words words) {
    all.forEach(element -> elements.put(element.key(), element));
    for (MepElement element : all) {
      if (passesOn(element, words)) {
        passing.add(element.key());
      }
      for (Port port : element.ports()) {
        ElementKey other = port.connectedTo();
        if (other != null && elements.containsKey(other) && !other.equals(element.key())) {
          joined.computeIfAbsent(element.key(), k -> new HashSet<>()).add(other);
          joined.computeIfAbsent(other, k -> new HashSet<>()).add(element.key());
          portsTowards.computeIfAbsent(other, k -> new ArrayList<>()).add(port);
        }
      }
    }
  }

  Map<ElementKey, List<Port>> portsTowards() {
    return portsTowards;
  }

  /** The joined elements in file order. */
  List<MepElement> neighbours(ElementKey key) {
    return joined.getOrDefault(key, Set.of()).stream().sorted().map(elements::get).toList();
  }

  MepElement element(ElementKey key) {
    MepElement element = elements.get(key);
    if (element == null) {
      throw new IllegalArgumentException("no element " + key);
    }
    return element;
  }

  /** True if the medium leaves the element as it came in. */
  boolean passesOn(ElementKey key) {
    return passing.contains(key);
  }

  private static boolean passesOn(MepElement element, Words words) {
    int ports = element.ports().size();
    return switch (element.kind()) {
      case PIPE_SEGMENT, DUCT_SEGMENT -> true;
      case PIPE_FITTING, DUCT_FITTING ->
          element.form() != Form.APPARATUS && (ports == 2 || !isNamedStop(element, words));
      case INLINE -> element.form() != Form.APPARATUS && !isNamedStop(element, words);
      case VALVE -> ports <= PORTS_OF_A_PLAIN_VALVE && !isNamedStop(element, words);
      case EQUIPMENT -> element.form() == Form.PUMP;
      case TERMINAL, COVERING, OTHER -> false;
    };
  }

  private static boolean isNamedStop(MepElement element, Words words) {
    return words.isStop(element.name())
        || (element.typeName() != null && words.isStop(element.typeName()))
        || (element.objectType() != null && words.isStop(element.objectType()));
  }
}
