package org.lagwright.ifc.extract.insulation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.StatedInsulation;
import org.lagwright.ifc.extract.property.MaterialLayers;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * Chooses what insulates an element of one file: coverings of this or other files, what was drawn
 * into its body, or what it states. All of them may show the same insulation, so they are compared
 * and never added. A lining lies inside and is kept apart.
 */
public final class InsulationChoice {

  private final CoveringFiles files;
  private final MaterialLayers layers;
  private final StatedInsulation stated;
  private final InsulationConflicts conflicts;

  /**
   * @param files of coverings
   * @param layers materials of the elements
   */
  public InsulationChoice(CoveringFiles files, MaterialLayers layers, double lengthUnitM) {
    this.files = files;
    this.layers = layers;
    this.stated = new StatedInsulation(layers, lengthUnitM);
    this.conflicts = new InsulationConflicts(lengthUnitM);
  }

  /**
   * What was chosen.
   *
   * @param outside insulation outside an element, null if the model shows none
   * @param inside lining inside a duct, null if the model shows none
   */
  public record Chosen(@Nullable ExistingInsulation outside, @Nullable ExistingInsulation inside) {}

  /** What reads insulation that is only stated. */
  public StatedInsulation stated() {
    return stated;
  }

  /** Chooses for an element, and notes on it what contradicts the choice. */
  public Chosen choose(Draft host, Collection<Draft> coverings) {
    List<Draft> around = new ArrayList<>();
    List<Draft> lining = new ArrayList<>();
    for (Draft covering : coverings) {
      (files.of(covering).isLining(covering, host) ? lining : around).add(covering);
    }
    Optional<ExistingInsulation> byCovering =
        areCoats(around, host) ? Optional.empty() : byCoverings(host, around);
    Optional<ExistingInsulation> byBody = Optional.ofNullable(host.drawnInsulation());
    Optional<ExistingInsulation> chosen = first(byCovering, first(byBody, stated.on(host)));
    if (byCovering.isPresent()) {
      if (around.size() > 1) {
        compareTwo(host, around, byCovering.get().thicknessM());
      }
      for (Draft covering : around) {
        compare(host, covering, around.size() == 1);
      }
    }
    conflicts.compare(host, chosen, List.of(byBody, layers.insulationOn(host.step())));
    Optional<ExistingInsulation> lined = first(byCoverings(host, lining), stated.in(host));
    return new Chosen(chosen.orElse(null), lined.orElse(null));
  }

  private static Optional<ExistingInsulation> first(
      Optional<ExistingInsulation> one, Optional<ExistingInsulation> other) {
    return one.isPresent() ? one : other;
  }

  private Layers.Covering layer(Draft covering, Draft host) {
    return files.of(covering).on(covering, host);
  }

  /** True if there is nothing but paint, foil and the like. */
  private boolean areCoats(List<Draft> coverings, Draft host) {
    for (Draft covering : coverings) {
      Layers.Covering layer = layer(covering, host);
      boolean thin =
          layer.isThinAround(Coverings.sectionOf(host))
              || (layer.isOfUnknownThickness() && Layers.isCalledCoat(covering.names()));
      if (!thin) {
        return false;
      }
    }
    return true;
  }

  private Optional<ExistingInsulation> byCoverings(Draft host, List<Draft> coverings) {
    if (coverings.isEmpty()) {
      return Optional.empty();
    }
    List<Layers.Stack> stacks = stacks(layers(coverings, host), host);
    Draft first = coverings.get(0);
    Coverings file = files.of(first);
    conflicts.noteStacks(host, named(first, host), stacks);
    double share = 0;
    for (Layers.Stack stack : stacks) {
      share += stack.share();
    }
    return Optional.of(
        new ExistingInsulation(
            stacks.get(0).thicknessM().orElse(null),
            materialOf(coverings),
            Math.min(1, share),
            file.evidence(first, host),
            coverings.stream().map(c -> c.key()).toList()));
  }

  /**
   * One covering beside others.
   *
   * @param drawn true if it has a body
   */
  private record Compared(Draft draft, Layers.Covering layer, boolean drawn) {

    private boolean isOfFileOf(Compared other) {
      return draft.key().model() == other.draft.key().model();
    }

