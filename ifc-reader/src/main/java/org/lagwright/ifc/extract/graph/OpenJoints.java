package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.model.Port;

/**
 * Joints of elements that are being added to. A main may have thousands of branches, and to write
 * all its joints anew for each would take ever longer; so they are written when some elements have
 * gathered, and at the end.
 */
final class OpenJoints {

  /** So few that they need little memory, so many that a long main is written seldom. */
  private static final int MOST = 1024;

  private final Map<Draft, List<Port>> open = new LinkedHashMap<>();

  /** The joints of an element, to be changed until {@link #rest} is called. */
  List<Port> of(Draft draft) {
    List<Port> joints = open.get(draft);
    if (joints == null) {
      joints = new ArrayList<>(draft.joints());
      open.put(draft, joints);
    }
    return joints;
  }

  /** Between two pieces of work: writes what has gathered, if that is much. */
  void rest() {
    if (open.size() >= MOST) {
      close();
    }
  }

  /** Writes all that is open. */
  void close() {
    for (Map.Entry<Draft, List<Port>> each : open.entrySet()) {
      each.getKey().join(each.getValue());
    }
    open.clear();
  }
}
