package org.lagwright.takeoff.fitting;

import java.util.List;
import org.lagwright.takeoff.fitting.pattern.ConePiece;
import org.lagwright.takeoff.fitting.pattern.FlatPanel;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/**
 * Covers of a reducer of round pipes.
 *
 * @param largeRadiusM bare radius of the large end
 * @param smallRadiusM bare radius of the small end
 * @param lengthM distance of the ends along the axis
 * @param offsetM distance of the axes of both ends, 0 where concentric
 */
public record ReducerCover(
    double largeRadiusM, double smallRadiusM, double lengthM, double offsetM) {

  public ReducerCover {
    if (!(largeRadiusM > smallRadiusM) || !(lengthM > 0)) {
      throw new IllegalArgumentException("a reducer needs two sizes and a length");
    }
  }

  /** True where one side is flat or the axes differ. */
  public boolean isEccentric() {
    return offsetM > (largeRadiusM - smallRadiusM) / 10;
  }

  private ConePiece cone(LayerOn on) {
    return new ConePiece(
        largeRadiusM + on.totalM(),
        smallRadiusM + on.totalM(),
        lengthM,
        isEccentric() ? offsetM : 0,
        on.wallM());
  }

  /** One cone of sheet. */
  public Cover cone(LayerOn on, String name) {
    return Cover.of(List.of(on.flat(name, 1, cone(on))));
  }

  /** The tube of the large pipe runs on over the reducer; a ring closes it on the small one. */
  public Cover stepped(LayerOn on) {
    Outline large = new Outline.Circle(largeRadiusM);
    TubePiece tube = TubePiece.straight(on.outer(large), on.wallM(), lengthM);
    double smallM = smallRadiusM + on.belowM();
    FlatPanel ring = FlatPanel.ring(largeRadiusM + on.totalM(), smallM, on.wallM());
    Cover whole =
        Cover.of(
            List.of(
                on.round("tube of the large size", 1, large, tube),
                on.flat("closing ring", 1, ring)));
    return whole;
  }
}
