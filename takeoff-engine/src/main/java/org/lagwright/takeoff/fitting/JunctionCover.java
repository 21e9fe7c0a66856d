package org.lagwright.takeoff.fitting;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/**
 * Cover of round pipes of one size that meet in one point of one plane: equal tees, laterals,
 * crosses, wyes. Each leg is cut along the planes half way to its neighbours.
 *
 * @param radiusM bare radius of all legs
 * @param legs the legs
 */
public record JunctionCover(double radiusM, List<Leg> legs) {

  /**
   * One leg.
   *
   * @param directionRad its direction in the plane of the fitting
   * @param lengthM from the point where all axes meet
   */
  public record Leg(double directionRad, double lengthM) {}

  public JunctionCover {
    legs = List.copyOf(legs);
    if (legs.size() < 2 || !(radiusM > 0)) {
      throw new IllegalArgumentException("a junction needs two legs");
    }
  }

  /** One leg, cut, with its square end first. */
  TubePiece leg(int index, LayerOn on, double leastM) {
    EndCut cut = cut(index);
    Outline outer = new Outline.Circle(radiusM + on.totalM());
    double shortestM = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 72; i++) {
      shortestM = Math.min(shortestM, cut.reachM(outer.at(outer.girthM() * i / 72, 0)));
    }
    double axisM = Math.max(legs.get(index).lengthM(), leastM - shortestM);
    return new TubePiece(outer, on.wallM(), axisM, EndCut.SQUARE, cut, List.of(), 0);
  }

  private EndCut cut(int index) {
    double own = legs.get(index).directionRad();
    List<Double> towards = new ArrayList<>();
    for (int i = 0; i < legs.size(); i++) {
      if (i != index) {
        double turned = Math.IEEEremainder(legs.get(i).directionRad() - own, 2 * Math.PI);
        towards.add(mirrored(index) ? -turned : turned);
      }
    }
    return EndCut.halfWayTo(towards.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** So that equal legs on both sides of a branch give equal shapes. */
  private boolean mirrored(int index) {
    double sum = 0;
    for (Leg leg : legs) {
      double turned =
          Math.IEEEremainder(leg.directionRad() - legs.get(index).directionRad(), 2 * Math.PI);
      sum += Math.abs(Math.abs(turned) - Math.PI) < 1e-9 ? 0 : turned;
    }
    return sum < 0;
  }

  /**
   * All legs as pieces of their own.
   *
   * @param leastM legs reach further over the pipes where their wall would be shorter than this
   */
  public Cover cover(LayerOn on, double leastM) {
    List<Piece> pieces = new ArrayList<>();
    double areaM2 = 0;
    double volumeM3 = 0;
    for (int i = 0; i < legs.size(); i++) {
      TubePiece leg = leg(i, on, leastM);
      double extraM = leg.axisM() - legs.get(i).lengthM();
      double ringM2 = leg.ringM2();
      areaM2 += Math.max(0, leg.areaM2() - extraM * leg.outer().girthM());
      volumeM3 += Math.max(0, leg.volumeM3() - extraM * ringM2);
      addTo(pieces, on.round("leg cut to a point", 1, new Outline.Circle(radiusM), leg));
    }
    return new Cover(pieces, areaM2, volumeM3);
  }

  private static void addTo(List<Piece> pieces, Piece piece) {
    for (int i = 0; i < pieces.size(); i++) {
      Piece before = pieces.get(i);
      if (before.shape().equals(piece.shape())) {
        pieces.set(
            i,
            new Piece(
                before.name(),
                before.count() + 1,
                before.layerNumber(),
                before.layer(),
                before.boreM(),
                before.shape()));
        return;
      }
    }
    pieces.add(piece);
  }
}
