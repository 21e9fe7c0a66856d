package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.graph.Axis;
import org.lagwright.ifc.extract.graph.PointGrid;
import org.lagwright.ifc.extract.graph.ReadEnds;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;

/**
 * Finds straight pieces that lie within longer ones of their size, or for more than half of them,
 * as what was drawn over does. Looks at points that stand along the longer ones.
 */
final class Overlaps {

  /** Between the points along a piece, metres. */
  private static final double STEP_M = 0.5;

  /** A longer one is a wrong unit, and would have points without end. */
  private static final double LONGEST_M = 500;

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

  /** Those among some elements whose middle lies in a longer one that runs along them. */
  static Set<ElementKey> within(List<MepElement> elements) {
    Set<ElementKey> within = new HashSet<>();
    Overlaps overlaps = new Overlaps(elements);
    if (overlaps.pieces.size() > 1) {
      PointGrid grid = new PointGrid(overlaps.points, STEP_M / 2 + Bodies.SAME_PLACE_M);
      for (Piece piece : overlaps.pieces) {
        grid.near(
            middle(piece),
            i -> {
              if (isWithin(piece, overlaps.owners.get(i))) {
                within.add(piece.element.key());
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
    return line.lengthM() > piece.axis.lengthM() + Bodies.SAME_PLACE_M
        && middleM > 0
        && middleM < line.lengthM()
        && isOn(line, piece.axis.start())
        && isOn(line, piece.axis.at(piece.axis.lengthM()))
        && Bodies.areOfOneSize(piece.element, other.element);
  }

  private static boolean isOn(Axis line, Point place) {
    return line.at(line.along(place)).distanceM(place) <= Bodies.SAME_PLACE_M;
  }
}
