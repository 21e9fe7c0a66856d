package org.lagwright.ifc.geometry;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * What else is known of an element. Used only where its geometry has more than one reading, never
 * to overrule it.
 *
 * @param portsM world positions of its ports in metres; empty if unknown
 * @param lengthPropertyM length from a property in metres, null if none
 * @param straight true if the element is a straight segment
 * @param sides sides of a rectangular section that properties or names give; asked only where the
 *     body has several readings
 * @param diametersM outside diameters in metres that properties give; they tell whether the corners
 *     of a polygon stand on the circle or around it
 */
public record ShapeHints(
    List<Point> portsM,
    @Nullable Double lengthPropertyM,
    boolean straight,
    Supplier<Optional<Section>> sides,
    Supplier<List<Double>> diametersM) {

  /** Nothing else is known. */
  public static final ShapeHints NONE = new ShapeHints(List.of(), null, false);

  public ShapeHints {
    portsM = List.copyOf(portsM);
  }

  /** Hints where nothing gives a size. */
  public ShapeHints(List<Point> portsM, @Nullable Double lengthPropertyM, boolean straight) {
    this(portsM, lengthPropertyM, straight, Optional::empty, List::of);
  }
}
