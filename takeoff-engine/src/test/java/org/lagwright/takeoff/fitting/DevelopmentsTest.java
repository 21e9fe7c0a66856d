package org.lagwright.takeoff.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.fitting.pattern.ConePiece;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.FlatPanel;
import org.lagwright.takeoff.fitting.pattern.FlatPoint;
import org.lagwright.takeoff.fitting.pattern.NotchedTube;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.Pattern;
import org.lagwright.takeoff.fitting.pattern.SaddleHole;
import org.lagwright.takeoff.fitting.pattern.SquareToRound;
import org.lagwright.takeoff.fitting.pattern.TorusGore;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/** Each piece against figures derived apart from this program. */
class DevelopmentsTest {

  private static final double MM = 1000;
  private static final double MM2 = 1e6;
  private static final double MM3 = 1e9;

  static List<ReferenceRows.Row> rows() {
    return ReferenceRows.read(DevelopmentsTest.class, "developments.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void developmentAgrees(ReferenceRows.Row row) {
    double expected = row.number("expected");
    double found = found(row.text("shape"), new Given(row.text("inputs")), row.text("quantity"));

    assertThat(found).isCloseTo(expected, within(row.tolerance(expected)));
  }

  @Test
  void everyRowIsThere() {
    assertThat(rows()).hasSize(137);
  }

  private static double found(String shape, Given g, String what) {
    return switch (shape) {
      case "mitre" ->
          Math.toDegrees(new BendCover(1, g.radians("theta"), circle(0.01)).cutRad(g.count("n")));
      case "gore" -> gore(g, what);
      case "tee" -> tee(g, what);
      case "offset" -> offset(g, what);
      case "bevel" -> bevel(g);
      case "cross" -> crossing(g, 0, Math.PI / 2, Math.PI, -Math.PI / 2) * MM2;
      case "wye" -> wye(g, what);
      case "cone" -> cone(g, what);
      case "square-to-round" -> squareToRound(g) * MM2;
      case "duct" -> duct(g, what);
      case "disc" -> disc(g, what);
      case "box" -> box(g) * MM2;
      case "polygon" -> chordGirth(g.count("N"));
      case "joint" -> joint(g);
      case "notch" -> notch(g, what);
      case "nesting" -> nesting(what, g);
      case "pipe" -> what.equals("V") ? pipe(g).volumeM3() : pipe(g).areaM2();
      case "layers" -> twoLayersM3();
      case "sheet" -> sheetGirth(g) * MM;
      default -> throw new IllegalArgumentException(shape);
    };
  }

  private static Outline.Circle circle(double radiusM) {
    return new Outline.Circle(radiusM);
  }

  private static double gore(Given g, String what) {
    if (what.equals("h_pp") && !hasRadius(g)) {
      return mitreOf(g).lengthAtM(0) * MM - mitreOf(g).lengthAtM(0.5) * MM;
    }
    if (!hasRadius(g)) {
      TubePiece piece = mitreOf(g);
      return piece.edgeM(piece.end()) * MM;
    }
    int n = g.count("n");
    double ro = g.metres("ro");
    double s = ro - g.metres("ri");
    BendCover bend = new BendCover(g.metres("R"), g.radians("theta"), circle(g.metres("ri")));
    LayerOn on = Given.layer(LayerForm.TUBE, s);
    EndCut mitre = EndCut.mitre(bend.cutRad(n));
    double axisM = 2 * g.metres("R") * Math.tan(bend.cutRad(n));
    TubePiece middle = Given.tube(ro, s, axisM, mitre, mitre);
    return switch (what) {
      case "Lc" -> middle.axisM() * MM;
      case "Lt" -> middle.lengthAtM(0.5) * MM;
      case "Lh" -> middle.lengthAtM(0) * MM;
      case "A_mid" -> middle.areaM2() * MM2;
      case "A_bend" -> bend.mitred(on, n, 0).outerAreaM2() * MM2;
      case "A_torus" -> new TorusGore(ro, s, g.metres("R"), g.radians("theta")).areaM2() * MM2;
      case "L_tube" -> tubeUsed(bend.mitred(on, n, 0)) * MM;
      case "P_ell" -> middle.edgeM(mitre) * MM;
      case "A_face" -> middle.faceM2(mitre) * MM2;
      case "gap" -> bend.heelGapM(n, 0) * MM;
      case "V" -> bend.mitred(on, n, 0).volumeM3() * MM3;
      case "h_pp" -> (middle.lengthAtM(0) - middle.lengthAtM(0.5)) / 2 * MM;
      default -> throw new IllegalArgumentException(what);
    };
  }

  private static boolean hasRadius(Given g) {
    try {
      g.plain("R");
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static TubePiece mitreOf(Given g) {
    double r = g.metres("D") / 2;
    double cut = g.radians("theta") / (2 * (g.count("n") - 1));
    return Given.tube(r, r / 4, 2 * r, EndCut.SQUARE, EndCut.mitre(cut));
  }

  private static double tubeUsed(Cover cover) {
    return cover.pieces().stream().mapToDouble(p -> p.count() * p.tubeLengthM()).sum();
  }

  private static double tee(Given g, String what) {
    double a = g.metres("a");
    double t = g.metres("T");
    if (what.equals("A_tee")) {
      BranchCover equal =
          new BranchCover(
              a - 0.01, a - 0.01, g.metres("L") / 2, g.metres("L") / 2, t, Math.PI / 2, 0);
      return equal.notched(Given.layer(LayerForm.TUBE, 0.01), 0).outerAreaM2() * MM2;
    }
    if (what.equals("waste")) {
      TubePiece plain = TubePiece.straight(circle(a), a, t);
      return 1 - branch(a, a, t, Math.PI / 2, 0).areaM2() / plain.areaM2();
    }
    double b = g.metres("b");
    double beta = g.radians("beta");
    TubePiece branch = branch(a, b, t, beta, 0);
    SaddleHole hole = new SaddleHole(a, b, 0, beta, 0, 0);
    return switch (what) {
      case "A_branch" -> branch.areaM2() * MM2;
      case "A_hole" -> hole.areaM2() * MM2;
      case "w_girth" -> (hole.girthM(Math.PI / 2) - hole.girthM(-Math.PI / 2)) * MM;
      case "w_axis" -> (hole.axialM(0) - hole.axialM(Math.PI)) * MM;
      case "L(0)" -> branch.lengthAtM(0) * MM;
      case "L(90)" -> branch.lengthAtM(0.25) * MM;
      case "L(180)" -> branch.lengthAtM(0.5) * MM;
      case "L_curve" -> branch.edgeM(branch.end()) * MM;
      case "V_branch" -> branch.volumeM3() * MM3;
      default -> throw new IllegalArgumentException(what);
    };
  }

  /** A branch without bore, so that its volume is that of the solid. */
  private static TubePiece branch(double a, double b, double t, double beta, double e) {
    return Given.tube(b, b, t, EndCut.SQUARE, new EndCut.Saddle(a, e, beta));
  }

  private static double offset(Given g, String what) {
    TubePiece branch =
        branch(g.metres("a"), g.metres("b"), g.metres("T"), Math.PI / 2, g.metres("e"));
    return switch (what) {
      case "A_branch" -> branch.areaM2() * MM2;
      case "L(270)" -> branch.lengthAtM(0.75) * MM;
      case "L(90)" -> branch.lengthAtM(0.25) * MM;
      default -> throw new IllegalArgumentException(what);
    };
  }

  private static double bevel(Given g) {
    EndCut saddle = new EndCut.Saddle(g.metres("a"), 0, Math.PI / 2);
    double outerM = saddle.reachM(new FlatPoint(0, g.metres("bo")));
    double boreM = saddle.reachM(new FlatPoint(0, g.metres("bi")));
    return (outerM - boreM) * MM;
  }

  private static double crossing(Given g, double... directions) {
    double r = g.metres("r");
    double s = r / 10;
    List<JunctionCover.Leg> legs =
        java.util.Arrays.stream(directions)
            .mapToObj(d -> new JunctionCover.Leg(d, g.metres("L")))
            .toList();
    return new JunctionCover(r - s, legs).cover(Given.layer(LayerForm.TUBE, s), 0).outerAreaM2();
  }

  private static double wye(Given g, String what) {
    double third = 2 * Math.PI / 3;
    if (what.equals("dA")) {
      Given longer = new Given("r=" + g.plain("r") + " L=" + 200);
      double wholeM2 = 2 * Math.PI * longer.metres("r") * longer.metres("L");
      return (wholeM2 - crossing(longer, 0, third, -third) / 3) * MM2;
    }
    return g.plain("r") > 0 && what.equals("A") && hasDelta(g)
        ? crossing(g, Math.PI, g.radians("delta"), -g.radians("delta")) * MM2
        : crossing(g, 0, third, -third) * MM2;
  }

  private static boolean hasDelta(Given g) {
    try {
      return g.plain("delta") > 0;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static double cone(Given g, String what) {
    double e = eccentricity(g);
    ConePiece cone = new ConePiece(g.metres("r1"), g.metres("r2"), g.metres("h"), e, 0.01);
    double ratio = g.plain("r2") / g.plain("r1");
    Pattern.Bounds bounds = cone.pattern().bounds();
    return switch (what) {
      case "s", "l_min" -> cone.slantM(0) * MM;
      case "l_max" -> cone.slantM(Math.PI) * MM;
      case "S1" -> cone.sectorM(0) * MM;
      case "S2" -> cone.sectorM(0) * ratio * MM;
      case "Omega", "Theta" -> Math.toDegrees(cone.angleRad());
      case "A" -> cone.areaM2() * MM2;
      case "W" -> bounds.widthM() * MM;
      case "Hh" -> bounds.heightM() * MM;
      default -> throw new IllegalArgumentException(what);
    };
  }

  private static double eccentricity(Given g) {
    try {
      return g.metres("e");
    } catch (IllegalArgumentException none) {
      return 0;
    }
  }

  private static double squareToRound(Given g) {
    return new SquareToRound(g.metres("A"), g.metres("B"), g.metres("r"), g.metres("h"), 0, 0, 0.01)
        .areaM2();
  }

  private static double duct(Given g, String what) {
    if (what.equals("transition")) {
      LayerOn thin = Given.layer(LayerForm.SHEET, 1e-12);
      DuctCover small = new DuctCover(g.metres("A2"), g.metres("B2"));
      Cover cover =
          new DuctCover(g.metres("A1"), g.metres("B1"))
              .transition(thin, small, g.metres("h"), 0, 0);
      return Cover.of(cover.pieces()).outerAreaM2() * MM2;
    }
    DuctCover duct = new DuctCover(g.metres("W"), g.metres("H"));
    LayerOn on = Given.layer(LayerForm.SHEET, g.metres("s"));
    return switch (what) {
      case "A_sheet" ->
          duct.straight(on, g.metres("L")).pieces().stream()
                  .mapToDouble(p -> p.count() * p.sheetAreaM2())
                  .sum()
              * MM2;
      case "A_out" -> duct.straight(on, g.metres("L")).outerAreaM2() * MM2;
      case "V" -> duct.straight(on, g.metres("L")).volumeM3() * MM3;
      case "elbow" ->
          duct.radiusBend(on, g.metres("rt") + g.metres("W") / 2, g.radians("theta")).outerAreaM2()
              * MM2;
      case "strip" -> duct.flangeStrips(on, g.metres("f"), g.metres("w")).outerAreaM2() * MM2;
      default -> throw new IllegalArgumentException(what);
    };
  }

  private static double disc(Given g, String what) {
    double outerM = g.metres("D") / 2;
    try {
      return FlatPanel.ring(outerM, g.metres("d") / 2, 0.01).areaM2() * MM2;
    } catch (IllegalArgumentException whole) {
      return FlatPanel.disc(outerM, 0.01).areaM2() * MM2;
    }
  }

  /** A box of no thickness gives the bare figures; with thickness, those of its outer face. */
  private static double box(Given g) {
    try {
      double s = g.metres("s");
      double outerM = g.metres("F") / 2 + s;
      double lengthM = g.metres("w") + 2 * g.metres("x") + 2 * s;
      FlatPanel ring = FlatPanel.ring(g.metres("F") / 2, g.metres("Dp") / 2, s);
      double foundM2 =
          new BoxCover(g.metres("F"), g.metres("w") + 2 * g.metres("x"), g.metres("Dp"))
              .cylinder(Given.layer(LayerForm.SHEET, s))
              .outerAreaM2();
      assertThat(foundM2)
          .isCloseTo(2 * Math.PI * outerM * lengthM + 2 * ring.areaM2(), within(1e-12));
      return foundM2;
    } catch (IllegalArgumentException valve) {
      return new BoxCover(2 * g.metres("a"), g.metres("L"), g.metres("Dp"))
          .withNeck(Given.layer(LayerForm.SHEET, 1e-12), 2 * g.metres("b"), g.metres("H"))
          .outerAreaM2();
    }
  }

  /** What stepping the girth by chords would lose: patterns step by arc. */
  private static double chordGirth(int parts) {
    Outline.Circle outline = circle(0.05);
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      FlatPoint from = outline.at(outline.girthM() * i / parts, 0);
      sum += from.distanceM(outline.at(outline.girthM() * (i + 1) / parts, 0));
    }
    double drawnM = TubePiece.straight(outline, 0.01, 0.1).pattern().bounds().widthM();
    return sum / drawnM;
  }

  private static double joint(Given g) {
    LayerForm form = LayerForm.TUBE;
    try {
      double s = g.metres("s");
      double d = hasDiameter(g) ? g.metres("d") : 1;
      TubePiece metre = TubePiece.straight(circle(d / 2 + s), s, 1);
      if (!hasDiameter(g)) {
        Piece piece = Given.layer(form, s).round("tube", 1, circle(d / 2), metre);
        return piece.jointFaceM2() - 2 * metre.faceM2(EndCut.SQUARE);
      }
      double buttM2 = 2 * metre.faceM2(EndCut.SQUARE);
      int pieces = (int) Math.round(g.plain("L") / g.plain("lt"));
      return g.plain("L") * 2 * s + (pieces - 1) * buttM2;
    } catch (IllegalArgumentException oneButt) {
      double s = g.metres("s");
      TubePiece metre = TubePiece.straight(circle(g.metres("d") / 2 + s), s, 1);
      return 2 * metre.faceM2(EndCut.SQUARE);
    }
  }

  private static boolean hasDiameter(Given g) {
    try {
      return g.plain("d") > 0;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static double notch(Given g, String what) {
    double d = g.metres("D");
    try {
      double alpha = g.radians("alpha");
      return new NotchedTube(circle(d / 2), d / 10, 2 * d, 2 * alpha, 1, 0).openingM() * MM;
    } catch (IllegalArgumentException equalTee) {
      SaddleHole notch = new SaddleHole(d / 2, d / 2, 0, Math.PI / 2, 0, 0);
      return (notch.axialM(0) - notch.axialM(Math.PI)) * MM;
    }
  }

  private static double nesting(String what, Given g) {
    double r = g.metres("r");
    double discM2 = FlatPanel.disc(r, 0.01).areaM2();
    if (hexagonal(g, what)) {
      FlatPoint[] corners = new FlatPoint[6];
      for (int i = 0; i < 6; i++) {
        corners[i] = FlatPoint.along(r / Math.cos(Math.PI / 6), i * Math.PI / 3, 0);
      }
      return 1 - discM2 / FlatPanel.polygon(0.01, corners).areaM2();
    }
    return 1 - discM2 / FlatPanel.rectangle(2 * r, 2 * r, 0.01).areaM2();
  }

  private static boolean hexagonal(Given g, String what) {
    return what.equals("w_hex");
  }

  private static TubePiece pipe(Given g) {
    double s = g.plain("s");
    return TubePiece.straight(circle(g.plain("d") / 2 + s), s, 1);
  }

  private static double twoLayersM3() {
    TubePiece inner = TubePiece.straight(circle(0.1143 / 2 + 0.025), 0.025, 1);
    TubePiece outer = TubePiece.straight(circle(0.1143 / 2 + 0.050), 0.025, 1);
    return inner.volumeM3() + outer.volumeM3();
  }

  private static double sheetGirth(Given g) {
    double s = g.metres("s");
    return TubePiece.straight(circle(g.metres("d") / 2 + s), s, 1).pattern().bounds().widthM();
  }
}
