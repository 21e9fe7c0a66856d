package org.lagwright.takeoff.readiness;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.FindingCode;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.takeoff.service.Classification;

/** What the takeoff knows about one file and its elements. */
final class Facts {

  private final MepModel model;
  private final Map<ElementKey, Classification> services;
  private final Map<String, Integer> ids = new HashMap<>();

  Facts(MepModel model, Map<ElementKey, Classification> services) {
    this.model = model;
    this.services = services;
    model.elements().forEach(e -> ids.merge(e.globalId(), 1, Integer::sum));
  }

  /** About the file. */
  boolean holds(Known known) {
    return switch (known) {
      case LENGTH_UNIT ->
          model.findings().stream()
              .noneMatch(
                  f -> f.code() == ReadFinding.UNITS_ASSUMED && f.values().contains("length"));
      case DRAWN_ONCE -> !found(ReadFinding.DRAWN_TWICE);
      case PORTS ->
          found(ReadFinding.PORT_WITHOUT_OWNER)
              || model.elements().stream()
                  .anyMatch(e -> e.ports().stream().anyMatch(Port::isInFile));
      default -> throw new IllegalStateException(known + " is no matter of a file");
    };
  }

  private boolean found(FindingCode code) {
    return model.findings().stream().anyMatch(finding -> finding.code() == code);
  }

  /** About an element. */
  boolean holds(Known known, MepElement element) {
    return switch (known) {
      case SECTION -> element.section() != null;
      case LENGTH -> element.lengthM() != null;
      case POSITION -> element.place().positionM() != null;
      case BODY -> isDrawn(element);
      case SERVICE -> service(element) != null;
      case SYSTEM -> !element.systems().isEmpty();
      case TEMPERATURE -> tellsTemperature(service(element));
      case JOINED -> element.ports().stream().anyMatch(port -> port.connectedTo() != null);
      case JOINED_BY_PORTS ->
          element.ports().stream()
              .anyMatch(p -> p.isInFile() && p.connectedTo() != null && !p.touching());
      case STOREY -> element.place().storey() != null;
      case GLOBAL_ID -> !element.globalId().isEmpty();
      case UNIQUE_ID -> ids.getOrDefault(element.globalId(), 0) == 1;
      default -> throw new IllegalStateException(known + " is no matter of an element");
    };
  }

  private @Nullable Classification service(MepElement element) {
    Classification service = services.get(element.key());
    return service == null || !service.isKnown() ? null : service;
  }

  private static boolean tellsTemperature(@Nullable Classification service) {
    return service != null && service.told() != null && service.told().believed();
  }

  private static boolean isDrawn(MepElement element) {
    return Stream.of(
            element.section(), element.endSections(), element.lengthM(), element.angleDeg())
        .filter(Objects::nonNull)
        .anyMatch(Facts::isDrawn);
  }

  private static boolean isDrawn(Measured<?> measured) {
    return measured.how().isDrawn() || measured.lost().stream().anyMatch(c -> c.how().isDrawn());
  }
}
