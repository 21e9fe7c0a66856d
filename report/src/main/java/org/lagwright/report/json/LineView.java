package org.lagwright.report.json;

import java.util.List;
import org.lagwright.takeoff.TakeoffLine;

/** One line of the takeoff. */
record LineView(
    String id,
    String service,
    String serviceName,
    String kind,
    String form,
    String size,
    String location,
    String material,
    double thicknessM,
    String layers,
    String unit,
    double quantity,
    double outerAreaM2,
    double volumeM3,
    List<String> elements,
    String rule) {

  /**
   * The view of one line.
   *
   * @param elements GlobalIds of its elements
   */
  static LineView of(TakeoffLine line, List<String> elements) {
    return new LineView(
        line.id(),
        line.serviceId(),
        line.serviceName(),
        line.kind().label(),
        line.form().label(),
        line.size(),
        line.location(),
        line.materialId(),
        Finite.number(line.thicknessM()),
        line.layers(),
        line.unit(),
        Finite.number(line.quantity()),
        Finite.number(line.outerAreaM2()),
        Finite.number(line.volumeM3()),
        elements,
        line.rule());
  }
}
