package org.lagwright.takeoff.fitting;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.SaddleHole;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/**
 * Covers of tees and laterals of round pipes.
 *
 * @param mainRadiusM bare radius of the main
 * @param branchRadiusM bare radius of the branch, at most that of the main
 * @param startM length of the main before the crossing of the axes
 * @param endM length behind it
 * @param branchM length of the branch from the crossing
 * @param angleRad angle between branch and end of the main, at most a right angle
 * @param offsetM distance of the axes
 */
public record BranchCover(
    double mainRadiusM,
    double branchRadiusM,
    double startM,
    double endM,
    double branchM,
    double angleRad,
    double offsetM) {

  /** Radii within this count as equal, metres: the rounding of exports. */
  private static final double SAME_M = 0.0005;

  /** At which angle a swept branch leaves. */
  private static final double SWEPT_RAD = Math.PI / 4;

  public BranchCover {
    if (!(branchRadiusM > 0) || !(mainRadiusM >= branchRadiusM - SAME_M)) {
      throw new IllegalArgumentException(
          "a branch of radius " + branchRadiusM + " on a main of " + mainRadiusM);
    }
    if (!(startM > 0) || !(endM > 0) || !(branchM > 0) || !(angleRad > 0)) {
      throw new IllegalArgumentException("legs of a tee must have a length");
    }
    offsetM = Math.abs(offsetM);
    branchRadiusM = Math.min(branchRadiusM, mainRadiusM);
  }

  /** True where main and branch are cut along planes: equal pipes whose axes meet. */
  public boolean isEqual() {
    return mainRadiusM - branchRadiusM < SAME_M && offsetM < SAME_M;
  }

  /** True where the branch leaves at a right angle, within a degree. */
  public boolean isSquare() {
    return Math.abs(angleRad - Math.PI / 2) < Math.toRadians(1);
  }

  /** True where the insulated branch lands on the insulated main. */
  public boolean lands(LayerOn on) {
    return offsetM + branchRadiusM <= mainRadiusM + SAME_M / 10
        && offsetM + branchRadiusM + on.totalM() <= mainRadiusM + on.totalM() + SAME_M / 10;
  }

  private Outline.Circle main() {
    return new Outline.Circle(mainRadiusM);
  }

  private Outline.Circle branch() {
    return new Outline.Circle(branchRadiusM);
  }

  private double mainOuterM(LayerOn on) {
    return mainRadiusM + on.totalM();
  }

  private double branchOuterM(LayerOn on) {
    return Math.min(branchRadiusM + on.totalM(), mainOuterM(on) - offsetM);
  }

  /**
   * Branch with a saddle, on a main with a hole for the pipe.
   *
   * @param leastM pieces reach further over the pipes where a wall would be shorter than this
   */
  public Cover saddled(LayerOn on, double leastM) {
    double outerM = mainOuterM(on);
    EndCut saddle = new EndCut.Saddle(outerM, offsetM, angleRad);
    TubePiece neck = neck(on, saddle, leastM);
    double reachM = footM(on) + leastM;
    double before = Math.max(startM, reachM);
    double after = Math.max(endM, reachM);
    SaddleHole hole =
        new SaddleHole(outerM, branchRadiusM + on.belowM(), offsetM, angleRad, before, 0);
    TubePiece run =
        new TubePiece(
            main().grown(on.totalM()),
            on.wallM(),
            before + after,
            EndCut.SQUARE,
            EndCut.SQUARE,
            List.of(hole),
            0.5);
    SaddleHole foot = new SaddleHole(outerM, branchOuterM(on), offsetM, angleRad, before, 0);
    double extraM = before + after - startM - endM;
    double areaM2 = run.areaM2() + hole.areaM2() - foot.areaM2() - extraM * run.outer().girthM();
    double volumeM3 = run.volumeM3() - extraM * run.ringM2();
    double extraNeckM = neck.axisM() - branchM;
    return new Cover(
        List.of(on.round("run with hole", 1, main(), run), on.round("branch", 1, branch(), neck)),
        Math.max(0, areaM2) + Math.max(0, neck.areaM2() - extraNeckM * neck.outer().girthM()),
        Math.max(0, volumeM3) + Math.max(0, neck.volumeM3() - extraNeckM * neck.ringM2()));
  }

  private TubePiece neck(LayerOn on, EndCut saddle, double leastM) {
    double reachM = (mainOuterM(on) + branchOuterM(on) * Math.cos(angleRad)) / Math.sin(angleRad);
    double axisM = Math.max(branchM, reachM + leastM);
    Outline outer = new Outline.Circle(branchOuterM(on));
    return new TubePiece(
        outer, Math.min(on.wallM(), branchOuterM(on)), axisM, EndCut.SQUARE, saddle, List.of(), 0);
  }

  /** How far the foot of the branch reaches along the main from the crossing. */
  private double footM(LayerOn on) {
    return mainOuterM(on) / Math.tan(angleRad) + branchOuterM(on) / Math.sin(angleRad);
  }

  /** Branch cut to a point that fits a notch in the main, both from the same tube. */
  public Cover notched(LayerOn on, double leastM) {
    Legs legs = new Legs(on, leastM);
    double before = legs.start().axisM();
    SaddleHole notch = new SaddleHole(mainOuterM(on), mainOuterM(on), 0, angleRad, before, 0);
    TubePiece run =
        new TubePiece(
            main().grown(on.totalM()),
            on.wallM(),
            before + legs.end().axisM(),
            EndCut.SQUARE,
            EndCut.SQUARE,
            List.of(notch),
            0.5);
    return legs.cover(
        List.of(
            on.round("run with notch", 1, main(), run),
            on.round("branch cut to a point", 1, main(), legs.side())));
  }

  /** Three pieces, each cut half way to its neighbours. */
  public Cover threePieces(LayerOn on, double leastM) {
    Legs legs = new Legs(on, leastM);
    List<Piece> made = new ArrayList<>();
    if (legs.start().equals(legs.end())) {
      made.add(on.round("half of the run", 2, main(), legs.start()));
    } else {
      made.add(on.round("run before the branch", 1, main(), legs.start()));
      made.add(on.round("run behind the branch", 1, main(), legs.end()));
    }
    made.add(on.round("branch cut to a point", 1, main(), legs.side()));
    return legs.cover(made);
  }

  /** The legs of an equal tee, long enough to hold their cuts. */
  private final class Legs {

    private final JunctionCover junction;
    private final LayerOn on;
    private final double leastM;

    Legs(LayerOn on, double leastM) {
      this.on = on;
      this.leastM = leastM;
      this.junction =
          new JunctionCover(
              mainRadiusM,
              List.of(
                  new JunctionCover.Leg(Math.PI, startM),
                  new JunctionCover.Leg(0, endM),
                  new JunctionCover.Leg(angleRad, branchM)));
    }

    TubePiece start() {
      return junction.leg(0, on, leastM);
    }

    TubePiece end() {
      return junction.leg(1, on, leastM);
    }

    TubePiece side() {
      return junction.leg(2, on, leastM);
    }

    Cover cover(List<Piece> pieces) {
      Cover exact = junction.cover(on, leastM);
      return new Cover(pieces, exact.outerAreaM2(), exact.volumeM3());
    }
  }

  /**
   * Swept branch: the branch leaves at 45 degrees and is turned square by a second piece, which
   * follows a swept fitting more closely than a square saddle.
   */
  public Cover swept(LayerOn on, double leastM) {
    double outerM = mainOuterM(on);
    double ownM = branchOuterM(on);
    double kneeM = (outerM + ownM) / Math.sin(SWEPT_RAD) + leastM;
    double kneeUpM = kneeM * Math.sin(SWEPT_RAD);
    EndCut mitre = EndCut.mitre(SWEPT_RAD / 2);
    EndCut saddle = new EndCut.Saddle(outerM, offsetM, SWEPT_RAD);
    double topM = Math.max(branchM - kneeUpM, ownM * Math.tan(SWEPT_RAD / 2) + leastM);
    BranchCover leaving =
        new BranchCover(
            mainRadiusM,
            branchRadiusM,
            Math.max(startM - kneeUpM, leastM),
            endM + kneeUpM,
            kneeM,
            SWEPT_RAD,
            offsetM);
    Cover square = saddled(on, leastM);
    return new Cover(
        List.of(
            leaving.saddled(on, leastM).pieces().get(0),
            on.round(
                "branch leaving at 45 degrees", 1, branch(), branchTube(on, kneeM, mitre, saddle)),
            on.round(
                "branch turned square", 1, branch(), branchTube(on, topM, EndCut.SQUARE, mitre))),
        square.outerAreaM2(),
        square.volumeM3());
  }

  private TubePiece branchTube(LayerOn on, double axisM, EndCut start, EndCut end) {
    double ownM = branchOuterM(on);
    return new TubePiece(
        new Outline.Circle(ownM), Math.min(on.wallM(), ownM), axisM, start, end, List.of(), 0.5);
  }
}
