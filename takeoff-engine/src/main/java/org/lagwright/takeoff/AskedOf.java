package org.lagwright.takeoff;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.service.Service;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.settings.DemandSettings;
import org.lagwright.takeoff.settings.DemandSettings.SpecificationRow;
import org.lagwright.takeoff.thickness.Asked;

/** What the settings ask for on an element of a service, at a location, of a size. */
final class AskedOf {

  private final ServicePack services;
  private final DemandSettings demands;

  AskedOf(ServicePack services, DemandSettings demands) {
    this.services = services;
    this.demands = demands;
  }

  /**
   * What is asked for.
   *
   * @param mediumC medium for the heat flow, degC; null where it is not known
   * @param meanC mean temperature round it, degC
   */
  Asked of(
      Service service, String location, Section section, @Nullable Double mediumC, double meanC) {
    return new Asked(
        services.findGiven(demands.heatLosses(), service),
        demands.touchLimitC(),
        findFrost(service, location),
        costs(service, mediumC, meanC) ? demands.tariff(service.material()) : null,
        demands.insulation(),
        findRow(service, location, section).map(AskedOf::specified).orElse(null));
  }

  /** True where the project has a table of its own that says nothing about such an element. */
  boolean specificationIsSilent(Service service, String location, Section section) {
    return !demands.rows().isEmpty() && findRow(service, location, section).isEmpty();
  }

  /** A cold medium that the mean air does not warm costs nothing, nor does a hot one it warms. */
  private static boolean costs(Service service, @Nullable Double mediumC, double meanC) {
    return switch (service.material()) {
      case "cold" -> mediumC != null && mediumC < meanC;
      case "hot" -> mediumC != null && mediumC > meanC;
      default -> true;
    };
  }

  private Asked.@Nullable Frost findFrost(Service service, String location) {
    DemandSettings.FrostRule frost = demands.frost();
    if (frost == null || !frost.locations().contains(location)) {
      return null;
    }
    List<String> only = frost.services();
    boolean meant = only == null ? service.medium().equals("water") : only.contains(service.id());
    return meant ? frost.asked() : null;
  }

  private Optional<SpecificationRow> findRow(Service service, String location, Section section) {
    double sizeM = section.largestSideM();
    return demands.rows().stream()
        .filter(row -> row.fits(service.id(), location, sizeM))
        .findFirst();
  }

  private static Asked.Specified specified(SpecificationRow row) {
    String source = row.source();
    return new Asked.Specified(
        row.thicknessMm() / 1000, source == null ? "settings: specification" : source);
  }
}
