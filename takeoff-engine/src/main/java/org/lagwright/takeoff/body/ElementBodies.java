package org.lagwright.takeoff.body;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.body.Body.Prism;
import org.lagwright.takeoff.body.Body.Taper;
import org.lagwright.takeoff.body.Ends.End;
import org.lagwright.takeoff.fitting.Direction;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.fitting.Method;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.thickness.Layer;

/**
 * The bodies of the insulation of one element, layer by layer. They show what the takeoff decided;
 * its quantities stay as they are, and bodies of boxes, sharp bends and steps may be simpler than
 * their pieces.
 */
public final class ElementBodies {

  private static final double LEAST_M = 0.001;

  private static final Set<Form> BRANCHED =
      EnumSet.of(Form.TEE, Form.LATERAL, Form.CROSS, Form.WYE);

  private final MepElement element;
  private final Section section;
  private final List<End> ends;
  private final Lie lie;

  private ElementBodies(MepElement element, Section section, List<End> ends, Lie lie) {
    this.element = element;
    this.section = section;
    this.ends = ends;
    this.lie = lie;
  }

  /**
   * One layer.
   *
   * @param number 1 for the innermost
   * @param layer material and thickness
   * @param bodies none where the place or way of the element is not known
   */
  public record LayerBodies(int number, Layer layer, List<Body> bodies) {
    public LayerBodies {
      bodies = List.copyOf(bodies);
    }

    /** Volume of all bodies in closed form, cubic metres. */
    public double volumeM3() {
      return bodies.stream().mapToDouble(Body::volumeM3).sum();
    }
  }

  /**
   * What was made.
   *
   * @param layers from the inside out
   * @param missing why there are no bodies; empty where there are
   */
  public record Made(List<LayerBodies> layers, String missing) {
    public Made {
      layers = List.copyOf(layers);
    }
  }

  /**
   * The bodies of an element on a line.
   *
   * @param joints straight pieces of the same takeoff
   * @throws IllegalArgumentException if the element is on no line
   */
  public static Made of(TakenElement taken, Joints joints) {
    if (taken.lineId() == null || taken.thickness() == null || taken.making() == null) {
      throw new IllegalArgumentException("only elements on lines have insulation");
    }
    MepElement element = taken.element();
    Section section = Size.findDecidingSection(element).orElseThrow();
    List<End> ends = ends(element, section, joints);
    ElementBodies bodies = new ElementBodies(element, section, ends, new Lie(element.width()));
    String missing = bodies.missing();
    List<LayerBodies> layers = new ArrayList<>();
    double belowM = 0;
    int number = 0;
    for (Layer layer : taken.thickness().layers()) {
      LayerMaking making = makingOf(taken.making(), number);
      double totalM = belowM + layer.thicknessM();
      List<Body> its = missing.isEmpty() ? bodies.layer(making, belowM, totalM) : List.of();
      layers.add(new LayerBodies(++number, layer, its));
      belowM = totalM;
    }
    boolean none = layers.stream().anyMatch(layer -> layer.bodies().isEmpty());
    return new Made(layers, missing.isEmpty() && none ? "its form is not known" : missing);
  }

  /** What lies straight is told by its neighbours where it joins them, else by its own ports. */
  private static List<End> ends(MepElement element, Section section, Joints joints) {
    List<End> ends = Ends.ofBody(element, section);
    boolean branched = BRANCHED.contains(element.form());
    List<End> wanted = ends.size() > 2 && !branched ? Ends.farthest(ends) : ends;
    return wanted.stream()
        .map(
            end ->
                new End(
                    end.at(), joints.wayOut(element, end.at()).orElse(end.out()), end.section()))
        .toList();
  }

  private static LayerMaking makingOf(Making making, int index) {
    return making.layers().get(Math.min(index, making.layers().size() - 1));
  }

  private String missing() {
    if (element.form() == Form.FLEXIBLE) {
      return "flexible, its way is not known";
    }
    if (ends.isEmpty() || (ends.size() == 1 && ends.get(0).out() == null)) {
      return "the places of its ends are not known";
    }
    if (element.kind().isSegment()) {
      return ends.size() < 2
          ? "the places of its ends are not known"
          : Ends.isOtherThanStraight(element, ends) ? "not straight between its ends" : "";
    }
    return "";
  }

  private List<Body> layer(LayerMaking making, double belowM, double totalM) {
    if (!making.cover().pieces().isEmpty()) {
      BoxBody box = new BoxBody(middle(), making);
      switch (making.method()) {
        case VALVE_BOX -> {
          return box.withNeck();
        }
        case BODY_BOX, FLANGE_BOX -> {
          return box.cylinder();
        }
        case RECTANGULAR_BOX -> {
          return box.rectangular();
        }
        case SLEEVE -> {
          return box.sleeve();
        }
        case FLANGE_STRIPS -> {
          return box.strips(section);
        }
        case CAP_WITH_DISC -> {
          return new BoxBody(openEnd(), making).cap();
        }
        case DUCT_END_PANEL -> {
          return new BoxBody(openEnd(), making).endPanel(belowM);
        }
        default -> {}
      }
    }
    if (making.method() == Method.STEPPED_REDUCER && ends.size() == 2) {
      return stepped(belowM, totalM);
    }
    return byEnds(belowM, totalM);
  }

