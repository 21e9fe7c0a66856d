package org.lagwright.takeoff.heat;

import java.util.ArrayList;
import java.util.List;

/**
 * Layers of insulation over a body, from the inside out, whose conductivity depends on temperature.
 * Neighbouring layers of one curve are one layer.
 */
public record Cover(List<Sheath> sheaths) {

  private static final double INTERFACE_ACCURACY_K = 1e-9;
  private static final int MAX_ROUNDS = 200;

  public Cover {
    sheaths = merged(sheaths);
  }

  /**
   * One layer.
   *
   * @param thicknessM metres, above 0
   * @param conductivity of its material
   */
  public record Sheath(double thicknessM, ConductivityCurve conductivity) {
    public Sheath {
      if (!(thicknessM > 0 && Double.isFinite(thicknessM))) {
        throw new IllegalArgumentException("a layer needs a thickness above 0, not " + thicknessM);
      }
    }
  }

  /** One layer of one material. */
  public static Cover of(double thicknessM, ConductivityCurve conductivity) {
    return new Cover(List.of(new Sheath(thicknessM, conductivity)));
  }

  /** Thickness of all layers, metres. */
  public double thicknessM() {
    return sheaths.stream().mapToDouble(Sheath::thicknessM).sum();
  }

  /**
   * Heat flow through the layers between two surface temperatures: watt per metre of run, or per
   * square metre of a flat surface.
   */
  public double conducted(Body body, double insideC, double outsideC) {
    if (sheaths.size() == 1) {
      Sheath only = sheaths.get(0);
      double lambda = only.conductivity().meanWPerMK(insideC, outsideC);
      return (insideC - outsideC) / body.layerResistance(0, only.thicknessM(), lambda);
    }
    double resistance = 0;
    for (double each : resistances(body, insideC, outsideC)) {
      resistance += each;
    }
    return (insideC - outsideC) / resistance;
  }

  /** Resistance of each layer, its conductivity taken between the temperatures of its sides. */
  public double[] resistances(Body body, double insideC, double outsideC) {
    double[] sidesC = new double[sheaths.size() + 1];
    for (int i = 0; i < sidesC.length; i++) {
      sidesC[i] = insideC + (outsideC - insideC) * i / sheaths.size();
    }
    double[] resistances = between(body, sidesC);
    for (int round = 0; sheaths.size() > 1 && round < MAX_ROUNDS; round++) {
      double movedK = moveSides(sidesC, resistances);
      resistances = between(body, sidesC);
      if (movedK < INTERFACE_ACCURACY_K) {
        break;
      }
    }
    return resistances;
  }

  private double[] between(Body body, double[] sidesC) {
    double[] resistances = new double[sheaths.size()];
    double belowM = 0;
    for (int i = 0; i < resistances.length; i++) {
      Sheath sheath = sheaths.get(i);
      double lambda = sheath.conductivity().meanWPerMK(sidesC[i], sidesC[i + 1]);
      resistances[i] = body.layerResistance(belowM, sheath.thicknessM(), lambda);
      belowM += sheath.thicknessM();
    }
    return resistances;
  }

  /** Places the inner sides so that the same heat passes every layer; how far they moved, K. */
  private static double moveSides(double[] sidesC, double[] resistances) {
    double sum = 0;
    for (double each : resistances) {
      sum += each;
    }
    double flow = (sidesC[0] - sidesC[sidesC.length - 1]) / sum;
    double movedK = 0;
    for (int i = 1; i < resistances.length; i++) {
      double sideC = sidesC[i - 1] - flow * resistances[i - 1];
      movedK = Math.max(movedK, Math.abs(sideC - sidesC[i]));
      sidesC[i] = sideC;
    }
    return movedK;
  }

  private static List<Sheath> merged(List<Sheath> sheaths) {
    if (sheaths.isEmpty()) {
      throw new IllegalArgumentException("a cover needs a layer");
    }
    List<Sheath> merged = new ArrayList<>();
    for (Sheath sheath : sheaths) {
      int last = merged.size() - 1;
      if (last >= 0 && merged.get(last).conductivity().equals(sheath.conductivity())) {
        double sumM = merged.get(last).thicknessM() + sheath.thicknessM();
        merged.set(last, new Sheath(sumM, sheath.conductivity()));
      } else {
        merged.add(sheath);
      }
    }
    return List.copyOf(merged);
  }
}
