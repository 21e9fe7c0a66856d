package org.lagwright.takeoff.fitting.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.lagwright.takeoff.fitting.pattern.Curve.Role;

/** Draws a tube laid flat: girth from the seam to the right, axis upwards. */
final class TubeDrawing {

  /** Ordinates printed for marking by hand. */
  static final int STATIONS = 24;

  private static final int MOST_POINTS = STATIONS * 64;

  private final TubePiece tube;
  private final double girthM;

  TubeDrawing(TubePiece tube) {
    this.tube = tube;
    this.girthM = tube.outer().girthM();
  }

  Pattern pattern() {
    List<Curve> curves = new ArrayList<>();
    curves.add(outline());
    tube.holes().forEach(hole -> curves.addAll(hole(hole)));
    addBore(curves);
    curves.add(horizontal());
    addMarks(curves);
    return new Pattern(curves, ordinates(), Pattern.FINE_M);
  }

  /** Height of the base line: the square end, else the middle. */
  private double baseM() {
    if (tube.start().equals(EndCut.SQUARE)) {
      return 0;
    }
    return tube.end().equals(EndCut.SQUARE) ? tube.axisM() : tube.axisM() / 2;
  }

  private double lowerM(double xM, double depthM) {
    return -tube.start().reachM(at(xM, depthM));
  }

  private double upperM(double xM, double depthM) {
    return tube.axisM() + tube.end().reachM(at(xM, depthM));
  }

  private FlatPoint at(double xM, double depthM) {
    double sM = (xM + tube.seamTurn() * girthM) % girthM;
    return tube.outer().at(sM, depthM);
  }

  private Curve outline() {
    List<FlatPoint> around = new ArrayList<>(sampled(x -> lowerM(x, 0)));
    List<FlatPoint> back = sampled(x -> upperM(x, 0));
    for (int i = back.size() - 1; i >= 0; i--) {
      around.add(back.get(i));
    }
    return Curve.through(Role.CUT, "", true, around);
  }

  /** Points of a function over the girth, so dense that chords lie within the tolerance. */
  private List<FlatPoint> sampled(DoubleUnaryOperator yM) {
    int parts = STATIONS;
    while (parts < MOST_POINTS && sagM(yM, parts) > Pattern.FINE_M) {
      parts *= 2;
    }
    if (sagM(yM, 1) < 1e-12 && sagM(yM, STATIONS) < 1e-12) {
      parts = 1;
    }
    List<FlatPoint> points = new ArrayList<>();
    for (int i = 0; i <= parts; i++) {
      double xM = girthM * i / parts;
      points.add(new FlatPoint(xM, yM.applyAsDouble(xM)));
    }
    return points;
  }

  /** Largest distance of curve and chord halfway between samples. */
  private double sagM(DoubleUnaryOperator yM, int parts) {
    double worst = 0;
    double stepM = girthM / parts;
    for (int i = 0; i < parts; i++) {
      double middle = yM.applyAsDouble((i + 0.5) * stepM);
      double ends = yM.applyAsDouble(i * stepM) + yM.applyAsDouble((i + 1) * stepM);
      worst = Math.max(worst, Math.abs(middle - ends / 2));
    }
    return worst;
  }

  /** The bore edge of saddles: between it and the outer edge the cut is bevelled. */
  private void addBore(List<Curve> curves) {
    String label = "bore";
    if (tube.start() instanceof EndCut.Saddle) {
      curves.add(Curve.through(Role.BORE, label, false, sampled(x -> lowerM(x, tube.wallM()))));
    }
    if (tube.end() instanceof EndCut.Saddle) {
      curves.add(Curve.through(Role.BORE, label, false, sampled(x -> upperM(x, tube.wallM()))));
    }
  }

  /** A hole, twice where the seam cuts it. */
  private List<Curve> hole(SaddleHole hole) {
    double middleM = (1 + hole.turn() - tube.seamTurn()) % 1 * girthM;
    Curve edge = Curve.through(Role.CUT, "", true, hole.edge(MOST_POINTS / 4));
    double reachM = hole.girthM(Math.PI / 2);
    double otherM = hole.girthM(-Math.PI / 2);
    List<Curve> drawn = new ArrayList<>();
    for (double atM : new double[] {middleM - girthM, middleM, middleM + girthM}) {
      if (atM + reachM > 0 && atM + otherM < girthM) {
        drawn.add(edge.moved(atM, 0));
      }
    }
    return drawn;
  }

  private Curve horizontal() {
    return Curve.through(
        Role.BASELINE,
        "base line",
        false,
        List.of(new FlatPoint(0, baseM()), new FlatPoint(girthM, baseM())));
  }

  private void addMarks(List<Curve> curves) {
    curves.add(vertical(Role.SEAM, "seam", 0));
    curves.add(vertical(Role.SEAM, "seam", girthM));
    String[] names = isBent() ? new String[] {"heel", "side", "throat", "side"} : new String[4];
    for (int quarter = 0; quarter < 4; quarter++) {
      double turn = quarter / 4.0;
      double xM = (turn - tube.seamTurn() + 1) % 1 * girthM;
      String name = names[quarter] == null ? "" : " " + names[quarter];
      if (xM > 1e-9) {
        curves.add(vertical(Role.MARK, quarter * 90 + "°" + name, xM));
      }
    }
  }

  private boolean isBent() {
    return isMitre(tube.start()) || isMitre(tube.end());
  }

  private static boolean isMitre(EndCut cut) {
    return cut instanceof EndCut.Planes planes
        && planes.slopes().size() == 1
        && planes.slopes().get(0) != 0;
  }

  private Curve vertical(Role role, String label, double xM) {
    return Curve.through(
        role,
        label,
        false,
        List.of(new FlatPoint(xM, lowerM(xM, 0)), new FlatPoint(xM, upperM(xM, 0))));
  }

  /** Where the edge of a hole lies below and above its middle, across its width. */
  private List<Ordinate> holeOrdinates(SaddleHole hole) {
    List<Ordinate> ordinates = new ArrayList<>();
    double middleM = (1 + hole.turn() - tube.seamTurn()) % 1 * girthM;
    for (int i = 0; i <= STATIONS; i++) {
      double phi = Math.PI * ((double) i / STATIONS - 0.5);
      double xM = hole.girthM(phi);
      double turnDeg = ((hole.turn() + xM / girthM) % 1 + 1) % 1 * 360;
      double lowerM = hole.alongM() + hole.axialM(Math.PI - phi) - baseM();
      double upperM = hole.alongM() + hole.axialM(phi) - baseM();
      ordinates.add(new Ordinate(i, turnDeg, middleM + xM, lowerM, upperM));
    }
    return ordinates;
  }

  private List<Ordinate> ordinates() {
    if (!tube.holes().isEmpty()) {
      return holeOrdinates(tube.holes().get(0));
    }
    List<Ordinate> ordinates = new ArrayList<>();
    double baseM = baseM();
    for (int i = 0; i <= STATIONS; i++) {
      double share = (double) i / STATIONS;
      double xM = share * girthM;
      double turnDeg = (share + tube.seamTurn()) % 1 * 360;
      ordinates.add(new Ordinate(i, turnDeg, xM, lowerM(xM, 0) - baseM, upperM(xM, 0) - baseM));
    }
    return ordinates;
  }
}
