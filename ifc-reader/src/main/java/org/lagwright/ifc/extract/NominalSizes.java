package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Nominal sizes that properties and names give, in millimetres; placeholders are passed over. */
final class NominalSizes {

  /** Names of sizes, which stand on every pipe of a model and are few. */
  private static final Map<Integer, String> NAMES = new ConcurrentHashMap<>();

  private final Placeholders placeholders;

  NominalSizes(Placeholders placeholders) {
    this.placeholders = placeholders;
  }

  /** {@code DN50}; the same text each time. */
  static String named(int dn) {
    return NAMES.computeIfAbsent(dn, size -> "DN" + size);
  }

  /** All that are given, properties first. */
  List<Integer> of(Draft draft) {
    List<Integer> sizes = new ArrayList<>(4);
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.NOMINAL)) {
      if (!placeholders.contains(p)) {
        millimetres(p).ifPresent(sizes::add);
      }
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      Sizes.dn(text.value()).ifPresent(sizes::add);
    }
    return sizes;
  }

  /** The outside of a pipe of the nominal size that a property states, by table. */
  static Optional<Section> section(Property p) {
    return millimetres(p).flatMap(PipeSizes::forNominal).map(PipeSizes.Size::section);
  }

  /** Nominal sizes are millimetres even where they are written as bare numbers. */
  private static Optional<Integer> millimetres(Property p) {
    Double number = p.number();
    boolean length = p.measure() != null && p.measure().contains("LENGTHMEASURE");
    double mm =
        number == null
            ? Sizes.dn(p.text())
                .map(Integer::doubleValue)
                .orElse(PropertyNames.leadingNumber(p.text()))
            : length ? number * 1000 : number;
    return mm >= 1 && mm < 5000 ? Optional.of((int) Math.round(mm)) : Optional.empty();
  }
}
