package org.lagwright.ifc.packed;

import org.lagwright.ifc.model.PropertyList;

/** Where the properties of elements come from. */
public interface PropertySource {

  /**
   * Those of an element.
   *
   * @param step its instance number
   * @param count how many there are, {@link PropertyList#UNCOUNTED} if that is not known
   */
  PropertyList propertiesOf(long step, int count);
}
