package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Prism;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * What sits in a line and is drawn as pieces one behind the other about one axis, as a silencer
 * between its spigots or a damper between its frames; motors and doors stand at its side. A motor
 * and the casing it stands on lie on an axis too, so one is the line's for sure only if it is the
 * only one that is as wide at both its ends, and is not so all along.
 */
public final class PiecesInLine {

  /** More are the parts of a machine. */
  private static final int MOST = 20;

  /** Centres may lie off the axis by this, and pieces may leave gaps of this between them. */
  private static final double OFF_AXIS_M = 0.001;

  /** Sine of the angle between two axes that count as one. */
  private static final double PARALLEL = 0.002;

  private static final String IN_LINE = " items in line";

  private static final String UNTOLD =
      "pieces of the body lie in line along more than one axis, or are not alike at both ends";

  private final List<Shape> onAxis;
  private final Vec from;
  private final Vec along;

  private PiecesInLine(List<Shape> onAxis, Vec from, Vec along) {
    this.onAxis = onAxis;
    this.from = from;
    this.along = along;
  }

  /**
   * What the pieces make: a straight piece along the one axis that is sure, or the ends of all axes
   * for neighbours to tell.
   *
   * @param step the record that evidence of the whole points to
   * @return null if no two pieces lie in line, or if none is sure and none of them has sides
   */
  public static @Nullable Shape of(List<Shape> pieces, long step) {
    List<PiecesInLine> lines = pieces.size() > MOST ? List.of() : linesOf(pieces);
    PiecesInLine sure = null;
    int alike = 0;
    for (PiecesInLine line : lines) {
      boolean isAlike = line.isAlikeAtBothEnds();
      sure = isAlike && line.changesSize() ? line : sure;
      alike += isAlike ? 1 : 0;
    }
    if (sure != null && alike == 1) {
      return Parts.fromEnds(
          sure.ends(), sure.how(), sure.evidence(step), sure.evidence(step), List.of());
    }
    return lines.isEmpty() || !haveSides(pieces) ? null : untold(lines);
  }

  /** True if a figure was read from end to end of such pieces, some of which are wider. */
  public static boolean tell(Measured<?> figure) {
    return figure.evidence().path().endsWith(IN_LINE);
  }

  private static boolean haveSides(List<Shape> pieces) {
    for (Shape piece : pieces) {
      if (Prism.isPlainBox(piece)) {
        return true;
      }
    }
    return false;
  }

  private static Shape untold(List<PiecesInLine> lines) {
    List<ShapeEnd> ends = new ArrayList<>();
    for (PiecesInLine line : lines) {
      for (ShapeEnd end : line.ends()) {
        if (!end.isAmong(ends, Vec.WELD_M)) {
          ends.add(end);
        }
      }
    }
    return new Shape(Form.UNKNOWN, null, null, null, null, ends, List.of(UNTOLD));
  }

