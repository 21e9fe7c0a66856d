package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.ElementMaker;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.graph.Axis;
import org.lagwright.ifc.extract.graph.BoxAxes;
import org.lagwright.ifc.extract.graph.OpenEnds;
import org.lagwright.ifc.extract.graph.PointGrid;
import org.lagwright.ifc.extract.graph.TouchingEnds;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/**
 * Turns boxes that nothing in their own file is joined to, where those of another file touch their
 * sides: as {@link BoxAxes} does in one file.
 */
final class CrossBoxes {

  /**
   * Where an element is open, or may be.
   *
   * @param end null in the middle of a side of a box
   * @param isBox true if the element may run along another of its edges
   */
  private record Place(MepElement element, @Nullable OpenEnd end, Point atM, boolean isBox) {

    int model() {
      return element.key().model();
    }
  }

  private final Joining joining;
  private final Redrafts drafts;
  private final double toleranceM;
  private final List<Place> places = new ArrayList<>();

  /** True if some box has a place of another file at one of its sides. */
  private boolean meetsOtherFile;

  private CrossBoxes(Joining joining, Redrafts drafts, double toleranceM) {
    this.joining = joining;
    this.drafts = drafts;
    this.toleranceM = toleranceM;
  }

  /**
   * @param toleranceM distance up to which ends touch, metres
   * @return those that were turned
   */
  static Set<ElementKey> turn(Joining joining, Redrafts drafts, double toleranceM) {
    return new CrossBoxes(joining, drafts, toleranceM).turn();
  }

  private Set<ElementKey> turn() {
    boolean any = false;
    for (MepModel model : joining.read()) {
      for (MepElement element : model.elements()) {
        any |= collect(joining.now(element));
      }
    }
    BitSet near = any ? near() : new BitSet();
    if (!meetsOtherFile) {
      return Set.of();
    }
    Map<ElementKey, Draft> boxes = new LinkedHashMap<>();
    List<TouchingEnds.Loose> ends = new ArrayList<>();
    for (int i = near.nextSetBit(0); i >= 0; i = near.nextSetBit(i + 1)) {
      Place place = places.get(i);
      Draft draft = drafts.of(place.element);
      OpenEnd end = place.end;
      if (draft != null && end != null) {
        boolean side = CrossJoints.isAtTheSide(place.element, end);
        ends.add(TouchingEnds.open(draft, end, side));
      }
      if (draft != null && place.isBox && draft.mayLieOtherwise()) {
        boxes.put(draft.key(), draft);
      }
    }
    Set<ElementKey> turned = new LinkedHashSet<>();
    Set<Draft> chosen = BoxAxes.choose(new ArrayList<>(boxes.values()), ends, toleranceM);
    for (Draft box : boxes.values()) {
      if (chosen.contains(box)) {
        change(box);
        turned.add(box.key());
      }
    }
    return turned;
  }

  /**
   * @return true if the element may be turned
   */
  private boolean collect(MepElement element) {
    if (element.repeats() != null || element.kind() == Kind.COVERING) {
      return false;
    }
    List<Point> sidesM = sidesOf(element);
    boolean isBox = !sidesM.isEmpty();
    for (OpenEnd end : element.openEnds()) {
      places.add(new Place(element, end, end.positionM(), isBox));
    }
    for (Point sideM : sidesM) {
      places.add(new Place(element, null, sideM, true));
    }
    return isBox;
  }

  /** Where the middle of its sides may be; none for what is joined or is no box for sure. */
  private static List<Point> sidesOf(MepElement element) {
    List<OpenEnd> ends = element.openEnds();
    Point width = element.width();
    if (ends.size() != 2
        || width == null
        || !(ends.get(0).section() instanceof Section.Rectangular section)) {
      return List.of();
    }
    for (Port port : element.ports()) {
      if (port.connectedTo() != null) {
        return List.of();
      }
    }
    Axis axis = Axis.between(ends.get(0).positionM(), ends.get(1).positionM());
    Point middleM = axis.at(axis.along(ends.get(1).positionM()) / 2);
    Point height = axis.unit().cross(width);
    List<Point> sidesM = new ArrayList<>(8);
    // the size that was chosen may have its sides the other way round
    for (double sideM : new double[] {section.widthM(), section.heightM()}) {
      for (Point out : List.of(width, height)) {
        Axis across = new Axis(middleM, out, sideM);
        sidesM.add(across.at(sideM / 2));
        sidesM.add(across.at(-sideM / 2));
      }
    }
    return sidesM;
  }

  /** The places of boxes at which others have one, and those of the others. */
  private BitSet near() {
    List<Point> points = new ArrayList<>(places.size());
    for (Place place : places) {
      points.add(place.atM);
    }
    // sizes that were chosen are rounded, ends are as drawn
    double reachM = toleranceM + Drawn.SAME_PLACE_M;
    PointGrid grid = new PointGrid(points, reachM);
    BitSet near = new BitSet();
    for (int i = 0; i < points.size(); i++) {
      if (places.get(i).isBox) {
        int box = i;
        near.set(i, places.get(i).end != null);
        grid.near(points.get(i), other -> mark(box, other, reachM, near));
      }
    }
    return near;
  }

  private void mark(int box, int other, double reachM, BitSet near) {
    Place a = places.get(box);
    Place b = places.get(other);
    boolean sameFile = a.model() == b.model();
    if (a.element != b.element
        && a.atM.distanceM(b.atM) <= reachM
        && (sameFile || joining.haveOneOrigin(a.model(), b.model()))) {
      near.set(box);
      near.set(other);
      meetsOtherFile |= !sameFile && a.end == null;
    }
  }

  /** All else is measured once it is joined; a straight piece has its own figures. */
  private void change(Draft box) {
    MepElement before = joining.find(box.key());
    if (before == null) {
      return;
    }
    MepElement.Builder element = before.toBuilder();
    if (box.isSegment()) {
      drafts.measurersOf(box).segments().measure(box);
      ElementMaker.measured(element, box);
      joining.forget(box.key(), CrossMeasures.MEASURED);
      box.findings().forEach(joining::note);
      box.forgetFindings();
    }
    joining.change(element.openEnds(OpenEnds.of(box)).build());
  }
}
