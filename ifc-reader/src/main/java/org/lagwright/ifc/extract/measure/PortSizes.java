package org.lagwright.ifc.extract.measure;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.measure.Neighbours.Found;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Sizes that stand in the properties of a port, such as its nominal diameter. */
public final class PortSizes {

  private final PropertyReader properties;
  private final double lengthUnitM;

  /** Reads sizes of ports of a file, whose unit of length is given in metres. */
  public PortSizes(PropertyReader properties, double lengthUnitM) {
    this.properties = properties;
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * The outside of a pipe: stated, or by table from the nominal size; or the sides of a duct, or
   * its diameter, which is its nominal size. Empty if the port states none.
   */
  Optional<Found> of(Port port, boolean duct) {
    if (!port.isInFile()) {
      return Optional.empty();
    }
    List<Property> own = properties.wantedOf(port.step()).properties();
    if (own.isEmpty()) {
      return Optional.empty();
    }
    Found size = round(own, PropertyNames.Role.OUTSIDE_DIAMETER);
    size = size == null ? nominal(own, duct) : size;
    size = size == null ? sides(own) : size;
    return Optional.ofNullable(size == null ? round(own, PropertyNames.Role.DIAMETER) : size);
  }

  private @Nullable Found round(List<Property> own, PropertyNames.Role role) {
    for (Property p : PropertyNames.listOf(own, role)) {
      Optional<Double> diameterM = sizeM(p);
      if (diameterM.isPresent()) {
        return found(new Section.Round(diameterM.get()), p);
      }
    }
    return null;
  }

  private static @Nullable Found nominal(List<Property> own, boolean duct) {
    for (Property p : PropertyNames.listOf(own, PropertyNames.Role.NOMINAL)) {
      Optional<Double> mm = NominalSizes.figureMm(p);
      Section section = mm.isEmpty() ? null : nominal(mm.get(), duct);
      if (section != null) {
        return found(section, p);
      }
    }
    return null;
  }

  private static @Nullable Section nominal(double mm, boolean duct) {
    if (!duct) {
      return NominalSizes.section(mm).orElse(null);
    }
    return mm >= 1000 * Sizes.SMALLEST_SIDE_M ? new Section.Round(mm / 1000) : null;
  }

  /** The sides of a duct; a width without a height is a diameter. */
  private @Nullable Found sides(List<Property> own) {
    List<Property> widths = PropertyNames.listOf(own, PropertyNames.Role.WIDTH);
    List<Property> heights = PropertyNames.listOf(own, PropertyNames.Role.HEIGHT);
    Optional<Double> widthM = widths.isEmpty() ? Optional.empty() : sizeM(widths.get(0));
    Optional<Double> heightM = heights.isEmpty() ? Optional.empty() : sizeM(heights.get(0));
    if (widthM.isEmpty()) {
      return null;
    }
    Section section =
        heightM.isPresent()
            ? new Section.Rectangular(widthM.get(), heightM.get())
            : new Section.Round(widthM.get());
    return found(section, widths.get(0));
  }

  private Optional<Double> sizeM(Property property) {
    return PropertyLengths.sizeM(property, lengthUnitM);
  }

  private static Found found(Section section, Property p) {
    return Found.stated(section, new Evidence(p.step(), "port " + p.set(), p.name(), p.text()));
  }
}
