package org.lagwright.takeoff.labour;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/**
 * Factors on labour and how hours divide over the steps of the trade.
 *
 * @param reachM runs closer than this to an element are its neighbours, between bare surfaces,
 *     metres
 * @param factors in the order in which they are shown
 * @param shares one for each kind of work
 */
public record LabourPack(
    String id,
    String version,
    String source,
    String status,
    double reachM,
    List<LabourFactor> factors,
    List<StepShares> shares) {

  public LabourPack {
    factors = List.copyOf(factors);
    shares = List.copyOf(shares);
  }

  /** The pack that belongs to the program. */
  static LabourPack bundled() {
    return PackReader.readBundled(LabourPack.class, "labour.yaml", LabourPack.class);
  }

  PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  /** The same with values of the user by id of the factor. */
  LabourPack with(Map<String, Double> values) {
    List<LabourFactor> changed =
        factors.stream()
            .map(
                factor -> {
                  Double value = values.get(factor.id());
                  return value == null ? factor : factor.with(value);
                })
            .toList();
    return new LabourPack(id, version, source, status, reachM, changed, shares);
  }

  /** How the hours of a kind of work divide. */
  StepShares sharesOf(String work) {
    return shares.stream().filter(s -> s.work().equals(work)).findFirst().orElseThrow();
  }

  /** The band with the highest threshold that is reached; null where none is. */
  @Nullable LabourFactor band(String kind, double reached) {
    LabourFactor found = null;
    for (LabourFactor factor : factors) {
      boolean holds = factor.kind().equals(kind) && reached >= from(factor);
      if (holds && (found == null || from(factor) > from(found))) {
        found = factor;
      }
    }
    return found;
  }

  private static double from(LabourFactor factor) {
    return Objects.requireNonNull(factor.from(), factor.id());
  }

  /** All factors of a kind. */
  List<LabourFactor> of(String kind) {
    return factors.stream().filter(factor -> factor.kind().equals(kind)).toList();
  }
}
