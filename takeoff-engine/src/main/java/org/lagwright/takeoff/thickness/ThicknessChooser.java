package org.lagwright.takeoff.thickness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackInfo;

/**
 * Decides the thickness of insulation: all demands, the governing one, the stock layers that meet
 * it. Conditions that are equal are decided once. One chooser serves one run and one thread.
 */
public final class ThicknessChooser {

  /** Id that stands for no energy rule. */
  public static final String NO_ENERGY_RULE = "none";

  private static final String USER_RULE = "user-minimum";
  private static final String USER_SOURCE = "settings";

  private final MaterialPack materials;
  private final NominalPipeSizes sizes;
  private final List<EnergyRule> rules;
  private final List<PackInfo> ofUser;
  private final Map<Conditions, ThicknessDecision> decided = new HashMap<>();

  /** A chooser with the packs of the program and of the user. */
  public ThicknessChooser(ThicknessPacks packs) {
    this.materials = packs.materials();
    this.sizes = NominalPipeSizes.bundled();
    this.rules = packs.rules();
    this.ofUser = packs.ofUser();
  }

  /** A chooser with the packs that belong to the program. */
  public static ThicknessChooser bundled() {
    return new ThicknessChooser(ThicknessPacks.bundled());
  }

  /** The families of materials to choose from. */
  public MaterialPack materials() {
    return materials;
  }

  /**
   * The packs a run with this energy rule rests on, for the basis of the estimate.
   *
   * @throws PackException if no pack has the rule
   */
  public List<PackInfo> packsInUse(String energyRuleId) {
    List<PackInfo> packs = tables();
    findRule(energyRuleId).map(EnergyRule::info).ifPresent(packs::add);
    return List.copyOf(packs);
  }

  /** Every pack available. */
  public List<PackInfo> listPacks() {
    List<PackInfo> packs = tables();
    rules.forEach(rule -> packs.add(rule.info()));
    return List.copyOf(packs);
  }

  private List<PackInfo> tables() {
    List<PackInfo> packs = new ArrayList<>();
    packs.add(materials.info());
    packs.add(sizes.info());
    packs.add(SituationRulePack.BORES.info());
    packs.addAll(ofUser);
    return packs;
  }

  /**
   * Refuses ids that no pack has; for settings, before the first element.
   *
   * @throws PackException with one line for the user
   */
  public void requireKnown(String energyRuleId, Iterable<String> materialIds) {
    findRule(energyRuleId);
    materialIds.forEach(materials::family);
  }

  /**
   * Decides one set of conditions.
   *
   * <p>Demands that apply but are met without insulation stand in the list with thickness 0. The
   * governing demand is null where none needs insulation. A demand no thickness meets is infinite
   * and has no layers.
   *
   * @throws PackException if the material or the energy rule is in no pack
   */
  public ThicknessDecision decide(Conditions conditions) {
    return decided.computeIfAbsent(conditions, this::compute);
  }

  private ThicknessDecision compute(Conditions conditions) {
    MaterialFamily material = materials.family(conditions.materialId());
    List<Demand> demands = demands(conditions, material);
    Demand governing = governing(demands);
    double requiredM = governing == null ? 0 : governing.thicknessM();
    List<Layer> layers =
        StockBuildUp.choose(material, conditions.section(), conditions.duct(), requiredM);
    if (layers.isEmpty()) {
      return new ThicknessDecision(
          demands, governing, requiredM, layers, conditions.location(), null);
    }
    Surround surround = new Surround(conditions, material);
    double boughtM = layers.stream().mapToDouble(Layer::thicknessM).sum();
    List<Demand> proven = demands.stream().map(d -> AsBought.proven(d, surround, boughtM)).toList();
    return new ThicknessDecision(
        proven,
        governing(proven),
        requiredM,
        layers,
        conditions.location(),
        Proof.of(surround, boughtM));
  }

  /** How many different conditions were computed so far; equal ones are computed once. */
  int computed() {
    return decided.size();
  }

  private List<Demand> demands(Conditions conditions, MaterialFamily material) {
    List<Demand> demands = new ArrayList<>();
    Double condensationC = conditions.condensationC();
    if (condensationC != null && !conditions.exposure().isBuried()) {
      demands.add(CondensationDemand.of(conditions, condensationC, material));
    }
    findEnergyDemand(conditions, material).ifPresent(demands::add);
    demands.addAll(ProjectDemands.of(conditions, material));
    Double userMinimumM = conditions.userMinimumM();
    if (userMinimumM != null) {
      Map<String, String> figures =
          new Figures().millimetres("thickness needed", userMinimumM).toMap();
      demands.add(new Demand(Demand.Kind.USER, userMinimumM, USER_RULE, USER_SOURCE, figures));
    }
    return demands;
  }

  private Optional<Demand> findEnergyDemand(Conditions conditions, MaterialFamily material) {
    return findRule(conditions.energyRuleId())
        .flatMap(
            rule ->
                rule.findDemand(
                    new EnergyRule.Case(
                        conditions.section(),
                        conditions.duct(),
                        conditions.energyC(),
                        conditions.family(),
                        conditions.location(),
                        material)));
  }

  private Optional<EnergyRule> findRule(String ruleId) {
    if (ruleId.equals(NO_ENERGY_RULE)) {
      return Optional.empty();
    }
    for (EnergyRule rule : rules) {
      if (rule.id().equals(ruleId)) {
        return Optional.of(rule);
      }
    }
    throw new PackException(
        "unknown energy rule '"
            + ruleId
            + "'. Known: "
            + NO_ENERGY_RULE
            + ", "
            + String.join(", ", rules.stream().map(EnergyRule::id).toList())
            + ". Correct 'energyRule' in the settings.");
  }

  /** The largest demand above 0; of equal ones the first. */
  private static @Nullable Demand governing(List<Demand> demands) {
    Demand largest = null;
    for (Demand demand : demands) {
      if (demand.thicknessM() > (largest == null ? 0 : largest.thicknessM())) {
        largest = demand;
      }
    }
    return largest;
  }
}
