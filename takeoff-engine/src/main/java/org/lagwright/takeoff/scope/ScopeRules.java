package org.lagwright.takeoff.scope;

/** Decides by the first rule that holds. */
public final class ScopeRules {

  private final ScopePack pack;

  public ScopeRules(ScopePack pack) {
    this.pack = pack;
  }

  /** The rule that decides, with its finding and source. */
  public ScopePack.Rule rule(ScopeFacts facts) {
    return pack.rules().stream().filter(r -> r.when().holds(facts)).findFirst().orElseThrow();
  }

  /** The decision of a rule, its reason filled in. */
  public ScopeDecision decision(ScopePack.Rule rule, ScopeFacts facts) {
    String reason =
        rule.reason()
            .replace("{class}", facts.ifcClass())
            .replace("{service}", facts.serviceName())
            .replace("{rival}", String.valueOf(facts.rivalName()))
            .replace("{because}", facts.because())
            .replace("{host}", facts.host())
            .replace("{status}", String.valueOf(facts.statusText()));
    return new ScopeDecision(rule.scope(), reason, rule.id());
  }
}
