package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.graph.Axis;
import org.lagwright.ifc.extract.graph.PointGrid;
import org.lagwright.ifc.extract.graph.ReadEnds;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * Finds straight pieces that lie within others of their size that are at least as long, or for more
 * than half of them, or from end to end in one of another size, as what was drawn over does. A
 * sleeve is shorter than its pipe. Looks at points that stand along the others.
 */
final class Overlaps {

  /** Between the points along a piece, metres. */
  private static final double STEP_M = 0.5;

  /** A longer one is a wrong unit, and would have points without end. */
  private static final double LONGEST_M = 500;

  /**
   * Pipes lie beside each other; where axes are nearer than this part of their size one is drawn
   * over.
   */
  private static final double OFF_AXIS = 0.25;

  /** Wide ducts that lie farther off may be two. */
  static final double FARTHEST_OFF_M = 0.03;

  private record Piece(MepElement element, Axis axis) {}

  private final List<Piece> pieces = new ArrayList<>();
  private final List<Point> points = new ArrayList<>();

  /** To which piece each point belongs. */
  private final List<Piece> owners = new ArrayList<>();

  private Overlaps(List<MepElement> elements) {
    for (MepElement element : elements) {
      Axis axis = axisOf(element);
      if (axis != null) {
        add(new Piece(element, axis));
      }
    }
  }

  /**
   * Those among some elements whose middle lies in another one that runs along them, each with that
   * one.
   *
   * @param joining knows between which files places can be compared
   */
  static Map<ElementKey, ElementKey> within(List<MepElement> elements, Joining joining) {
    Map<ElementKey, ElementKey> within = new HashMap<>();
    Overlaps overlaps = new Overlaps(elements);
    if (overlaps.pieces.size() > 1) {
      PointGrid grid = new PointGrid(overlaps.points, STEP_M / 2 + FARTHEST_OFF_M);
      for (Piece piece : overlaps.pieces) {
        ElementKey own = piece.element.key();
        grid.near(
            middle(piece),
            i -> {
              Piece other = overlaps.owners.get(i);
              ElementKey key = other.element.key();
              if (isWithin(piece, other) && joining.haveOneOrigin(own.model(), key.model())) {
                within.putIfAbsent(own, key);
              }
            });
      }
    }
    return within;
  }

  private void add(Piece piece) {
    for (double atM = 0; atM < piece.axis.lengthM(); atM += STEP_M) {
      points.add(piece.axis.at(atM));
      owners.add(piece);
    }
    pieces.add(piece);
  }

  private static @Nullable Axis axisOf(MepElement element) {
    boolean straight = element.kind().isSegment() && element.form() == Form.STRAIGHT;
    List<OpenEnd> ends = straight ? ReadEnds.of(element) : List.of();
    if (ends.size() != 2) {
      return null;
    }
    Axis axis = Axis.between(ends.get(0).positionM(), ends.get(1).positionM());
    return axis.lengthM() > Bodies.SAME_PLACE_M && axis.lengthM() < LONGEST_M ? axis : null;
  }

  private static Point middle(Piece piece) {
    return piece.axis.at(piece.axis.lengthM() / 2);
  }

  private static boolean isWithin(Piece piece, Piece other) {
    Axis line = other.axis;
    double middleM = line.along(middle(piece));
    return isLonger(other, piece)
        && middleM > 0
        && middleM < line.lengthM()
        && offM(line, piece.axis.start()) <= farthestOffM(piece)
        && offM(line, piece.axis.at(piece.axis.lengthM())) <= farthestOffM(piece)
        && !Bodies.areCrossing(piece.element, other.element)
        && (Bodies.areOfOneSize(piece.element, other.element) || haveOneMiddle(piece, other));
  }

  /** Of two on one line that are equally long: that they have the same ends. */
  private static boolean haveOneMiddle(Piece piece, Piece other) {
    return Math.abs(piece.axis.lengthM() - other.axis.lengthM()) <= Bodies.SAME_PLACE_M
        && middle(piece).distanceM(middle(other)) <= Bodies.SAME_PLACE_M;
  }

  /** Of two that are equally long the one that is read first. */
  private static boolean isLonger(Piece one, Piece other) {
    double moreM = one.axis.lengthM() - other.axis.lengthM();
    return moreM > Bodies.SAME_PLACE_M
        || (moreM >= -Bodies.SAME_PLACE_M && one.element.key().compareTo(other.element.key()) < 0);
  }

  private static double farthestOffM(Piece piece) {
    Measured<Section> section = piece.element.section();
    return Math.max(Bodies.SAME_PLACE_M, section == null ? 0 : offM(section.value()));
  }

  /** How far what has this size may lie off another one that it was drawn over. */
  static double offM(Section section) {
    return Math.min(FARTHEST_OFF_M, section.smallestSideM() * OFF_AXIS);
  }

  private static double offM(Axis line, Point place) {
    return line.at(line.along(place)).distanceM(place);
  }
}
