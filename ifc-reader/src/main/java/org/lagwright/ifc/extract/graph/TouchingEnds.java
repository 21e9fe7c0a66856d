package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drafts;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.threads.Workers;

/**
 * Joins ends of pipes, ducts and fittings that touch where the file does not connect them: because
 * it has no ports, or ports without placement, or no relation between them. Ends are joined if they
 * lie within the tolerance, face each other, and agree in size.
 */
public final class TouchingEnds {

  /** Ends that face each other may be out of line by this: 10 degrees. */
  private static final double FACING = -Math.cos(Math.toRadians(10));

  /**
   * Distances that differ by less are equal; the order of the file decides then. A gasket of 2 mm
   * is within 2 mm, whatever the last digits say.
   */
  public static final double STEP_M = 1e-5;

  /**
   * A socket or a body may be wider than the pipe in it by this factor, and narrower by one size: a
   * threaded end is often drawn by its bore.
   */
  static final double WIDEST_BODY = 4;

  private static final double NARROWEST_BODY = 0.75;

  /**
   * An end of an element that may be joined.
   *
   * @param port index of its port among those of the element, -1 if it has none
   * @param atTheSide true for a port at the side of a straight piece: what touches it is a branch
   * @param reading another reading of its body that this is an end of, null for the one at hand
   */
  public record Loose(
      Draft draft,
      Point atM,
      @Nullable Point outward,
      @Nullable Section section,
      int port,
      boolean atTheSide,
      @Nullable Shape reading) {}

  /**
   * @param sameSize false if one is a body that may hold the other
   */
  private record Pair(int a, int b, long distance, boolean sameSize) implements Comparable<Pair> {

    /**
     * The nearest first; of equal distance those of one size, as pipe meets pipe and flange meets
     * flange where flanges are slipped on; then in the order of the file.
     */
    @Override
    public int compareTo(Pair other) {
      int byDistance = Long.compare(distance, other.distance);
      byDistance = byDistance != 0 ? byDistance : Boolean.compare(other.sameSize, sameSize);
      int byFirst = byDistance != 0 ? byDistance : Integer.compare(a, other.a);
      return byFirst != 0 ? byFirst : Integer.compare(b, other.b);
    }
  }

  private final double toleranceM;
  private final List<Loose> ends = new ArrayList<>();
  private final BitSet used = new BitSet();
  private int joined;

  private TouchingEnds(double toleranceM) {
    this.toleranceM = toleranceM + STEP_M;
  }

  /**
   * Joins what touches; {@link Draft#joints} of the elements holds the result.
   *
   * @param toleranceM distance up to which ends touch, metres; 0 joins nothing
   * @return how many joints were made that the file does not have
   */
  public static int join(List<Draft> drafts, double toleranceM, Workers workers) {
    TouchingEnds touching = new TouchingEnds(toleranceM);
    if (toleranceM > 0) {
      touching.ends.addAll(ends(drafts, workers));
      for (Pair pair : touching.pairs()) {
        touching.join(pair);
      }
    }
    return touching.joined;
  }

  /** The ends that may be joined. */
  static List<Loose> ends(List<Draft> drafts, Workers workers) {
    return workers.gather(drafts, Drafts.RUN, new Collecting());
  }

  /**
   * An end that nothing in its own file is joined to, of an element worked out once more.
   *
   * @param atTheSide true for a port at the side of a straight piece
   */
  public static Loose open(Draft draft, OpenEnd end, boolean atTheSide) {
    Point atM = end.positionM();
    List<Port> ports = draft.ports();
    int port = JointMaker.nearest(ports, atM, new boolean[ports.size()]);
    Section section = end.section();
    for (ShapeEnd drawn : draft.shape().ends()) {
      boolean here = drawn.centreM().distanceM(atM) < STEP_M;
      section = here ? drawn.section() : section;
    }
    return new Loose(draft, atM, end.outward(), section, port, atTheSide, null);
  }

  /** What touches each other, the nearest first. */
  public static List<List<Loose>> touching(List<Loose> ends, double toleranceM) {
    TouchingEnds touching = new TouchingEnds(toleranceM);
    touching.ends.addAll(ends);
    List<List<Loose>> pairs = new ArrayList<>();
    for (Pair pair : touching.pairs()) {
      pairs.add(List.of(ends.get(pair.a), ends.get(pair.b)));
    }
    return pairs;
  }

  /** Collects the ends. */
  private static final class Collecting implements Workers.Search<Draft, Loose> {
    @Override
    public void look(Draft draft, List<Loose> into) {
      collect(draft, into);
    }
  }

