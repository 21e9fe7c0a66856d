package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Form, sizes, angle and radius of fittings, valves and inline items. Works after the segments,
 * whose sizes it takes over where a body is wider than the pipe it sits in.
 */
public final class FittingMeasurer {

  /** Marks the size of a body that is wider than the pipe it sits in. */
  public static final String BODY = "body, not the pipe in it";

  static final String INSULATED = "drawn with its insulation";

  private static final String ACROSS = "the body is narrower than its duct, so it does not run so";

  /** A duct is wider than a box that it does not go into, by more than is lost in rounding. */
  private static final double WIDER = 1.02;

  private static final double CONCENTRIC_M = 1e-4;

  private static final String ENDS_MISSING =
      "It has more ends than what is drawn and joined shows; those may be of another size";

  /** Widths that differ by less are one: a tenth of a millimetre. */
  private static final double AS_WIDE_M = 1e-4;

  /** Faces that look away from each other may be out of line by this: 10 degrees. */
  private static final double IN_LINE = Math.cos(Math.toRadians(10));

  /** An axis that leans more on the way between both ends is not that of the piece: 45 degrees. */
  private static final double STEEPEST = Math.cos(Math.toRadians(45));

  private final Neighbours neighbours;
  private final FittingSections sizes;
  private final StatedEnds statedEnds;
  private final BendMeasurer bends;
  private final BranchMeasurer branches;
  private final StatedLengths lengths;
  private final FittingInsulation insulation;

  /** Measures beside these neighbours. */
  public FittingMeasurer(
      Neighbours neighbours,
      Placeholders placeholders,
      FittingSections sizes,
      StatedEnds statedEnds,
      double lengthUnitM) {
    this.neighbours = neighbours;
    this.sizes = sizes;
    this.statedEnds = statedEnds;
    this.bends = new BendMeasurer(placeholders, lengthUnitM);
    this.branches = new BranchMeasurer(placeholders, lengthUnitM);
    this.lengths = new StatedLengths(placeholders, lengthUnitM);
    this.insulation = new FittingInsulation(lengthUnitM);
  }

  /** The form of an item; sizes are asked only once the forms of all are known. */
  public Form formOf(Draft draft) {
    if (draft.kind() != null && !draft.kind().isFitting()) {
      return isGeneralController(draft) && neighbours.areDucts(draft) ? Form.DAMPER : draft.form();
    }
    List<Neighbours.Joint> joints = neighbours.jointsOf(draft);
    return FittingForm.of(draft, joints, JointShape.of(draft, joints), statedEnds);
  }

  private static boolean isInLine(Draft draft) {
    return draft.kind() == Kind.VALVE || draft.kind() == Kind.INLINE;
  }

  /** What IFC2X3 calls a valve and a damper alike, if no type of a damper told. */
  private static boolean isGeneralController(Draft draft) {
    return draft.kind() == Kind.VALVE && draft.ifcClass().equals("IfcFlowController");
  }

  /** Measures an item whose form is set. */
  public void measure(Draft draft) {
    List<Neighbours.Joint> met = neighbours.jointsOf(draft);
    Shape faces = met.size() < 2 && isInLine(draft) ? Faces.between(draft.shape(), met) : null;
    if (faces != null) {
      draft.measured(faces);
    }
    List<Neighbours.Joint> joints = sizesAt(met, draft);
    Shape joined = JointShape.of(draft, joints);
    FittingEnds ends = new FittingEnds(draft, joints, joined, statedEnds, false);
    if (insulation.isIn(draft, joints, ends.ways())) {
      List<Neighbours.Joint> bare = new ArrayList<>(joints.size());
      for (Neighbours.Joint joint : joints) {
        bare.add(joint.withSegmentsOnly());
      }
      ends = new FittingEnds(draft, bare, JointShape.of(draft, bare), statedEnds, true);
      sizes.choose(draft, bare, ends);
    } else {
      sizes.choose(draft, joints, ends);
      boolean insulated = draft.drawnInsulation() != null;
      ends = insulated ? new FittingEnds(draft, joints, joined, statedEnds, true) : ends;
    }
    draft.change().setEnds(ends.choose());
    BendSides.align(draft);
    draft.change().setLengthM(length(draft, joints, joined));
    draft.change().setEccentricityM(eccentricity(draft, joined));
    bends.measure(draft, joined);
    branches.measure(draft, joined);
    note(draft, joints);
  }

  /**
   * The joints of an item with the sizes that may count. What is drawn itself takes no size from
   * the body of a valve, flange or the like next door, which may be wider or narrower than its own.
   */
  private static List<Neighbours.Joint> sizesAt(List<Neighbours.Joint> joints, Draft draft) {
    if (!isDrawn(draft)) {
      return joints;
    }
    List<Neighbours.Joint> withoutBodies = new ArrayList<>(joints.size());
    for (Neighbours.Joint joint : joints) {
      withoutBodies.add(joint.withoutBody());
    }
    return withoutBodies;
  }

