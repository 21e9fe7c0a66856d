package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DraftLookup;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.graph.Axis;
import org.lagwright.ifc.extract.graph.SideSearch;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/** Looks along connected ports for the pipe or duct that gives a fitting its size. */
public final class Neighbours {

  /** Flange, gasket, valve, flange: four steps are usual; chains beyond this are not one size. */
  private static final int FARTHEST = 8;

  /**
   * A size found next door.
   *
   * @param neighbour instance number of the element that has it
   * @param inOtherFile true if that is one of another file
   * @param written where it is written, if it is not that of the neighbour's body
   * @param ofSegment true if it is the size of a straight piece, which has no insulation in it any
   *     more; drawn ends of fittings may have
   * @param ofBody true if it is the drawn end of a valve, flange or the like, which is wider than
   *     the pipe in it
   * @param insulationM insulation that was drawn into that piece, metres; 0 if none was
   */
  record Found(
      Section section,
      long neighbour,
      boolean inOtherFile,
      @Nullable Evidence written,
      boolean ofSegment,
      boolean ofBody,
      double insulationM) {

    /** A size that a port states. */
    static Found stated(Section section, Evidence written) {
      return new Found(section, written.step(), false, written, false, false, 0);
    }

    /** True if it is the drawn end of a fitting that is wider than a line: a socket. */
    boolean mayBeSocketOf(Section line) {
      return !ofSegment
          && written == null
          && section.largestSideM() > line.largestSideM()
          && !Tolerances.sameSection(section, line);
    }

    /** True if the line is as wide as pipes are sold, and what may be its socket is not. */
    boolean isSocketOf(Section line) {
      return mayBeSocketOf(line)
          && line instanceof Section.Round pipe
          && section instanceof Section.Round socket
          && PipeSizes.isOutsideDiameter(pipe.outsideDiameterM())
          && !PipeSizes.isOutsideDiameter(socket.outsideDiameterM());
    }

    /** Where it stands; put into words when asked, as most are not. */
    Evidence evidence() {
      return written != null
          ? written
          : new Evidence(
              neighbour,
              inOtherFile ? "neighbour in another file" : "neighbour",
              InWords.section(section));
    }
  }

  private final DraftLookup drafts;
  private final PortSizes portSizes;

  /** Looks for neighbours among these elements. */
  public Neighbours(DraftLookup drafts, PortSizes portSizes) {
    this.drafts = drafts;
    this.portSizes = portSizes;
  }

  /**
   * A joint of an element.
   *
   * @param outward axis out of the element: that of the neighbour, which was drawn, before that of
   *     the port, which was written; null if neither is known
   * @param met the size that it meets, null if nothing tells
   * @param stated the size that the port itself states, null if it states none; looked for only
   *     where it meets none
   */
  record Joint(Port port, @Nullable Point outward, @Nullable Found met, @Nullable Found stated) {

    /** What is met, else what is stated. */
    @Nullable Found known() {
      return met == null ? stated : met;
    }

    /** This joint without what is met at the end of a fitting. */
    Joint withSegmentsOnly() {
      return met == null || met.ofSegment ? this : new Joint(port, outward, null, stated);
    }

    /** This joint without what a valve, flange or the like next door is as wide as. */
    Joint withoutBody() {
      return met == null || !met.ofBody ? this : new Joint(port, outward, null, stated);
    }
  }

  /** The joints; what a body next door is as wide as counts only where no line is met. */
  List<Joint> jointsOf(Draft draft) {
    List<Port> ports = draft.joints();
    List<@Nullable Found> found = new ArrayList<>(ports.size());
    boolean line = false;
    for (Port port : ports) {
      Found met = behind(draft, port).orElse(null);
      found.add(met);
      line |= met != null && !met.ofBody;
    }
    List<Joint> joints = new ArrayList<>(ports.size());
    for (int i = 0; i < ports.size(); i++) {
      Port port = ports.get(i);
      Found met = found.get(i);
      met = met != null && met.ofBody && line ? null : met;
      Found stated = met == null ? portSizes.of(port, draft.isDuct()).orElse(null) : null;
      joints.add(new Joint(port, axisAt(port), met, stated));
    }
    return joints;
  }

  private @Nullable Point axisAt(Port port) {
    ElementKey at = port.connectedTo();
    Point portM = port.positionM();
    Draft next = at == null ? null : drafts.find(at);
    if (next == null || portM == null || !next.isSegment() || port.tap()) {
      return port.direction();
    }
    ShapeEnd nearest = null;
    for (ShapeEnd end : next.shape().ends()) {
      double bestM = nearest == null ? Drawn.SAME_PLACE_M : nearest.centreM().distanceM(portM);
      nearest = end.centreM().distanceM(portM) < bestM ? end : nearest;
    }
    Point out = nearest == null ? alongPorts(next, portM) : nearest.outward();
    return out == null ? port.direction() : new Point(-out.x(), -out.y(), -out.z());
  }