  private static void collect(Draft draft, List<Loose> into) {
    if (draft.isWhollyConnected()) {
      return;
    }
    Drawn all = draft.drawn();
    List<Port> ports = all.ports();
    List<ShapeEnd> drawn =
        draft.isSegment() || draft.isLaggedItem() ? all.shape().ends() : List.of();
    boolean[] seen = new boolean[ports.size()];
    int connected = 0;
    for (Port port : ports) {
      connected += port.connectedTo() == null || port.positionM() == null ? 0 : 1;
    }
    if (connected == ports.size() && connected >= drawn.size()) {
      return;
    }
    for (ShapeEnd end : drawn) {
      int port = JointMaker.nearest(ports, end.centreM(), seen);
      if (port >= 0) {
        seen[port] = true;
      }
      if (port < 0 || ports.get(port).connectedTo() == null) {
        into.add(new Loose(draft, end.centreM(), end.outward(), end.section(), port, false, null));
      }
    }
    for (int i = 0; i < seen.length; i++) {
      Port port = ports.get(i);
      if (!seen[i] && port.connectedTo() == null && port.positionM() != null) {
        boolean side = all.joints().get(i).tap();
        into.add(new Loose(draft, port.positionM(), port.direction(), null, i, side, null));
      }
    }
  }

  /** Ends that may be joined, nearest first. */
  private List<Pair> pairs() {
    List<Point> points = new ArrayList<>(ends.size());
    for (Loose end : ends) {
      points.add(end.atM);
    }
    PointGrid grid = new PointGrid(points, toleranceM);
    Partners partners = new Partners();
    for (int i = 0; i < points.size(); i++) {
      partners.of = i;
      grid.near(points.get(i), partners);
    }
    Collections.sort(partners.pairs);
    return partners.pairs;
  }

  /** Pairs one end after the other with those near it that come behind it. */
  private final class Partners implements IntConsumer {

    final List<Pair> pairs = new ArrayList<>();
    int of;

    @Override
    public void accept(int other) {
      double distanceM = other <= of ? Double.NaN : ends.get(of).atM.distanceM(ends.get(other).atM);
      if (distanceM <= toleranceM && mayJoin(ends.get(of), ends.get(other))) {
        boolean sameSize = haveOneSize(ends.get(of), ends.get(other));
        pairs.add(new Pair(of, other, Math.round(distanceM / STEP_M), sameSize));
      }
    }
  }

  private static boolean mayJoin(Loose a, Loose b) {
    return a.draft != b.draft
        && JointMaker.sameLine(a.draft.kind(), b.draft.kind())
        && facing(a.outward, b.outward)
        && sizesAgree(a, b);
  }

  private static boolean facing(@Nullable Point a, @Nullable Point b) {
    return a == null || b == null || a.dot(b) < FACING;
  }

  private static boolean haveOneSize(Loose a, Loose b) {
    for (Section one : sections(a)) {
      for (Section other : sections(b)) {
        if (Tolerances.sameSection(one, other)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean sizesAgree(Loose a, Loose b) {
    Section one = a.section;
    Section other = b.section;
    if (one == null || other == null || haveOneSize(a, b)) {
      return true;
    }
    return (isBody(a.draft) && mayHold(one, other)) || (isBody(b.draft) && mayHold(other, one));
  }

  /** What is drawn at the end, and the size that was chosen against it. */
  private static List<Section> sections(Loose end) {
    List<Section> sections = new ArrayList<>();
    if (end.section != null) {
      sections.add(end.section);
    }
    Measured<Section> chosen = end.draft.section();
    if (end.draft.isSegment() && chosen != null) {
      sections.add(chosen.value());
    }
    return sections;
  }

  /** True if the body need not have the size of its line: valves, joints, anything with sockets. */
  private static boolean isBody(Draft draft) {
    if (draft.isSegment()) {
      return false;
    }
    Measured<Section> drawn = draft.shape().section();
    return draft.kind() == Kind.VALVE
        || draft.kind() == Kind.INLINE
        || drawn == null
        || drawn.how() != How.SOLID
        || draft.form().isWiderThanItsPipe();
  }

  private static boolean mayHold(Section body, Section pipe) {
    double factor = body.largestSideM() / pipe.largestSideM();
    return factor > NARROWEST_BODY && factor < WIDEST_BODY;
  }

  private void join(Pair pair) {
    if (used.get(pair.a) || used.get(pair.b)) {
      return;
    }
    used.set(pair.a);
    used.set(pair.b);
    Loose a = ends.get(pair.a);
    Loose b = ends.get(pair.b);
    boolean tap = a.atTheSide || b.atTheSide;
    boolean known = JointMaker.attach(a.draft, a.port, a.atM, a.outward, b.draft.key(), tap);
    known &= JointMaker.attach(b.draft, b.port, b.atM, b.outward, a.draft.key(), tap);
    joined += known ? 0 : 1;
  }
}
