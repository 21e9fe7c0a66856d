package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
  private final SharedBoxes boxes;

  /** By flange the element under whose box it lies. */
  private final Map<ElementKey, ElementKey> boxOf = new HashMap<>();

  /** Lengths of flanges by the element under whose box they lie, metres. */
  private final Map<ElementKey, Double> underBoxM = new HashMap<>();

  GeometricTruths(MakingChooser makings, LaggedElements lagged, SharedBoxes boxes) {
    this.makings = makings;
    this.lagged = lagged;
    this.boxes = boxes;
  }

  /** Elements on lines first, then gaps: bare elements with insulation on two sides. */
  List<GeometricTruth> of(List<TakenElement> taken) {
    List<GeometricTruth> truths = new ArrayList<>();
    Map<ElementKey, String> lineOf = new HashMap<>();
    taken.stream().filter(TakenElement::isUnderBox).forEach(e -> addUnderBox(e.element()));
    for (TakenElement element : taken) {
      lagged.find(element).ifPresent(on -> truths.add(of(on, element.quantities())));
      element.findLineId().ifPresent(line -> lineOf.put(element.element().key(), line));
    }
    boxOf.forEach((flange, box) -> lineOf.put(flange, Objects.requireNonNull(lineOf.get(box))));
    for (TakenElement element : taken) {
      boolean bare = element.lineId() == null && !element.isUnderBox();
      if (bare && element.element().kind().isLagged()) {
        addGap(element.element(), lineOf, truths);
      }
    }
    return truths;
  }

  private void addUnderBox(MepElement flange) {
    ElementKey box = Objects.requireNonNull(boxes.over(flange)).element().key();
    boxOf.put(flange.key(), box);
    if (flange.lengthM() != null) {
      underBoxM.merge(box, flange.lengthM().value(), Double::sum);
    }
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
    if (on.element().kind().isSegment()) {
      return new Axes(on.lengthM(), on.lengthM(), List.of());
    }
    Axes own = makings.axes(on.element(), on.section(), on.duct(), on.thicknessM());
    double moreM = underBoxM.getOrDefault(on.element().key(), 0.0);
    return new Axes(own.throughM() + moreM, own.cornersM() + moreM, own.footsM2());
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
