package org.lagwright.ifc.extract;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lagwright.ifc.model.Property;

/** Which property answers which question, by its name in any of several languages. */
final class PropertyNames {

  /** The questions of property-names.txt. */
  enum Role {
    OUTSIDE_DIAMETER,
    INSIDE_DIAMETER,
    WALL,
    NOMINAL,
    DIAMETER,
    WIDTH,
    HEIGHT,
    LENGTH,
    ANGLE,
    BEND_RADIUS,
    INSULATION_THICKNESS,
    INSULATION_MATERIAL,
    COVERING_THICKNESS
  }

  private static final Map<Role, Set<String>> NAMES = new HashMap<>();

  static {
    for (String line : Resource.lines("property-names.txt")) {
      int colon = line.indexOf(':');
      Role role = Role.valueOf(line.substring(0, colon).toUpperCase(Locale.ROOT).replace('-', '_'));
      NAMES.put(
          role,
          Arrays.stream(line.substring(colon + 1).split(","))
              .map(String::trim)
              .collect(Collectors.toUnmodifiableSet()));
    }
  }

  private PropertyNames() {}

  /** Properties that answer a question, in the order of the element. */
  static Stream<Property> of(List<Property> properties, Role role) {
    Set<String> names = NAMES.getOrDefault(role, Set.of());
    return properties.stream().filter(p -> names.contains(bare(p.name())));
  }

  /** The name without case, accents, spaces and punctuation. */
  private static String bare(String name) {
    return Words.fold(name).replaceAll("[^\\p{L}\\p{N}]", "");
  }

  /**
   * A length in metres that is above zero. Untyped numbers and texts are taken in the length unit
   * of the file, unless the name says another one.
   *
   * @param lengthUnitM metres in one length unit of the file
   */
  static Optional<Double> lengthM(Property property, double lengthUnitM) {
    Double number = property.number();
    String measure = property.measure();
    double value;
    if (number != null && measure != null && measure.contains("LENGTHMEASURE")) {
      value = number;
    } else if (number != null) {
      value = number * unitInName(property.name(), lengthUnitM);
    } else {
      value = leadingNumber(property.text()) * unitInName(property.name(), lengthUnitM);
    }
    return value > 0 && Double.isFinite(value) ? Optional.of(value) : Optional.empty();
  }

  private static double unitInName(String name, double lengthUnitM) {
    String folded = Words.fold(name);
    if (folded.contains("(mm)") || folded.contains("[mm]")) {
      return 0.001;
    }
    return folded.contains("(m)") || folded.contains("[m]") ? 1 : lengthUnitM;
  }

  /** The number a text consists of; NaN if it is not just a number. */
  static double leadingNumber(String text) {
    String trimmed = text.trim().replace(',', '.');
    return trimmed.matches("[+-]?\\d+(\\.\\d*)?") ? Double.parseDouble(trimmed) : Double.NaN;
  }
}
