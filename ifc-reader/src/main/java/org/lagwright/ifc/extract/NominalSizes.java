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
    String known = NAMES.get(dn);
    if (known == null) {
      String name = "DN" + dn;
      String before = NAMES.putIfAbsent(dn, name);
      known = before == null ? name : before;
    }
    return known;
  }

  /** All that are given, properties first. */
  List<Integer> of(Draft draft) {
    List<Integer> sizes = new ArrayList<>(4);
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.NOMINAL)) {
      if (!placeholders.contains(p)) {
        addKnown(millimetres(p), sizes);
      }
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      addKnown(Sizes.dn(text.value()), sizes);
    }
    return sizes;
  }

  private static void addKnown(Optional<Integer> size, List<Integer> to) {
    if (size.isPresent()) {
      to.add(size.get());
    }
  }

  /** The outside of a pipe of the nominal size that a property states, by table. */
  static Optional<Section> section(Property p) {
    Optional<Integer> dn = millimetres(p);
    Optional<PipeSizes.Size> size =
        dn.isPresent() ? PipeSizes.forNominal(dn.get()) : Optional.empty();
    return size.isPresent() ? Optional.of(size.get().section()) : Optional.empty();
  }

  /** Nominal sizes are millimetres even where they are written as bare numbers. */
  private static Optional<Integer> millimetres(Property p) {
    Double number = p.number();
    boolean length = p.measure() != null && p.measure().contains("LENGTHMEASURE");
    double mm = number == null ? written(p.text()) : length ? number * 1000 : number;
    return mm >= 1 && mm < 5000 ? Optional.of((int) Math.round(mm)) : Optional.empty();
  }

  private static double written(String text) {
    Optional<Integer> dn = Sizes.dn(text);
    return dn.isPresent() ? dn.get() : PropertyNames.leadingNumber(text);
  }
}