    /** True for two of which one has no body, unless one file has both so: those are layers. */
    boolean mayBeSame(Compared other) {
      return drawn != other.drawn || (!drawn && !isOfFileOf(other));
    }

    /** Full bodies lie in one another as layers do, but those of two files rather repeat it. */
    boolean isFullOfAnotherFile(Compared other) {
      return !isOfFileOf(other)
          && layer.wallM() == null
          && other.layer.wallM() == null
          && layer.extent().overlaps(other.layer.extent());
    }
  }

  /**
   * Two that cannot be layers around each other, or of which nothing tells whether they are; one
   * pair tells it.
   */
  private void compareTwo(Draft host, List<Draft> coverings, @Nullable Double takenM) {
    List<Compared> compared = new ArrayList<>();
    for (Draft covering : coverings) {
      boolean drawn = files.of(covering).isDrawn(covering);
      Compared next = new Compared(covering, layer(covering, host), drawn);
      for (Compared other : compared) {
        if (Layers.areAtSamePlace(other.layer, next.layer)) {
          conflicts.noteSamePlace(
              host, other.layer, named(other.draft, host), next.layer, named(covering, host));
          return;
        }
        boolean same = other.mayBeSame(next) || other.isFullOfAnotherFile(next);
        Double otherM = same ? toldM(other.layer, host) : null;
        Double nextM = otherM == null ? null : toldM(next.layer, host);
        if (otherM != null && nextM != null && Thicknesses.differ(otherM, nextM)) {
          conflicts.noteUnclear(
              host, takenM, otherM, named(other.draft, host), nextM, named(covering, host));
          return;
        }
      }
      compared.add(next);
    }
  }

  /** What a layer states or its walls tell, or how far its full body reaches from the element. */
  private static @Nullable Double toldM(Layers.Covering layer, Draft host) {
    Section bare = Coverings.sectionOf(host);
    Section outer = layer.outer();
    return layer.ownM() == null && outer != null && bare != null
        ? Thicknesses.between(bare, outer).orElse(null)
        : layer.ownM();
  }

  private String named(Draft covering, Draft host) {
    return files.of(covering).named(covering, host);
  }

  private static List<Layers.Stack> stacks(List<Layers.Covering> layers, Draft host) {
    return Layers.stacks(layers, Coverings.sectionOf(host), Coverings.endsOf(host));
  }

  /**
   * @param alone false where other coverings may lie between a full body and the element
   */
  private void compare(Draft host, Draft covering, boolean alone) {
    Layers.Covering layer = layer(covering, host);
    List<Section> bare = new ArrayList<>(Coverings.endsOf(host));
    if (host.section() != null) {
      bare.add(host.section().value());
    }
    boolean told = alone || layer.wallM() != null;
    Optional<Double> drawnM =
        told ? stacks(List.of(layer), host).get(0).drawnM() : Optional.empty();
    files.of(covering).contradictions().compare(host, covering, layer, drawnM.orElse(null), bare);
  }

  private List<Layers.Covering> layers(List<Draft> coverings, Draft host) {
    List<Layers.Covering> drawn = new ArrayList<>();
    List<Undrawn> undrawn = new ArrayList<>();
    // one that another file holds too is no layer
    Set<Integer> filesOfUndrawn = new HashSet<>();
    for (Draft covering : coverings) {
      Coverings file = files.of(covering);
      Layers.Covering layer = file.on(covering, host);
      if (file.isDrawn(covering)) {
        drawn.add(layer);
      } else {
        Double lengthM = coverings.size() == 1 ? null : file.statedLengthM(covering);
        undrawn.add(new Undrawn(layer, covering.names(), lengthM));
        filesOfUndrawn.add(covering.key().model());
      }
    }
    Measured<Double> length = host.lengthM();
    List<Layers.Covering> arranged =
        Undrawn.arranged(undrawn, length == null ? null : length.value());
    if (arranged.size() < undrawn.size() && undrawn.size() > filesOfUndrawn.size()) {
      conflicts.noteAlike(host, undrawn);
    }
    drawn.addAll(arranged);
    return drawn;
  }

  private @Nullable String materialOf(List<Draft> coverings) {
    for (Draft covering : coverings) {
      String material = files.of(covering).materialOf(covering);
      if (material != null) {
        return material;
      }
    }
    return null;
  }
}
