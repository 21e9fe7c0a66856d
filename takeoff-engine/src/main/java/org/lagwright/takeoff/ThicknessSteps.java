package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** The steps of a trace that say how thick, and what quantities follow. */
final class ThicknessSteps {

  private ThicknessSteps() {}

  static List<Trace.Step> ofDemands(ThicknessDecision decision) {
    List<Trace.Step> steps = new ArrayList<>();
    for (Demand demand : decision.demands()) {
      String what = demand.kind().label() + " demand";
      String value = Show.millimetres(demand.thicknessM());
      steps.add(
          givenBy(demand.kind()) != null
              ? new Trace.Given(what, value, Objects.requireNonNull(givenBy(demand.kind())))
              : new Trace.Decided(
                  what, value, demand.kind().label(), demand.rule(), demand.source()));
      steps.add(new Trace.Computed(what + ", figures", figures(demand), demand.rule()));
    }
    return steps;
  }

  /** The setting that gives the thickness itself; null where a rule finds it. */
  private static @Nullable String givenBy(Demand.Kind kind) {
    return switch (kind) {
      case USER -> "thicknessesMm";
      case SPECIFICATION -> "demands: specification";
      default -> null;
    };
  }

  static Trace.Step ofLayers(ThicknessDecision decision, MaterialFamily material) {
    return new Trace.Decided(
        "build-up",
        material.name() + ", " + decision.layersInWords(),
        "materials",
        material.id(),
        "next stock build-up of at least " + Show.millimetres(decision.requiredM()));
  }

  static List<Trace.Step> ofQuantities(Quantities quantities, String centreLine) {
    List<Trace.Step> steps = new ArrayList<>();
    if (quantities.pieces() > 0) {
      steps.add(new Trace.Computed("pieces", "1", "one element"));
    } else {
      steps.add(new Trace.Computed("quantity", Show.metres(quantities.lengthM()), "length read"));
    }
    steps.add(
        new Trace.Computed(
            "outer area",
            Show.squareMetres(quantities.outerAreaM2()),
            "outer girth x centre line (" + centreLine + ")"));
    steps.add(
        new Trace.Computed(
            "volume",
            Show.cubicMetres(quantities.volumeM3()),
            "cross-section of the insulation x centre line (" + centreLine + ")"));
    return steps;
  }

  private static String figures(Demand demand) {
    return demand.figures().entrySet().stream()
        .map(figure -> figure.getKey() + " " + figure.getValue())
        .collect(Collectors.joining(", "));
  }
}
