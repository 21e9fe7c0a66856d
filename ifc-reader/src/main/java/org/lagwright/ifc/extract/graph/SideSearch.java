package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Finds open ends that meet the side of a straight piece: branches that are drawn onto the main,
 * without a tee. An end meets it if it lies on the surface of the main or within it, points into
 * it, and its piece lies within the width of the main. Valves, flanges and the like may also sit
 * around a main that goes through them.
 *
 * @param <P> the pieces, in one file or in several
 */
public abstract class SideSearch<P> {

  /** A branch leaves the main by 30 degrees at least: cosine. */
  public static final double STEEPEST = Math.cos(Math.toRadians(30));

  /** Long pieces that lie aslant are looked along in parts, as their boxes would hold too much. */
  private static final double PART_M = 2;

  private static final int MOST_PARTS = 64;

  /** Height in which ends are looked for together: about a storey. */
  private static final double SLAB_M = 3;

  /** What sits around a main has its axis within 10 degrees: cosine. */
  private static final double COAXIAL = Math.cos(Math.toRadians(10));

  /** Sizes are rounded by exporters. */
  private static final double ROUNDING_M = 0.001;

  /** An open end. */
  public record Loose<P>(P piece, @Nullable Kind kind, Point atM, Point outward, Section section) {}

  /** A straight piece. */
  public record Main<P>(P piece, @Nullable Kind kind, Axis axis, Section section) {}

  /**
   * An end at the side of a main.
   *
   * @param gapM from the surface of the main; below zero inside it
   * @param around true if the branch is none but sits around the main
   */
  public record Meeting<P>(int end, Loose<P> branch, Main<P> main, double gapM, boolean around) {

    /** The place on the axis of the main. */
    Point footM() {
      return main.axis.at(main.axis.along(branch.atM));
    }
  }

  /** The meetings of one end stand together, that with the nearest surface first. */
  private final class NearestFirst implements Comparator<Meeting<P>> {

    @Override
    public int compare(Meeting<P> a, Meeting<P> b) {
      int byEnd = Integer.compare(a.end, b.end);
      int byGap = byEnd != 0 ? byEnd : Double.compare(Math.abs(a.gapM), Math.abs(b.gapM));
      return byGap != 0 ? byGap : key(a.main.piece).compareTo(key(b.main.piece));
    }
  }

  private final double toleranceM;
  private final List<Loose<P>> ends = new ArrayList<>();

  /** The ends between two heights, by place in plan; storeys repeat each other's plans. */
  private final NavigableMap<Long, HPRtree> slabs = new TreeMap<>();

  /**
   * @param toleranceM how far from the surface an end may lie, metres
   */
  protected SideSearch(double toleranceM) {
    this.toleranceM = toleranceM;
  }

  /** True if an end of one piece may lie on the other. */
  protected abstract boolean mayMeet(P branch, P main);

  /** True if an end of the piece may be that of a branch. */
  protected boolean mayBranch(P piece) {
    return true;
  }

  /** True if the piece may sit around a main. */
  protected boolean maySitAround(P piece) {
    return false;
  }

  /** Names a piece; of several mains as near, the one that comes first is taken. */
  protected abstract ElementKey key(P piece);

  /** Ends are added before the first main is looked along. */
  public void add(Loose<P> end) {
    Point at = end.atM;
    HPRtree slab = slabs.get(slab(at.z()));
    if (slab == null) {
      slab = new HPRtree();
      slabs.put(slab(at.z()), slab);
    }
    slab.insert(new Envelope(at.x(), at.x(), at.y(), at.y()), ends.size());
    ends.add(end);
  }

  /** True if no end was added. */
  public boolean isEmpty() {
    return ends.isEmpty();
  }

  private static long slab(double heightM) {
    return (long) Math.floor(heightM / SLAB_M);
  }

