package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.body.Centre;
import org.lagwright.takeoff.body.Ends;
import org.lagwright.takeoff.body.Ends.End;
import org.lagwright.takeoff.body.Frame;
import org.lagwright.takeoff.fitting.Direction;
import org.lagwright.takeoff.measure.Size;

/**
 * The bodies of an element from the places of its ends. Straights are cylinders, boxes and flat
 * ovals; bends are cut into pieces that turn {@value #PIECE_DEG} degrees at most, which leaves out
 * less than a hundredth of their outer radius; branches are legs from where their axes meet.
 */
final class BodyMaker {

  static final int PIECE_DEG = 15;

  private static final double LEAST_M = 0.001;

  private final Section section;
  private final double thicknessM;
  private final boolean turnUnknown;
  private final List<End> ends;
  private final MepElement element;

  private BodyMaker(MepElement element, Section section, double thicknessM, List<End> ends) {
    this.element = element;
    this.section = section;
    this.thicknessM = thicknessM;
    this.ends = ends;
    this.turnUnknown = !isRound() && isTurnUnknown();
  }

  /**
   * An element in space, or why it has no place there.
   *
   * @param bare without insulation, empty where there is no place
   * @param insulated with it, the same as bare where there is none
   * @param ends where it ends
   * @param note how the bodies are simpler than the element, empty where they are not
   * @param missing why there is no place, empty where there is one
   */
  record Made(
      List<Solid> bare, List<Solid> insulated, List<Point> ends, String note, String missing) {
    Made {
      bare = List.copyOf(bare);
      insulated = List.copyOf(insulated);
      ends = List.copyOf(ends);
    }
  }

  /** The bodies of an element without insulation and with it. */
  static Made make(MepElement element, double thicknessM) {
    Optional<Section> section = Size.findDecidingSection(element);
    if (section.isEmpty()) {
      return missing("size unknown");
    }
    if (element.form() == Form.FLEXIBLE) {
      return missing("flexible, its way is not known");
    }
    List<End> ends = Ends.ofBody(element, section.get());
    if (ends.size() < 2) {
      return missing("the places of its ends are not known");
    }
    if (element.kind().isSegment() && Ends.isOtherThanStraight(element, ends)) {
      return missing("not straight between its ends");
    }
    BodyMaker bare = new BodyMaker(element, section.get(), 0, ends);
    BodyMaker insulated = new BodyMaker(element, section.get(), thicknessM, ends);
    List<Point> places = ends.stream().map(End::at).toList();
    return new Made(bare.solids(), insulated.solids(), places, bare.note(), "");
  }

  private static Made missing(String why) {
    return new Made(List.of(), List.of(), List.of(), "", why);
  }

  private boolean isRound() {
    return ends.stream().allMatch(end -> end.section() instanceof Section.Round);
  }

  /**
   * Upright axes do not tell which way a width points, unless it was drawn or a bend carries it.
   */
  private boolean isTurnUnknown() {
    if (element.kind().isSegment() && element.width() != null) {
      return false;
    }
    if (isBend() && Centre.crossing(ends).isPresent()) {
      return ends.stream().allMatch(end -> end.out() != null && Frame.isUpright(end.out()));
    }
    Point mean = Centre.mean(ends);
    return ends.stream()
        .map(end -> Direction.between(mean, end.at()))
        .anyMatch(way -> Direction.length(way) > LEAST_M && Frame.isUpright(Direction.unit(way)));
  }

  private String note() {
    if (turnUnknown) {
      return "its sides may point any way, so reckoned as round with the smaller side";
    }
    if (isBend() && Centre.crossing(ends).isEmpty()) {
      return "the directions of its ports do not tell its bend, so reckoned straight";
    }
    return switch (element.kind()) {
      case VALVE, INLINE -> "reckoned as wide as its pipe, without handle and bonnet";
      default -> "";
    };
  }

  private List<Solid> solids() {
    if (ends.size() > 2) {
      return branched();
    }
    End a = ends.get(0);
    End b = ends.get(1);
    Optional<List<Solid>> arc = isBend() ? arc(a, b) : Optional.empty();
    return arc.orElseGet(() -> List.of(straight(a, b)));
  }

  private boolean isBend() {
    return element.form() == Form.BEND;
  }

  private Solid straight(End a, End b) {
    Point width = element.kind().isSegment() ? element.width() : null;
    Frame frame = Frame.across(Direction.between(a.at(), b.at()), width);
    return new Solid(face(a.section(), a.at(), frame), face(b.section(), b.at(), frame));
  }

  private Face face(Section itsSection, Point at, Frame frame) {
    Section safe = turnUnknown ? within(itsSection) : itsSection;
    return Face.around(safe, thicknessM, at, frame.u(), frame.v());
  }

  /** The disc that the section holds whichever way it is turned. */
  private static Section within(Section section) {
    return new Section.Round(section.smallestSideM());
  }

  /** Legs from each end to where the axes meet. */
  private List<Solid> branched() {
    List<End> sorted = ends.size() == 3 ? Centre.runBeforeBranch(ends, element.ends()) : ends;
    Point centre =
        Centre.crossing(sorted)
            .orElseGet(() -> sorted.size() == 3 ? Centre.foot(sorted, 2) : Centre.mean(sorted));
    List<Solid> legs = new ArrayList<>();
    for (End end : sorted) {
      if (end.at().distanceM(centre) > LEAST_M) {
        legs.add(straight(end, new End(centre, null, end.section())));
      }
    }
    return legs;
  }

  /** The pieces of a bend, empty where the directions of its ends do not tell its way. */
  private Optional<List<Solid>> arc(End a, End b) {
    Point outA = a.out();
    Point outB = b.out();
    Optional<Point> corner = Centre.crossing(ends);
    if (outA == null || outB == null || corner.isEmpty()) {
      return Optional.empty();
    }
    Point normal = Direction.cross(Direction.opposite(outA), outB);
    double turnRad = Math.acos(Math.max(-1, Math.min(1, -Direction.dot(outA, outB))));
    Arc arc = new Arc(a.at(), corner.get(), b.at(), Math.cos(turnRad / 2));
    int pieces = (int) Math.ceil(Math.toDegrees(turnRad) / PIECE_DEG - LEAST_M);
    boolean fromA = !Frame.isUpright(outA);
    Frame start = Frame.across(fromA ? Direction.opposite(outA) : outB);
    List<Face> faces = new ArrayList<>();
    for (int i = 0; i <= pieces; i++) {
      double share = arc.parameter((double) i / pieces, turnRad);
      Point tangent = Direction.unit(arc.tangent(share));
      Section itsSection = 2 * i <= pieces ? a.section() : b.section();
      faces.add(face(itsSection, arc.at(share), start.turned(Direction.unit(normal), tangent)));
    }
    List<Solid> solids = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      solids.add(new Solid(faces.get(i), faces.get(i + 1)));
    }
    return Optional.of(solids);
  }
}
