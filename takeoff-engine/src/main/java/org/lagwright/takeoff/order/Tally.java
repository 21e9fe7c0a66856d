package org.lagwright.takeoff.order;

import java.util.LinkedHashSet;
import java.util.Set;
import org.lagwright.ifc.model.ElementKey;

/** A sum, what the settings add to it, and the elements that it is for. */
final class Tally {

  private final Set<ElementKey> elements = new LinkedHashSet<>();
  private double net;
  private double allowance;

  void add(double quantity, double allowanceShare, ElementKey element) {
    if (quantity > 0) {
      net += quantity;
      allowance += quantity * allowanceShare;
      elements.add(element);
    }
  }

  /** A sum for several elements. */
  void addAll(double quantity, double allowanceShare, Set<ElementKey> forElements) {
    net += quantity;
    allowance += quantity * allowanceShare;
    elements.addAll(forElements);
  }

  double net() {
    return net;
  }

  double allowance() {
    return allowance;
  }

  Set<ElementKey> elements() {
    return elements;
  }
}
