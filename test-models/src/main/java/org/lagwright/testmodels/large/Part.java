package org.lagwright.testmodels.large;

import java.util.List;
import java.util.Locale;
import org.lagwright.testmodels.demo.Shapes;
import org.lagwright.testmodels.demo.Size;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.Vec;

/**
 * One element of a line.
 *
 * @param mark a number that no other element has
 * @param form as {@code straight}, {@code bend}, {@code tee}, {@code reducer}, {@code valve-body},
 *     {@code damper}
 * @param from size at the start
 * @param to size at the end, of a tee that of the branch
 * @param lengthTenths along z, tenths of a millimetre
 * @param start where it begins: z along the line, x to where it turns or branches
 */
record Part(
    long mark, String form, boolean air, Size from, Size to, long lengthTenths, Frame start) {

  /** An end: where and which way out. */
  record Port(Vec at, Vec out, boolean source) {}

  String kind() {
    return switch (form) {
      case "straight" -> air ? "duct-segment" : "pipe-segment";
      case "valve-body" -> "valve";
      case "damper" -> "inline";
      default -> air ? "duct-fitting" : "pipe-fitting";
    };
  }

  /** The words of the type, and its key within the file. */
  String typeName() {
    String words =
        switch (form) {
          case "straight" -> air ? "Duct" : "Pipe";
          case "valve-body" -> "Ball valve";
          default -> form.substring(0, 1).toUpperCase(Locale.ROOT) + form.substring(1);
        };
    return words + " " + sizes();
  }

  ElementClass what() {
    return switch (kind()) {
      case "pipe-segment" -> ElementClass.PIPE_SEGMENT;
      case "duct-segment" -> ElementClass.DUCT_SEGMENT;
      case "pipe-fitting" -> ElementClass.PIPE_FITTING;
      case "duct-fitting" -> ElementClass.DUCT_FITTING;
      case "valve" -> ElementClass.VALVE;
      default -> ElementClass.DAMPER;
    };
  }

  String predefined() {
    return switch (form) {
      case "straight" -> "RIGIDSEGMENT";
      case "bend" -> "BEND";
      case "tee" -> "JUNCTION";
      case "reducer" -> "TRANSITION";
      case "valve-body" -> "ISOLATING";
      default -> "BALANCINGDAMPER";
    };
  }

  /** The sizes of the ends: one where they are equal, else {@code 60.3-48.3}. */
  String sizes() {
    return from.equals(to) ? from.label() : from.label() + "-" + to.label();
  }

  double lengthMm() {
    return lengthTenths / 10.0;
  }

  /** Centre-line radius of a bend; rectangular ducts turn over their width. */
  double radiusMm() {
    return from.bendRadius(from instanceof Size.Rectangular duct ? duct.width() : from.largest());
  }

  /** Where the next element begins. */
  Frame end() {
    Vec z = start.z();
    Vec x = start.x();
    if (form.equals("bend")) {
      // the next bend turns back
      return new Frame(start.origin().plus(z.plus(x).times(radiusMm())), x, z);
    }
    return new Frame(start.origin().plus(z.times(lengthMm())), z, x);
  }

  List<Port> ports() {
    Port in = new Port(start.origin(), start.z().times(-1), false);
    Port out = new Port(end().origin(), end().z(), true);
    if (!form.equals("tee")) {
      return List.of(in, out);
    }
    Vec middle = start.origin().plus(start.z().times(lengthMm() / 2));
    Vec branch = middle.plus(start.x().times(Shapes.teeBranch(from, to)));
    return List.of(in, out, new Port(branch, start.x(), true));
  }

  List<Body.Placed> bodies() {
    return switch (form) {
      case "straight" -> List.of(new Body.Extrusion(from.drawn(), lengthMm()).inPlace());
      case "bend" -> List.of(new Body.Revolution(from.drawn(), radiusMm(), 90).inPlace());
      case "tee" -> Shapes.tee(from, to, false);
      case "reducer" -> List.of(Shapes.reducer(from, to, lengthMm()).inPlace());
      case "valve-body" -> Shapes.valve(from, lengthMm());
      default -> List.of(new Body.Extrusion(from.outer(), lengthMm()).inPlace());
    };
  }
}
