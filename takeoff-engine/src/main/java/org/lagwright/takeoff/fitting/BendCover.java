package org.lagwright.takeoff.fitting;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.NotchedTube;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.PieceShape;
import org.lagwright.takeoff.fitting.pattern.TorusGore;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/**
 * Covers of a bend.
 *
 * <p>A bend of angle theta in n pieces has n - 1 joints, each cut at alpha = theta / (2 (n - 1))
 * off square; its pieces lie round the arc, the middle ones 2 R tan(alpha) long on the centre line,
 * the end ones half of that.
 *
 * @param radiusM radius R of the centre line
 * @param angleRad angle theta of the bend
 * @param bare outline of the bare pipe or duct, x in the plane of the bend
 */
public record BendCover(double radiusM, double angleRad, Outline bare) {

  /** Most pieces that are worth cutting. */
  static final int MOST_PIECES = 12;

  public BendCover {
    if (!(radiusM > 0) || !(angleRad > 0 && angleRad <= Math.PI)) {
      throw new IllegalArgumentException("no bend of radius " + radiusM + ", angle " + angleRad);
    }
  }

  /** Angle of each cut off square for a number of pieces, radians. */
  public double cutRad(int pieces) {
    return angleRad / (2 * (pieces - 1));
  }

  /**
   * Gap between the heel of what is covered and the bore of the cover at a joint, metres: (R + r)
   * (1/cos(alpha) - 1).
   *
   * @param belowM thickness of the layers below
   */
  public double heelGapM(int pieces, double belowM) {
    double heelM = radiusM + bare.widthM() / 2 + belowM;
    return heelM * (1 / Math.cos(cutRad(pieces)) - 1);
  }

  /** Length of a middle piece at the throat, metres; below zero where it is too tight. */
  public double throatM(int pieces, double totalM) {
    return 2 * (radiusM - bare.widthM() / 2 - totalM) * Math.tan(cutRad(pieces));
  }

  /**
   * Fewest pieces, three or more, whose heel gap stays within a limit.
   *
   * @return {@link #MOST_PIECES} where even they leave a wider gap
   */
  public int piecesForGap(double gapM, double belowM) {
    int pieces = 3;
    while (pieces < MOST_PIECES && heelGapM(pieces, belowM) > gapM) {
      pieces++;
    }
    return pieces;
  }

  /**
   * Pieces for the heel gap, fewer where their throat would be too short to handle.
   *
   * @return 2 where only a two-piece mitre can be made
   */
  public int pieces(LayerOn on, double gapM, double leastThroatM) {
    int pieces = piecesForGap(gapM, on.belowM());
    while (pieces >= 3 && throatM(pieces, on.totalM()) < leastThroatM) {
      pieces--;
    }
    return pieces;
  }

  /** Length of the arc of the centre line, metres. */
  public double arcM() {
    return radiusM * angleRad;
  }

  /** One straight tube pushed over the bend. */
  public Cover slidOver(LayerOn on) {
    TubePiece tube = TubePiece.straight(on.outer(bare), on.wallM(), arcM());
    return Cover.of(List.of(on.round("tube over the bend", 1, bare, tube)));
  }

  /**
   * Pieces cut at an angle.
   *
   * @param leastThroatM end pieces reach further over the pipe where they would be shorter than
   *     this at the throat
   */
  public Cover mitred(LayerOn on, int pieces, double leastThroatM) {
    Outline outer = on.outer(bare);
    double cutRad = cutRad(pieces);
    double halfM = radiusM * Math.tan(cutRad);
    double throatM = (radiusM - outer.widthM() / 2) * Math.tan(cutRad);
    double legM = pieces == 2 ? Math.max(0, leastThroatM - throatM) : 0;
    EndCut mitre = EndCut.mitre(cutRad);
    TubePiece end = piece(on, outer, halfM + legM, EndCut.SQUARE, mitre);
    List<Piece> made = new ArrayList<>();
    made.add(on.round("end piece", 2, bare, end));
    if (pieces > 2) {
      TubePiece middle = piece(on, outer, 2 * halfM, mitre, mitre);
      made.add(on.round("middle piece", pieces - 2, bare, middle));
    }
    double centreLineM = 2 * (pieces - 1) * halfM;
    return along(made, outer, on, centreLineM);
  }

  private static TubePiece piece(
      LayerOn on, Outline outer, double axisM, EndCut start, EndCut end) {
    return new TubePiece(outer, on.wallM(), axisM, start, end, List.of(), 0.5);
  }

  /** Area and volume along a centre line; cuts at an angle change neither. */
  private static Cover along(List<Piece> made, Outline outer, LayerOn on, double centreLineM) {
    double ringM2 = TubePiece.straight(outer, on.wallM(), 1).ringM2();
    return new Cover(made, outer.girthM() * centreLineM, ringM2 * centreLineM);
  }

  /** One tube with wedges cut out that hinge at the heel. */
  public Cover notched(LayerOn on, int pieces) {
    PieceShape tube = new NotchedTube(on.outer(bare), on.wallM(), radiusM, angleRad, pieces - 1, 0);
    return Cover.of(List.of(on.round("notched tube", 1, bare, tube)));
  }

  /**
   * Strips of sheet as wide as the arc they cover.
   *
   * @param bulgeM how far the middle of a strip may have to stretch
   * @throws IllegalArgumentException if the section is not round or the throat too tight
   */
  public Cover smooth(LayerOn on, double bulgeM) {
    if (!(on.outer(bare) instanceof Outline.Circle circle)) {
      throw new IllegalArgumentException("a smooth cover needs a round section");
    }
    int strips = 2;
    TorusGore strip = strip(on, circle, strips);
    while (strip.bulgeM() > bulgeM && strips < 4 * MOST_PIECES) {
      strips++;
      strip = strip(on, circle, strips);
    }
    return Cover.of(List.of(on.flat("strip across the bend", strips, strip)));
  }

  private TorusGore strip(LayerOn on, Outline.Circle outer, int strips) {
    return new TorusGore(outer.radiusM(), on.wallM(), radiusM, angleRad / strips);
  }
}
