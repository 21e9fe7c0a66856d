package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/** Where an element of a file that was read ends, after its body was let go of. */
public final class ReadEnds {

  private ReadEnds() {}

  /** At its joints, and where nothing is joined. */
  public static List<OpenEnd> of(MepElement element) {
    List<OpenEnd> ends = new ArrayList<>(element.openEnds());
    for (Port port : element.ports()) {
      Point atM = port.positionM();
      boolean joined = atM != null && !port.tap() && port.connectedTo() != null;
      if (atM != null && joined && !isKnown(ends, atM)) {
        ends.add(new OpenEnd(atM, port.direction(), null));
      }
    }
    return ends;
  }

  /** An end that another file joined is open in its own. */
  private static boolean isKnown(List<OpenEnd> ends, Point atM) {
    return ends.stream().anyMatch(e -> e.positionM().distanceM(atM) < Drawn.SAME_PLACE_M);
  }
}
