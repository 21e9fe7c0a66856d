package org.lagwright.ifc.geometry;

import java.util.Locale;
import java.util.Random;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.schema.IfcFile;

/**
 * A body somewhere in a building: random unit, random placement up to a false origin away, inside a
 * map or not, mirrored or not. The same seed gives the same setting.
 */
final class RandomSetting {

  private static final double[] UNITS_M = {1, 0.001, 0.01, 0.3048, 0.0254};
  private static final double[] REACH_M = {1, 100, 30_000};

  private final Random random;
  private final double unitM;
  private final boolean degrees;

  RandomSetting(long seed) {
    random = new Random(seed);
    unitM = UNITS_M[random.nextInt(UNITS_M.length)];
    degrees = random.nextBoolean();
  }

  GeometryUnits units() {
    return new GeometryUnits(unitM, degrees ? Math.PI / 180 : 1);
  }

  /** Volume and surface of a body written with {@link #n} and {@link #at}, put somewhere. */
  BodyFigures figures(String records) {
    IfcFile file = around("IFC4X3_ADD2", records);
    return new BodyMeasurer(file, units(), new Placements(file, units()))
        .figures(TinyModel.product(file), ShapeHints.NONE);
  }

  /** A length in the unit of the file. */
  String n(double metres) {
    return number(metres / unitM);
  }

  /** An angle in the unit of the file. */
  String angle(double rad) {
    return number(degrees ? Math.toDegrees(rad) : rad);
  }

  /** Coordinates in the unit of the file. */
  String at(double... metres) {
    StringBuilder text = new StringBuilder("(");
    for (double metre : metres) {
      text.append(text.length() == 1 ? "" : ",").append(n(metre));
    }
    return text + ")";
  }

  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.15e", value).replace('e', 'E');
    return text.contains(".") ? text : text.replace("E", ".E");
  }

  private String direction() {
    Vec v = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    return "(" + number(v.x()) + "," + number(v.y()) + "," + number(v.z()) + ")";
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** The product #1 whose body is the item #100 of the records. */
  IfcFile around(String schema, String records) {
    double reach = REACH_M[random.nextInt(REACH_M.length)];
    String placement =
        "#2=IFCLOCALPLACEMENT($,#90);\n#90=IFCAXIS2PLACEMENT3D(#91,#92,#93);\n"
            + "#91=IFCCARTESIANPOINT("
            + at(between(-reach, reach), between(-reach, reach), between(-reach, reach))
            + ");\n#92=IFCDIRECTION("
            + direction()
            + ");\n#93=IFCDIRECTION("
            + direction()
            + ");\n";
    boolean mapped = random.nextBoolean();
    return TinyModel.body(
        schema, placement, mapped ? "#80" : "#100", (mapped ? map() : "") + records);
  }

  /** A map whose target turns and, half the time, mirrors. */
  private String map() {
    boolean mirrored = random.nextBoolean();
    String y = mirrored ? "(0.,-1.,0.)" : "(0.,1.,0.)";
    return """
        #80=IFCMAPPEDITEM(#81,#82);
        #81=IFCREPRESENTATIONMAP(#14,#83);
        #82=IFCCARTESIANTRANSFORMATIONOPERATOR3D(#11,#84,#85,1.,#13);
        #83=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#100));
        #84=IFCDIRECTION(%s);
        #85=IFCCARTESIANPOINT(%s);
        """
        .formatted(y, at(between(-1, 1), between(-1, 1), between(-1, 1)));
  }
}
