package org.lagwright.takeoff;

import java.util.Objects;
import java.util.Optional;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.heat.StillAir;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.Service;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.thickness.Conditions;
import org.lagwright.takeoff.thickness.Exposure;

/** What an element meets where it is: its medium, its material, the air or soil around, demands. */
final class ElementConditions {

  private final ServicePack services;
  private final Settings settings;
  private final MaterialPack materials;
  private final AskedOf asked;

  ElementConditions(
      ServicePack services, Settings settings, MaterialPack materials, AskedOf asked) {
    this.services = services;
    this.settings = settings;
    this.materials = materials;
    this.asked = asked;
  }

  /** The material of the settings; of contradicting services that of the colder one. */
  MaterialFamily material(Classification classification) {
    Service service = services.service(classification.serviceId());
    String rivalId = classification.contradiction();
    Service deciding =
        Optional.ofNullable(rivalId)
            .map(services::service)
            .filter(rival -> isColder(rival, service))
            .orElse(service);
    String materialId = settings.materials().get(deciding.material());
    return materials.family(Objects.requireNonNull(materialId, deciding.material()));
  }

  private boolean isColder(Service one, Service other) {
    Double a = services.temperatureRow(one).condensationC();
    Double b = services.temperatureRow(other).condensationC();
    return a != null && (b == null || a < b);
  }

  /** What the thickness is worked out from; what lies in soil is not kept dry. */
  Conditions conditions(
      MepElement element,
      Classification classification,
      Section section,
      String location,
      MaterialFamily material) {
    Exposure exposure = exposure(location, element);
    Service service = services.service(classification.serviceId());
    Double condensationC = exposure.isBuried() ? null : classification.condensationC();
    Double heatMediumC =
        Optional.ofNullable(classification.energyC()).orElse(classification.condensationC());
    return new Conditions(
        section,
        LaggedElements.isDuct(element, classification, services),
        condensationC,
        classification.energyC(),
        exposure,
        settings.condensationMarginK(),
        material.id(),
        settings.energyRule(),
        services.findGiven(settings.thicknessesM(), service),
        location,
        service.family(),
        asked.of(service, location, section, heatMediumC, exposure.meanC()));
  }

  private Exposure exposure(String location, MepElement element) {
    Settings.Air air = Objects.requireNonNull(settings.air().get(location), location);
    Settings.Ground ground = settings.ground();
    return new Exposure(
        air.temperatureC(),
        air.relativeHumidityPct(),
        air.meanTemperatureC(),
        air.windMPerS(),
        Objects.requireNonNullElse(air.surfaceEmissivity(), settings.surfaceEmissivity()),
        new StillAir(settings.surfaceCoefficients(), Riser.is(element)),
        location.equals(Locations.BURIED)
            ? new Exposure.Soil(ground.depthM(), ground.soilWPerMK())
            : null);
  }
}
