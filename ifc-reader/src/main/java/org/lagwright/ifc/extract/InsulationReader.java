package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Insulation that the model already shows: coverings related to or aggregated under an element, or
 * a thickness among its properties. A thickness of zero, and absence, mean nothing either way; a
 * lining lies inside.
 */
final class InsulationReader {

  /** No pipe or duct of a building is insulated thicker. Common practice, no source. */
  private static final double IMPOSSIBLE_M = 0.5;

  /** Nor thinner: public files write 1 of whatever unit for none. */
  private static final double THINNEST_M = 0.002;

  private static final double SAME_M = 0.0005;

  private final Relations relations;
  private final double lengthUnitM;
  private final Map<ElementKey, Draft> drafts;
  private final BelongingReader belongings;
  private final Set<ElementKey> hosted = new LinkedHashSet<>();
  private final Map<ElementKey, ExistingInsulation> found = new HashMap<>();

  InsulationReader(
      Relations relations,
      BelongingReader belongings,
      Map<ElementKey, Draft> drafts,
      double lengthUnitM) {
    this.relations = relations;
    this.belongings = belongings;
    this.drafts = drafts;
    this.lengthUnitM = lengthUnitM;
    for (Draft draft : drafts.values()) {
      Optional<ExistingInsulation> existing = byCovering(draft).or(() -> byProperty(draft));
      existing.ifPresent(e -> found.put(draft.key, e));
    }
  }

  @Nullable ExistingInsulation of(ElementKey element) {
    return found.get(element);
  }

  /** True if some element is named as what this covering covers. */
  boolean hasHost(ElementKey covering) {
    return hosted.contains(covering);
  }

  private Optional<ExistingInsulation> byCovering(Draft draft) {
    Set<Long> ids = new LinkedHashSet<>(relations.coveringsOf(draft.key.step()));
    ids.addAll(relations.partsOf(draft.key.step()));
    List<Draft> coverings = new ArrayList<>();
    for (long id : ids) {
      Draft covering = drafts.get(new ElementKey(draft.key.model(), id));
      if (covering != null && covering.kind == Kind.COVERING) {
        hosted.add(covering.key);
        if (covering.names.all().stream().noneMatch(Words::isLining)) {
          coverings.add(covering);
        }
      }
    }
    return coverings.isEmpty() ? Optional.empty() : Optional.of(sum(coverings));
  }

  /** Layers add up; one of unknown thickness makes the sum unknown. */
  private ExistingInsulation sum(List<Draft> coverings) {
    Double totalM = 0.0;
    String material = null;
    for (Draft covering : coverings) {
      Optional<Double> thicknessM = thickness(covering, PropertyNames.Role.COVERING_THICKNESS);
      totalM = totalM == null || thicknessM.isEmpty() ? null : totalM + thicknessM.get();
      if (material == null) {
        material = belongings.materialsOf(covering.key.step()).stream().findFirst().orElse(null);
      }
    }
    Draft first = coverings.get(0);
    return new ExistingInsulation(
        totalM,
        material,
        new Evidence(first.key.step(), first.ifcClass, first.names.own()),
        coverings.stream().map(c -> c.key).toList());
  }

  private Optional<Double> thickness(Draft draft, PropertyNames.Role role) {
    return PropertyNames.of(draft.properties, role)
        .flatMap(p -> PropertyNames.lengthM(p, lengthUnitM).stream())
        .filter(InsulationReader::isPossible)
        .findFirst();
  }

  /**
   * The first thickness that insulation can have. Sets of one element contradict each other in
   * public files, and figures that stand for nothing (0, 1 m) are among them.
   */
  private Optional<ExistingInsulation> byProperty(Draft draft) {
    List<Property> stated =
        PropertyNames.of(draft.properties, PropertyNames.Role.INSULATION_THICKNESS)
            .filter(p -> PropertyNames.lengthM(p, lengthUnitM).isPresent())
            .toList();
    Optional<Property> chosen = stated.stream().filter(p -> isPossible(thicknessM(p))).findFirst();
    double chosenM = chosen.map(this::thicknessM).orElse(0.0);
    if (stated.stream().anyMatch(p -> Math.abs(thicknessM(p) - chosenM) > SAME_M)) {
      draft.note(
          ReadFinding.INSULATION_CONFLICT,
          Effect.NONE,
          chosen.map(p -> p.evidence().toString()).orElse("none"),
          stated.stream()
              .filter(p -> chosen.isEmpty() || !p.equals(chosen.get()))
              .map(p -> p.evidence().toString())
              .collect(Collectors.joining(", ")));
    }
    return chosen.map(p -> existing(draft, p));
  }

  private ExistingInsulation existing(Draft draft, Property thickness) {
    return new ExistingInsulation(
        thicknessM(thickness),
        PropertyNames.of(draft.properties, PropertyNames.Role.INSULATION_MATERIAL)
            .map(Property::text)
            .filter(t -> !t.isBlank())
            .findFirst()
            .orElse(null),
        thickness.evidence(),
        List.of());
  }

  private double thicknessM(Property property) {
    return PropertyNames.lengthM(property, lengthUnitM).orElse(0.0);
  }

  private static boolean isPossible(double thicknessM) {
    return thicknessM >= THINNEST_M && thicknessM < IMPOSSIBLE_M;
  }
}
