package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.step.StepLimits;

/** Measures body items of every class that is read, and decides between several of them. */
final class Solids {

  private final Extrusions extrusions;

  Solids(Coordinates coordinates, StepLimits limits) {
    Curves curves = new Curves(coordinates);
    Profiles profiles = new Profiles(coordinates, curves);
    this.extrusions = new Extrusions(coordinates, profiles);
  }

  Shape measure(List<Item> items, ShapeHints hints) {
    List<Shape> shapes = new ArrayList<>();
    for (Item item : items) {
      shapes.add(measure(item, hints));
    }
    Shape largest = shapes.get(0);
    for (Shape shape : shapes) {
      largest = weight(shape) > weight(largest) ? shape : largest;
    }
    return largest;
  }

  private static double weight(Shape shape) {
    Section section = shape.section() == null ? null : shape.section().value();
    Double lengthM = shape.lengthM() == null ? null : shape.lengthM().value();
    return section == null ? 0 : section.perimeterM() * (lengthM == null ? 0.001 : lengthM);
  }

  private Shape measure(Item item, ShapeHints hints) {
    return switch (item.record().entityName()) {
      case "IfcExtrudedAreaSolid", "IfcExtrudedAreaSolidTapered" -> extrusions.measure(item, hints);
      default -> Shape.unmeasured(item.record() + " is not measured");
    };
  }
}
