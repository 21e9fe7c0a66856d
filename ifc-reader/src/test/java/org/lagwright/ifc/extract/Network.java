package org.lagwright.ifc.extract;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Writes pipes and fittings with ports or without, in millimetres; element n is record #n000. */
public final class Network {

  private final StringBuilder records = new StringBuilder();
  private int relations = 900_000;

  /** A straight round pipe or duct, without ports. */
  public Network straight(
      int n, String keyword, double[] at, double[] along, double lengthMm, double d) {
    element(n, keyword, "Pipe", "$", true);
    return round(n, at, along, lengthMm, d);
  }

  public Network pipe(int n, double[] at, double[] along, double lengthMm, double diameterMm) {
    return straight(n, "IFCPIPESEGMENT", at, along, lengthMm, diameterMm);
  }

  /** A fitting without a body. */
  public Network fitting(int n, String keyword, String name, String predefined) {
    element(n, keyword, name, predefined, false);
    return this;
  }

  /** A fitting drawn as one cylinder. */
  public Network drum(
      int n, String name, String predefined, double[] at, double[] along, double l, double d) {
    element(n, "IFCPIPEFITTING", name, predefined, true);
    return round(n, at, along, l, d);
  }

  /** An item of any class drawn as one cylinder; an empty enumeration is no argument at all. */
  public Network body(
      int n,
      String keyword,
      String name,
      @Nullable String predefined,
      double[] at,
      double[] along,
      double lengthMm,
      double diameterMm) {
    int id = n * 1000;
    add(
        "#%d=%s('%d',$,'%s',$,$,#%d,#%d,$%s);",
        id, keyword, n, name, id + 4, id + 1, predefined == null ? "" : "," + predefined);
    return round(n, at, along, lengthMm, diameterMm);
  }

  /**
   * An item drawn as one box, extruded from a rectangle whose x is level where the item stands and
   * upright where it lies.
   */
  public Network box(
      int n, String keyword, double[] at, double[] along, double l, double x, double y) {
    element(n, keyword, "Duct", "$", true);
    round(n, at, along, l, x);
    int profile = records.lastIndexOf("#%d=IFCCIRCLEPROFILEDEF".formatted(n * 1000 + 8));
    records.delete(profile, records.indexOf("\n", profile) + 1);
    add("#%d=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s);", n * 1000 + 8, number(x), number(y));
    return this;
  }

  private void element(int n, String keyword, String name, String predefined, boolean drawn) {
    add(
        "#%d=%s('%d',$,'%s',$,$,%s,%s,$,%s);",
        n * 1000,
        keyword,
        n,
        name,
        drawn ? "#" + (n * 1000 + 4) : "$",
        drawn ? "#" + (n * 1000 + 1) : "$",
        predefined);
  }

  private Network round(int n, double[] at, double[] along, double lengthMm, double diameterMm) {
    int id = n * 1000;
    add("#%d=IFCPRODUCTDEFINITIONSHAPE($,$,(#%d));", id + 1, id + 2);
    add("#%d=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#%d));", id + 2, id + 3);
    add("#%d=IFCEXTRUDEDAREASOLID(#%d,$,#%d,%s);", id + 3, id + 8, id + 9, number(lengthMm));
    placement(id + 4, at, along);
    add("#%d=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);", id + 8, number(diameterMm / 2));
    add("#%d=IFCDIRECTION((0.,0.,1.));", id + 9);
    return this;
  }

  private void placement(int id, double[] at, double[] z) {
    double[] x = Math.abs(z[2]) > 0.9 ? new double[] {1, 0, 0} : new double[] {0, 0, 1};
    add("#%d=IFCLOCALPLACEMENT($,#%d);", id, id + 1);
    add("#%d=IFCAXIS2PLACEMENT3D(#%d,#%d,#%d);", id + 1, id + 2, id + 3, id + 10);
    add("#%d=IFCCARTESIANPOINT(%s);", id + 2, triple(at));
    add("#%d=IFCDIRECTION(%s);", id + 3, triple(z));
    add("#%d=IFCDIRECTION(%s);", id + 10, triple(x));
  }

  /** A port of element n, port p of it, at a place with its axis out of the element. */
  public Network port(int n, int p, double[] at, double[] out) {
    int id = n * 1000 + 100 + p * 20;
    placement(id + 1, at, out);
    add("#%d=IFCDISTRIBUTIONPORT('p%d',$,$,$,$,#%d,$,.SOURCE.,.PIPE.,$);", id, id, id + 1);
    add("#%d=IFCRELNESTS('n%d',$,$,$,#%d,(#%d));", relations++, id, n * 1000, id);
    return this;
  }

  /** A port that is nowhere. */
  public Network unplacedPort(int n, int p) {
    int id = n * 1000 + 100 + p * 20;
    add("#%d=IFCDISTRIBUTIONPORT('p%d',$,$,$,$,$,$,.SOURCE.,.PIPE.,$);", id, id);
    add("#%d=IFCRELNESTS('n%d',$,$,$,#%d,(#%d));", relations++, id, n * 1000, id);
    return this;
  }

  public Network connect(int n, int p, int m, int q) {
    add(
        "#%d=IFCRELCONNECTSPORTS('c%d',$,$,$,#%d,#%d,$);",
        relations, relations, n * 1000 + 100 + p * 20, m * 1000 + 100 + q * 20);
    relations++;
    return this;
  }

  public Network record(String text) {
    records.append(text).append('\n');
    return this;
  }

  public MepModel read() {
    return read(0);
  }

  /** As a model at a position among several. */
  public MepModel read(int index) {
    return InlineModel.read(index, text());
  }

  /** The records as they stand in the file. */
  public String text() {
    return records.toString();
  }

  public MepElement element(int n) {
    return InlineModel.element(read(), n * 1000L);
  }

  public static double[] at(double x, double y, double z) {
    return new double[] {x, y, z};
  }

  private void add(String format, Object... values) {
    records.append(format.formatted(values)).append('\n');
  }

  private static String triple(double[] values) {
    return "(" + number(values[0]) + "," + number(values[1]) + "," + number(values[2]) + ")";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.6f", value);
  }
}
