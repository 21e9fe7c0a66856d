package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drafts;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.threads.Workers;

/**
 * Joins ends that meet the side of a straight piece of their own file, and valves, flanges and the
 * like that are drawn around a piece that goes through them. Works after {@link TouchingEnds}, on
 * the ends that are still open.
 */
public final class Taps extends SideSearch<Draft> {

  /** Tells of the ends that lie in crowds; null if there are none. */
  private final @Nullable PointGrid crowds;

  private Taps(List<Loose<Draft>> ends, double toleranceM) {
    super(toleranceM);
    List<Point> points = new ArrayList<>(ends.size());
    for (Loose<Draft> end : ends) {
      points.add(end.atM());
    }
    PointGrid grid = points.isEmpty() ? null : new PointGrid(points, toleranceM);
    this.crowds = grid != null && grid.hasCrowds() ? grid : null;
    for (Loose<Draft> end : ends) {
      if (!isInCrowd(end.atM())) {
        add(end);
      }
    }
  }

  /** Pieces that begin or end together with many others have lost their places. */
  private boolean isInCrowd(Point endM) {
    return crowds != null && crowds.isInCrowd(endM);
  }

  @Override
  protected boolean mayMeet(Draft branch, Draft main) {
    return branch != main;
  }

  @Override
  protected boolean mayBranch(Draft piece) {
    return piece.isSegment() || (piece.kind() != null && piece.kind().isFitting());
  }

  @Override
  protected boolean maySitAround(Draft piece) {
    return sitsAround(piece);
  }

  /** True for what may be drawn around a piece that goes through it. */
  public static boolean sitsAround(Draft piece) {
    return !piece.isSegment()
        && !piece.isCalledInsulation()
        && piece.form().isWiderThanItsPipe()
        && Coaxiality.isStraight(piece.shape());
  }

  @Override
  protected ElementKey key(Draft piece) {
    return piece.key();
  }

  /**
   * Joins ends to sides; {@link Draft#joints} of both elements holds the result.
   *
   * @param toleranceM how far from the surface an end may lie, metres; 0 joins nothing
   * @return how many joints were made that the file does not have
   */
  public static int join(List<Draft> drafts, double toleranceM, Workers workers) {
    if (!(toleranceM > 0)) {
      return 0;
    }
    Taps taps = new Taps(workers.gather(drafts, Drafts.RUN, new Collecting()), toleranceM);
    if (taps.isEmpty()) {
      return 0;
    }
    return taps.join(workers.gather(drafts, Drafts.RUN, taps.new Looking()));
  }

  /** Collects the open ends. */
  private static final class Collecting implements Workers.Search<Draft, Loose<Draft>> {
    @Override
    public void look(Draft draft, List<Loose<Draft>> into) {
      collect(draft, into);
    }
  }

  /** Looks along the straight pieces. */
  private final class Looking implements Workers.Search<Draft, Meeting<Draft>> {
    @Override
    public void look(Draft draft, List<Meeting<Draft>> into) {
      lookAlong(draft, into);
    }
  }

  private static void collect(Draft draft, List<Loose<Draft>> into) {
    if (draft.isWhollyConnected()) {
      return;
    }
    Drawn all = draft.drawn();
    List<ShapeEnd> drawn =
        draft.isSegment() || draft.isLaggedItem() ? all.shape().ends() : List.of();
    int connected = 0;
    for (Port joint : all.joints()) {
      connected += joint.connectedTo() == null || joint.positionM() == null ? 0 : 1;
    }
    if (connected >= Math.max(drawn.size(), all.ports().size())) {
      return;
    }
    for (ShapeEnd end : drawn) {
      if (!OpenEnds.isConnected(all.joints(), end, drawn)) {
        into.add(new Loose<>(draft, draft.kind(), end.centreM(), end.outward(), end.section()));
      }
    }
  }

  /** Where a connected port has no place, nothing tells which end is the open one. */
  public static boolean isToldWhichIsOpen(List<Port> joints) {
    for (Port joint : joints) {
      if (joint.connectedTo() != null && joint.positionM() == null) {
        return false;
      }
    }
    return true;
  }

  private void lookAlong(Draft main, List<Meeting<Draft>> into) {
    Measured<Section> section = main.isSegment() ? main.section() : null;
    if (section == null) {
      return;
    }
    Shape shape = main.shape();
    List<ShapeEnd> drawn = shape.ends();
    if (drawn.size() != 2 || !Coaxiality.isStraight(shape)) {
      return;
    }
    Point from = drawn.get(0).centreM();
    Point to = drawn.get(1).centreM();
    if (isInCrowd(from) || isInCrowd(to)) {
      return;
    }
    Axis axis = Axis.between(from, to);
    lookAlong(new Main<>(main, main.kind(), axis, section.value()), into);
  }

  /** Each end is joined once, to the main whose surface is nearest. */
  private int join(List<Meeting<Draft>> meetings) {
    int joined = 0;
    OpenJoints open = new OpenJoints();
    for (Meeting<Draft> meeting : nearest(meetings)) {
      Draft branch = meeting.branch().piece();
      Draft main = meeting.main().piece();
      List<Port> joints = open.of(branch);
      boolean known = JointMaker.unplacedTo(joints, main.key()) >= 0;
      if (known || (isToldWhichIsOpen(joints) && (meeting.around() || !areJoined(joints, main)))) {
        join(meeting, branch, open);
        joined += known ? 0 : 1;
      }
      open.rest();
    }
    open.close();
    return joined;
  }

  private static boolean areJoined(List<Port> branch, Draft main) {
    for (Port joint : branch) {
      if (main.key().equals(joint.connectedTo())) {
        return true;
      }
    }
    return false;
  }

  private static void join(Meeting<Draft> meeting, Draft branch, OpenJoints open) {
    Draft main = meeting.main().piece();
    Point at = meeting.branch().atM();
    Point out = meeting.branch().outward();
    List<Port> ports = branch.ports();
    int port = JointMaker.nearest(ports, at, new boolean[ports.size()]);
    JointMaker.attach(open.of(branch), port, at, out, main.key(), true);
    List<Port> sides = open.of(main);
    Port side = JointMaker.side(meeting, branch.key());
    int own = JointMaker.unplacedTo(sides, branch.key());
    Point foot = meeting.footM();
    if (own >= 0) {
      sides.set(own, sides.get(own).touching(branch.key(), foot, side.direction(), true));
    } else {
      sides.add(side);
    }
  }
}