  /** The axis of a straight piece out of its end at a place, from the places of its two ports. */
  private static @Nullable Point alongPorts(Draft segment, Point atM) {
    List<Port> ports = segment.ports();
    Point a = ports.size() == 2 ? ports.get(0).positionM() : null;
    Point b = ports.size() == 2 ? ports.get(1).positionM() : null;
    if (a == null || b == null || !(a.distanceM(b) > Drawn.SAME_PLACE_M)) {
      return null;
    }
    Point near = a.distanceM(atM) < b.distanceM(atM) ? a : b;
    Point far = near == a ? b : a;
    double lengthM = near.distanceM(far);
    return new Point(
        (near.x() - far.x()) / lengthM,
        (near.y() - far.y()) / lengthM,
        (near.z() - far.z()) / lengthM);
  }

  /**
   * The section that a port meets: that of the segment behind it, directly or through items that do
   * not change the size, or that of the nearest end of a fitting whose ends were measured; empty if
   * nothing tells.
   */
  Optional<Found> behind(Draft from, Port port) {
    int ownFile = from.key().model();
    Draft before = from;
    Port out = port;
    for (int i = 0; i < FARTHEST; i++) {
      ElementKey at = out.connectedTo();
      Draft next = at == null ? null : drafts.find(at);
      // what lies at the side of a main has a size of its own
      if (next == null || (out.tap() && !goesThrough(next, out))) {
        return Optional.empty();
      }
      boolean inOtherFile = next.key().model() != ownFile;
      Measured<Section> section = next.isSegment() ? next.section() : null;
      if (section != null) {
        ExistingInsulation drawn = next.drawnInsulation();
        Double thicknessM = drawn == null ? null : drawn.thicknessM();
        return Optional.of(
            new Found(
                section.value(),
                next.step(),
                inOtherFile,
                null,
                true,
                false,
                thicknessM == null ? 0 : thicknessM));
      }
      Port onwards = keepsSize(next) ? onwards(next, before) : null;
      if (onwards == null) {
        return endAt(next, out.positionM(), inOtherFile);
      }
      out = onwards;
      before = next;
    }
    return Optional.empty();
  }

  /** True if a joint lies on the axis of a straight piece and points along it. */
  private static boolean goesThrough(Draft main, Port joint) {
    Point atM = joint.positionM();
    Point out = joint.direction();
    List<ShapeEnd> ends = main.shape().ends();
    if (!main.isSegment() || atM == null || out == null || ends.size() != 2) {
      return false;
    }
    Axis axis = Axis.between(ends.get(0).centreM(), ends.get(1).centreM());
    return axis.at(axis.along(atM)).distanceM(atM) < Drawn.SAME_PLACE_M
        && Math.abs(axis.cosine(out)) > SideSearch.STEEPEST;
  }

  /** The drawn end of a tee, reducer or the like that lies at a port. */
  private static Optional<Found> endAt(Draft fitting, @Nullable Point portM, boolean inOtherFile) {
    if (portM == null) {
      return Optional.empty();
    }
    boolean body = fitting.form().isWiderThanItsPipe();
    ShapeEnd nearest = null;
    double nearestM = Drawn.SAME_PLACE_M;
    for (ShapeEnd end : fitting.shape().ends()) {
      double distanceM = end.centreM().distanceM(portM);
      if (distanceM < nearestM) {
        nearest = end;
        nearestM = distanceM;
      }
    }
    return nearest == null
        ? Optional.empty()
        : Optional.of(
            new Found(nearest.section(), fitting.step(), inOtherFile, null, false, body, 0));
  }

  /** True if an element is joined, and to nothing but ducts and what sits in them. */
  boolean areDucts(Draft of) {
    boolean joined = false;
    for (Port port : of.joints()) {
      ElementKey at = port.connectedTo();
      Draft next = at == null ? null : drafts.find(at);
      if (next != null && !next.isDuct()) {
        return false;
      }
      joined |= next != null;
    }
    return joined;
  }

  /** What nothing calls anything may be drawn as a reducer or tee, whose form is settled later. */
  private static boolean keepsSize(Draft item) {
    Form form = item.form() == Form.UNKNOWN ? item.shape().form() : item.form();
    return switch (form) {
      case REDUCER, TRANSITION, TEE, CROSS, LATERAL, WYE, APPARATUS -> false;
      case BEND, OFFSET -> isPassed(item) && !(item.isDuct() && isReducing(item));
      default -> isPassed(item);
    };
  }

  private static boolean isPassed(Draft item) {
    return item.isLaggedItem() && item.joints().size() == 2;
  }

  /** True if two ends are drawn of different size, as those of bends of sheet may be. */
  private static boolean isReducing(Draft item) {
    List<ShapeEnd> ends = item.shape().ends();
    return ends.size() == 2
        && !Tolerances.sameSection(ends.get(0).section(), ends.get(1).section());
  }

  private static @Nullable Port onwards(Draft item, Draft cameFrom) {
    for (Port port : item.joints()) {
      ElementKey other = port.connectedTo();
      if (other != null && !other.equals(cameFrom.key())) {
        return port;
      }
    }
    return null;
  }
}
