package org.lagwright.takeoff.thickness;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.material.Catalogue;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/**
 * Materials and energy rules to choose from: those of the program, and over them those of the user.
 */
public final class ThicknessPacks {

  private final MaterialPack materials;
  private final List<EnergyRule> rules;
  private final List<PackInfo> ofUser;

  private ThicknessPacks(MaterialPack materials, List<EnergyRule> rules, List<PackInfo> ofUser) {
    this.materials = materials;
    this.rules = List.copyOf(rules);
    this.ofUser = List.copyOf(ofUser);
  }

  /** The packs that belong to the program. */
  public static ThicknessPacks bundled() {
    return new ThicknessPacks(MaterialPack.bundled(), RulePacks.bundled(), List.of());
  }

  /**
   * The same with a pack of the user: a rule by temperature ({@code ranges}), a rule by situation
   * ({@code rows}), or materials ({@code families}). What has the id of a known rule or family
   * replaces it.
   *
   * @throws PackException if the file is missing, wrong, or an example in it does not hold
   */
  public ThicknessPacks with(Path file) {
    Map<?, ?> keys = PackReader.readFile(file, Map.class);
    if (keys.containsKey("families")) {
      MaterialPack users = PackReader.readFile(file, MaterialPack.class);
      return new ThicknessPacks(materials.with(users.families()), rules, plus(users.info()));
    } else if (keys.containsKey("ranges")) {
      PipeRulePack rule = PackReader.readFile(file, PipeRulePack.class);
      rule.examples().stream().filter(e -> !rule.holds(e)).forEach(e -> refuse(file, e));
      return withRule(rule);
    } else if (keys.containsKey("rows")) {
      SituationRulePack rule = PackReader.readFile(file, SituationRulePack.class);
      rule.examples().stream().filter(e -> !rule.holds(e)).forEach(e -> refuse(file, e));
      return withRule(rule);
    }
    throw new PackException(
        file
            + ":1:1: neither 'families', 'ranges' nor 'rows' stands here, so this is no pack of"
            + " materials or energy rules. Add what it is to hold.");
  }

  /**
   * The same with stock out of a table of the user.
   *
   * @throws PackException if a cell is wrong
   */
  public ThicknessPacks withCatalogue(DataTable table) {
    PackInfo info =
        new PackInfo("catalogue", "as given", table.name(), "given by the user, not checked");
    return new ThicknessPacks(Catalogue.over(materials, table), rules, plus(info));
  }

  /** The families of insulation, those of the user over those of the program. */
  public MaterialPack materials() {
    return materials;
  }

  List<EnergyRule> rules() {
    return rules;
  }

  /** Packs of the user other than rules. */
  List<PackInfo> ofUser() {
    return ofUser;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ThicknessPacks packs
        && packs.materials.equals(materials)
        && packs.rules.equals(rules)
        && packs.ofUser.equals(ofUser);
  }

  @Override
  public int hashCode() {
    return Objects.hash(materials, rules, ofUser);
  }

  private ThicknessPacks withRule(EnergyRule rule) {
    List<EnergyRule> all = new ArrayList<>(rules);
    all.removeIf(known -> known.id().equals(rule.id()));
    all.add(rule);
    return new ThicknessPacks(materials, all, ofUser);
  }

  private List<PackInfo> plus(PackInfo info) {
    List<PackInfo> all = new ArrayList<>(ofUser);
    all.add(info);
    return all;
  }

  private static void refuse(Path file, Object example) {
    throw new PackException(
        file + ": the example " + example + " does not hold. Correct the example or its row.");
  }
}
