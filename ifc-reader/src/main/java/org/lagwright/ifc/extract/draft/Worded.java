package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.PropertyNames.Role;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.model.Property;

/**
 * What the file says of an element in words.
 *
 * @param properties those that answer some question about the element
 */
public record Worded(String ifcClass, Names names, List<Property> properties) {

  private static final List<Role> OF_INSULATION =
      List.of(
          Role.INSULATION_THICKNESS,
          Role.INSULATION_MATERIAL,
          Role.INSULATION_OR_SHUT_OFF,
          Role.LINING_THICKNESS,
          Role.LINING);

  /** True if a property or a name may state insulation on it or a lining in it. */
  boolean statesInsulation() {
    for (int i = 0; i < OF_INSULATION.size(); i++) {
      if (PropertyNames.anyAnswers(properties, OF_INSULATION.get(i))) {
        return true;
      }
    }
    return Thicknesses.anyInSetOfInsulation(properties) || names.callInsulated();
  }

  /** What is still asked for once the element is measured. */
  Worded afterMeasuring() {
    List<Property> left = new ArrayList<>();
    for (Property property : properties) {
      if (PropertyNames.areAskedLast(property)) {
        left.add(property);
      }
    }
    return left.size() == properties.size() ? this : new Worded(ifcClass, names, List.copyOf(left));
  }
}
