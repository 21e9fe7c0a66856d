package org.lagwright.takeoff.fitting;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.FlatPanel;
import org.lagwright.takeoff.fitting.pattern.FlatPoint;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/**
 * Covers of rectangular ducts: panels butted at the edges. Two sides have the width of the duct,
 * the two others lap over them.
 *
 * @param widthM bare width W
 * @param heightM bare height H
 */
public record DuctCover(double widthM, double heightM) {

  public DuctCover {
    if (!(widthM > 0) || !(heightM > 0)) {
      throw new IllegalArgumentException("no duct of " + widthM + " x " + heightM);
    }
  }

  private double wM(LayerOn on) {
    return widthM + 2 * on.belowM();
  }

  private double hM(LayerOn on) {
    return heightM + 2 * on.belowM();
  }

  private double girthM(LayerOn on) {
    return 2 * (widthM + heightM) + 8 * on.totalM();
  }

  private double ringM2(LayerOn on) {
    double s = on.wallM();
    return (wM(on) + 2 * s) * (hM(on) + 2 * s) - wM(on) * hM(on);
  }

  private Cover along(List<Piece> pieces, LayerOn on, double centreLineM) {
    return new Cover(pieces, girthM(on) * centreLineM, ringM2(on) * centreLineM);
  }

  /** Four panels. */
  public Cover straight(LayerOn on, double lengthM) {
    double s = on.wallM();
    return along(
        List.of(
            on.flat("top and bottom", 2, FlatPanel.rectangle(wM(on), lengthM, s)),
            on.flat("side", 2, FlatPanel.rectangle(hM(on) + 2 * s, lengthM, s))),
        on,
        lengthM);
  }

  /**
   * Bend with a round throat: two cheeks over the edges of heel and throat strips.
   *
   * @param radiusM radius of the centre line
   * @param angleRad angle of the bend
   * @throws IllegalArgumentException if the insulation of the throat closes on itself
   */
  public Cover radiusBend(LayerOn on, double radiusM, double angleRad) {
    double s = on.wallM();
    double throatM = radiusM - wM(on) / 2;
    double heelM = radiusM + wM(on) / 2;
    if (!(throatM - s > 0)) {
      throw new IllegalArgumentException("the throat of the bend is too tight");
    }
    return along(
        List.of(
            on.flat("cheek", 2, FlatPanel.ringSector(heelM + s, throatM - s, angleRad, s)),
            on.flat("heel strip", 1, FlatPanel.rectangle((heelM + s) * angleRad, hM(on), s)),
            on.flat("throat strip", 1, FlatPanel.rectangle(throatM * angleRad, hM(on), s))),
        on,
        radiusM * angleRad);
  }

  /**
   * Bend with sharp corners: cheeks of straight edges, two panels each on heel and throat.
   *
   * @param legM from the corner of the centre lines to each end
   */
  public Cover squareBend(LayerOn on, double legM, double angleRad) {
    double s = on.wallM();
    double t = Math.tan(angleRad / 2);
    double halfM = wM(on) / 2 + s;
    double leg = Math.max(legM, halfM * t + s);
    FlatPoint innerEnd = FlatPoint.along(leg, -angleRad, -halfM);
    FlatPoint outerEnd = FlatPoint.along(leg, -angleRad, halfM);
    FlatPanel cheek =
        FlatPanel.polygon(
            s,
            new FlatPoint(-leg, -halfM),
            new FlatPoint(-halfM * t, -halfM),
            innerEnd,
            outerEnd,
            new FlatPoint(halfM * t, halfM),
            new FlatPoint(-leg, halfM));
    double heelM = leg + (wM(on) / 2 + s) * t;
    double throatM = Math.max(leg - wM(on) / 2 * t, s);
    return along(
        List.of(
            on.flat("cheek", 2, cheek),
            on.flat("heel panel", 2, FlatPanel.rectangle(heelM, hM(on), s)),
            on.flat("throat panel", 2, FlatPanel.rectangle(throatM, hM(on), s))),
        on,
        2 * legM);
  }

  /**
   * Straight run with a rectangular branch.
   *
   * @param other section of the branch
   * @param runM length of the run
   * @param branchM length of the branch beyond the bare side of the run
   */
  public Cover tee(LayerOn on, DuctCover other, double runM, double branchM) {
    double s = on.wallM();
    double hole = Math.min(other.wM(on), 0.98 * runM);
    double holeH = Math.min(other.hM(on), hM(on));
    FlatPanel side = FlatPanel.rectangle(runM, hM(on) + 2 * s, s);
    List<Piece> pieces = new ArrayList<>();
    pieces.add(on.flat("top and bottom", 2, FlatPanel.rectangle(wM(on), runM, s)));
    pieces.add(on.flat("side", 1, side));
    FlatPoint centre = new FlatPoint(0, (hM(on) + 2 * s) / 2);
    pieces.add(on.flat("side with opening", 1, side.withHole(centre, hole, holeH)));
    double netM = Math.max(0, branchM - s);
    if (netM > 0) {
      pieces.addAll(other.straight(on, netM).pieces());
    }
    double footM2 = (other.wM(on) + 2 * s) * Math.min(other.hM(on) + 2 * s, hM(on) + 2 * s);
    return new Cover(
        pieces,
        Math.max(0, girthM(on) * runM - footM2) + other.girthM(on) * netM,
        Math.max(0, ringM2(on) * runM - hole * holeH * s) + other.ringM2(on) * netM);
  }

