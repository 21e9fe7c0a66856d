package org.lagwright.ifc.geometry.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * A straight body: an outline moved along an axis. A box has three readings, because exporters
 * extrude rectangular ducts upwards as well as along; ports, then the sides and the length that
 * properties give, then the longest edge decide which edge is the length. One that is open at its
 * ends runs from opening to opening, unless its ports lie elsewhere.
 *
 * @param outline the outline at the start
 * @param axis from the start to the other end, metres
 * @param isOpen true if the outline has a bore, or both ends are open
 * @param section where the size stands
 * @param length where the length stands
 */
public record Prism(
    Outline outline, Vec axis, boolean isOpen, How how, Evidence section, Evidence length) {

  /** Ports and the ends of an edge may be this far apart: gaskets, flange faces, rounding. */
  private static final double PORT_TOLERANCE_M = 0.005;

  private static final double PORT_TOLERANCE = 0.01;
  private static final double PORT_ANGLE_RAD = Math.toRadians(2);

  /** A length property is rounded to whole millimetres. */
  private static final double PROPERTY_TOLERANCE_M = 0.001;

  private static final double PROPERTY_TOLERANCE = 0.005;

  /** Ducts are at most this many times as wide as high. */
  private static final double FLATTEST = 8;

  /** What a bore may lack at an end by rounding; an end plate is thicker. */
  private static final double THROUGH_M = 1e-4;

  private static final String AT_PORTS = "the ports lie at the ends of the other edge";

  private static final String ON_AXIS = "the ports lie along the other edge";

  private static final String ACROSS = "ports lie at sides of the duct, not at its open ends";

  private static final String UNTOUCHED = "ends of neighbours touch the other sides";

  /** A reading: the edge taken as the axis, and the outline at its start. */
  private record Reading(Vec axis, Outline outline) {
    double lengthM() {
      return axis.norm();
    }

    /** True if places lie on the axis: of what is cut off the ends, nearer than its length. */
    boolean holds(List<Point> places) {
      Vec along = axis.unit();
      for (Point place : places) {
        Vec off = Vec.of(place).minus(outline.centre());
        double at = off.dot(along);
        boolean between = at > -PORT_TOLERANCE_M && at < lengthM() + PORT_TOLERANCE_M;
        if (!between || off.across(along).norm() > PORT_TOLERANCE_M) {
          return false;
        }
      }
      return true;
    }

    /** Spelled out: the compiler's own is put together when first asked, which takes long. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Reading o && axis.equals(o.axis) && outline.equals(o.outline);
    }

    @Override
    public int hashCode() {
      return axis.hashCode() * 31 + outline.hashCode();
    }
  }

  private record Choice(Reading reading, String why) {}

  /** What a straight body tells of section, length and ends. */
  public Shape measure(ShapeHints hints) {
    Reading depth = new Reading(axis, outline);
    if (!isBox()) {
      return shape(depth, null, "");
    }
    List<Reading> readings = readings();
    if (isOpen) {
      Choice byPorts = byPorts(readings, hints);
      return byPorts == null || byPorts.reading().equals(depth)
          ? shape(depth, null, "")
          : Parts.withProblem(shape(byPorts.reading(), depth, byPorts.why()), ACROSS);
    }
    Choice choice = choose(readings, hints);
    Reading other = choice.reading().equals(depth) ? longest(readings) : depth;
    return other.equals(choice.reading())
        ? shape(depth, null, "")
        : shape(choice.reading(), other, choice.why());
  }

  /**
   * The other readings of a box, that along the longer edge first; none if it is no box, or one of
   * which it is told by more than its edges how it lies.
   */
  public static List<Shape> otherReadings(Shape box) {
    Prism prism = mayLieOtherwise(box) ? ofBox(box) : null;
    if (prism == null) {
      return List.of();
    }
    Vec u = prism.outline.u();
    Vec v = prism.outline.v();
    Reading now = new Reading(prism.axis, prism.outline);
    Shape alongU = prism.shape(prism.turned(u, v), now, UNTOUCHED);
    Shape alongV = prism.shape(prism.turned(v, u), now, UNTOUCHED);
    return u.norm() >= v.norm() ? List.of(alongU, alongV) : List.of(alongV, alongU);
  }

  /** True for a box that may run along another of its edges, as far as its own figures tell. */
  public static boolean mayLieOtherwise(Shape shape) {
    if (!isPlainBox(shape)
        || shape.ends().get(0).width() == null
        || shape.section() == null
        || shape.lengthM() == null) {
      return false;
    }
    double lengthM = shape.lengthM().value();
    double sideM = shape.ends().get(0).section().largestSideM();
    return Math.max(lengthM, sideM) <= FLATTEST * Math.min(lengthM, sideM);
  }

  /**
   * A box that was read along another of its edges.
   *
   * @return null if it is no box, no edge of it lies along the axis, or its ends would have no size
   */
  public static @Nullable Shape alongOf(Shape box, Vec axis) {
    Prism prism = ofBox(box);
    if (prism == null) {
      return null;
    }
    Vec u = prism.outline.u();
    Vec v = prism.outline.v();
    boolean alongU = Math.abs(u.unit().dot(axis)) > Math.abs(v.unit().dot(axis));
    Shape turned = prism.shape(alongU ? prism.turned(u, v) : prism.turned(v, u), null, "");
    return turned.ends().isEmpty() ? null : turned;
  }

  /**
   * A box that lacks another one, which runs through it from end to end and leaves a wall all
   * around: a duct that is open at those ends. Null if the other one is no such bore.
   */
  public static @Nullable Prism bored(Shape box, Shape bore) {
    Prism whole = isPlainBox(box) ? ofBox(box) : null;
    Prism taken = whole != null && isPlainBox(bore) ? ofBox(bore) : null;
    if (whole == null || taken == null) {
      return null;
    }
    for (Reading reading : whole.readings()) {
      for (Reading through : taken.readings()) {
        if (runsThrough(through, reading)) {
          return new Prism(
              reading.outline(), reading.axis(), true, whole.how, whole.section, whole.length);
        }
      }
    }
    return null;
  }

  /** True for a straight body between two rectangles of which nothing is doubtful. */
  public static boolean isPlainBox(Shape shape) {
    return shape.form() == Form.STRAIGHT
        && shape.ends().size() == 2
        && shape.ends().get(0).section() instanceof Section.Rectangular
        && shape.problems().isEmpty();
  }

  private static boolean runsThrough(Reading bore, Reading whole) {
    Vec along = whole.axis().unit();
    if (bore.axis().unit().cross(along).norm() > Math.sin(PORT_ANGLE_RAD)) {
      return false;
    }
    double startM = bore.outline().centre().minus(whole.outline().centre()).dot(along);
    double endM = startM + bore.axis().dot(along);
    Outline atStart = bore.outline().at(bore.outline().centre().minus(along.times(startM)));
    return Math.min(startM, endM) < THROUGH_M
        && Math.max(startM, endM) > whole.lengthM() - THROUGH_M
        && whole.outline().isBoredBy(atStart);
  }

  /** The box that a shape with two ends was read from, null if it was none. */
  private static @Nullable Prism ofBox(Shape box) {
    ShapeEnd end = box.ends().get(0);
    Measured<Section> section = box.section();
    Measured<Double> lengthM = box.lengthM();
    Point width = end.width();
    if (section == null
        || lengthM == null
        || width == null
        || !(end.section() instanceof Section.Rectangular sides)) {
      return null;
    }
    Vec edge = box.ends().get(1).centre().minus(end.centre());
    Vec u = Vec.of(width).times(sides.widthM() / 2);
    Vec v = edge.unit().cross(Vec.of(width)).times(sides.heightM() / 2);
    Outline outline = new Outline(Outline.Kind.RECTANGULAR, end.centre(), u, v);
    return new Prism(outline, edge, false, section.how(), section.evidence(), lengthM.evidence());
  }

  private boolean isBox() {
    return outline.kind() == Outline.Kind.RECTANGULAR
        && !axis.isTiny()
        && outline.normal().cross(axis.unit()).norm() < Math.sin(PORT_ANGLE_RAD);
  }

  private List<Reading> readings() {
    Vec u = outline.u();
    Vec v = outline.v();
    return List.of(new Reading(axis, outline), turned(u, v), turned(v, u));
  }

  private Reading turned(Vec along, Vec kept) {
    Vec centre = outline.centre().plus(axis.times(0.5)).minus(along);
    Vec half = axis.times(0.5);
    return new Reading(along.times(2), new Outline(Outline.Kind.RECTANGULAR, centre, kept, half));
  }

  private static Reading longest(List<Reading> readings) {
    Reading longest = readings.get(0);
    for (Reading reading : readings) {
      longest = reading.lengthM() > longest.lengthM() * (1 + 1e-9) ? reading : longest;
    }
    return longest;
  }

  private static @Nullable Choice byPorts(List<Reading> readings, ShapeHints hints) {
    Vec between = farthest(hints.portsM());
    for (Reading reading : readings) {
      if (between != null && fits(reading, between)) {
        return new Choice(reading, AT_PORTS);
      }
    }
    for (Reading reading : readings) {
      if (between != null && reading.holds(hints.portsM())) {
        return new Choice(reading, ON_AXIS);
      }
    }
    return null;
  }

  private static Choice choose(List<Reading> readings, ShapeHints hints) {
    Choice byPorts = byPorts(readings, hints);
    if (byPorts != null) {
      return byPorts;
    }
    List<Reading> across = hints.straight() ? across(readings, hints.stated().sides()) : List.of();
    List<Reading> left = across.isEmpty() ? readings : across;
    Choice byLength = byLength(left, hints);
    if (byLength != null) {
      return byLength;
    }
    if (!hints.straight()) {
      return new Choice(readings.get(0), "the body is no straight segment");
    }
    return across.isEmpty()
        ? new Choice(longest(left), "the longest edge of a box is taken as its length")
        : new Choice(longest(left), "a stated size equals the other sides");
  }

  private static @Nullable Choice byLength(List<Reading> readings, ShapeHints hints) {
    Double property = hints.lengthPropertyM();
    for (Reading reading : readings) {
      if (property != null && fits(reading, property)) {
        return new Choice(reading, "a length property equals the other edge");
      }
    }
    return null;
  }

  /** The readings with this section; none if it is not known. */
  private static List<Reading> across(List<Reading> readings, Optional<Section> sides) {
    List<Reading> across = new ArrayList<>(readings.size());
    for (Reading reading : readings) {
      if (sides.isPresent() && Ends.same(reading.outline().section(), sides.get())) {
        across.add(reading);
      }
    }
    return across;
  }

  private static boolean fits(Reading reading, Vec between) {
    double angle = reading.axis().angleTo(between);
    double off = Math.abs(between.norm() - reading.lengthM());
    return Math.min(angle, Math.PI - angle) < PORT_ANGLE_RAD
        && off < Math.max(PORT_TOLERANCE_M, PORT_TOLERANCE * reading.lengthM());
  }

  private static boolean fits(Reading reading, double propertyM) {
    return Math.abs(reading.lengthM() - propertyM)
        < Math.max(PROPERTY_TOLERANCE_M, PROPERTY_TOLERANCE * reading.lengthM());
  }

  /** The longest line between two ports, null if there are no two. */
  private static @Nullable Vec farthest(List<Point> ports) {
    Vec longest = null;
    for (Point a : ports) {
      for (Point b : ports) {
        Vec between = Vec.of(b).minus(Vec.of(a));
        longest = longest == null || between.norm() > longest.norm() ? between : longest;
      }
    }
    return longest == null || longest.isTiny() ? null : longest;
  }

  private Shape shape(Reading chosen, @Nullable Reading other, String why) {
    Vec along = chosen.axis().unit();
    Outline across = chosen.outline().across(along);
    List<ShapeEnd> ends =
        Ends.known(
            across.end(along.times(-1)), across.at(across.centre().plus(chosen.axis())).end(along));
    if (ends.size() < 2) {
      return Shape.unmeasured("profile and extrusion lie in one plane");
    }
    List<Candidate<Double>> lostLengths = new ArrayList<>();
    List<Candidate<Section>> lostSections = new ArrayList<>();
    if (other != null) {
      lostLengths.add(new Candidate<>(other.lengthM(), how, lengthOf(other), why));
      lostSections.add(new Candidate<>(other.outline().section(), how, section, why));
    }
    Section measured = ends.get(0).section();
    return new Shape(
        Form.STRAIGHT,
        new Measured<>(measured, how, section, lostSections),
        new Measured<>(chosen.lengthM(), how, lengthOf(chosen), lostLengths),
        null,
        null,
        ends,
        obliqueness(chosen));
  }

  /** Where the length of a reading stands; the other edges are those of the section. */
  private Evidence lengthOf(Reading reading) {
    return reading.axis().equals(axis) ? length : section;
  }

  private static List<String> obliqueness(Reading chosen) {
    boolean oblique =
        chosen.outline().normal().cross(chosen.axis().unit()).norm() > Math.sin(PORT_ANGLE_RAD);
    return oblique ? List.of("extruded at a slant; section taken at right angles") : List.of();
  }
}
