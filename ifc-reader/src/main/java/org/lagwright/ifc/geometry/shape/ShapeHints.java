package org.lagwright.ifc.geometry.shape;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;

/**
 * What else is known of an element. Used only where its geometry has more than one reading, never
 * to overrule it.
 *
 * @param portsM world positions of its ports in metres; empty if unknown
 * @param lengthPropertyM length from a property in metres, null if none
 * @param straight true if the element is a straight segment
 * @param stated what properties and names give; asked only where the body has several readings
 */
public record ShapeHints(
    List<Point> portsM, @Nullable Double lengthPropertyM, boolean straight, StatedSizes stated) {

  /** Nothing else is known. */
  public static final ShapeHints NONE = new ShapeHints(List.of(), null, false);

  public ShapeHints {
    portsM = List.copyOf(portsM);
  }

  /** Hints where nothing gives a size. */
  public ShapeHints(List<Point> portsM, @Nullable Double lengthPropertyM, boolean straight) {
    this(portsM, lengthPropertyM, straight, StatedSizes.NONE);
  }
}
