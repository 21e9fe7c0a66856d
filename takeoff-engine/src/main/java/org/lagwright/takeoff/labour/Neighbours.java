package org.lagwright.takeoff.labour;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Run;
import org.lagwright.takeoff.measure.Size;
import org.locationtech.jts.algorithm.CGAlgorithms3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * How crowded it is round an element: the number of other runs of pipe or duct that come within
 * reach of it anywhere, between bare surfaces. The run it belongs to and those that meet that run
 * at a branch do not count; neither do walls, beams and trays. Rectangular ducts count as round
 * ones of their longest side, bends as the straight line between their ends.
 */
public final class Neighbours {

  private final double reachM;
  private final STRtree tree = new STRtree();
  private final Map<ElementKey, Axis> axes = new HashMap<>();
  private final Map<ElementKey, Integer> runs = new HashMap<>();
  private final Map<Integer, Set<Integer>> meeting = new HashMap<>();

  /** Runs that meet at an element that is in none itself. */
  private final Map<ElementKey, Set<Integer>> branches = new HashMap<>();

  /** Centre line of an element; both ends are one where only its middle is known. */
  private record Axis(Coordinate from, Coordinate to, double radiusM, @Nullable Integer run) {

    Envelope reach(double beyondM) {
      Envelope envelope = new Envelope(from, to);
      envelope.expandBy(radiusM + beyondM);
      return envelope;
    }

    double clearM(Axis other) {
      return CGAlgorithms3D.distanceSegmentSegment(from, to, other.from, other.to)
          - radiusM
          - other.radiusM;
    }
  }

  /**
   * Looks at all pipes, ducts and what sits in them.
   *
   * @param reachM how close a run has to come, metres
   */
  public Neighbours(List<MepElement> elements, double reachM) {
    this.reachM = reachM;
    List<MepElement> lagged =
        elements.stream().filter(e -> e.kind().isLagged() && e.repeats() == null).toList();
    List<Run> found = Run.of(lagged);
    for (int i = 0; i < found.size(); i++) {
      for (ElementKey piece : found.get(i).pieces()) {
        runs.put(piece, i);
      }
    }
    lagged.forEach(this::meet);
    for (MepElement element : lagged) {
      Axis axis = axis(element);
      if (axis != null) {
        axes.put(element.key(), axis);
        tree.insert(axis.reach(0), axis);
      }
    }
    tree.build();
  }

  /** Runs that end at one element meet there. */
  private void meet(MepElement element) {
    Set<Integer> here = new HashSet<>();
    Integer own = runs.get(element.key());
    if (own != null) {
      here.add(own);
    }
    for (Port port : element.ports()) {
      Integer run = port.connectedTo() == null ? null : runs.get(port.connectedTo());
      if (run != null) {
        here.add(run);
      }
    }
    if (own == null) {
      branches.put(element.key(), here);
    }
    for (Integer run : here) {
      meeting.computeIfAbsent(run, k -> new HashSet<>()).addAll(here);
    }
  }

  /** The number of other runs within reach; 0 where the place of the element is not known. */
  public int count(ElementKey element) {
    Axis axis = axes.get(element);
    if (axis == null) {
      return 0;
    }
    Set<Integer> own = own(element, axis);
    Set<Integer> others = new HashSet<>();
    for (Object found : tree.query(axis.reach(reachM))) {
      Axis other = (Axis) found;
      if (other.run() != null && !own.contains(other.run()) && axis.clearM(other) <= reachM) {
        others.add(other.run());
      }
    }
    return others.size();
  }

  private Set<Integer> own(ElementKey element, Axis axis) {
    if (axis.run() != null) {
      return Objects.requireNonNull(meeting.get(axis.run()));
    }
    return branches.getOrDefault(element, Set.of());
  }

  private @Nullable Axis axis(MepElement element) {
    List<Coordinate> ends = new ArrayList<>();
    for (Port port : element.ports()) {
      add(ends, port.positionM());
    }
    for (OpenEnd end : element.openEnds()) {
      add(ends, end.positionM());
    }
    if (ends.size() < 2) {
      ends.clear();
      add(ends, element.place().positionM());
    }
    if (ends.isEmpty()) {
      return null;
    }
    double radiusM = Size.findDecidingSection(element).map(s -> s.largestSideM() / 2).orElse(0.0);
    Coordinate from = ends.get(0);
    Coordinate to = Collections.max(ends, Comparator.comparingDouble(from::distance3D));
    return new Axis(from, to, radiusM, runs.get(element.key()));
  }

  private static void add(List<Coordinate> ends, @Nullable Point point) {
    if (point != null) {
      ends.add(new Coordinate(point.x(), point.y(), point.z()));
    }
  }
}
