package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/** Notes sizes and lengths that rest on no body that could be measured. */
final class WeakSources {

  private WeakSources() {}

  /** One finding for size and length. */
  static void note(
      Draft draft, @Nullable Measured<Section> section, @Nullable Measured<Double> lengthM) {
    List<String> weak = new ArrayList<>();
    source(section).ifPresent(from -> weak.add("the size comes from " + from));
    source(lengthM).ifPresent(from -> weak.add("the length comes from " + from));
    if (!weak.isEmpty()) {
      draft.note(
          ReadFinding.NO_GEOMETRY,
          Effect.ESTIMATED,
          String.join("; ", draft.shape().problems()),
          String.join(", ", weak));
    }
  }

  private static <T> Optional<String> source(@Nullable Measured<T> measured) {
    if (measured == null || !isWritten(measured.how())) {
      return Optional.empty();
    }
    return measured.lost().stream().noneMatch(c -> isDrawn(c.how()))
        ? Optional.of(measured.evidence().toString())
        : Optional.empty();
  }

  private static boolean isWritten(How how) {
    return how == How.PROPERTY || how == How.QUANTITY_SET || how == How.TEXT;
  }

  private static boolean isDrawn(How how) {
    return how == How.SOLID || how == How.MESH;
  }
}
