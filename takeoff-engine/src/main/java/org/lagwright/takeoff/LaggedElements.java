package org.lagwright.takeoff;

import java.util.Optional;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.order.LaggedElement;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** Elements on lines as the order sees them. */
final class LaggedElements {

  private final ServicePack services;

  LaggedElements(ServicePack services) {
    this.services = services;
  }

  /** The element, empty unless it is on a line. */
  Optional<LaggedElement> find(TakenElement taken) {
    MepElement element = taken.element();
    Section section = Size.findDecidingSection(element).orElse(null);
    String lineId = taken.lineId();
    Making making = taken.making();
    ThicknessDecision thickness = taken.thickness();
    Classification service = taken.service();
    if (lineId == null
        || section == null
        || making == null
        || thickness == null
        || service == null) {
      return Optional.empty();
    }
    return Optional.of(
        new LaggedElement(
            element,
            lineId,
            section,
            service.serviceId(),
            thickness.location(),
            isCold(thickness),
            isDuct(element, service, services),
            thickness.totalM(),
            taken.quantities().lengthM(),
            taken.quantities().outerAreaM2(),
            making));
  }

  /** True for ducts, and for what sits in a line of air: a damper, a silencer. */
  static boolean isDuct(MepElement element, Classification service, ServicePack services) {
    return switch (element.kind()) {
      case DUCT_SEGMENT, DUCT_FITTING -> true;
      case INLINE -> services.service(service.serviceId()).kind().equals("air");
      default -> false;
    };
  }

  private static boolean isCold(ThicknessDecision thickness) {
    return thickness.demands().stream()
        .anyMatch(d -> d.kind() == Demand.Kind.CONDENSATION && d.thicknessM() > 0);
  }
}