  /**
   * Four panels between two rectangles.
   *
   * @param sideM distance of the axes along the width
   * @param upM distance of the axes along the height
   */
  public Cover transition(LayerOn on, DuctCover other, double lengthM, double sideM, double upM) {
    double s = on.wallM();
    double w1 = wM(on);
    double w2 = other.wM(on);
    double h1 = hM(on) + 2 * s;
    double h2 = other.hM(on) + 2 * s;
    List<Piece> pieces =
        List.of(
            on.flat("top", 1, panel(w1, w2, lengthM, upM + (h2 - h1) / 2, sideM, s)),
            on.flat("bottom", 1, panel(w1, w2, lengthM, upM - (h2 - h1) / 2, sideM, s)),
            on.flat("right side", 1, panel(h1, h2, lengthM, sideM + (w2 - w1) / 2, upM, s)),
            on.flat("left side", 1, panel(h1, h2, lengthM, sideM - (w2 - w1) / 2, upM, s)));
    double meanM = (girthM(on) + other.girthM(on)) / 2;
    double slantM = Math.hypot(lengthM, Math.hypot(sideM, upM));
    double flatM2 = Cover.of(pieces).outerAreaM2();
    double edgesM2 = 4 * s * lengthM;
    return new Cover(
        pieces,
        Math.max(flatM2 + edgesM2, meanM * lengthM),
        (ringM2(on) + other.ringM2(on)) / 2 * slantM);
  }

  private static FlatPanel panel(
      double lowerM, double upperM, double lengthM, double leanM, double shiftM, double s) {
    return FlatPanel.trapezoid(lowerM, upperM, Math.hypot(lengthM, leanM), shiftM, s);
  }

  /** One panel over the end, as large as the insulated duct. */
  public Cover endCap(LayerOn on) {
    double s = on.wallM();
    FlatPanel end = FlatPanel.rectangle(wM(on) + 2 * s, hM(on) + 2 * s, s);
    return Cover.of(List.of(on.flat("end panel", 1, end)));
  }

  /**
   * Strips over a flange, their ends bevelled at 45 degrees through the thickness: two over the
   * width, two over the height, measured in the middle of the bevel.
   *
   * @param flangeM how far the flange stands out from the duct
   * @param stripM width of the strip along the duct
   */
  public Cover flangeStrips(LayerOn on, double flangeM, double stripM) {
    double s = on.wallM();
    double standM = 2 * Math.max(flangeM, on.totalM());
    FlatPanel across = FlatPanel.rectangle(widthM + standM + s, stripM, s);
    FlatPanel up = FlatPanel.rectangle(heightM + standM + s, stripM, s);
    return Cover.of(
        List.of(
            on.flat("strip over the width", 2, across), on.flat("strip over the height", 2, up)));
  }

  /**
   * Tube halved lengthwise round a joint of the duct, its ends cut at 45 degrees: each tube gives
   * two opposite sides.
   *
   * @param boreM bore of the tube: what stands out fits under its half
   */
  public Cover halvedTube(LayerOn on, double boreM) {
    Outline outer = new Outline.Circle(boreM / 2 + on.wallM());
    EndCut mitre = EndCut.mitre(Math.PI / 4);
    double leastM = 2 * (boreM / 2 + on.wallM());
    List<Piece> pieces = new ArrayList<>();
    double areaM2 = 0;
    double volumeM3 = 0;
    for (double sideM : new double[] {widthM, heightM}) {
      double axisM = Math.max(sideM + 2 * on.totalM(), leastM);
      TubePiece tube = new TubePiece(outer, on.wallM(), axisM, mitre, mitre, List.of(), 0.5);
      Layer stock = new Layer(on.layer().materialId(), LayerForm.TUBE, on.wallM());
      String name = sideM == widthM ? "tube to halve, width" : "tube to halve, height";
      pieces.add(new Piece(name, 1, on.number(), stock, boreM, tube));
      areaM2 += tube.areaM2();
      volumeM3 += tube.volumeM3();
    }
    return new Cover(pieces, areaM2, volumeM3);
  }
}
