package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
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
  private final NominalSizes nominals;
  private final SegmentSections sections;
  private final double lengthUnitM;

  SegmentMeasurer(Placeholders placeholders, SegmentSections sections, double lengthUnitM) {
    this.placeholders = placeholders;
    this.nominals = new NominalSizes(placeholders);
    this.sections = sections;
    this.lengthUnitM = lengthUnitM;
  }

  void measure(Draft draft) {
    draft.section = sections.choose(draft);
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

  private Optional<Double> lengthM(Property property) {
    return PropertyNames.lengthM(property, lengthUnitM);
  }

  /** The nominal size as the model gives it, and the outside diameter by table if none is known. */
  private void nominal(Draft draft) {
    if (draft.kind == Kind.DUCT_SEGMENT) {
      return;
    }
    for (int dn : nominals.of(draft)) {
      if (fits(draft, dn)) {
        draft.nominalSize = NominalSizes.named(dn);
        draft.section = draft.section == null ? byTable(draft, dn) : draft.section;
        return;
      }
    }
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
    for (Property p : PropertyNames.listOf(draft.properties, PropertyNames.Role.LENGTH)) {
      addLength(options, p, draft);
    }
    draft.lengthM = options.choose();
  }

  private static void portDistance(Draft draft, Options<Double> options) {
    Port first = null;
    double farthestM = 0;
    for (Port a : draft.ports) {
      Point atM = a.positionM();
      first = first == null && atM != null ? a : first;
      for (Port b : draft.ports) {
        if (atM != null && b.positionM() != null) {
          farthestM = Math.max(farthestM, atM.distanceM(b.positionM()));
        }
      }
    }
    if (first != null && farthestM > 0) {
      options.add(
          farthestM,
          How.PORTS,
          new Evidence(first.step(), "distance of ports", Sizes.metres(farthestM) + " m"));
    }
  }

  private void addLength(Options<Double> options, Property p, Draft draft) {
    Optional<Double> length = lengthM(p);
    if (length.isEmpty()) {
      return;
    }
    How how = p.quantity() ? How.QUANTITY_SET : How.PROPERTY;
    if (placeholders.contains(p)) {
      options.rule(length.get(), how, p.evidence(), "placeholder");
    } else if (isSideOfSection(draft, length.get())) {
      options.rule(length.get(), how, p.evidence(), "equals a side of the section");
    } else {
      options.add(length.get(), how, p.evidence());
    }
  }

  /** Some exporters write a side of a duct as its length; only a drawn length can tell. */
  private static boolean isSideOfSection(Draft draft, double lengthM) {
    Measured<Double> drawn = draft.shape.lengthM();
    Measured<Section> section = draft.section;
    if (drawn == null || section == null || Sizes.sameLength(drawn.value(), lengthM)) {
      return false;
    }
    return section.value() instanceof Section.Rectangular r
        ? Sizes.sameLength(r.widthM(), lengthM) || Sizes.sameLength(r.heightM(), lengthM)
        : Sizes.sameLength(section.value().largestSideM(), lengthM);
  }

  /** A piece of which nothing gives the size has that of its neighbours, if they agree. */
  void takeOver(Draft draft, Neighbours neighbours) {
    if (draft.section != null) {
      return;
    }
    List<Neighbours.Found> met =
        neighbours.jointsOf(draft).stream()
            .map(Neighbours.Joint::met)
            .filter(Objects::nonNull)
            .toList();
    if (!met.isEmpty()
        && met.stream().allMatch(n -> Sizes.sameSection(n.section(), met.get(0).section()))) {
      draft.section =
          Measured.of(
              Sizes.withoutNoise(met.get(0).section()), How.NEIGHBOUR, met.get(0).evidence());
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
