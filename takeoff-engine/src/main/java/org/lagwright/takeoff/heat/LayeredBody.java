package org.lagwright.takeoff.heat;

import java.util.List;

/**
 * A body with layers of known conductivity, from the inside out. The first layer may be the wall of
 * the pipe itself; the body's diameter is then the bore.
 *
 * <p>Source: steady conduction through layers in series, ISO 12241, clause 4.
 */
public record LayeredBody(Body body, List<SolidLayer> layers) {

  /** Given to {@link #flow} where a surface temperature is known instead of a film. */
  public static final double NO_FILM = Double.POSITIVE_INFINITY;

  public LayeredBody {
    layers = List.copyOf(layers);
  }

  /**
   * One layer.
   *
   * @param thicknessM metres, above 0
   * @param conductivityWPerMK W/(m K), above 0
   */
  public record SolidLayer(double thicknessM, double conductivityWPerMK) {
    public SolidLayer {
      if (!(thicknessM > 0) || !(conductivityWPerMK > 0)) {
        throw new IllegalArgumentException(
            "a layer needs a thickness and a conductivity above zero, not "
                + thicknessM
                + " m and "
                + conductivityWPerMK
                + " W/(m K)");
      }
    }
  }

  /** Thickness of all layers, metres. */
  public double thicknessM() {
    return layers.stream().mapToDouble(SolidLayer::thicknessM).sum();
  }

  /** Resistance of the innermost layers without films, in the unit of {@link Body}. */
  public double resistance(int innermost) {
    double belowM = 0;
    double sum = 0;
    for (SolidLayer layer : layers.subList(0, innermost)) {
      sum += body.layerResistance(belowM, layer.thicknessM(), layer.conductivityWPerMK());
      belowM += layer.thicknessM();
    }
    return sum;
  }

  /**
   * Heat flow between two temperatures.
   *
   * @param insideC medium, or inner surface with {@link #NO_FILM}, degC
   * @param outsideC air, or outer surface with {@link #NO_FILM}, degC
   * @param insideWPerM2K coefficient at the inner surface
   * @param outsideWPerM2K coefficient at the outer surface
   */
  public HeatFlow flow(
      double insideC, double outsideC, double insideWPerM2K, double outsideWPerM2K) {
    double insideFilm = 1 / (insideWPerM2K * body.surfaceM2(0));
    double outsideFilm = 1 / (outsideWPerM2K * body.surfaceM2(thicknessM()));
    double flow = (insideC - outsideC) / (insideFilm + resistance(layers.size()) + outsideFilm);
    return new HeatFlow(flow, outsideC + flow * outsideFilm, outsideWPerM2K);
  }
}
