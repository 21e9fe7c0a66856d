package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.ElementKey;

/** An element of one file that has others of it as its parts. */
public record Assembly(ElementKey whole, List<ElementKey> parts) {

  /** A whole and what it is made of. */
  public static Assembly of(Draft whole, List<Draft> parts) {
    List<ElementKey> keys = new ArrayList<>(parts.size());
    for (Draft part : parts) {
      keys.add(part.key());
    }
    return new Assembly(whole.key(), List.copyOf(keys));
  }
}
