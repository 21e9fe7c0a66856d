package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.ModelJoiner.Joining;
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

  /** Ends that face each other may be out of line by this: 10 degrees. */
  private static final double FACING = -Math.cos(Math.toRadians(10));

  private record Loose(MepElement element, OpenEnd end) {}

  private record Touch(int a, int b, double distanceM) {}

  private final Joining joining;
  private final double toleranceM;
  private final List<Loose> ends = new ArrayList<>();

  /** Joints made, by the two files. */
  private final Map<List<Integer>, Integer> counts =
      new TreeMap<>(Comparator.comparing(List::toString));

  private CrossJoints(Joining joining, double toleranceM) {
    this.joining = joining;
    this.toleranceM = toleranceM;
  }

  static void join(Joining joining, double toleranceM) {
    if (toleranceM > 0) {
      new CrossJoints(joining, toleranceM).join();
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
    for (Touch touch : touches()) {
      if (!used.get(touch.a) && !used.get(touch.b)) {
        used.set(touch.a);
        used.set(touch.b);
        boolean tap = isAtTheSide(ends.get(touch.a)) || isAtTheSide(ends.get(touch.b));
        attach(ends.get(touch.a), ends.get(touch.b).element.key(), tap);
        attach(ends.get(touch.b), ends.get(touch.a).element.key(), tap);
        count(model(touch.a), model(touch.b));
      }
    }
    joinSides(used);
    counts.forEach(this::note);
  }

  /** True for a port at the side of a straight piece. */
  private static boolean isAtTheSide(Loose loose) {
    for (Port port : loose.element.ports()) {
      if (port.tap() && loose.end.positionM().equals(port.positionM())) {
        return true;
      }
    }
    return false;
  }

  private int model(int end) {
    return ends.get(end).element.key().model();
  }

  private void count(int one, int other) {
    counts.merge(List.of(Math.min(one, other), Math.max(one, other)), 1, Integer::sum);
  }

  /** Ends that met no other end may lie on the side of a piece of another file. */
  private void joinSides(BitSet used) {
    SideSearch<MepElement> search = new OtherFiles(joining, toleranceM);
    for (int i = used.nextClearBit(0); i < ends.size(); i = used.nextClearBit(i + 1)) {
      MepElement piece = ends.get(i).element;
      Point outward = ends.get(i).end.outward();
      Section section = ends.get(i).end.section();
      boolean inALine = piece.kind().isSegment() || piece.kind().isFitting();
      boolean told = inALine && Taps.isToldWhichIsOpen(piece.ports());
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
      model.elements().forEach(main -> lookAlong(main, search, meetings));
    }
    search.nearest(meetings).forEach(this::join);
  }

  /** Ends at the sides of pieces of other files. */
  private static final class OtherFiles extends SideSearch<MepElement> {

    private final Joining joining;

    OtherFiles(Joining joining, double toleranceM) {
      super(toleranceM);
      this.joining = joining;
    }

    @Override
    boolean mayMeet(MepElement branch, MepElement main) {
      int its = branch.key().model();
      int other = main.key().model();
      return its != other && joining.haveOneOrigin(its, other);
    }

    @Override
    ElementKey key(MepElement piece) {
      return piece.key();
    }
  }

  private void lookAlong(
      MepElement main,
      SideSearch<MepElement> search,
      List<SideSearch.Meeting<MepElement>> meetings) {
    Measured<Section> section = main.section();
    boolean straight = main.kind().isSegment() && main.form() == Form.STRAIGHT;
    if (section == null || !straight || joining.now(main).repeats() != null) {
      return;
    }
    List<Point> drawn = ReadEnds.of(joining.now(main)).stream().map(OpenEnd::positionM).toList();
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
    count(branch.piece().key().model(), main.key().model());
  }

  private List<Touch> touches() {
    List<Point> points = ends.stream().map(loose -> loose.end.positionM()).toList();
    PointGrid grid = new PointGrid(points, toleranceM);
    List<Touch> touches = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      int a = i;
      grid.near(
          points.get(a),
          b -> {
            double distanceM = points.get(a).distanceM(points.get(b));
            boolean others = model(a) < model(b) && joining.haveOneOrigin(model(a), model(b));
            if (others && distanceM <= toleranceM && fit(ends.get(a), ends.get(b))) {
              touches.add(new Touch(a, b, distanceM));
            }
          });
    }
    touches.sort(
        Comparator.comparingDouble(Touch::distanceM)
            .thenComparing(Touch::a)
            .thenComparing(Touch::b));
    return touches;
  }

  private static boolean fit(Loose a, Loose b) {
    Section one = a.end.section();
    Section other = b.end.section();
    boolean sameSize = one == null || other == null || Sizes.sameSection(one, other);
    return sameSize && facing(a.end.outward(), b.end.outward());
  }

  private static boolean facing(@Nullable Point a, @Nullable Point b) {
    return a == null || b == null || a.x() * b.x() + a.y() * b.y() + a.z() * b.z() < FACING;
  }

  /** The port at this end is connected, or the end becomes one. */
  private void attach(Loose loose, ElementKey other, boolean tap) {
    MepElement element = joining.now(loose.element);
    Point atM = loose.end.positionM();
    List<Port> ports = new ArrayList<>(element.ports());
    for (int i = 0; i < ports.size(); i++) {
      Port port = ports.get(i);
      Point placeM = port.positionM();
      boolean here = placeM != null && placeM.distanceM(atM) < JointMaker.SAME_PLACE_M;
      if (here && port.connectedTo() == null) {
        ports.set(i, port.touching(other, atM, loose.end.outward(), tap));
        joining.change(element.toBuilder().ports(ports).build());
        return;
      }
    }
    ports.add(Port.withoutRecord(atM, loose.end.outward(), other, tap));
    joining.change(element.toBuilder().ports(ports).build());
  }

  private void note(List<Integer> files, int count) {
    joining.note(
        Finding.ofFile(
            files.get(1),
            ReadFinding.FILES_CONNECTED,
            Effect.ASSUMED,
            String.valueOf(count),
            joining.file(files.get(0)),
            Sizes.millimetres(toleranceM)));
  }
}
