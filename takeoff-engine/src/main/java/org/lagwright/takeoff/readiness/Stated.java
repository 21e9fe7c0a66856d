package org.lagwright.takeoff.readiness;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Property;
import org.lagwright.takeoff.readiness.Asked.AttributeFacet;
import org.lagwright.takeoff.readiness.Asked.PartOfFacet;
import org.lagwright.takeoff.readiness.Asked.PropertyFacet;

/**
 * Whether an element states what it is asked to. Attributes that only carry a reference, such as
 * the placement, are stated where the takeoff knows what comes of them.
 */
final class Stated {

  private static final String TEMPERATURE = "IFCTHERMODYNAMICTEMPERATUREMEASURE";
  private static final double ZERO_CELSIUS_K = 273.15;

  /** IDS 1.0 compares figures so. */
  private static final double TOLERANCE = 1e-6;

  /** What the reader writes where an element, or its space, is in the contents of a storey. */
  private static final String CONTAINED = "contained in IfcBuildingStorey";

  private Stated() {}

  /**
   * @param element one that the takeoff knows what is asked for of
   * @param properties those of the element, read once
   */
  static boolean by(Asked asked, MepElement element, List<Property> properties) {
    PropertyFacet property = asked.property();
    if (property != null) {
      return hasProperty(property, properties);
    }
    PartOfFacet partOf = asked.partOf();
    if (partOf != null) {
      return isPartOf(partOf, element);
    }
    return hasAttribute(asked.attribute(), element);
  }

  /** Where several properties answer, all must fit. */
  private static boolean hasProperty(PropertyFacet facet, List<Property> properties) {
    List<Property> answers =
        properties.stream()
            .filter(p -> facet.names().contains(p.name()))
            .filter(p -> facet.sets().isEmpty() || facet.sets().contains(p.set()))
            .toList();
    return !answers.isEmpty() && answers.stream().allMatch(p -> fits(facet, p));
  }

  private static boolean fits(PropertyFacet facet, Property property) {
    Double number = property.number();
    if (number == null || !facet.measure().equals(property.measure())) {
      return false;
    }
    double value = facet.measure().equals(TEMPERATURE) ? number + ZERO_CELSIUS_K : number;
    return value >= facet.from() - tolerance(facet.from())
        && value <= facet.to() + tolerance(facet.to());
  }

  private static double tolerance(double bound) {
    return TOLERANCE * (1 + Math.abs(bound));
  }

  private static boolean isPartOf(PartOfFacet facet, MepElement element) {
    return switch (facet.entity()) {
      case "IFCSYSTEM", "IFCDISTRIBUTIONSYSTEM" ->
          element.systems().stream().anyMatch(system -> isOf(facet.types(), system));
      case "IFCBUILDINGSTOREY" ->
          element.place().basis().stream().anyMatch(e -> e.path().equals(CONTAINED));
      default -> throw new IllegalStateException("cannot tell what is part of " + facet.entity());
    };
  }

  private static boolean isOf(List<String> types, MepSystem system) {
    String type = system.predefinedType();
    return types.isEmpty() || type != null && types.contains(type);
  }

  private static boolean hasAttribute(@Nullable AttributeFacet facet, MepElement element) {
    String pattern = facet == null ? null : facet.pattern();
    return pattern == null || Pattern.matches(pattern, element.globalId());
  }
}
