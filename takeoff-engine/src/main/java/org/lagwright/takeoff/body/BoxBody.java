package org.lagwright.takeoff.body;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.body.Body.Prism;
import org.lagwright.takeoff.fitting.Direction;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.fitting.pattern.Curve;
import org.lagwright.takeoff.fitting.pattern.FlatPanel;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/**
 * Boxes and other covers that are wider than their pipe, put together from the pieces that they are
 * made of, in the order in which the making lists them.
 */
final class BoxBody {

  private static final Point UP = new Point(0, 0, 1);
  private static final Point EAST = new Point(1, 0, 0);

  /** Inner radius of a neck whose wall fills it, metres. */
  private static final double LEAST_M = 0.001;

  private final Pose middle;
  private final List<TubePiece> tubes = new ArrayList<>();
  private final List<FlatPanel> panels = new ArrayList<>();

  /**
   * @param middle of the element, its axis along the pipe; of a cap that of the open end, its axis
   *     away from the pipe
   */
  BoxBody(Pose middle, LayerMaking making) {
    this.middle = middle;
    for (Piece piece : making.cover().pieces()) {
      if (piece.shape() instanceof TubePiece tube) {
        tubes.add(tube);
      } else if (piece.shape() instanceof FlatPanel panel) {
        panels.add(panel);
      }
    }
  }

  private static double radiusM(TubePiece tube) {
    return tube.outer().widthM() / 2;
  }

  private static Section round(double radiusM) {
    return new Section.Round(2 * radiusM);
  }

  private static Ring wall(TubePiece tube) {
    return new Ring(round(radiusM(tube)), round(radiusM(tube) - tube.wallM()));
  }

  /** A cylinder with end rings inside its ends. */
  List<Body> cylinder() {
    TubePiece wrap = tubes.get(0);
    List<Body> bodies = new ArrayList<>(rings(wrap, panels.get(0)));
    bodies.add(0, new Prism(wall(wrap), middle.along(-wrap.axisM() / 2), wrap.axisM()));
    return bodies;
  }

  private List<Body> rings(TubePiece wrap, FlatPanel panel) {
    double outerM = radiusM(wrap) - wrap.wallM();
    double holeM = Math.sqrt(Math.max(0, outerM * outerM - panel.areaM2() / Math.PI));
    Ring ring = new Ring(round(outerM), round(holeM));
    double fromM = wrap.axisM() / 2;
    return List.of(
        new Prism(ring, middle.along(-fromM), panel.wallM()),
        new Prism(ring, middle.along(fromM - panel.wallM()), panel.wallM()));
  }

  /** A cylinder with a neck and its lid on the upper side, and with end rings. */
  List<Body> withNeck() {
    TubePiece wrap = tubes.get(0);
    TubePiece neck = tubes.get(1);
    boolean upright = Frame.isUpright(middle.frame().axis());
    Frame frame = Lie.upright(middle.frame().axis(), upright ? EAST : UP);
    double innerM = radiusM(wrap) - wrap.wallM();
    double holeM = Math.min(radiusM(neck), BranchHole.WIDEST * innerM);
    List<BranchHole> holes = List.of(new BranchHole(holeM, holeM, true, 0, true));
    List<Body> bodies = new ArrayList<>();
    for (int sign = 1; sign >= -1; sign -= 2) {
      Frame half =
          sign > 0
              ? frame
              : new Frame(
                  Direction.opposite(frame.axis()), Direction.opposite(frame.u()), frame.v());
      bodies.add(
          FacetMaker.leg(
              new Pose(middle.at(), half),
              BranchHole.outline(round(radiusM(wrap)), holes),
              BranchHole.outline(round(innerM), holes),
              (u, v) -> BranchHole.fromM(holes, u, v, 1),
              wrap.axisM() / 2));
    }
    Pose up =
        new Pose(middle.at(), new Frame(frame.v(), frame.u(), Direction.opposite(frame.axis())));
    double boreM = Math.max(LEAST_M, radiusM(neck) - neck.wallM());
    bodies.add(
        FacetMaker.leg(
            up,
            Outline.of(round(radiusM(neck))),
            Outline.of(round(boreM)),
            (u, v) -> BranchHole.heightM(round(radiusM(wrap)), u),
            neck.axisM()));
    FlatPanel lid = panels.get(0);
    double lidM = Math.sqrt(lid.areaM2() / Math.PI);
    bodies.add(new Prism(new Ring(round(lidM), null), up.along(neck.axisM()), lid.wallM()));
    bodies.addAll(rings(wrap, panels.get(1)));
    return bodies;
  }

  /** A tube over a joint. */
  List<Body> sleeve() {
    TubePiece tube = tubes.get(0);
    return List.of(new Prism(wall(tube), middle.along(-tube.axisM() / 2), tube.axisM()));
  }

  /** A tube that runs on over the end of the pipe, with a disc in it. */
  List<Body> cap() {
    TubePiece tube = tubes.get(0);
    FlatPanel disc = panels.get(0);
    Ring inside = new Ring(round(radiusM(tube) - tube.wallM()), null);
    double discM = Math.max(0, tube.axisM() - disc.wallM());
    return List.of(
        new Prism(wall(tube), middle, tube.axisM()),
        new Prism(inside, middle.along(discM), disc.wallM()));
  }

  /** A box of six panels: top and bottom between the sides, ends with holes inside. */
  List<Body> rectangular() {
    FlatPanel lid = panels.get(0);
    FlatPanel end = panels.get(2);
    double wallM = lid.wallM();
    double widthM = extentM(lid.outline(), true);
    double lengthM = extentM(lid.outline(), false);
    double heightM = extentM(end.outline(), false);
    Section inner = new Section.Rectangular(widthM, heightM);
    double holeM = Math.sqrt(Math.max(0, widthM * heightM - end.areaM2()) / Math.PI);
    Ring plate = new Ring(inner, round(holeM));
    return List.of(
        new Prism(Ring.around(inner, 0, wallM), middle.along(-lengthM / 2), lengthM),
        new Prism(plate, middle.along(-lengthM / 2), wallM),
        new Prism(plate, middle.along(lengthM / 2 - wallM), wallM));
  }

  /** Four strips round a flange. */
  List<Body> strips(Section bare) {
    FlatPanel across = panels.get(0);
    FlatPanel up = panels.get(1);
    double wallM = across.wallM();
    double widthM = extentM(across.outline(), true) - wallM;
    double heightM = extentM(up.outline(), true) - wallM;
    double stripM = extentM(across.outline(), false);
    Section inner = new Section.Rectangular(widthM, heightM);
    return bare instanceof Section.Rectangular
        ? List.of(new Prism(Ring.around(inner, 0, wallM), middle.along(-stripM / 2), stripM))
        : List.of();
  }

  /** One panel over the end of a duct. */
  List<Body> endPanel(double belowM) {
    FlatPanel panel = panels.get(0);
    Section whole =
        new Section.Rectangular(extentM(panel.outline(), true), extentM(panel.outline(), false));
    return List.of(new Prism(new Ring(whole, null), middle.along(belowM), panel.wallM()));
  }

  private static double extentM(Curve outline, boolean across) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Curve.Vertex vertex : outline.vertices()) {
      double at = across ? vertex.at().xM() : vertex.at().yM();
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    return most - least;
  }
}
