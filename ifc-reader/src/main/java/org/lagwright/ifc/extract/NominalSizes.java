package org.lagwright.ifc.extract;

import java.util.Optional;
import java.util.stream.Stream;
import org.lagwright.ifc.model.Property;

/** Nominal sizes that properties and names give, in millimetres; placeholders are passed over. */
final class NominalSizes {

  private final Placeholders placeholders;

  NominalSizes(Placeholders placeholders) {
    this.placeholders = placeholders;
  }

  /** All that are given, properties first. */
  Stream<Integer> of(Draft draft) {
    Stream<Integer> byProperty =
        PropertyNames.of(draft.properties, PropertyNames.Role.NOMINAL)
            .filter(p -> !placeholders.contains(p))
            .flatMap(p -> millimetres(p).stream());
    Stream<Integer> byText =
        SizeTexts.of(draft).stream().flatMap(t -> Sizes.dn(t.value()).stream());
    return Stream.concat(byProperty, byText);
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
