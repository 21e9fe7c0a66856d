package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.graph.Axis;
import org.lagwright.ifc.extract.graph.JointMaker;
import org.lagwright.ifc.extract.graph.PointGrid;
import org.lagwright.ifc.extract.graph.ReadEnds;
import org.lagwright.ifc.extract.graph.SideSearch;
import org.lagwright.ifc.extract.graph.Taps;
import org.lagwright.ifc.extract.graph.TouchingEnds;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Connects ends that are open in their own files and touch across them: each other, or the side of
 * a straight piece.
 */
final class CrossJoints {

  private record Loose(MepElement element, OpenEnd end) {}

  private final Joining joining;
  private final Redrafts drafts;
  private final double toleranceM;
  private final List<Loose> ends = new ArrayList<>();

  /** Elements that were joined. */
  private final Set<ElementKey> joined;

  /** Boxes that others turned; they meet those of their own file anew. */
  private final Set<ElementKey> turned;

  /** Joints made, by the two files. */
  private final Map<List<Integer>, Integer> counts =
      new TreeMap<>(Comparator.comparing(List::toString));

  private CrossJoints(
      Joining joining,
      Redrafts drafts,
      double toleranceM,
      Set<ElementKey> turned,
      Set<ElementKey> joined) {
    this.joining = joining;
    this.drafts = drafts;
    this.toleranceM = toleranceM;
    this.turned = turned;
    this.joined = joined;
  }

  /**
   * @param toleranceM distance up to which ends touch, metres; 0 joins none
   * @param joined given the elements that were joined
   */
  static void join(Joining joining, Redrafts drafts, double toleranceM, Set<ElementKey> joined) {
    if (toleranceM > 0) {
      Set<ElementKey> turned = CrossBoxes.turn(joining, drafts, toleranceM);
      joined.addAll(turned);
      new CrossJoints(joining, drafts, toleranceM, turned, joined).join();
    }
  }

  private void join() {
    for (MepModel model : joining.read()) {
      for (MepElement element : model.elements()) {
        // what repeats another element is joined in its place; coverings lie around the others
        MepElement now = joining.now(element);
        if (now.repeats() == null && element.kind() != Kind.COVERING) {
          now.openEnds().forEach(end -> ends.add(new Loose(element, end)));
        }
      }
    }
    BitSet used = new BitSet();
    joinEnds(used);
    joinSides(used);
    counts.forEach(this::note);
  }

  /** The ends of all files meet as those of one file do. */
  private void joinEnds(BitSet used) {
    Map<TouchingEnds.Loose, Integer> places = new IdentityHashMap<>();
    List<TouchingEnds.Loose> near = new ArrayList<>();
    for (int i : nearOthers()) {
      Draft draft = drafts.of(ends.get(i).element);
      if (draft != null) {
        TouchingEnds.Loose end =
            TouchingEnds.open(
                draft, ends.get(i).end, isAtTheSide(ends.get(i).element, ends.get(i).end));
        near.add(end);
        places.put(end, i);
      }
    }
    for (List<TouchingEnds.Loose> pair : TouchingEnds.touching(near, toleranceM)) {
      int a = places.getOrDefault(pair.get(0), -1);
      int b = places.getOrDefault(pair.get(1), -1);
      if (!used.get(a) && !used.get(b) && mayMeet(key(a), key(b))) {
        used.set(a);
        used.set(b);
        boolean tap = pair.get(0).atTheSide() || pair.get(1).atTheSide();
        attach(ends.get(a), ends.get(b).element.key(), tap);
        attach(ends.get(b), ends.get(a).element.key(), tap);
        count(key(a).model(), key(b).model());
      }
    }
  }

  private boolean mayMeet(ElementKey piece, ElementKey other) {
    return piece.model() == other.model()
        ? !piece.equals(other) && (turned.contains(piece) || turned.contains(other))
        : joining.haveOneOrigin(piece.model(), other.model());
  }

  /** True for a port at the side of a straight piece. */
  static boolean isAtTheSide(MepElement element, OpenEnd end) {
    for (Port port : element.ports()) {
      if (port.tap() && end.positionM().equals(port.positionM())) {
        return true;
      }
    }
    return false;
  }

  private ElementKey key(int end) {
    return ends.get(end).element.key();
  }

  private void count(int one, int other) {
    if (one != other) {
      counts.merge(List.of(Math.min(one, other), Math.max(one, other)), 1, Integer::sum);
    }
  }

