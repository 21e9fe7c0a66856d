package org.lagwright.ifc.extract;

import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.extract.Neighbours.Found;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Sizes that stand in the properties of a port, such as its nominal diameter. */
final class PortSizes {

  private final PropertyReader properties;
  private final double lengthUnitM;

  PortSizes(PropertyReader properties, double lengthUnitM) {
    this.properties = properties;
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * The outside of a pipe: stated, or by table from the nominal size; or the sides of a duct. Empty
   * if the port states none.
   */
  Optional<Found> of(Port port) {
    if (!port.isInFile()) {
      return Optional.empty();
    }
    List<Property> own = properties.wantedOf(port.step()).properties();
    if (own.isEmpty()) {
      return Optional.empty();
    }
    return round(own, PropertyNames.Role.OUTSIDE_DIAMETER)
        .or(() -> nominal(own))
        .or(() -> sides(own))
        .or(() -> round(own, PropertyNames.Role.DIAMETER));
  }

  private Optional<Found> round(List<Property> own, PropertyNames.Role role) {
    return PropertyNames.of(own, role)
        .flatMap(p -> sizeM(p).map(m -> found(new Section.Round(m), p)).stream())
        .findFirst();
  }

  private static Optional<Found> nominal(List<Property> own) {
    return PropertyNames.of(own, PropertyNames.Role.NOMINAL)
        .flatMap(p -> NominalSizes.section(p).map(s -> found(s, p)).stream())
        .findFirst();
  }

  private Optional<Found> sides(List<Property> own) {
    Optional<Property> width = PropertyNames.of(own, PropertyNames.Role.WIDTH).findFirst();
    Optional<Double> widthM = width.flatMap(this::sizeM);
    Optional<Double> heightM =
        PropertyNames.of(own, PropertyNames.Role.HEIGHT).findFirst().flatMap(this::sizeM);
    return widthM.isPresent() && heightM.isPresent()
        ? Optional.of(
            found(new Section.Rectangular(widthM.get(), heightM.get()), width.orElseThrow()))
        : Optional.empty();
  }

  private Optional<Double> sizeM(Property property) {
    return PropertyNames.sizeM(property, lengthUnitM);
  }

  private static Found found(Section section, Property p) {
    return new Found(section, new Evidence(p.step(), "port " + p.set(), p.name(), p.text()));
  }
}
