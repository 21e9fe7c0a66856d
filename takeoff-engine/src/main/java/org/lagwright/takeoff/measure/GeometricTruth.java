package org.lagwright.takeoff.measure;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.fitting.Axes;

/**
 * What is true of one element whatever the method of measurement.
 *
 * @param element names it
 * @param lineId its line; of a gap that of the insulation beside it
 * @param form its form
 * @param segment true for straights and flexible pieces
 * @param duct true for ducts and what sits in them
 * @param gap true where it is not insulated but interrupts what is
 * @param section bare section that decided the thickness
 * @param ends sections of its ends, empty where unknown
 * @param thicknessM thickness of insulation, metres; 0 for a gap
 * @param angleRad angle of a bend, 0 for all others
 * @param net net quantities; {@link Quantities#NONE} for a gap
 * @param axes lengths along its axes
 */
public record GeometricTruth(
    ElementKey element,
    String lineId,
    Form form,
    boolean segment,
    boolean duct,
    boolean gap,
    Section section,
    List<Section> ends,
    double thicknessM,
    double angleRad,
    Quantities net,
    Axes axes) {

  public GeometricTruth {
    ends = List.copyOf(ends);
  }

  /** What rules may ask for. */
  Set<String> facts() {
    Set<String> facts = new HashSet<>();
    facts.add(form.label());
    facts.add(duct ? MeasurementMethod.DUCT : MeasurementMethod.PIPE);
    facts.add(section instanceof Section.Round ? "round" : "not-round");
    if (gap) {
      facts.add(MeasurementMethod.GAP);
    } else {
      facts.add(segment ? MeasurementMethod.SEGMENT : MeasurementMethod.ITEM);
    }
    return facts;
  }
}
