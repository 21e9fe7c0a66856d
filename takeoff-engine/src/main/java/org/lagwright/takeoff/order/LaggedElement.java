package org.lagwright.takeoff.order;

import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.Making;

/**
 * An element on a line, as far as buying for it cares.
 *
 * @param element what was read
 * @param lineId its line
 * @param section bare section that decided the thickness
 * @param serviceId what flows
 * @param location location class
 * @param cold true where the insulation has to stop condensation
 * @param duct true for ducts and what sits in them
 * @param thicknessM thickness of all layers, metres
 * @param lengthM length along the centre line, metres; 0 for what is counted
 * @param outerAreaM2 outer surface of the insulation, square metres; 0 where it is not known
 * @param making how it is covered
 */
public record LaggedElement(
    MepElement element,
    String lineId,
    Section section,
    String serviceId,
    String location,
    boolean cold,
    boolean duct,
    double thicknessM,
    double lengthM,
    double outerAreaM2,
    Making making) {

  /** Names the element. */
  public ElementKey key() {
    return element.key();
  }
}