  /** True if the body of an item gives a size; the sides of a valve are none. */
  private static boolean isDrawn(Draft draft) {
    boolean allEnds =
        draft.form().isWiderThanItsPipe() || draft.shape().ends().size() == draft.form().ways();
    return allEnds && draft.shape().section() != null && !PipeItems.isDrawnAsBox(draft);
  }

  static Neighbours.Found largest(List<Neighbours.Found> sizes) {
    Neighbours.Found largest = sizes.get(0);
    for (Neighbours.Found size : sizes) {
      largest = isLarger(size.section(), largest.section()) ? size : largest;
    }
    return largest;
  }

  /** The wider one is larger; of two as wide, the one that is longer around. */
  static boolean isLarger(Section section, Section other) {
    double widerM = section.largestSideM() - other.largestSideM();
    return Math.abs(widerM) < AS_WIDE_M ? section.perimeterM() > other.perimeterM() : widerM > 0;
  }

  private @Nullable Measured<Double> length(
      Draft draft, List<Neighbours.Joint> joints, @Nullable Shape joined) {
    Options<Double> options = new Options.Lengths();
    Shape made = joined != null && joined.form() == draft.form() ? joined : null;
    List<Neighbours.Joint> faces =
        made != null || !goesStraightThrough(draft.form()) ? List.of() : faces(joints);
    // motors and handles are ends of the body too, and farther apart than its faces
    boolean facesFirst = draft.shape().ends().size() > 2 || isCornerAcross(draft, faces);
    if (facesFirst) {
      faceToFace(draft, faces, options);
    }
    boolean longWay = made != null && BendMeasurer.isLongWayRound(draft, made);
    options.addAll(made == null || !longWay ? null : made.lengthM());
    addDrawn(draft, options);
    if (made != null && !longWay) {
      boolean noArc = draft.form() == Form.BEND && BendMeasurer.isArcUntoldByEnds(draft, made);
      options.addAll(noArc ? null : made.lengthM());
    } else if (made == null && !facesFirst) {
      faceToFace(draft, faces, options);
    }
    lengths.addTo(options, draft);
    return options.choose();
  }

  /** The length of the body, unless it was read along another edge than it runs. */
  private static void addDrawn(Draft draft, Options<Double> options) {
    Measured<Double> lengthM = draft.shape().lengthM();
    if (lengthM != null && isWiderThanBody(draft)) {
      options.rule(lengthM.value(), lengthM.how(), lengthM.evidence(), ACROSS);
    } else {
      options.addAll(lengthM);
    }
  }

  /** True if a duct does not go into the box that is drawn, so that this does not run so. */
  private static boolean isWiderThanBody(Draft draft) {
    Measured<Section> chosen = draft.section();
    Measured<Section> body = draft.shape().section();
    if (chosen == null
        || body == null
        || !(chosen.value() instanceof Section.Rectangular duct)
        || !(body.value() instanceof Section.Rectangular box)) {
      return false;
    }
    double leastM = box.smallestSideM() * WIDER;
    return duct.largestSideM() > box.largestSideM() * WIDER || duct.smallestSideM() > leastM;
  }

  /** True if what stands at the side makes a corner of a body whose lines go straight through. */
  private static boolean isCornerAcross(Draft draft, List<Neighbours.Joint> faces) {
    return draft.shape().form() == Form.BEND
        && faces.size() == 2
        && lookApart(faces.get(0), faces.get(1));
  }

  private static boolean goesStraightThrough(Form form) {
    int ways = form.ways();
    return form != Form.BEND && (ways == 0 || ways == 2);
  }

  /** Both joints unless they make a corner, or of more those two that look apart; else none. */
  private static List<Neighbours.Joint> faces(List<Neighbours.Joint> joints) {
    if (joints.size() == 2) {
      return turns(joints) ? List.of() : joints;
    }
    List<Neighbours.Joint> faces = List.of();
    for (int i = 0; i < joints.size(); i++) {
      for (int j = i + 1; j < joints.size(); j++) {
        if (lookApart(joints.get(i), joints.get(j))) {
          if (!faces.isEmpty()) {
            return List.of();
          }
          faces = List.of(joints.get(i), joints.get(j));
        }
      }
    }
    return faces;
  }

  /** True if the axes at two joints make a corner, as those of an angle valve do. */
  private static boolean turns(List<Neighbours.Joint> joints) {
    Point a = joints.size() == 2 ? joints.get(0).outward() : null;
    Point b = joints.size() == 2 ? joints.get(1).outward() : null;
    return a != null && b != null && Math.abs(a.dot(b)) < STEEPEST;
  }

  private static boolean lookApart(Neighbours.Joint a, Neighbours.Joint b) {
    return isAhead(a, b) && isAhead(b, a);
  }

  /** True if the way from the other joint leads straight out of the element at this one. */
  private static boolean isAhead(Neighbours.Joint joint, Neighbours.Joint other) {
    Point out = joint.outward();
    Point atM = joint.port().positionM();
    Point otherM = other.port().positionM();
    if (out == null || atM == null || otherM == null) {
      return false;
    }
    return out.alongM(otherM, atM) > IN_LINE * atM.distanceM(otherM);
  }

