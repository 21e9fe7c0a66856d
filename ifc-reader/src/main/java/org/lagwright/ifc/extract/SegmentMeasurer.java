package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Size and length of straight pipes and ducts: collects what geometry, ports, properties,
 * quantities and texts say, chooses, and notes where they differ.
 */
final class SegmentMeasurer {

  private final Placeholders placeholders;
  private final double lengthUnitM;

  SegmentMeasurer(Placeholders placeholders, double lengthUnitM) {
    this.placeholders = placeholders;
    this.lengthUnitM = lengthUnitM;
  }

  void measure(Draft draft) {
    section(draft);
    nominal(draft);
    length(draft);
    note(draft);
  }

  /** A general segment that nothing named is told apart by its shape. */
  void settleKind(Draft draft) {
    if (draft.kind == null) {
      Measured<Section> section = draft.section != null ? draft.section : draft.shape.section();
      boolean round = section == null || section.value() instanceof Section.Round;
      draft.kind = KindReader.byShape(draft.generalSegment, round);
      draft.note(
          ReadFinding.KIND_ASSUMED,
          Effect.ASSUMED,
          KindReader.inWords(draft.kind),
          section == null
              ? "no shape could be measured"
              : "its section is " + (round ? "round" : "not round"));
    }
  }

  private void section(Draft draft) {
    Options<Section> options = new Options<>(Sizes::sameSection);
    Optional<Property> tabulated = tabulatedDiameter(draft);
    tabulated.ifPresent(p -> addRound(options, p));
    options.addAll(draft.shape.section());
    if (tabulated.isEmpty()) {
      outsideDiameter(draft, options);
    }
    sides(draft, options);
    diameter(draft, options);
    texts(draft, options);
    draft.section = Sizes.withoutNoise(options.choose());
  }

  /**
   * Some exporters draw the nominal size. An outside diameter in the properties that is in a pipe
   * table is trusted more than a drawn one that is in none.
   */
  private Optional<Property> tabulatedDiameter(Draft draft) {
    Measured<Section> drawn = draft.shape.section();
    if (draft.kind == Kind.DUCT_SEGMENT
        || drawn == null
        || !(drawn.value() instanceof Section.Round round)
        || PipeSizes.isOutsideDiameter(round.outsideDiameterM())) {
      return Optional.empty();
    }
    return PropertyNames.of(draft.properties, PropertyNames.Role.OUTSIDE_DIAMETER)
        .filter(p -> !placeholders.contains(p))
        .filter(p -> lengthM(p).map(PipeSizes::isOutsideDiameter).orElse(false))
        .findFirst();
  }

  private Optional<Double> lengthM(Property property) {
    return PropertyNames.lengthM(property, lengthUnitM);
  }

  private void addRound(Options<Section> options, Property p) {
    Optional<Double> diameterM = lengthM(p);
    if (diameterM.isEmpty()) {
      return;
    }
    Section section = new Section.Round(diameterM.get());
    if (placeholders.contains(p)) {
      options.rule(section, How.PROPERTY, p.evidence(), "placeholder");
    } else {
      options.add(section, p.quantity() ? How.QUANTITY_SET : How.PROPERTY, p.evidence());
    }
  }

  private void outsideDiameter(Draft draft, Options<Section> options) {
    PropertyNames.of(draft.properties, PropertyNames.Role.OUTSIDE_DIAMETER)
        .forEach(p -> addRound(options, p));
  }

  /** Width and height; equal ones on a pipe are a diameter written twice. */
  private void sides(Draft draft, Options<Section> options) {
    Optional<Property> width = first(draft, PropertyNames.Role.WIDTH);
    Optional<Property> height = first(draft, PropertyNames.Role.HEIGHT);
    if (width.isEmpty() || height.isEmpty()) {
      return;
    }
    double widthM = lengthM(width.get()).orElse(0.0);
    double heightM = lengthM(height.get()).orElse(0.0);
    boolean roundPipe = draft.kind != Kind.DUCT_SEGMENT && Sizes.sameLength(widthM, heightM);
    boolean drawnRound =
        draft.shape.section() != null && draft.shape.section().value() instanceof Section.Round;
    if (roundPipe || drawnRound) {
      addRound(options, width.get());
    } else {
      Evidence evidence =
          new Evidence(
              width.get().step(),
              width.get().set() + "." + width.get().name() + ", " + height.get().name(),
              width.get().text() + ", " + height.get().text());
      options.add(new Section.Rectangular(widthM, heightM), How.PROPERTY, evidence);
    }
  }

  private Optional<Property> first(Draft draft, PropertyNames.Role role) {
    return PropertyNames.of(draft.properties, role)
        .filter(p -> !placeholders.contains(p))
        .filter(p -> lengthM(p).isPresent())
        .findFirst();
  }

  /** A plain diameter, which for pipes may be any of three: used only where nothing better is. */
  private void diameter(Draft draft, Options<Section> options) {
    boolean hasSides =
        first(draft, PropertyNames.Role.WIDTH).isPresent()
            && first(draft, PropertyNames.Role.HEIGHT).isPresent();
    if (!hasSides) {
      PropertyNames.of(draft.properties, PropertyNames.Role.DIAMETER)
          .forEach(p -> addRound(options, p));
    }
  }

  private static void texts(Draft draft, Options<Section> options) {
    for (String text : draft.names.all()) {
      Evidence evidence = new Evidence(draft.key.step(), "name", text);
      if (draft.kind == Kind.DUCT_SEGMENT) {
        Sizes.sides(text).ifPresent(s -> options.add(s, How.TEXT, evidence));
        Sizes.diameter(text).ifPresent(s -> options.add(s, How.TEXT, evidence));
      }
    }
  }

