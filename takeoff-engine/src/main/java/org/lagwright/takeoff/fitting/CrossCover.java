package org.lagwright.takeoff.fitting;

import java.util.List;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.SaddleHole;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/**
 * Cover of a square cross whose branches are smaller than the run.
 *
 * @param mainRadiusM bare radius of the run
 * @param branchRadiusM bare radius of both branches
 * @param runLegM from the centre to each end of the run
 * @param branchM from the centre to the end of each branch
 */
record CrossCover(double mainRadiusM, double branchRadiusM, double runLegM, double branchM) {

  /** Run with two holes, two branches with saddles. */
  Cover cover(LayerOn on, double leastM) {
    BranchCover half =
        new BranchCover(mainRadiusM, branchRadiusM, runLegM, runLegM, branchM, Math.PI / 2, 0);
    Cover tee = half.saddled(on, leastM);
    Piece branch = tee.pieces().get(1);
    TubePiece run = (TubePiece) tee.pieces().get(0).shape();
    SaddleHole first = run.holes().get(0);
    SaddleHole opposite =
        new SaddleHole(
            first.mainRadiusM(), first.branchRadiusM(), 0, Math.PI / 2, first.alongM(), 0.5);
    TubePiece both =
        new TubePiece(
            run.outer(),
            run.wallM(),
            run.axisM(),
            EndCut.SQUARE,
            EndCut.SQUARE,
            List.of(first, opposite),
            0.25);
    Outline main = new Outline.Circle(mainRadiusM);
    TubePiece plain = TubePiece.straight(run.outer(), run.wallM(), 2 * runLegM);
    double branchAreaM2 = tee.outerAreaM2() - plain.areaM2();
    double branchVolumeM3 = tee.volumeM3() - plain.volumeM3();
    return new Cover(
        List.of(
            on.round("run with two holes", 1, main, both),
            new Piece(
                "branch", 2, branch.layerNumber(), branch.layer(), branch.boreM(), branch.shape())),
        Math.max(0, plain.areaM2() + 2 * branchAreaM2),
        Math.max(0, plain.volumeM3() + 2 * branchVolumeM3));
  }
}
