package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.Axes;
import org.lagwright.takeoff.fitting.MakingChooser;
import org.lagwright.takeoff.measure.GeometricTruth;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.order.LaggedElement;

/** What is true of the elements on lines, and of what interrupts them, for any method. */
final class GeometricTruths {

  private final MakingChooser makings;
  private final LaggedElements lagged;

  GeometricTruths(MakingChooser makings, LaggedElements lagged) {
    this.makings = makings;
    this.lagged = lagged;
  }

  /** Elements on lines first, then gaps: bare elements with insulation on two sides. */
  List<GeometricTruth> of(List<TakenElement> taken) {
    List<GeometricTruth> truths = new ArrayList<>();
    Map<ElementKey, String> lineOf = new HashMap<>();
    for (TakenElement element : taken) {
      lagged.find(element).ifPresent(on -> truths.add(of(on, element.quantities())));
      element.findLineId().ifPresent(line -> lineOf.put(element.element().key(), line));
    }
    for (TakenElement element : taken) {
      if (element.lineId() == null && element.element().kind().isLagged()) {
        addGap(element.element(), lineOf, truths);
      }
    }
    return truths;
  }

  private GeometricTruth of(LaggedElement on, Quantities net) {
    MepElement element = on.element();
    return new GeometricTruth(
        element.key(),
        on.lineId(),
        form(element),
        element.kind().isSegment(),
        on.duct(),
        false,
        on.section(),
        element.ends(),
        on.thicknessM(),
        angleRad(element),
        net,
        axes(on));
  }

  /** Segments as long as they were read; shapes of fittings are rounded. */
  private Axes axes(LaggedElement on) {
    return on.element().kind().isSegment()
        ? new Axes(on.lengthM(), on.lengthM(), List.of())
        : makings.axes(on.element(), on.section(), on.duct(), on.thicknessM());
  }

  private static Form form(MepElement element) {
    boolean plain = element.form() == Form.UNKNOWN && element.kind().isSegment();
    return plain ? Form.STRAIGHT : element.form();
  }

  private static double angleRad(MepElement element) {
    Measured<Double> angleDeg = element.angleDeg();
    return element.form() == Form.BEND && angleDeg != null
        ? Math.toRadians(Math.abs(angleDeg.value()))
        : 0;
  }

  private void addGap(
      MepElement element, Map<ElementKey, String> lineOf, List<GeometricTruth> into) {
    Section section = Size.findDecidingSection(element).orElse(null);
    TreeSet<ElementKey> insulated = new TreeSet<>();
    for (Port port : element.ports()) {
      if (port.connectedTo() != null && lineOf.containsKey(port.connectedTo())) {
        insulated.add(port.connectedTo());
      }
    }
    if (section == null || insulated.size() < 2) {
      return;
    }
    boolean duct = element.kind() == Kind.DUCT_SEGMENT || element.kind() == Kind.DUCT_FITTING;
    String line = lineOf.get(insulated.first());
    if (line != null) {
      into.add(
          new GeometricTruth(
              element.key(),
              line,
              form(element),
              element.kind().isSegment(),
              duct,
              true,
              section,
              element.ends(),
              0,
              angleRad(element),
              Quantities.NONE,
              makings.axes(element, section, duct, 0)));
    }
  }
}
