package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/**
 * The shape that the joints of a fitting make, whatever its body: places and axes of its ports, or
 * of the ends that touch it.
 */
final class JointShape {

  private JointShape() {}

  /** The shape, null if a place or an axis is unknown, or no size at all. */
  static @Nullable Shape of(Draft draft, List<Neighbours.Joint> joints) {
    Section any = anySize(draft, joints);
    if (any == null || joints.size() < 2 || joints.size() > 4) {
      return null;
    }
    List<ShapeEnd> ends = new ArrayList<>();
    for (Neighbours.Joint joint : joints) {
      Point atM = joint.port().positionM();
      Point outward = joint.outward();
      if (atM == null || outward == null) {
        return null;
      }
      Neighbours.Found known = joint.known();
      ends.add(new ShapeEnd(atM, outward, known == null ? any : known.section()));
    }
    return Shape.ofEnds(ends, how(joints), evidence(draft, joints));
  }

  private static @Nullable Section anySize(Draft draft, List<Neighbours.Joint> joints) {
    Measured<Section> drawn = draft.shape().section();
    Section any = drawn == null ? null : drawn.value();
    for (Neighbours.Joint joint : joints) {
      Neighbours.Found known = joint.known();
      any = known == null ? any : known.section();
    }
    return any;
  }

  private static How how(List<Neighbours.Joint> joints) {
    for (Neighbours.Joint joint : joints) {
      if (!joint.port().isInFile()) {
        return How.NEIGHBOUR;
      }
    }
    return How.PORTS;
  }

  private static Evidence evidence(Draft draft, List<Neighbours.Joint> joints) {
    StringBuilder ids = new StringBuilder();
    for (Neighbours.Joint joint : joints) {
      ids.append(ids.isEmpty() ? "" : ", ").append(name(joint.port()));
    }
    String path = how(joints) == How.PORTS ? "axes of ports" : "axes of touching ends";
    return new Evidence(draft.step(), path, ids.toString());
  }

  private static String name(Port port) {
    return port.isInFile()
        ? "#" + port.step()
        : port.connectedTo() == null ? "" : "at #" + port.connectedTo().step();
  }
}
