package org.lagwright.takeoff.fitting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * Which way of making suits what, and the limits that the rules use.
 *
 * @param limits dimensions by name, millimetres where the name ends in Mm, degC where it ends in C,
 *     else plain factors
 * @param assumes what a method takes for granted that no model tells, by its label: a template with
 *     names of limits in braces
 * @param bonding rules for the adhesive, the first whose facts all hold decides
 * @param rules rules for the method, the first whose facts all hold decides; the last one holds
 *     always
 */
public record MakingPack(
    String id,
    String version,
    String source,
    String status,
    Map<String, Limit> limits,
    Map<String, String> assumes,
    List<BondingRule> bonding,
    List<Rule> rules) {

  public MakingPack {
    limits = Map.copyOf(limits);
    assumes = Map.copyOf(assumes);
    assumes.keySet().forEach(Method::of);
    bonding = List.copyOf(bonding);
    rules = List.copyOf(rules);
    if (rules.isEmpty() || !rules.get(rules.size() - 1).when().isEmpty()) {
      throw new IllegalArgumentException("the last rule must hold always, with 'when: []'.");
    }
    if (bonding.isEmpty() || !bonding.get(bonding.size() - 1).when().isEmpty()) {
      throw new IllegalArgumentException("the last bonding rule must hold always.");
    }
  }

  /**
   * A default that users may change.
   *
   * @param what it means, in words
   */
  public record Limit(double value, String what, SourceStatus status) {
    public Limit {
      if (!(value > 0 && Double.isFinite(value))) {
        throw new IllegalArgumentException("a limit must be above 0, was " + value + ".");
      }
    }
  }

  /**
   * Chooses a method.
   *
   * @param when facts that must all hold, see {@link Facts}
   * @param method label of a {@link Method}
   * @param reason template with names of figures in braces
   */
  public record Rule(String id, List<String> when, String method, String reason, String source) {
    public Rule {
      when = List.copyOf(when);
      Facts.requireKnown(id, when);
      Method.of(method);
    }
  }

  /** Chooses where the adhesive goes. */
  public record BondingRule(String id, List<String> when, Making.Bonding bond, String source) {
    public BondingRule {
      when = List.copyOf(when);
      Facts.requireKnown(id, when);
    }
  }

  /** The pack that belongs to the program. */
  public static MakingPack bundled() {
    return PackReader.readBundled(MakingPack.class, "making.yaml", MakingPack.class);
  }

  /** Names the pack in the results. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  /** The limits by name. */
  public Map<String, Double> limitValues() {
    Map<String, Double> values = new LinkedHashMap<>();
    limits.forEach((name, limit) -> values.put(name, limit.value()));
    return values;
  }

  Rule rule(Set<String> facts) {
    return rules.stream().filter(rule -> facts.containsAll(rule.when())).findFirst().orElseThrow();
  }

  BondingRule bondingRule(Set<String> facts) {
    return bonding.stream()
        .filter(rule -> facts.containsAll(rule.when()))
        .findFirst()
        .orElseThrow();
  }
}
