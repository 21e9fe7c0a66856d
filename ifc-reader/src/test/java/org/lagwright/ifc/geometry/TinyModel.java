package org.lagwright.ifc.geometry;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;

/**
 * A file of one product, #1, with placement #2 and body #4. Tests add the placement and the body
 * items. Numbers from 100 on are free.
 */
public final class TinyModel {

  public static final GeometryUnits MM_RAD = new GeometryUnits(0.001, 1);
  public static final GeometryUnits MM_DEG = new GeometryUnits(0.001, Math.PI / 180);
  public static final GeometryUnits METRES = new GeometryUnits(1, 1);

  /** Directions and a placement at the origin, for all tests to use. */
  private static final String COMMON =
      """
      #1=IFCPIPESEGMENT('0123456789012345678901',$,$,$,$,#2,#3,$,$);
      #10=IFCCARTESIANPOINT((0.,0.,0.));
      #11=IFCDIRECTION((1.,0.,0.));
      #12=IFCDIRECTION((0.,1.,0.));
      #13=IFCDIRECTION((0.,0.,1.));
      #14=IFCAXIS2PLACEMENT3D(#10,$,$);
      #15=IFCCARTESIANPOINT((0.,0.));
      #16=IFCAXIS2PLACEMENT2D(#15,$);
      """;

  public static final String AT_ORIGIN = "#2=IFCLOCALPLACEMENT($,#14);\n";

  private TinyModel() {}

  /** A file with these records and nothing else. */
  public static IfcFile file(String records) {
    return file("IFC4", records);
  }

  private static IfcFile file(String schema, String records) {
    String text =
        "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\n"
            + "FILE_NAME('','',(''),(''),'','','');\nFILE_SCHEMA(('"
            + schema
            + "'));\nENDSEC;\nDATA;\n"
            + records
            + "ENDSEC;\nEND-ISO-10303-21;\n";
    return IfcFile.open(
        StepBytes.of(text.getBytes(StandardCharsets.UTF_8)), StepLimits.DEFAULT, read -> {});
  }

  /** The product with its placement and the items of its body. */
  public static IfcFile body(String placement, String items, String records) {
    return body("IFC4", placement, items, records);
  }

  public static IfcFile body(String schema, String placement, String items, String records) {
    String body =
        "#3=IFCPRODUCTDEFINITIONSHAPE($,$,(#4));\n#4=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',("
            + items
            + "));\n";
    return file(schema, COMMON + placement + body + records);
  }

  public static IfcFile withCommon(String records) {
    return file(COMMON + records);
  }

  public static Shape measure(IfcFile file, GeometryUnits units, ShapeHints hints) {
    Placements placements = new Placements(file, units);
    return new ShapeMeasurer(file, units, placements).measure(product(file), hints);
  }

  /** Measures the body item #100 of a product at the origin. */
  public static Shape item(GeometryUnits units, ShapeHints hints, String records) {
    return measure(body(AT_ORIGIN, "#100", records), units, hints);
  }

  public static Shape item(GeometryUnits units, String records) {
    return item(units, ShapeHints.NONE, records);
  }

  public static IfcRecord product(IfcFile file) {
    IfcRecord product = file.find(1);
    if (product == null) {
      throw new AssertionError("the file has no #1");
    }
    return product;
  }

  public static ShapeHints segmentWithPorts(Point... ports) {
    return new ShapeHints(List.of(ports), null, true);
  }
}