  /** The lines that pieces make whose centres lie apart, each once. */
  private static List<PiecesInLine> linesOf(List<Shape> pieces) {
    List<PiecesInLine> lines = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = i + 1; j < pieces.size(); j++) {
        if (pieces.get(i).ends().size() != 2 || pieces.get(j).ends().size() != 2) {
          continue;
        }
        Vec from = centre(pieces.get(i));
        Vec way = centre(pieces.get(j)).minus(from);
        if (way.norm() > OFF_AXIS_M && !isAmong(lines, from, way.unit())) {
          PiecesInLine line = alongAxis(pieces, from, way.unit());
          boolean both = line.holds(from) && line.holds(centre(pieces.get(j)));
          if (both && line.leavesNoGap()) {
            lines.add(line);
          }
        }
      }
    }
    return lines;
  }

  private static boolean isAmong(List<PiecesInLine> lines, Vec from, Vec along) {
    for (PiecesInLine line : lines) {
      if (line.along.cross(along).norm() < PARALLEL
          && from.minus(line.from).across(line.along).norm() < OFF_AXIS_M) {
        return true;
      }
    }
    return false;
  }

  private static PiecesInLine alongAxis(List<Shape> pieces, Vec from, Vec along) {
    List<Shape> onAxis = new ArrayList<>();
    for (Shape piece : pieces) {
      boolean centred =
          piece.ends().size() == 2 && centre(piece).minus(from).across(along).norm() < OFF_AXIS_M;
      Shape turned = centred ? turned(piece, along) : null;
      if (turned != null) {
        onAxis.add(turned);
      }
    }
    return new PiecesInLine(onAxis, from, along);
  }

  /** A piece as it runs along an axis, null if it does not. */
  private static @Nullable Shape turned(Shape piece, Vec along) {
    Shape inLine =
        isAlong(piece, along) || !Prism.isPlainBox(piece) ? piece : Prism.alongOf(piece, along);
    return inLine != null && inLine.section() != null && isAlong(inLine, along) ? inLine : null;
  }

  private static boolean isAlong(Shape piece, Vec along) {
    Vec axis = piece.ends().get(1).out();
    return axis.cross(along).norm() < PARALLEL
        && piece.ends().get(0).out().cross(along).norm() < PARALLEL;
  }

  private static Vec centre(Shape piece) {
    return piece.ends().get(0).centre().plus(piece.ends().get(1).centre()).times(0.5);
  }

  private boolean holds(Vec centre) {
    for (Shape piece : onAxis) {
      if (centre(piece).distanceTo(centre) < OFF_AXIS_M) {
        return true;
      }
    }
    return false;
  }

  private double atM(ShapeEnd end) {
    return end.centre().minus(from).dot(along);
  }

  private double startM(Shape piece) {
    return Math.min(atM(piece.ends().get(0)), atM(piece.ends().get(1)));
  }

  private double finishM(Shape piece) {
    return Math.max(atM(piece.ends().get(0)), atM(piece.ends().get(1)));
  }

  private boolean leavesNoGap() {
    List<Shape> inOrder = new ArrayList<>(onAxis);
    inOrder.sort((a, b) -> Double.compare(startM(a), startM(b)));
    double reachedM = startM(inOrder.get(0));
    for (Shape piece : inOrder) {
      if (startM(piece) > reachedM + OFF_AXIS_M) {
        return false;
      }
      reachedM = Math.max(reachedM, finishM(piece));
    }
    return true;
  }

  /** Both ends of the line; where a frame lies around a sleeve, the sleeve is the end. */
  private List<ShapeEnd> ends() {
    return List.of(outermost(along.times(-1)), outermost(along));
  }

  private ShapeEnd outermost(Vec out) {
    ShapeEnd outermost = null;
    for (Shape piece : onAxis) {
      for (ShapeEnd end : piece.ends()) {
        double beyondM =
            outermost == null ? Double.MAX_VALUE : end.centre().minus(outermost.centre()).dot(out);
        boolean narrower =
            outermost != null && end.section().perimeterM() < outermost.section().perimeterM();
        if (beyondM > OFF_AXIS_M || (beyondM > -OFF_AXIS_M && narrower)) {
          outermost = end;
        }
      }
    }
    if (outermost == null) {
      throw new IllegalStateException("no piece lies in line");
    }
    return outermost;
  }

  private boolean isAlikeAtBothEnds() {
    List<ShapeEnd> ends = ends();
    return Ends.same(ends.get(0).section(), ends.get(1).section());
  }

  private boolean changesSize() {
    Section size = ends().get(0).section();
    for (Shape piece : onAxis) {
      for (ShapeEnd end : piece.ends()) {
        if (!Ends.same(end.section(), size)) {
          return true;
        }
      }
    }
    return false;
  }

  private How how() {
    for (Shape piece : onAxis) {
      Measured<Section> section = piece.section();
      if (section == null || section.how() != How.SOLID) {
        return How.MESH;
      }
    }
    return How.SOLID;
  }

  private Evidence evidence(long step) {
    return new Evidence(step, "body of " + onAxis.size() + IN_LINE, "from end to end");
  }
}
