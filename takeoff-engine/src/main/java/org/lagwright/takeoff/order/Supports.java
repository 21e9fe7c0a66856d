package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.takeoff.words.PhraseBook;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Hangers and supports that the model shows, each with the pipe it carries: the nearest one. */
final class Supports {

  private final PhraseBook<Boolean> book = new PhraseBook<>();
  private final List<Point> places = new ArrayList<>();

  Supports(HangerPack pack, List<MepElement> elements) {
    book.addAll(pack.words(), true, pack.compounding(), pack.shortestInside());
    for (MepElement element : elements) {
      Point at = element.place().positionM();
      if (element.kind() == Kind.OTHER && at != null && isSupport(element)) {
        places.add(at);
      }
    }
  }

  private boolean isSupport(MepElement element) {
    return Stream.of(element.name(), element.typeName(), element.objectType())
        .anyMatch(name -> name != null && !book.find(name, meaning -> true).isEmpty());
  }

  /**
   * Supports by pipe.
   *
   * @param reachM how far the middle of a support may lie from the surface of its pipe
   */
  Map<ElementKey, Integer> byPipe(List<LaggedElement> pipes, double reachM) {
    STRtree tree = new STRtree();
    for (LaggedElement pipe : pipes) {
      Envelope reach = new Envelope();
      places(pipe).forEach(at -> reach.expandToInclude(at.x(), at.y()));
      if (!reach.isNull()) {
        reach.expandBy(pipe.section().largestSideM() / 2 + reachM);
        tree.insert(reach, pipe);
      }
    }
    tree.build();
    Map<ElementKey, Integer> counts = new HashMap<>();
    for (Point place : places) {
      LaggedElement nearest = nearest(place, tree, reachM);
      if (nearest != null) {
        counts.merge(nearest.key(), 1, Integer::sum);
      }
    }
    return counts;
  }

  /** Of pipes as near as each other the one with the lowest key. */
  private static @Nullable LaggedElement nearest(Point place, STRtree tree, double reachM) {
    LaggedElement nearest = null;
    double leastM = reachM;
    for (Object found : tree.query(new Envelope(place.x(), place.x(), place.y(), place.y()))) {
      LaggedElement pipe = (LaggedElement) found;
      double gapM = gapM(pipe, place);
      boolean first = nearest == null || pipe.key().compareTo(nearest.key()) < 0;
      if (gapM < leastM || (gapM == leastM && first)) {
        nearest = pipe;
        leastM = gapM;
      }
    }
    return nearest;
  }

  /** Both ends, else the middle. */
  private static List<Point> places(LaggedElement pipe) {
    List<Point> ends = ends(pipe);
    return ends.size() == 2 ? ends : Stream.ofNullable(pipe.element().place().positionM()).toList();
  }

  private static List<Point> ends(LaggedElement pipe) {
    return pipe.element().ports().stream()
        .map(Port::positionM)
        .flatMap(Stream::ofNullable)
        .distinct()
        .toList();
  }

  private static double gapM(LaggedElement pipe, Point place) {
    List<Point> ends = ends(pipe);
    Point middle = pipe.element().place().positionM();
    double axisM;
    if (ends.size() == 2) {
      axisM = distanceM(place, ends.get(0), ends.get(1));
    } else {
      axisM = fromMiddleM(place, middle);
    }
    return axisM - pipe.section().largestSideM() / 2;
  }

  private static double fromMiddleM(Point place, @Nullable Point middle) {
    return middle == null ? Double.POSITIVE_INFINITY : place.distanceM(middle);
  }

  /** Distance of a point from a segment. */
  private static double distanceM(Point p, Point a, Point b) {
    double lengthM = a.distanceM(b);
    double share =
        ((p.x() - a.x()) * (b.x() - a.x())
                + (p.y() - a.y()) * (b.y() - a.y())
                + (p.z() - a.z()) * (b.z() - a.z()))
            / (lengthM * lengthM);
    double along = Math.max(0, Math.min(1, share));
    Point foot =
        new Point(
            a.x() + along * (b.x() - a.x()),
            a.y() + along * (b.y() - a.y()),
            a.z() + along * (b.z() - a.z()));
    return p.distanceM(foot);
  }
}
