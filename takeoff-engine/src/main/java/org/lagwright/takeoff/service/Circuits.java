package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Property;

/**
 * Says which circuit an abbreviation of two means, {@code CWS} and {@code CWR}. A model that names
 * the return has no domestic cold water under the name of the flow; which of two circuits it is
 * then the temperature tells, else nobody.
 */
final class Circuits {

  /** What gives heat off to a cooling tower is no warmer, degC: common practice, no source. */
  private static final double WARMEST_REJECTED_C = 50;

  private final ServicePack services;
  private final TemperatureReader temperatures;

  Circuits(ServicePack services, TemperatureReader temperatures) {
    this.services = services;
    this.temperatures = temperatures;
  }

  /** The hints of each element, with what the others and its temperatures make of them. */
  Map<ElementKey, List<Hint>> decided(
      List<MepElement> elements,
      Map<ElementKey, List<Property>> told,
      Map<ElementKey, List<Hint>> hints) {
    Set<String> halves = halves(hints);
    if (halves.isEmpty()) {
      return hints;
    }
    Map<ElementKey, List<Hint>> decided = new HashMap<>(hints);
    for (MepElement element : elements) {
      List<Hint> own = hints.get(element.key());
      if (own != null) {
        List<Property> properties = told.getOrDefault(element.key(), List.of());
        decided.put(element.key(), decided(element, properties, own, halves));
      }
    }
    return decided;
  }

  /** The words of the model that name half a circuit, lower case. */
  private static Set<String> halves(Map<ElementKey, List<Hint>> hints) {
    Set<String> halves = new HashSet<>();
    for (List<Hint> each : hints.values()) {
      for (Hint hint : each) {
        if (hint.circuit() != null) {
          halves.add(hint.text().toLowerCase(Locale.ROOT));
        }
      }
    }
    return halves;
  }

  private List<Hint> decided(
      MepElement element, List<Property> told, List<Hint> hints, Set<String> halves) {
    List<Hint> decided = new ArrayList<>();
    HalfOfCircuit open = null;
    boolean familyTold = false;
    for (Hint hint : hints) {
      HalfOfCircuit half = hint.circuit();
      boolean isHalf =
          half != null && (half.otherHalf() == null || halves.contains(half.otherHalf()));
      open = isHalf ? half : open;
      familyTold |= !isHalf && hint.family() != null;
      decided.add(isHalf && hint.family() != null ? hint.asHalf() : hint);
    }
    Hint byTemperature = open == null || familyTold ? null : byTemperature(element, told, open);
    if (byTemperature != null) {
      decided.add(byTemperature);
    }
    return decided;
  }

  private @Nullable Hint byTemperature(
      MepElement element, List<Property> told, HalfOfCircuit half) {
    Service cold = services.service(half.cold(), half.direction());
    ToldTemperature found = temperatures.read(element, told, cold, true);
    if (found == null || (!found.believed() && !isRejected(found))) {
      return null;
    }
    String family = found.believed() ? half.cold() : half.warm();
    return Hint.ofFamily(family, half.direction(), found.from(), found.text(), 1);
  }

  private boolean isRejected(ToldTemperature found) {
    return temperatures.isWarm(found.celsius()) && found.celsius() <= WARMEST_REJECTED_C;
  }
}
