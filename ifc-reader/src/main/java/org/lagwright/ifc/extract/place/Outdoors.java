package org.lagwright.ifc.extract.place;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.YesNo;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.schema.IfcRecord;

/** Whether a space is outdoors, as far as the file tells. */
final class Outdoors {

  private Outdoors() {}

  /**
   * IFC2X3 says it in an attribute, later schemas in the predefined type, by their class, or in a
   * property. What the predefined type or attribute calls internal is internal.
   */
  static @Nullable Boolean isOutdoors(
      IfcRecord space, @Nullable IfcRecord itsType, List<Property> properties) {
    if (isEarth(space)) {
      return null;
    }
    String told = space.enumeration("InteriorOrExteriorSpace");
    String own = space.enumeration("PredefinedType");
    String type = own == null && itsType != null ? itsType.enumeration("PredefinedType") : own;
    if (space.is("IfcExternalSpatialStructureElement")
        || "EXTERNAL".equals(told)
        || "EXTERNAL".equals(type)) {
      return true;
    }
    Property stated = stated(properties);
    if (stated != null) {
      return YesNo.of(stated);
    }
    return "INTERNAL".equals(told) || "INTERNAL".equals(type) ? Boolean.FALSE : null;
  }

  /** The property that says whether something is outdoors, null if none does. */
  static @Nullable Property stated(List<Property> properties) {
    for (Property p : PropertyNames.listOf(properties, PropertyNames.Role.EXTERNAL)) {
      if (p.name().equalsIgnoreCase("IsExternal") && YesNo.of(p) != null) {
        return p;
      }
    }
    return null;
  }

  /** True for the ground around a building, which is neither outdoors nor indoors. */
  static boolean isEarth(IfcRecord space) {
    return space.is("IfcExternalSpatialStructureElement")
        && "EXTERNAL_EARTH".equals(space.enumeration("PredefinedType"));
  }
}
