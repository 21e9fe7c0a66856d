package org.lagwright.ifc.extract.draft;

import java.util.List;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/**
 * Where an element lies and what it is connected to.
 *
 * @param ports as the file has them
 * @param joints the ports, and the ends that touch other elements; the ports first, in their order
 */
public record Drawn(Shape shape, List<Port> ports, List<Port> joints) {

  /**
   * An end of a body and a port or joint of the same element this near are one; they lie up to 15
   * mm apart in public files.
   */
  public static final double SAME_PLACE_M = 0.02;

  /** True if some joint is not as the file has it. */
  boolean areJoined() {
    return !joints.equals(ports);
  }

  /**
   * True if every port is connected and has its place in the file, and there are no more ends than
   * ports.
   */
  boolean isWhollyConnected() {
    boolean placed = shape.problems().contains(FarPorts.OUTSIDE);
    for (Port port : ports) {
      if (port.connectedTo() == null || (port.positionM() == null && !placed)) {
        return false;
      }
    }
    return ports.size() >= shape.ends().size();
  }

  /** True for a box that may run along another of its edges, as no port lies at its ends. */
  boolean mayLieOtherwise() {
    if (!shape.mayLieOtherwise()) {
      return false;
    }
    for (Port port : ports) {
      if (port.positionM() != null && isAnEnd(shape.ends(), port.positionM())) {
        return false;
      }
    }
    return true;
  }

  /** True if one of the drawn ends lies at a place. */
  public static boolean isAnEnd(List<ShapeEnd> drawn, Point atM) {
    return ShapeEnd.anyLiesAt(drawn, atM, SAME_PLACE_M);
  }

  /** What is still asked for once the element is measured: where it ends, and what went wrong. */
  Drawn afterMeasuring() {
    Shape ends = new Shape(shape.form(), null, null, null, null, shape.ends(), shape.problems());
    return new Drawn(ends, ports, joints);
  }

  /** As the file has it. */
  public static Drawn of(Shape shape, List<Port> ports) {
    return new Drawn(shape, ports, ports);
  }
}
