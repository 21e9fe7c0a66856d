package org.lagwright.takeoff.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.Direction;

/** Where an element ends: its ports, and the ends that nothing is connected to. */
public final class Ends {

  /** Ends nearer than this are one and the same. */
  private static final double SAME_M = 0.005;

  /** A length told and ends read apart by more than this is no straight piece. */
  private static final double LENGTH_TOLERANCE = 0.02;

  private static final double LEAST_M = 0.001;

  private Ends() {}

  /**
   * One end.
   *
   * @param at world position, metres
   * @param out unit vector away from the element, null where unknown
   * @param section outer section there
   */
  public record End(Point at, @Nullable Point out, Section section) {}

  /**
   * The ends of an element. Places where others tap its side are none, unless nothing else is
   * known.
   *
   * @param section that of ends whose own is not known
   */
  public static List<End> of(MepElement element, Section section) {
    List<End> ends = ends(element, section, false);
    return ends.size() < 2 ? ends(element, section, true) : ends;
  }

  /**
   * The ends that a body leads between: of a straight piece the two that are farthest apart, from
   * one known end and the length both.
   */
  public static List<End> ofBody(MepElement element, Section section) {
    List<End> ends = of(element, section);
    if (!element.kind().isSegment()) {
      return ends;
    }
    Measured<Double> lengthM = element.lengthM();
    if (ends.size() == 1 && ends.get(0).out() != null && lengthM != null) {
      End end = ends.get(0);
      Point out = Objects.requireNonNull(end.out());
      Point other = Direction.plus(end.at(), out, -lengthM.value());
      return List.of(end, new End(other, Direction.opposite(out), end.section()));
    }
    return farthest(ends);
  }

  /** The two that are farthest apart. */
  static List<End> farthest(List<End> ends) {
    List<End> farthest = ends;
    double mostM = LEAST_M;
    for (End one : ends) {
      for (End other : ends) {
        if (one.at().distanceM(other.at()) > mostM) {
          mostM = one.at().distanceM(other.at());
          farthest = List.of(one, other);
        }
      }
    }
    return farthest;
  }

  /** True where the length told is not that between the ends: a bent or flexible piece. */
  public static boolean isOtherThanStraight(MepElement element, List<End> ends) {
    double apartM = ends.get(0).at().distanceM(ends.get(1).at());
    return element.lengthM() != null
        && Math.abs(element.lengthM().value() - apartM)
            > Math.max(LENGTH_TOLERANCE * apartM, LEAST_M);
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
