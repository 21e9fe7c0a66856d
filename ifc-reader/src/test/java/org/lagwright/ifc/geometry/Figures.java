package org.lagwright.ifc.geometry;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** The figures of a shape; a missing one fails the test with the shape's own reasons. */
public final class Figures {

  private Figures() {}

  public static Measured<Section> section(Shape shape) {
    return known(shape.section(), shape);
  }

  public static Measured<Double> lengthM(Shape shape) {
    return known(shape.lengthM(), shape);
  }

  public static Measured<Double> angleDeg(Shape shape) {
    return known(shape.angleDeg(), shape);
  }

  public static Measured<Double> bendRadiusM(Shape shape) {
    return known(shape.bendRadiusM(), shape);
  }

  private static <T> Measured<T> known(@Nullable Measured<T> figure, Shape shape) {
    if (figure == null) {
      throw new AssertionError("not measured: " + shape.form() + " " + shape.problems());
    }
    return figure;
  }
}