  /** Ends that met no other end may lie on the side of a piece of another file. */
  private void joinSides(BitSet used) {
    SideSearch<MepElement> search = new OtherFiles();
    for (int i = used.nextClearBit(0); i < ends.size(); i = used.nextClearBit(i + 1)) {
      MepElement piece = ends.get(i).element;
      Point outward = ends.get(i).end.outward();
      Section section = ends.get(i).end.section();
      boolean inALine = piece.kind().isSegment() || piece.kind().isLaggedItem();
      boolean told = inALine && Taps.isToldWhichIsOpen(joining.now(piece).ports());
      if (told && outward != null && section != null) {
        Point atM = ends.get(i).end.positionM();
        search.add(new SideSearch.Loose<>(piece, piece.kind(), atM, outward, section));
      }
    }
    if (search.isEmpty()) {
      return;
    }
    List<SideSearch.Meeting<MepElement>> meetings = new ArrayList<>();
    for (MepModel model : joining.read()) {
      model.elements().forEach(main -> lookAlong(joining.now(main), search, meetings));
    }
    search.nearest(meetings).forEach(this::join);
  }

  /** Ends at the sides of pieces of other files. */
  private final class OtherFiles extends SideSearch<MepElement> {

    OtherFiles() {
      super(toleranceM);
    }

    @Override
    protected boolean mayMeet(MepElement branch, MepElement main) {
      return CrossJoints.this.mayMeet(branch.key(), main.key());
    }

    @Override
    protected boolean mayBranch(MepElement piece) {
      return piece.kind().isSegment() || piece.kind().isFitting();
    }

    @Override
    protected boolean maySitAround(MepElement piece) {
      Draft draft = drafts.of(piece);
      return draft != null && Taps.sitsAround(draft);
    }

    @Override
    protected ElementKey key(MepElement piece) {
      return piece.key();
    }
  }

  private void lookAlong(
      MepElement main,
      SideSearch<MepElement> search,
      List<SideSearch.Meeting<MepElement>> meetings) {
    Measured<Section> section = main.section();
    boolean straight = main.kind().isSegment() && main.form() == Form.STRAIGHT;
    if (section == null || !straight || main.repeats() != null) {
      return;
    }
    List<Point> drawn = ReadEnds.of(main).stream().map(OpenEnd::positionM).toList();
    if (drawn.size() == 2) {
      Axis axis = Axis.between(drawn.get(0), drawn.get(1));
      search.lookAlong(new SideSearch.Main<>(main, main.kind(), axis, section.value()), meetings);
    }
  }

  private void join(SideSearch.Meeting<MepElement> meeting) {
    SideSearch.Loose<MepElement> branch = meeting.branch();
    MepElement main = joining.now(meeting.main().piece());
    OpenEnd end = new OpenEnd(branch.atM(), branch.outward(), branch.section());
    attach(new Loose(branch.piece(), end), main.key(), true);
    List<Port> sides = new ArrayList<>(main.ports());
    sides.add(JointMaker.side(meeting, branch.piece().key()));
    joining.change(main.toBuilder().ports(sides).build());
    joined.add(main.key());
    count(branch.piece().key().model(), main.key().model());
  }

  /** Ends that lie near one of another file; few do, and only those are looked at further. */
  private List<Integer> nearOthers() {
    List<Point> points = ends.stream().map(loose -> loose.end.positionM()).toList();
    double reachM = toleranceM + TouchingEnds.STEP_M;
    PointGrid grid = new PointGrid(points, reachM);
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      int a = i;
      boolean[] near = new boolean[1];
      grid.near(
          points.get(a),
          b ->
              near[0] |=
                  mayMeet(key(a), key(b)) && points.get(a).distanceM(points.get(b)) <= reachM);
      if (near[0]) {
        found.add(i);
      }
    }
    return found;
  }

  /** The port at this end is connected, or the end becomes one. */
  private void attach(Loose loose, ElementKey other, boolean tap) {
    MepElement element = joining.now(loose.element);
    Point atM = loose.end.positionM();
    List<Port> ports = new ArrayList<>(element.ports());
    boolean[] connected = new boolean[ports.size()];
    for (int i = 0; i < connected.length; i++) {
      connected[i] = ports.get(i).connectedTo() != null;
    }
    int port = JointMaker.nearest(ports, atM, connected);
    JointMaker.attach(ports, port, atM, loose.end.outward(), other, tap);
    joining.change(element.toBuilder().ports(ports).build());
    joined.add(element.key());
  }

  private void note(List<Integer> files, int count) {
    joining.note(
        Finding.ofFile(
            files.get(1),
            ReadFinding.FILES_CONNECTED,
            Effect.ASSUMED,
            String.valueOf(count),
            joining.file(files.get(0)),
            InWords.millimetres(toleranceM)));
  }
}
