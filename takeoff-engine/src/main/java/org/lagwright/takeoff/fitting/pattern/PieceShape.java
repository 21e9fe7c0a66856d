package org.lagwright.takeoff.fitting.pattern;

/**
 * The shape of one piece of insulation. Equal shapes share one pattern.
 *
 * <p>Figures are exact up to rounding where the piece can be laid flat without stretching, which
 * holds for all but {@link TorusGore}.
 */
public sealed interface PieceShape
    permits TubePiece, NotchedTube, TorusGore, ConePiece, SquareToRound, FlatPanel {

  /** Area of the outer face laid flat, holes taken out, square metres. */
  double areaM2();

  /** Volume of insulation, cubic metres. */
  double volumeM3();

  /** Length of all edges that are cut to shape, on the outer face, metres. */
  double cutLengthM();

  /**
   * Length of tube or width of wrap that one piece uses up where its neighbours share its cuts,
   * without kerf, metres; 0 for flat pieces.
   */
  double stockLengthM();

  /** Thickness of the material, metres. */
  double wallM();

  /** The flat pattern at full size. */
  Pattern pattern();
}