  /** The nominal size as the model gives it, and the outside diameter by table if none is known. */
  private void nominal(Draft draft) {
    if (draft.kind == Kind.DUCT_SEGMENT) {
      return;
    }
    Optional<Integer> dn = nominalDiameter(draft);
    if (dn.isEmpty()) {
      return;
    }
    draft.nominalSize = "DN" + dn.get();
    if (draft.section == null) {
      draft.section = byTable(draft, dn.get());
    }
  }

  private Optional<Integer> nominalDiameter(Draft draft) {
    Optional<Integer> byProperty =
        PropertyNames.of(draft.properties, PropertyNames.Role.NOMINAL)
            .filter(p -> !placeholders.contains(p))
            .flatMap(p -> nominalMm(p).stream())
            .filter(dn -> fits(draft, dn))
            .findFirst();
    return byProperty.isPresent()
        ? byProperty
        : draft.names.all().stream()
            .flatMap(t -> Sizes.dn(t).stream())
            .filter(dn -> fits(draft, dn))
            .findFirst();
  }

  /** Nominal sizes are millimetres even where they are written as bare numbers. */
  private Optional<Integer> nominalMm(Property p) {
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

  private static boolean fits(Draft draft, int dn) {
    Measured<Section> section = draft.section;
    return section == null
        || (section.value() instanceof Section.Round r
            && PipeSizes.mayBe(dn, r.outsideDiameterM()));
  }

  private static @Nullable Measured<Section> byTable(Draft draft, int dn) {
    Optional<PipeSizes.Size> size = PipeSizes.forNominal(dn);
    if (size.isEmpty()) {
      return null;
    }
    Section section = new Section.Round(size.get().outsideDiameterM());
    draft.note(
        ReadFinding.SIZE_FROM_NOMINAL,
        Effect.ESTIMATED,
        "DN" + dn,
        Sizes.inWords(section).replace(" mm", ""),
        size.get().series());
    return Measured.of(
        section, How.TEXT, new Evidence(draft.key.step(), "nominal size by table", "DN" + dn));
  }

  private void length(Draft draft) {
    Options<Double> options = new Options<>(Sizes::sameLength);
    Measured<Double> drawn = draft.shape.lengthM();
    boolean solidFirst = drawn != null && drawn.how() == How.SOLID;
    if (solidFirst) {
      options.addAll(drawn);
    }
    portDistance(draft, options);
    if (!solidFirst) {
      options.addAll(drawn);
    }
    PropertyNames.of(draft.properties, PropertyNames.Role.LENGTH)
        .forEach(p -> addLength(options, p));
    draft.lengthM = options.choose();
  }

  private static void portDistance(Draft draft, Options<Double> options) {
    List<Port> placed = draft.ports.stream().filter(p -> p.positionM() != null).toList();
    double farthestM = 0;
    for (Port a : placed) {
      for (Port b : placed) {
        if (a.positionM() != null && b.positionM() != null) {
          farthestM = Math.max(farthestM, a.positionM().distanceM(b.positionM()));
        }
      }
    }
    if (farthestM > 0) {
      options.add(
          farthestM,
          How.PORTS,
          new Evidence(placed.get(0).step(), "distance of ports", Sizes.metres(farthestM) + " m"));
    }
  }

  private void addLength(Options<Double> options, Property p) {
    Optional<Double> length = lengthM(p);
    if (length.isEmpty()) {
      return;
    }
    How how = p.quantity() ? How.QUANTITY_SET : How.PROPERTY;
    if (placeholders.contains(p)) {
      options.rule(length.get(), how, p.evidence(), "placeholder");
    } else {
      options.add(length.get(), how, p.evidence());
    }
  }

  private static void note(Draft draft) {
    Optional<Candidate<Section>> otherSize = Options.firstConflict(draft.section);
    if (otherSize.isPresent() && draft.section != null) {
      draft.note(
          ReadFinding.SECTION_CONFLICT,
          Effect.NONE,
          Sizes.inWords(draft.section.value()),
          draft.section.evidence().toString(),
          Sizes.inWords(otherSize.get().value()),
          otherSize.get().evidence().toString());
    }
    Optional<Candidate<Double>> otherLength = Options.firstConflict(draft.lengthM);
    if (otherLength.isPresent() && draft.lengthM != null) {
      draft.note(
          ReadFinding.LENGTH_CONFLICT,
          Effect.NONE,
          Sizes.metres(draft.lengthM.value()),
          draft.lengthM.evidence().toString(),
          Sizes.metres(otherLength.get().value()),
          otherLength.get().evidence().toString());
    }
    noteWeakSources(draft);
  }

  /** One finding for size and length, where neither rests on a body that could be measured. */
  private static void noteWeakSources(Draft draft) {
    List<String> weak = new ArrayList<>();
    weakSource(draft.section).ifPresent(from -> weak.add("the size comes from " + from));
    weakSource(draft.lengthM).ifPresent(from -> weak.add("the length comes from " + from));
    if (!weak.isEmpty()) {
      draft.note(
          ReadFinding.NO_GEOMETRY,
          Effect.ESTIMATED,
          String.join("; ", draft.shape.problems()),
          String.join(", ", weak));
    }
  }

  private static <T> Optional<String> weakSource(@Nullable Measured<T> measured) {
    if (measured == null || measured.lost().stream().anyMatch(c -> isDrawn(c.how()))) {
      return Optional.empty();
    }
    return switch (measured.how()) {
      case PROPERTY, QUANTITY_SET, TEXT -> Optional.of(measured.evidence().toString());
      default -> Optional.empty();
    };
  }

  private static boolean isDrawn(How how) {
    return how == How.SOLID || how == How.MESH;
  }
}
