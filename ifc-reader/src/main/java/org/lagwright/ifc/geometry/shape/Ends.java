package org.lagwright.ifc.geometry.shape;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * What a set of open ends makes: two facing ends a straight or a reducer, two at an angle a bend,
 * three a tee.
 */
public final class Ends {

  /** Ends that turn by less are parallel; elbows of less than half a degree are not made. */
  private static final double PARALLEL_RAD = Math.toRadians(0.5);

  /** Directions of a run through a tee or a cross may differ by this. */
  private static final double RUN_RAD = Math.toRadians(2);

  /** A branch within this of a right angle is a tee, beyond it a lateral. */
  private static final double SQUARE_RAD = Math.toRadians(5);

  /** A branch leans on its run by less than this from a right angle; beyond it is another leg. */
  private static final double MOST_LEAN_RAD = Math.toRadians(75);

  /** Sections that differ by less (relative) are equal. */
  private static final double SAME_SIZE = 0.01;

  /** Cosine up to which two sides lie across each other rather than along: 45 degrees. */
  private static final double LIES_ALONG = Math.sqrt(0.5);

  /** Sideways shift over distance up to which two ends lie on one axis. */
  private static final double COAXIAL = 0.005;

  /** Unequal legs of a bend, over its chord, up to which the radius is told. */
  private static final double SYMMETRIC = 0.01;

  /**
   * The ends in order and what they make.
   *
   * @param lengthM of a bend the arc, of a tee or cross the longest run
   */
  public record Joined(
      Form form,
      List<ShapeEnd> ordered,
      @Nullable Double lengthM,
      @Nullable Double angleDeg,
      @Nullable Double radiusM,
      List<String> problems) {

    static Joined of(Form form, List<ShapeEnd> ordered, @Nullable Double lengthM) {
      return new Joined(form, ordered, lengthM, null, null, List.of());
    }
  }

  private Ends() {}

  /** Two ends without what is not known of them. */
  public static List<ShapeEnd> known(@Nullable ShapeEnd one, @Nullable ShapeEnd other) {
    List<ShapeEnd> known = new ArrayList<>(2);
    if (one != null) {
      known.add(one);
    }
    if (other != null) {
      known.add(other);
    }
    return known;
  }

  /** What ends tell of the body between them: form, length, angle, radius. */
  public static Joined join(List<ShapeEnd> ends) {
    return switch (ends.size()) {
      case 0 -> new Joined(Form.UNKNOWN, ends, null, null, null, List.of("no open end recognised"));
      case 1 -> Joined.of(Form.CAP, ends, null);
      case 2 -> two(ends.get(0), ends.get(1));
      case 3 -> three(ends);
      case 4 -> four(ends);
      default ->
          new Joined(
              Form.UNKNOWN, ends, null, null, null, List.of(ends.size() + " ends, no known form"));
    };
  }

  private static Joined two(ShapeEnd a, ShapeEnd b) {
    double turn = Math.PI - a.out().angleTo(b.out());
    if (turn > Math.PI - PARALLEL_RAD && lieBehindOneAnother(a, b)) {
      return new Joined(
          Form.UNKNOWN, List.of(a, b), null, null, null, List.of("ends look the same way"));
    }
    return turn < PARALLEL_RAD ? facing(a, b) : bend(a, b, turn);
  }

  /** The legs of a bend that turns back lie beside one another, at least as far as one is wide. */
  private static boolean lieBehindOneAnother(ShapeEnd a, ShapeEnd b) {
    double besideM = b.centre().minus(a.centre()).across(a.out()).norm();
    return besideM < Math.min(a.section().smallestSideM(), b.section().smallestSideM()) / 2;
  }

  private static Joined facing(ShapeEnd a, ShapeEnd b) {
    Vec between = b.centre().minus(a.centre());
    double axialM = between.dot(b.out());
    if (!(axialM > 0)) {
      return new Joined(
          Form.UNKNOWN, List.of(a, b), null, null, null, List.of("ends face each other inwards"));
    }
    Form form = facingForm(a, b, areCoaxial(a, b));
    if (form == Form.OFFSET) {
      String problem = "ends are shifted sideways, length is the distance between them";
      return new Joined(form, List.of(a, b), between.norm(), null, null, List.of(problem));
    }
    return Joined.of(form, List.of(a, b), axialM);
  }

  private static boolean areCoaxial(ShapeEnd a, ShapeEnd b) {
    Vec between = b.centre().minus(a.centre());
    return between.across(b.out()).norm() < Math.max(1e-3, COAXIAL * between.dot(b.out()));
  }

  private static Form facingForm(ShapeEnd a, ShapeEnd b, boolean coaxial) {
    if (same(a.section(), b.section()) && !isTurned(a, b)) {
      return coaxial ? Form.STRAIGHT : Form.OFFSET;
    }
    return a.section().getClass() == b.section().getClass() ? Form.REDUCER : Form.TRANSITION;
  }

  /** True if the longer sides of two ends lie across each other, as from 500 x 300 to 300 x 500. */
  private static boolean isTurned(ShapeEnd a, ShapeEnd b) {
    Vec one = longerSide(a);
    Vec other = longerSide(b);
    return one != null && other != null && Math.abs(one.dot(other)) < LIES_ALONG;
  }

