package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.geometry.shape.StatedSizes;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * Sizes that the properties and names of an element give.
 *
 * @param lengthUnitM metres in one length unit of the file
 */
record WordedSizes(List<Property> properties, Names names, double lengthUnitM)
    implements StatedSizes {

  @Override
  public Optional<Section> sides() {
    return SizeTexts.sides(properties, names, lengthUnitM);
  }

  @Override
  public List<Double> diametersM() {
    List<Double> diametersM = new ArrayList<>(1);
    for (Property p : PropertyNames.listOf(properties, PropertyNames.Role.OUTSIDE_DIAMETER)) {
      Optional<Double> diameterM = PropertyLengths.lengthM(p, lengthUnitM);
      if (diameterM.isPresent()) {
        diametersM.add(diameterM.get());
      }
    }
    return diametersM;
  }
}
