package org.lagwright.takeoff.thickness;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * All demands on one element and what is bought to meet them.
 *
 * @param demands every demand, in the order of {@link Demand.Kind}
 * @param governing the largest one above 0; null where no demand needs insulation
 * @param requiredM thickness the governing demand needs, metres; 0 where there is none, positive
 *     infinity where no thickness meets it
 * @param layers stock layers from the inside out; empty where nothing is needed or nothing fits
 * @param location location class of the air around it: {@code indoor}
 * @param proof what the layers do; null where there are none or no temperature is known
 */
public record ThicknessDecision(
    List<Demand> demands,
    @Nullable Demand governing,
    double requiredM,
    List<Layer> layers,
    String location,
    @Nullable Proof proof) {

  public ThicknessDecision {
    demands = List.copyOf(demands);
    layers = List.copyOf(layers);
  }

  /** Thickness bought, metres. */
  public double totalM() {
    return layers.stream().mapToDouble(Layer::thicknessM).sum();
  }

  /** The build-up in words: {@code 32 mm tube + 19 mm sheet}. */
  public String layersInWords() {
    return layers.stream()
        .map(l -> Math.round(l.thicknessM() * 1000) + " mm " + l.form().label())
        .collect(Collectors.joining(" + "));
  }
}
