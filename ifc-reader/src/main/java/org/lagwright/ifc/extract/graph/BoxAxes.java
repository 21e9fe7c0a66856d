package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.graph.TouchingEnds.Loose;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.threads.Workers;

/**
 * Chooses along which of its edges a box runs where no port lies at its ends: a short piece of a
 * wide duct is wider than long. The only port that the file has may tell. A box whose ends touch
 * nothing runs along the edge at whose ends it touches its neighbours. Where all of a run lie so,
 * one with its like at both ends tells the others; two alone may as well lie side by side.
 */
public final class BoxAxes {

  /** Times its length that a piece with ports at one side only may be wide; else it is a tap. */
  private static final double STUB = 3;

  /** The readings chosen so far; none for what stays as it was measured. */
  private final Map<Draft, Shape> chosen = new IdentityHashMap<>();

  /**
   * The boxes whose ends touch nothing, each with ends of its other readings and what they touch.
   */
  private final Map<Draft, List<List<Loose>>> loose = new IdentityHashMap<>();

  private BoxAxes(List<Draft> boxes) {
    for (Draft box : boxes) {
      loose.put(box, new ArrayList<>());
    }
  }

  /**
   * Sets the shape of boxes that run along another edge.
   *
   * @param toleranceM distance up to which ends touch, metres; 0 changes nothing
   */
  public static void choose(List<Draft> drafts, double toleranceM, Workers workers) {
    List<Draft> boxes = new ArrayList<>();
    for (Draft draft : drafts) {
      if (draft.mayLieOtherwise()) {
        Shape byPort = atPorts(draft);
        if (byPort != null) {
          draft.measured(byPort);
        } else if (!draft.isWhollyConnected()) {
          boxes.add(draft);
        }
      }
    }
    if (!boxes.isEmpty() && toleranceM > 0) {
      choose(boxes, TouchingEnds.ends(drafts, workers), toleranceM);
    }
  }

  /** The other reading that has an end at each port that has a place; null if there is none. */
  private static @Nullable Shape atPorts(Draft box) {
    Drawn drawn = box.drawn();
    for (Shape reading : drawn.shape().otherReadings()) {
      int at = 0;
      int placed = 0;
      for (Port port : drawn.ports()) {
        Point atM = port.positionM();
        placed += atM == null ? 0 : 1;
        at += atM != null && Drawn.isAnEnd(reading.ends(), atM) ? 1 : 0;
      }
      if (at > 0 && at == placed && isStub(reading)) {
        return reading;
      }
    }
    return null;
  }

  private static boolean isStub(Shape reading) {
    Measured<Double> lengthM = reading.lengthM();
    return lengthM != null
        && reading.ends().get(0).section().largestSideM() < STUB * lengthM.value();
  }

  /**
   * Sets the shape of boxes that run along another edge.
   *
   * @param boxes those that may
   * @param ends theirs and those of others; those of other readings are added
   * @return those that do
   */
  public static Set<Draft> choose(List<Draft> boxes, List<Loose> ends, double toleranceM) {
    BoxAxes axes = new BoxAxes(boxes);
    axes.forgetJoined(TouchingEnds.touching(ends, toleranceM));
    if (!axes.loose.isEmpty()) {
      // of those few only, as each reading takes room
      axes.addReadings(boxes, ends);
      axes.choose(boxes, TouchingEnds.touching(ends, toleranceM));
    }
    return axes.chosen.keySet();
  }

  private void forgetJoined(List<List<Loose>> touching) {
    for (List<Loose> pair : touching) {
      loose.remove(pair.get(0).draft());
      loose.remove(pair.get(1).draft());
    }
  }

  private void addReadings(List<Draft> boxes, List<Loose> ends) {
    for (Draft box : boxes) {
      if (loose.containsKey(box)) {
        for (Shape reading : box.shape().otherReadings()) {
          for (ShapeEnd end : reading.ends()) {
            ends.add(
                new Loose(box, end.centreM(), end.outward(), end.section(), -1, false, reading));
          }
        }
      }
    }
  }

  private void choose(List<Draft> boxes, List<List<Loose>> touching) {
    for (List<Loose> pair : touching) {
      add(pair.get(0), pair.get(1));
      add(pair.get(1), pair.get(0));
    }
    turnAll(boxes);
    for (Draft box : boxes) {
      List<List<Loose>> itsOwn = loose.get(box);
      if (itsOwn != null && turn(box, amongItsLike(itsOwn))) {
        turnAll(boxes);
      }
    }
  }

  /** What is turned may be the neighbour of the next one. */
  private void turnAll(List<Draft> boxes) {
    boolean turned = true;
    while (turned) {
      turned = false;
      for (Draft box : boxes) {
        List<List<Loose>> itsOwn = loose.get(box);
        turned |= itsOwn != null && turn(box, best(itsOwn));
      }
    }
  }

  private void add(Loose end, Loose other) {
    List<List<Loose>> itsOwn = end.reading() == null ? null : loose.get(end.draft());
    if (itsOwn != null) {
      itsOwn.add(List.of(end, other));
    }
  }

  private boolean turn(Draft box, @Nullable Shape best) {
    if (best == null) {
      return false;
    }
    loose.remove(box);
    chosen.put(box, best);
    box.measured(best);
    return true;
  }

  /** The reading with most ends touching neighbours; null if none does, or two as many. */
  private @Nullable Shape best(List<List<Loose>> touching) {
    Shape best = null;
    int most = 0;
    boolean tied = false;
    for (List<Loose> one : touching) {
      Shape reading = one.get(0).reading();
      int count = count(reading, touching);
      tied = count > most ? false : tied || (count == most && reading != best);
      best = count > most ? reading : best;
      most = Math.max(count, most);
    }
    return tied ? null : best;
  }

  /** The reading with a box of its size at both ends that may be turned too; null if not one. */
  private @Nullable Shape amongItsLike(List<List<Loose>> touching) {
    Shape found = null;
    for (List<Loose> one : touching) {
      for (List<Loose> other : touching) {
        boolean both = one.get(0) != other.get(0) && one.get(0).reading() == other.get(0).reading();
        if (both && isLike(one) && isLike(other)) {
          Shape reading = one.get(0).reading();
          if (found != null && found != reading) {
            return null;
          }
          found = reading;
        }
      }
    }
    return found;
  }

  private boolean isLike(List<Loose> pair) {
    Section section = pair.get(0).section();
    Section other = pair.get(1).section();
    return pair.get(1).reading() != null
        && loose.containsKey(pair.get(1).draft())
        && section != null
        && other != null
        && Tolerances.sameSection(section, other);
  }

  /** Ends of a reading that touch neighbours as these lie now. */
  private int count(@Nullable Shape reading, List<List<Loose>> touching) {
    int count = 0;
    for (List<Loose> each : touching) {
      Loose other = each.get(1);
      boolean lies = other.reading() == chosen.get(other.draft());
      count += lies && each.get(0).reading() == reading ? 1 : 0;
    }
    return count;
  }
}
