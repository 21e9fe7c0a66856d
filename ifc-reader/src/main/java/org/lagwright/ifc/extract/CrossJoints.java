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
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/** Connects ends that are open in their own files and touch across them. */
final class CrossJoints {

  /** Ends that face each other may be out of line by this: 10 degrees. */
  private static final double FACING = -Math.cos(Math.toRadians(10));

  /** An end and a port of the same element this near are one. */
  private static final double SAME_PLACE_M = 0.02;

  private record Loose(MepElement element, OpenEnd end) {}

  private record Touch(int a, int b, double distanceM) {}

  private final Joining joining;
  private final double toleranceM;
  private final List<Loose> ends = new ArrayList<>();

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
        if (joining.now(element).repeats() == null && element.kind() != Kind.COVERING) {
          element.openEnds().forEach(end -> ends.add(new Loose(element, end)));
        }
      }
    }
    BitSet used = new BitSet();
    Map<List<Integer>, Integer> counts = new TreeMap<>(Comparator.comparing(List::toString));
    for (Touch touch : touches()) {
      if (!used.get(touch.a) && !used.get(touch.b)) {
        used.set(touch.a);
        used.set(touch.b);
        attach(ends.get(touch.a), ends.get(touch.b).element.key());
        attach(ends.get(touch.b), ends.get(touch.a).element.key());
        counts.merge(List.of(model(touch.a), model(touch.b)), 1, Integer::sum);
      }
    }
    counts.forEach(this::note);
  }

  private int model(int end) {
    return ends.get(end).element.key().model();
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
            if (model(a) < model(b) && distanceM <= toleranceM && fit(ends.get(a), ends.get(b))) {
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
  private void attach(Loose loose, ElementKey other) {
    MepElement element = joining.now(loose.element);
    Point atM = loose.end.positionM();
    List<Port> ports = new ArrayList<>(element.ports());
    for (int i = 0; i < ports.size(); i++) {
      Port port = ports.get(i);
      boolean here = port.positionM() != null && port.positionM().distanceM(atM) < SAME_PLACE_M;
      if (here && port.connectedTo() == null) {
        ports.set(i, port.touching(other, atM, loose.end.outward(), false));
        joining.change(element.toBuilder().ports(ports).build());
        return;
      }
    }
    ports.add(Port.withoutRecord(atM, loose.end.outward(), other, false));
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