  /**
   * Finds the ends at the sides of a piece; several threads may do so.
   *
   * @param into given what is found
   */
  public void lookAlong(Main<P> main, List<Meeting<P>> into) {
    Axis axis = main.axis;
    double reachM = main.section.largestSideM() / 2 + toleranceM;
    int parts = (int) Math.min(MOST_PARTS, Math.ceil(axis.lengthM() / PART_M));
    int parallel = axis.isAlongTheGrid() ? 1 : parts;
    for (int i = 0; i < parallel; i++) {
      Point from = axis.at(axis.lengthM() * i / parallel);
      Point to = axis.at(axis.lengthM() * (i + 1) / parallel);
      Envelope box = new Envelope(from.x(), to.x(), from.y(), to.y());
      box.expandBy(reachM);
      long low = slab(Math.min(from.z(), to.z()) - reachM);
      long high = slab(Math.max(from.z(), to.z()) + reachM);
      for (HPRtree slab : slabs.subMap(low, true, high, true).values()) {
        for (Object found : slab.query(box)) {
          meet((Integer) found, main, into);
        }
      }
    }
  }

  private void meet(int index, Main<P> main, List<Meeting<P>> into) {
    Loose<P> loose = ends.get(index);
    Axis axis = main.axis;
    double alongM = axis.along(loose.atM);
    boolean besideIt =
        mayMeet(loose.piece, main.piece)
            && alongM > toleranceM
            && alongM < axis.lengthM() - toleranceM;
    if (!besideIt || !JointMaker.sameLine(loose.kind(), main.kind())) {
      return;
    }
    Point foot = axis.at(alongM);
    double offM = loose.atM.distanceM(foot);
    if (liesAround(loose, main, offM)) {
      into.add(new Meeting<>(index, loose, main, offM, true));
      return;
    }
    double gapM = gapM(main.section, offM);
    if (gapM <= toleranceM
        && mayBranch(loose.piece)
        && pointsInto(loose, axis, foot)
        && fits(loose, axis, main.section)) {
      into.add(new Meeting<>(index, loose, main, gapM, false));
    }
  }

  private boolean liesAround(Loose<P> loose, Main<P> main, double offM) {
    double aroundM = loose.section.largestSideM();
    double insideM = main.section.largestSideM();
    return offM <= toleranceM
        && Math.abs(main.axis.cosine(loose.outward)) >= COAXIAL
        && aroundM > insideM + TouchingEnds.STEP_M
        && aroundM < TouchingEnds.WIDEST_BODY * insideM
        && maySitAround(loose.piece);
  }

  /** From the surface of the main to a place; of a duct it may be either side. */
  private double gapM(Section main, double fromAxisM) {
    double toSmallM = fromAxisM - main.smallestSideM() / 2;
    return toSmallM <= toleranceM || main instanceof Section.Round
        ? toSmallM
        : Math.abs(fromAxisM - main.largestSideM() / 2);
  }

  private boolean pointsInto(Loose<P> loose, Axis axis, Point foot) {
    Point out = loose.outward;
    return Math.abs(axis.cosine(out)) <= STEEPEST && out.alongM(loose.atM, foot) > -toleranceM;
  }

  /** The branch lies within the width of the main. */
  private static <P> boolean fits(Loose<P> loose, Axis axis, Section main) {
    double besideM = axis.distanceToLineM(loose.atM, loose.outward);
    double halfM = loose.section.largestSideM() / 2;
    return besideM + halfM <= main.largestSideM() / 2 + ROUNDING_M;
  }

  /** The main of each end whose surface is nearest, in the order of the ends. */
  public List<Meeting<P>> nearest(List<Meeting<P>> meetings) {
    List<Meeting<P>> sorted = new ArrayList<>(meetings);
    sorted.sort(new NearestFirst());
    List<Meeting<P>> nearest = new ArrayList<>();
    int last = -1;
    for (Meeting<P> meeting : sorted) {
      if (meeting.end != last) {
        nearest.add(meeting);
      }
      last = meeting.end;
    }
    return nearest;
  }
}
