package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.fitting.Making.LayerMaking;

/** The steps of a trace that say how an element is covered and what its pieces measure. */
final class MakingSteps {

  /** Name of steps that tell a width which no model gives. */
  static final String WIDTH = "width";

  private MakingSteps() {}

  static List<Trace.Step> of(Making making, String pack) {
    List<Trace.Step> steps = new ArrayList<>();
    for (LayerMaking layer : making.layers()) {
      String value =
          layer.method().words() + ": " + layer.reason() + "; glued: " + layer.bonding().words();
      steps.add(new Trace.Decided("making", value, pack, layer.rule(), layer.source()));
      if (!layer.cover().pieces().isEmpty()) {
        steps.add(new Trace.Computed("pieces of the cover", pieces(layer), layer.method().label()));
      }
    }
    for (String assumed : making.assumed()) {
      steps.add(new Trace.Assumed("dimension", assumed, "the model does not tell"));
    }
    for (String assumed : making.assumedWidths()) {
      steps.add(new Trace.Assumed(WIDTH, assumed, "no model tells"));
    }
    return steps;
  }

  private static String pieces(LayerMaking layer) {
    return layer.cover().pieces().stream()
        .map(piece -> piece.count() + " x " + piece.name())
        .collect(Collectors.joining(", "));
  }

  static List<Trace.Step> ofQuantities(Quantities quantities) {
    return List.of(
        new Trace.Computed("pieces", "1", "one element"),
        new Trace.Computed(
            "outer area", Show.squareMetres(quantities.outerAreaM2()), "surface of its pieces"),
        new Trace.Computed(
            "volume", Show.cubicMetres(quantities.volumeM3()), "volume of its pieces"));
  }
}
