package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.model.Property;

/**
 * What the file says of an element in words.
 *
 * @param properties those that answer some question about the element
 */
public record Worded(String ifcClass, Names names, List<Property> properties) {

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
