package org.lagwright.takeoff.fitting;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.FlatPanel;
import org.lagwright.takeoff.fitting.pattern.FlatPoint;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.SaddleHole;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/**
 * Boxes over bodies that are wider than their pipe: flange pairs, valves, strainers, unions.
 *
 * @param boreM diameter that the box encloses
 * @param lengthM length of the box inside
 * @param pipeM diameter of the insulated pipe that both ends close on
 */
public record BoxCover(double boreM, double lengthM, double pipeM) {

  public BoxCover {
    if (!(boreM > 0) || !(lengthM > 0) || !(pipeM > 0)) {
      throw new IllegalArgumentException("a box needs a bore, a length and a pipe");
    }
  }

  private double outerM(double wallM) {
    return boreM / 2 + wallM;
  }

  private Piece rings(LayerOn on) {
    double innerM = Math.min(pipeM, 0.98 * boreM) / 2;
    return on.flat("end ring", 2, FlatPanel.ring(boreM / 2, innerM, on.wallM()));
  }

  /** A cylinder over length and both end rings, which stand inside it. */
  public Cover cylinder(LayerOn on) {
    double wallM = on.wallM();
    Outline outer = new Outline.Circle(outerM(wallM));
    TubePiece wrap = TubePiece.straight(outer, wallM, lengthM + 2 * wallM);
    return Cover.of(List.of(on.flat("wrap of the box", 1, wrap), rings(on)));
  }

  /**
   * A cylinder with a neck for the bonnet.
   *
   * @param neckM diameter that the neck encloses
   * @param heightM from the axis of the pipe to the top of the neck
   */
  public Cover withNeck(LayerOn on, double neckM, double heightM) {
    double wallM = on.wallM();
    double bodyM = outerM(wallM);
    double neckOuterM = Math.min(neckM / 2 + wallM, 0.999 * bodyM);
    double lengthOuterM = Math.max(lengthM + 2 * wallM, 2 * neckOuterM + 2 * wallM);
    double topM = Math.max(heightM, bodyM + wallM);
    SaddleHole hole = new SaddleHole(bodyM, neckOuterM, 0, Math.PI / 2, lengthOuterM / 2, 0);
    TubePiece body =
        new TubePiece(
            new Outline.Circle(bodyM),
            wallM,
            lengthOuterM,
            EndCut.SQUARE,
            EndCut.SQUARE,
            List.of(hole),
            0.5);
    TubePiece neck =
        new TubePiece(
            new Outline.Circle(neckOuterM),
            Math.min(wallM, neckOuterM),
            topM,
            EndCut.SQUARE,
            new EndCut.Saddle(bodyM, 0, Math.PI / 2),
            List.of(),
            0);
    List<Piece> pieces = new ArrayList<>();
    pieces.add(on.flat("body of the box", 1, body));
    pieces.add(on.flat("neck", 1, neck));
    pieces.add(on.flat("lid of the neck", 1, FlatPanel.disc(neckOuterM, wallM)));
    pieces.add(rings(on));
    return Cover.of(pieces);
  }

  /** Six panels round a body, holes for the pipe in two of them. */
  public Cover rectangular(LayerOn on, double heightM) {
    double s = on.wallM();
    FlatPanel end = FlatPanel.rectangle(boreM, heightM, s);
    double holeM = Math.min(pipeM, 0.98 * Math.min(boreM, heightM)) / 2;
    FlatPanel holed = end.withHole(new FlatPoint(0, heightM / 2), holeM);
    return Cover.of(
        List.of(
            on.flat("top and bottom", 2, FlatPanel.rectangle(boreM, lengthM + 2 * s, s)),
            on.flat("side", 2, FlatPanel.rectangle(heightM + 2 * s, lengthM + 2 * s, s)),
            on.flat("end with hole", 2, holed)));
  }

  /** A tube of larger bore over a joint, resting on the insulation on both sides. */
  public Cover sleeve(LayerOn on) {
    Outline bore = new Outline.Circle(boreM / 2);
    TubePiece tube = TubePiece.straight(bore.grown(on.wallM()), on.wallM(), lengthM);
    double tubeBoreM = on.layer().form() == LayerForm.SHEET ? 0 : boreM;
    return Cover.of(List.of(new Piece("sleeve", 1, on.number(), on.layer(), tubeBoreM, tube)));
  }

  /** A disc over the end of a capped pipe, inside the tube that runs on over the cap. */
  public Cover cap(LayerOn on) {
    Outline bore = new Outline.Circle(boreM / 2);
    TubePiece tube = TubePiece.straight(bore.grown(on.wallM()), on.wallM(), lengthM + on.wallM());
    return Cover.of(
        List.of(
            on.round("tube over the cap", 1, bore, tube),
            on.flat("end disc", 1, FlatPanel.disc(boreM / 2, on.wallM()))));
  }
}
