package org.lagwright.ifc.oracle;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.BodyFigures;
import org.lagwright.ifc.geometry.BodyMeasurer;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * What our reader measures of a product.
 *
 * @param figures box, volume and areas of its body
 * @param shape the shape that a takeoff counts with
 */
record OurBody(IfcRecord product, BodyFigures figures, Shape shape) {

  /** All elements of a file that have a representation. */
  static List<OurBody> all(IfcFile file, GeometryUnits units) {
    Placements placements = new Placements(file, units);
    BodyMeasurer bodies = new BodyMeasurer(file, units, placements);
    ShapeMeasurer shapes = new ShapeMeasurer(file, units, placements);
    List<OurBody> all = new ArrayList<>();
    for (IfcRecord product : file.all("IfcElement")) {
      if (product.has("Representation")) {
        ShapeHints hints = new ShapeHints(List.of(), null, product.is("IfcFlowSegment"));
        all.add(
            new OurBody(product, bodies.figures(product, hints), shapes.measure(product, hints)));
      }
    }
    return all;
  }

  /**
   * True if its body is drawn once, as one item. Several items may overlap, and files that list a
   * representation twice are drawn twice by some programs.
   */
  boolean isOneItem() {
    IfcRecord shapeRecord = product.ref("Representation");
    if (shapeRecord == null) {
      return false;
    }
    List<IfcRecord> representations = shapeRecord.refs("Representations");
    return representations.size() == 1 && isOneItem(representations.get(0));
  }

  private static boolean isOneItem(IfcRecord representation) {
    List<IfcRecord> items = representation.refs("Items");
    if (items.size() != 1) {
      return false;
    }
    IfcRecord item = items.get(0);
    IfcRecord map = item.is("IfcMappedItem") ? item.ref("MappingSource") : null;
    IfcRecord mapped = map == null ? null : map.ref("MappedRepresentation");
    return mapped == null || isOneItem(mapped);
  }

  String name() {
    return "#" + product.id() + " " + product.entityName() + " '" + product.text("Name") + "'";
  }
}
