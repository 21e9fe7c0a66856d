package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.ShapeEnd;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Joins ends that meet the side of a straight piece: branches that are drawn onto the main, without
 * a tee. An end is joined if it lies on the surface of the main or within it, points into it, and
 * its piece lies within the width of the main. Works after {@link TouchingEnds}, on the ends that
 * are still open.
 */
final class Taps {

  /** A branch leaves the main by 30 degrees at least: cosine. */
  private static final double STEEPEST = Math.cos(Math.toRadians(30));

  /** Long pieces that lie aslant are looked along in parts, as their boxes would hold too much. */
  private static final double PART_M = 2;

  private static final int MOST_PARTS = 64;

  /** Sizes are rounded by exporters. */
  private static final double ROUNDING_M = 0.001;

  /** An open end. */
  private record Loose(Draft draft, ShapeEnd end, double halfM) {}

  /** A main that an end meets. */
  private record Meeting(int end, Draft main, Axis axis, double gapM) {}

  private final double toleranceM;
  private final List<Loose> ends = new ArrayList<>();
  private final HPRtree byPlace = new HPRtree();
  private final List<Meeting> meetings = new ArrayList<>();

  private Taps(double toleranceM) {
    this.toleranceM = toleranceM;
  }

  /**
   * Joins ends to sides; {@link Draft#joints} of both elements holds the result.
   *
   * @param toleranceM how far from the surface an end may lie, metres; 0 joins nothing
   * @return how many joints were made
   */
  static int join(Collection<Draft> drafts, double toleranceM) {
    Taps taps = new Taps(toleranceM);
    if (toleranceM > 0) {
      drafts.forEach(taps::collect);
    }
    if (taps.ends.isEmpty()) {
      return 0;
    }
    drafts.forEach(taps::lookAlong);
    return taps.join();
  }

  private void collect(Draft draft) {
    boolean inALine = draft.isSegment() || (draft.kind != null && draft.kind.isFitting());
    List<ShapeEnd> drawn = inALine ? draft.shape.ends() : List.of();
    long connected = draft.joints.stream().filter(joint -> joint.connectedTo() != null).count();
    // where a connected port has no place, nothing tells which end is the open one
    boolean told =
        draft.joints.stream().allMatch(j -> j.connectedTo() == null || j.positionM() != null);
    if (!told || connected >= Math.max(drawn.size(), draft.ports.size())) {
      return;
    }
    for (ShapeEnd end : drawn) {
      if (!OpenEnds.isConnected(draft.joints, end.centreM())) {
        Point at = end.centreM();
        byPlace.insert(new Envelope(at.x(), at.x(), at.y(), at.y()), ends.size());
        ends.add(new Loose(draft, end, end.section().largestSideM() / 2));
      }
    }
  }

  private void lookAlong(Draft main) {
    Measured<Section> section = main.section;
    List<ShapeEnd> drawn = main.isSegment() ? main.shape.ends() : List.of();
    if (section == null || drawn.size() != 2 || !Coaxiality.isStraight(main.shape)) {
      return;
    }
    Axis axis = Axis.between(drawn.get(0).centreM(), drawn.get(1).centreM());
    double reachM = section.value().largestSideM() / 2 + toleranceM;
    int parts = (int) Math.min(MOST_PARTS, Math.ceil(axis.lengthM() / PART_M));
    int parallel = axis.isAlongTheGrid() ? 1 : parts;
    for (int i = 0; i < parallel; i++) {
      Point from = axis.at(axis.lengthM() * i / parallel);
      Point to = axis.at(axis.lengthM() * (i + 1) / parallel);
      Envelope box = new Envelope(from.x(), to.x(), from.y(), to.y());
      box.expandBy(reachM);
      byPlace.query(box, found -> meet((Integer) found, main, axis, section.value()));
    }
  }

  private void meet(int index, Draft main, Axis axis, Section section) {
    Loose loose = ends.get(index);
    Point at = loose.end.centreM();
    double alongM = axis.along(at);
    boolean besideIt =
        loose.draft != main && alongM > toleranceM && alongM < axis.lengthM() - toleranceM;
    if (!besideIt || !JointMaker.sameLine(loose.draft.kind, main.kind)) {
      return;
    }
    Point foot = axis.at(alongM);
    double gapM = gapM(section, at.distanceM(foot));
    if (gapM <= toleranceM && pointsInto(loose, axis, foot) && fits(loose, axis, section)) {
      meetings.add(new Meeting(index, main, axis, gapM));
    }
  }

  /** From the surface of the main to a place; of a duct it may be either side. */
  private double gapM(Section main, double fromAxisM) {
    if (main instanceof Section.Round round) {
      return fromAxisM - round.outsideDiameterM() / 2;
    }
    double largeM = main.largestSideM() / 2;
    double smallM = main.perimeterM() / 4 - largeM;
    if (main instanceof Section.Oval oval) {
      smallM = Math.min(oval.widthM(), oval.heightM()) / 2;
    }
    double toSmallM = fromAxisM - smallM;
    return toSmallM <= toleranceM ? toSmallM : Math.abs(fromAxisM - largeM);
  }

  private boolean pointsInto(Loose loose, Axis axis, Point foot) {
    Point out = loose.end.outward();
    Point at = loose.end.centreM();
    double inward =
        out.x() * (foot.x() - at.x())
            + out.y() * (foot.y() - at.y())
            + out.z() * (foot.z() - at.z());
    return Math.abs(axis.cosine(out)) <= STEEPEST && inward > -toleranceM;
  }

  /** The branch lies within the width of the main. */
  private static boolean fits(Loose loose, Axis axis, Section main) {
    double besideM = axis.distanceToLineM(loose.end.centreM(), loose.end.outward());
    return besideM + loose.halfM <= main.largestSideM() / 2 + ROUNDING_M;
  }

  /** Each end is joined once, to the main whose surface is nearest. */
  private int join() {
    meetings.sort(
        Comparator.comparingInt(Meeting::end)
            .thenComparingDouble(m -> Math.abs(m.gapM))
            .thenComparing(m -> m.main.key));
    int joined = 0;
    int last = -1;
    for (Meeting meeting : meetings) {
      if (meeting.end != last && !areJoined(ends.get(meeting.end).draft, meeting.main)) {
        join(ends.get(meeting.end), meeting);
        joined++;
      }
      last = meeting.end;
    }
    return joined;
  }

  private static boolean areJoined(Draft branch, Draft main) {
    return branch.joints.stream().anyMatch(j -> Objects.equals(j.connectedTo(), main.key));
  }

  private static void join(Loose loose, Meeting meeting) {
    Draft branch = loose.draft;
    Point at = loose.end.centreM();
    Point out = loose.end.outward();
    int port = JointMaker.nearest(branch.ports, at, new boolean[branch.ports.size()]);
    JointMaker.attach(branch, port, at, out, meeting.main.key, true);
    List<Port> sides = new ArrayList<>(meeting.main.joints);
    Point back = new Point(-out.x(), -out.y(), -out.z());
    Point foot = meeting.axis.at(meeting.axis.along(at));
    sides.add(Port.withoutRecord(foot, back, branch.key, true));
    meeting.main.joints = sides;
  }
}