  private static void faceToFace(
      Draft draft, List<Neighbours.Joint> faces, Options<Double> options) {
    Point a = faces.isEmpty() ? null : faces.get(0).port().positionM();
    Point b = faces.isEmpty() ? null : faces.get(1).port().positionM();
    if (a != null && b != null && ShapeMeasurer.isPossible(a.distanceM(b))) {
      double apartM = apartM(draft, faces.get(0).outward(), a, b);
      boolean inFile = true;
      for (Neighbours.Joint face : faces) {
        inFile &= face.port().isInFile();
      }
      Evidence evidence =
          new Evidence(
              inFile ? faces.get(0).port().step() : draft.step(),
              inFile ? "distance of ports" : "distance of touching ends",
              InWords.metres(apartM) + " m");
      options.add(apartM, inFile ? How.PORTS : How.NEIGHBOUR, evidence);
    }
  }

  /** Between two faces; of what may be eccentric along the axis, as it is drawn. */
  private static double apartM(Draft draft, @Nullable Point outward, Point aM, Point bM) {
    double straightM = aM.distanceM(bM);
    boolean reduces = draft.form() == Form.REDUCER || draft.form() == Form.TRANSITION;
    double alongM = reduces && outward != null ? outward.alongM(bM, aM) : straightM;
    return alongM > STEEPEST * straightM ? alongM : straightM;
  }

  /** How far the axes of both ends lie apart; what is less than a tenth of a millimetre is none. */
  private @Nullable Measured<Double> eccentricity(Draft draft, @Nullable Shape joined) {
    if (draft.form() != Form.REDUCER
        && draft.form() != Form.TRANSITION
        && draft.form() != Form.OFFSET) {
      return null;
    }
    Options<Double> options = new Options.Lengths();
    Measured<Double> drawnM = draft.shape().lengthM();
    if (draft.shape().ends().size() == 2 && drawnM != null) {
      options.add(sidewaysM(draft.shape().ends()), drawnM.how(), drawnM.evidence());
    }
    Measured<Double> joinedM = joined == null ? null : joined.lengthM();
    if (joined != null && joined.ends().size() == 2 && joinedM != null) {
      options.add(sidewaysM(joined.ends()), joinedM.how(), joinedM.evidence());
    }
    lengths.addEccentricity(options, draft);
    return options.choose();
  }

  private static double sidewaysM(List<ShapeEnd> ends) {
    Point a = ends.get(0).centreM();
    Point b = ends.get(1).centreM();
    Point axis = ends.get(1).outward();
    double x = b.x() - a.x();
    double y = b.y() - a.y();
    double z = b.z() - a.z();
    double alongM = x * axis.x() + y * axis.y() + z * axis.z();
    double sidewaysM = Math.sqrt(Math.max(0, x * x + y * y + z * z - alongM * alongM));
    return sidewaysM < CONCENTRIC_M ? 0 : sidewaysM;
  }

  private static void note(Draft draft, List<Neighbours.Joint> joints) {
    WeakSources.note(draft, draft.section(), draft.lengthM());
    Conflicts.noteSizes(draft);
    Conflicts.noteLength(draft, draft.lengthM());
    Conflicts.noteBend(draft);
    if (draft.section() == null) {
      draft.note(
          ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED,
          Effect.NONE,
          draft.shape().problems().isEmpty()
              ? "The body gives no size"
              : InWords.sentence(draft.shape().problems()));
    } else if (!draft.form().isWiderThanItsPipe()
        || isUnknownFitting(draft)
        || WeakSources.isPipeNotRound(draft)
        || isOfStraightBody(draft, draft.section())
        || (isOfOneOfItsPieces(draft) && !turns(joints))) {
      WeakSources.noteBody(draft);
    }
    if (lacksEnds(draft)) {
      draft.note(ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.NONE, ENDS_MISSING);
    }
  }

  private static boolean isUnknownFitting(Draft draft) {
    return draft.form() == Form.UNKNOWN && draft.kind() != null && draft.kind().isFitting();
  }

  /** True of a tee, cross or wye that is drawn, and of which only some ends are known. */
  private static boolean lacksEnds(Draft draft) {
    Measured<List<Section>> ends = draft.ends();
    int known = ends == null ? draft.shape().ends().size() : ends.value().size();
    return draft.form().ways() > 2
        && known > 0
        && known < draft.form().ways()
        && draft.shape().isDrawn();
  }

  /** True for the length of a body that was not read as a whole. */
  private static boolean isOfOneOfItsPieces(Draft draft) {
    return draft.lengthM() != null && draft.lengthM().how().isDrawn();
  }

  private static boolean isOfStraightBody(Draft draft, Measured<Section> size) {
    return size.how().isDrawn() && draft.shape().form() == Form.STRAIGHT;
  }
}
