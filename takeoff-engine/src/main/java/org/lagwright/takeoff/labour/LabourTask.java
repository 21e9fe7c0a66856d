package org.lagwright.takeoff.labour;

import java.util.List;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.order.LaggedElement;
import org.lagwright.takeoff.thickness.Layer;

/**
 * One element that is insulated, with what its hours depend on.
 *
 * @param lagged the element
 * @param serviceName what flows, in words
 * @param size in words
 * @param layers from the inside out, one for each layer of its making
 * @param jacket true where a jacket goes over the outermost layer
 * @param hangers hangers that a pipe has, 0 or more; a fraction where they are spread over a run
 */
public record LabourTask(
    LaggedElement lagged,
    String serviceName,
    String size,
    List<Layer> layers,
    boolean jacket,
    double hangers) {

  public LabourTask {
    layers = List.copyOf(layers);
    if (layers.isEmpty() || layers.size() != lagged.making().layers().size()) {
      throw new IllegalArgumentException("each layer needs a making");
    }
  }

  MepElement element() {
    return lagged.element();
  }

  Section section() {
    return lagged.section();
  }

  boolean duct() {
    return lagged.duct();
  }
}
