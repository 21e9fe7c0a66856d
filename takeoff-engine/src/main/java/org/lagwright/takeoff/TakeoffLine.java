package org.lagwright.takeoff;

import java.util.List;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;

/**
 * One line of the takeoff: equal service, kind, form, size, material and thickness.
 *
 * @param id stable within one run: {@code L001}
 * @param serviceId service of all its elements
 * @param serviceName service in words
 * @param kind what the elements are
 * @param form their form; STRAIGHT and FLEXIBLE lines are measured in metres, all others counted
 * @param size the size in words: {@code DN50 / 60.3 mm}, {@code 300 x 200 mm}
 * @param location location class of the surroundings that decided the thickness: {@code indoor}
 * @param materialId material family
 * @param materialName material in words: {@code flexible elastomeric foam}
 * @param thicknessM total thickness bought, metres
 * @param layers build-up in words: {@code 25 mm tube}, {@code 32 mm tube + 19 mm sheet}
 * @param unit {@code m} or {@code pcs}
 * @param quantity in that unit
 * @param outerAreaM2 sum over the elements
 * @param volumeM3 sum over the elements
 * @param elements the elements it sums
 * @param rule the rule that governs the thickness
 */
public record TakeoffLine(
    String id,
    String serviceId,
    String serviceName,
    Kind kind,
    Form form,
    String size,
    String location,
    String materialId,
    String materialName,
    double thicknessM,
    String layers,
    String unit,
    double quantity,
    double outerAreaM2,
    double volumeM3,
    List<ElementKey> elements,
    String rule) {

  public TakeoffLine {
    elements = List.copyOf(elements);
  }
}
