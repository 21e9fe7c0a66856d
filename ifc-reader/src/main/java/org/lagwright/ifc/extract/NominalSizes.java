package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Nominal sizes that properties and names give, in millimetres; placeholders are passed over. */
final class NominalSizes {

  /** Names of sizes, which stand on every pipe of a model and are few. */
  private static final Map<Integer, String> NAMES = new ConcurrentHashMap<>();

  private final Placeholders placeholders;

  /**
   * A nominal size and where it stands.
   *
   * @param dn in millimetres
   */
  record Nominal(int dn, How how, Evidence evidence) {

    /** True if tables have pipes of this size; what else is called so is none. */
    boolean isTabulated() {
      return PipeSizes.forNominal(dn).isPresent();
    }

    /**
     * The outside of such a pipe by table.
     *
     * @throws java.util.NoSuchElementException if no table has it
     */
    Section section() {
      return PipeSizes.forNominal(dn).orElseThrow().section();
    }

    /** True if a pipe of this nominal size may have this section. */
    boolean mayBe(Section section) {
      return section instanceof Section.Round round
          && PipeSizes.mayBe(dn, round.outsideDiameterM());
    }
  }

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

  /** All that are given, properties first; of several in one text the first. */
  List<Nominal> of(Draft draft) {
    List<Nominal> sizes = new ArrayList<>(4);
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.NOMINAL)) {
      Optional<Double> mm = placeholders.contains(p) ? Optional.empty() : figureMm(p);
      if (mm.isPresent()) {
        sizes.add(new Nominal(dn(mm.get()), How.PROPERTY, p.evidence()));
      }
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      Optional<Integer> dn = Sizes.dn(text.value());
      if (dn.isPresent()) {
        sizes.add(new Nominal(dn.get(), How.TEXT, text.evidence()));
      }
    }
    return sizes;
  }

  /** Those that tables have. */
  List<Nominal> tabulated(Draft draft) {
    List<Nominal> sizes = of(draft);
    List<Nominal> known = new ArrayList<>(sizes.size());
    for (Nominal size : sizes) {
      if (size.isTabulated()) {
        known.add(size);
      }
    }
    return known;
  }

  /** True if a diameter is a nominal size, and the other an outside diameter of that size. */
  static boolean isNominalOf(double diameterM, double outsideDiameterM) {
    return PipeSizes.isNominalOf(diameterM, outsideDiameterM);
  }

  /** The outside of a pipe of the nominal size that a property states, by table. */
  static Optional<Section> section(Property p) {
    Optional<Double> mm = figureMm(p);
    return mm.isPresent() ? section(mm.get()) : Optional.empty();
  }

  /** The outside of a pipe by table. */
  static Optional<Section> section(double mm) {
    Optional<PipeSizes.Size> size = PipeSizes.forNominal(dn(mm));
    return size.isPresent() ? Optional.of(size.get().section()) : Optional.empty();
  }

  /** Nominal sizes are millimetres even where they are written as bare numbers. */
  static Optional<Double> figureMm(Property p) {
    Double number = p.number();
    boolean length = p.measure() != null && p.measure().contains("LENGTHMEASURE");
    double mm = number == null ? written(p.text()) : length ? number * 1000 : number;
    return mm >= 1 && mm < 5000 ? Optional.of(mm) : Optional.empty();
  }

  private static double written(String text) {
    Optional<Integer> dn = Sizes.dn(text);
    return dn.isPresent() ? dn.get() : PropertyNames.leadingNumber(text);
  }

  private static int dn(double mm) {
    return (int) Math.round(mm);
  }
}
