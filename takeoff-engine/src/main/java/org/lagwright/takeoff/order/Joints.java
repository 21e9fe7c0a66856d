package org.lagwright.takeoff.order;

import org.lagwright.takeoff.fitting.Method;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/**
 * Faces and joints of pieces.
 *
 * @param faceM2 faces that get adhesive, both sides of each joint, square metres
 * @param jointM length of joints across, each once, metres
 * @param joints number of these joints
 * @param seamM length of longitudinal seams, metres
 */
record Joints(double faceM2, double jointM, double joints, double seamM) {

  static final Joints NONE = new Joints(0, 0, 0, 0);

  /**
   * The joints of equal pieces. Each end is a joint with a neighbour, which has the other half of
   * it.
   *
   * @param cuts joints within each of them, because it is larger than what is sold
   */
  static Joints of(Piece piece, Method method, Joints cuts) {
    double wallM = piece.shape().wallM();
    double seamM =
        piece.shape() instanceof TubePiece tube && method != Method.TUBE_PUSHED_ON
            ? tube.lengthAtM(tube.seamTurn())
            : 0;
    double pushedSeamM2 =
        piece.shape() instanceof TubePiece tube && method == Method.TUBE_PUSHED_ON
            ? 2 * wallM * tube.lengthAtM(tube.seamTurn())
            : 0;
    return new Joints(piece.jointFaceM2() - pushedSeamM2, piece.shape().cutLengthM() / 2, 1, seamM)
        .plus(cuts)
        .times(piece.count());
  }

  Joints plus(Joints other) {
    return new Joints(
        faceM2 + other.faceM2, jointM + other.jointM, joints + other.joints, seamM + other.seamM);
  }

  private Joints times(int count) {
    return new Joints(faceM2 * count, jointM * count, joints * count, seamM * count);
  }
}
