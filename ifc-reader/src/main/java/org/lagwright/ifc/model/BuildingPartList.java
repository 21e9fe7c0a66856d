package org.lagwright.ifc.model;

import java.util.AbstractList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Parts of the building that are read from the file when somebody looks at them, once. A takeoff
 * that nobody asks for clearance never does. Cannot be changed.
 */
public abstract class BuildingPartList extends AbstractList<BuildingPart> {

  private @Nullable List<BuildingPart> parts;

  /** All of them, read now. */
  protected abstract List<BuildingPart> read();

  private synchronized List<BuildingPart> parts() {
    if (parts == null) {
      parts = List.copyOf(read());
    }
    return parts;
  }

  @Override
  public BuildingPart get(int index) {
    return parts().get(index);
  }

  @Override
  public int size() {
    return parts().size();
  }
}