  private static @Nullable Vec longerSide(ShapeEnd end) {
    Point width = end.width();
    if (width == null || near(end.section().largestSideM(), end.section().smallestSideM())) {
      return null;
    }
    Vec u = Vec.of(width);
    Vec v = end.out().cross(u);
    return end.halfM(u) > end.halfM(v) ? u : v;
  }

  /** True if two sections are equal but for tessellation; the sides may be swapped. */
  public static boolean same(Section a, Section b) {
    return a.getClass() == b.getClass()
        && near(a.perimeterM(), b.perimeterM())
        && near(a.largestSideM(), b.largestSideM());
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) < SAME_SIZE * Math.max(a, b);
  }

  /** Radius from the chord: {@code R = chord / (2 sin(turn / 2))}, if both legs are alike. */
  private static Joined bend(ShapeEnd a, ShapeEnd b, double turn) {
    Vec chord = b.centre().minus(a.centre());
    double chordM = chord.norm();
    double atA = -chord.dot(a.out());
    double atB = chord.dot(b.out());
    double twist = Math.abs(chord.dot(a.out().cross(b.out())));
    List<String> problems = new ArrayList<>();
    Double radiusM = null;
    if (Math.abs(atA - atB) < SYMMETRIC * chordM && twist < SYMMETRIC * chordM) {
      radiusM = chordM / (2 * Math.sin(turn / 2));
    } else {
      problems.add("legs of the bend are unequal, its radius is not known");
    }
    if (!same(a.section(), b.section())) {
      problems.add("ends of the bend differ in size");
    }
    Double lengthM = radiusM == null ? null : Double.valueOf(radiusM * turn);
    return new Joined(Form.BEND, List.of(a, b), lengthM, Math.toDegrees(turn), radiusM, problems);
  }

  /**
   * True for two ends that look apart along one axis, or, of a duct that loses size at one side
   * only, with the middle of the smaller end before the larger one.
   */
  private static boolean isRun(ShapeEnd a, ShapeEnd b, boolean oneSided) {
    Vec between = b.centre().minus(a.centre());
    if (a.out().angleTo(b.out().times(-1)) >= RUN_RAD || !(between.dot(b.out()) > 0)) {
      return false;
    }
    boolean fromA = a.section().perimeterM() > b.section().perimeterM();
    return oneSided
        ? (fromA ? a : b).contains(fromA ? between : between.times(-1))
        : between.across(b.out()).norm() < Math.tan(RUN_RAD) * between.norm();
  }

  /**
   * Length of a run along its axis; ends in line tell more closely by places than by directions.
   */
  private static double runM(ShapeEnd a, ShapeEnd b) {
    Vec between = b.centre().minus(a.centre());
    return areCoaxial(a, b) ? between.norm() : between.dot(b.out().minus(a.out()).unit());
  }

  private static Joined three(List<ShapeEnd> ends) {
    Joined inLine = three(ends, false);
    Joined branched = inLine == null ? three(ends, true) : inLine;
    return branched == null ? Joined.of(Form.WYE, ends, null) : branched;
  }

  private static @Nullable Joined three(List<ShapeEnd> ends, boolean oneSided) {
    for (int branch = 2; branch >= 0; branch--) {
      ShapeEnd a = ends.get(branch == 0 ? 1 : 0);
      ShapeEnd b = ends.get(branch == 2 ? 1 : 2);
      ShapeEnd c = ends.get(branch);
      double lean = Math.abs(c.out().angleTo(b.out()) - Math.PI / 2);
      // of a fork with parallel legs each leg lies before the inlet
      if (isRun(a, b, oneSided) && (!oneSided || lean < MOST_LEAN_RAD)) {
        double lengthM = runM(a, b);
        List<ShapeEnd> ordered = List.of(a, b, c);
        return lean < SQUARE_RAD
            ? Joined.of(Form.TEE, ordered, lengthM)
            : lateral(ordered, lengthM, Math.PI / 2 - lean);
      }
    }
    return null;
  }

  /** A slanting branch; its angle to the run is the acute one. */
  private static Joined lateral(List<ShapeEnd> ordered, double lengthM, double angle) {
    double angleDeg = Math.toDegrees(angle);
    return new Joined(Form.LATERAL, ordered, lengthM, angleDeg, null, List.of());
  }

  private static Joined four(List<ShapeEnd> ends) {
    Joined inLine = four(ends, false);
    Joined cross = inLine == null ? four(ends, true) : inLine;
    return cross == null
        ? new Joined(Form.UNKNOWN, ends, null, null, null, List.of("4 ends that make no cross"))
        : cross;
  }

  private static @Nullable Joined four(List<ShapeEnd> ends, boolean oneSided) {
    ShapeEnd first = ends.get(0);
    for (int i = 1; i < 4; i++) {
      List<ShapeEnd> rest = new ArrayList<>(ends.subList(1, 4));
      ShapeEnd partner = rest.remove(i - 1);
      if (isRun(first, partner, oneSided) && isRun(rest.get(0), rest.get(1), oneSided)) {
        return Joined.of(
            Form.CROSS,
            List.of(first, partner, rest.get(0), rest.get(1)),
            Math.max(runM(first, partner), runM(rest.get(0), rest.get(1))));
      }
    }
    return null;
  }
}
