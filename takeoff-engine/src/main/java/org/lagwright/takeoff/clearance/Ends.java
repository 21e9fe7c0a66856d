package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/** Where an element ends: its ports, and the ends that nothing is connected to. */
final class Ends {

  /** Ends nearer than this are one and the same. */
  private static final double SAME_M = 0.005;

  private Ends() {}

  /**
   * One end.
   *
   * @param at world position, metres
   * @param out unit vector away from the element, null where unknown
   * @param section outer section there
   */
  record End(Point at, @Nullable Point out, Section section) {}

  /**
   * The ends of an element. Places where others tap its side are none, unless nothing else is
   * known.
   *
   * @param section that of ends whose own is not known
   */
  static List<End> of(MepElement element, Section section) {
    List<End> ends = ends(element, section, false);
    return ends.size() < 2 ? ends(element, section, true) : ends;
  }

  private static List<End> ends(MepElement element, Section section, boolean taps) {
    List<End> ends = new ArrayList<>();
    List<Port> ports = element.ports();
    boolean told = element.ends().size() == ports.size();
    for (int i = 0; i < ports.size(); i++) {
      Port port = ports.get(i);
      if (port.positionM() != null && (taps || !port.tap())) {
        Section own = told ? element.ends().get(i) : section;
        add(ends, new End(port.positionM(), port.direction(), own));
      }
    }
    for (OpenEnd open : element.openEnds()) {
      Section own = open.section() == null ? section : open.section();
      add(ends, new End(open.positionM(), open.outward(), own));
    }
    return ends;
  }

  private static void add(List<End> ends, End end) {
    if (ends.stream().noneMatch(known -> known.at().distanceM(end.at()) < SAME_M)) {
      ends.add(end);
    }
  }
}
