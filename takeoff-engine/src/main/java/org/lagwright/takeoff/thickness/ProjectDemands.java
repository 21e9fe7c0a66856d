package org.lagwright.takeoff.thickness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.thickness.Demand.Kind;

/** The demands of {@link Asked}, in the order of {@link Kind}. */
final class ProjectDemands {

  private ProjectDemands() {}

  static List<Demand> of(Conditions conditions, MaterialFamily material) {
    Surround surround = new Surround(conditions, material);
    List<Demand> demands = new ArrayList<>();
    HeatLossDemand.find(surround).ifPresent(demands::add);
    TouchDemand.find(surround).ifPresent(demands::add);
    FrostDemand.find(surround).ifPresent(demands::add);
    EconomicDemand.find(surround).ifPresent(demands::add);
    findSpecified(conditions.asked()).ifPresent(demands::add);
    return demands;
  }

  private static Optional<Demand> findSpecified(Asked asked) {
    Asked.Specified specified = asked.specified();
    if (specified == null) {
      return Optional.empty();
    }
    Figures figures = new Figures().millimetres("thickness needed", specified.thicknessM());
    return Optional.of(
        new Demand(
            Kind.SPECIFICATION,
            specified.thicknessM(),
            "project-specification",
            specified.source(),
            figures.toMap()));
  }
}