  /** The tube of the large pipe runs on to the small end, where a ring closes it. */
  private List<Body> stepped(double belowM, double totalM) {
    boolean firstIsLarge = ends.get(0).section().perimeterM() > ends.get(1).section().perimeterM();
    End large = ends.get(firstIsLarge ? 0 : 1);
    End small = ends.get(firstIsLarge ? 1 : 0);
    double lengthM = large.at().distanceM(small.at());
    if (lengthM < LEAST_M) {
      return List.of();
    }
    Pose pose = new Pose(large.at(), lie.across(Direction.between(large.at(), small.at())));
    Ring tube = Ring.around(large.section(), belowM, totalM);
    Ring closing = new Ring(tube.outer(), Ring.grown(small.section(), belowM));
    return List.of(
        new Prism(tube, pose, lengthM), new Prism(closing, pose.along(lengthM), totalM - belowM));
  }

  /** Of two ends the middle, of one end that itself. */
  private Pose middle() {
    Point first = ends.get(0).at();
    Point last = ends.get(ends.size() - 1).at();
    boolean apart = first.distanceM(last) > LEAST_M;
    Point out = ends.get(0).out();
    Point way = apart || out == null ? Direction.between(first, last) : out;
    return new Pose(Direction.middle(first, last), lie.across(way));
  }

  /** The end that the pipe is on, looking away from the pipe. */
  private Pose openEnd() {
    End end = ends.stream().filter(e -> e.out() != null).findFirst().orElse(ends.get(0));
    Point out = end.out();
    Point away = out == null ? middle().frame().axis() : Direction.opposite(out);
    return new Pose(end.at(), lie.across(away));
  }

  private List<Body> byEnds(double belowM, double totalM) {
    if (ends.size() == 2) {
      return between(ends.get(0), ends.get(1), belowM, totalM);
    }
    boolean branched = ends.size() == 3 || ends.size() == 4;
    return branched ? branched(belowM, totalM) : List.of();
  }

  private List<Body> between(End a, End b, double belowM, double totalM) {
    if (a.at().distanceM(b.at()) < LEAST_M) {
      return List.of();
    }
    if (element.form() == Form.BEND) {
      Measured<Double> radiusM = element.bendRadiusM();
      double toldM = radiusM == null ? 0 : radiusM.value();
      return Centre.crossing(ends)
          .map(corner -> new BendBody(a, corner, b, toldM, lie).bodies(section, belowM, totalM))
          .orElse(List.of());
    }
    return switch (element.form()) {
      case REDUCER, TRANSITION, OFFSET -> tapered(a, b, belowM, totalM);
      default -> {
        Point way = Direction.between(a.at(), b.at());
        Ring ring = Ring.around(section, belowM, totalM);
        Pose pose = new Pose(a.at(), lie.across(way));
        yield List.of(new Prism(ring, pose, a.at().distanceM(b.at())));
      }
    };
  }

  /** Its ends are parallel: across the way that the first one faces, or else across the line. */
  private List<Body> tapered(End a, End b, double belowM, double totalM) {
    Point line = Direction.between(a.at(), b.at());
    Point out = a.out();
    Point way = out == null ? line : Direction.opposite(out);
    double lengthM = Direction.dot(line, Direction.unit(way));
    if (lengthM < LEAST_M) {
      return List.of();
    }
    Frame frame = lie.across(way);
    Section from = element.ends().size() == 2 ? a.section() : section;
    Section to = element.ends().size() == 2 ? b.section() : section;
    Ring first = Ring.around(from, belowM, totalM);
    Ring last = Ring.around(to, belowM, totalM);
    Pose pose = new Pose(a.at(), frame);
    double uM = Direction.dot(line, frame.u());
    double vM = Direction.dot(line, frame.v());
    if (from.getClass() == to.getClass()) {
      return List.of(new Taper(first, last, pose, lengthM, uM, vM));
    }
    return squareToRound(first, last, pose, new Pose(pose.point(uM, vM, lengthM), frame));
  }

  private static List<Body> squareToRound(Ring first, Ring last, Pose from, Pose to) {
    Optional<Outline> a = Outline.inQuarters(first.outer());
    Optional<Outline> b = Outline.inQuarters(last.outer());
    Optional<Outline> c = Outline.inQuarters(Objects.requireNonNull(first.inner()));
    Optional<Outline> d = Outline.inQuarters(Objects.requireNonNull(last.inner()));
    if (a.isEmpty() || b.isEmpty() || c.isEmpty() || d.isEmpty()) {
      return List.of();
    }
    return List.of(
        FacetMaker.sweep(
            List.of(from, to), List.of(a.get(), b.get()), List.of(c.get(), d.get()), false));
  }

  private List<Body> branched(double belowM, double totalM) {
    List<End> sorted =
        ends.size() == 3 ? Centre.runBeforeBranch(ends, element.ends()) : Centre.pairs(ends);
    Point centre =
        Centre.crossing(sorted)
            .orElseGet(() -> sorted.size() == 3 ? Centre.foot(sorted, 2) : Centre.mean(sorted));
    BranchBody branch = new BranchBody(centre, sorted, lie);
    return branch.isPossible() ? branch.bodies(belowM, totalM) : List.of();
  }
}
