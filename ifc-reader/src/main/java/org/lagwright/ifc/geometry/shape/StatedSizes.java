package org.lagwright.ifc.geometry.shape;

import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Section;

/** Sizes that properties and names of an element give, looked up when they are asked. */
public interface StatedSizes {

  /** Nothing gives a size. */
  StatedSizes NONE = new Known(Optional.empty(), List.of());

  /** Sides of a rectangular section. */
  Optional<Section> sides();

  /**
   * Outside diameters in metres; they tell whether the corners of a polygon stand on the circle or
   * around it.
   */
  List<Double> diametersM();

  /** Sizes that need not be looked up. */
  record Known(Optional<Section> sides, List<Double> diametersM) implements StatedSizes {
    public Known {
      diametersM = List.copyOf(diametersM);
    }
  }
}
