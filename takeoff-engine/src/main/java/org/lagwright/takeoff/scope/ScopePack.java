package org.lagwright.takeoff.scope;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.words.Token;

/**
 * The scope rules, in the order in which they are tried.
 *
 * @param statuses words of the property Status by the status they stand for; case and accents do
 *     not matter
 * @param statusProperties further properties that tell a status, lower case
 * @param phaseProperties properties that tell the phase in which something was made, lower case
 * @param demolitionPhases properties that tell the phase in which it goes, lower case
 * @param noPhase what stands in those where it stays
 * @param rules the last one applies always
 */
public record ScopePack(
    String id,
    String version,
    String source,
    String status,
    Map<String, List<String>> statuses,
    Set<String> statusProperties,
    Set<String> phaseProperties,
    Set<String> demolitionPhases,
    List<String> noPhase,
    List<Rule> rules) {

  /** Status, and id of the rule, of what is there already, whose question says so. */
  public static final String EXISTING = "existing";

  /** Status of what is to be demolished. */
  public static final String DEMOLISHED = "demolished";

  /** Status of what is there for a time only. */
  public static final String TEMPORARY = "temporary";

  public ScopePack {
    Map<String, List<String>> folded = new HashMap<>();
    statuses.forEach((key, words) -> folded.put(key, words.stream().map(Token::fold).toList()));
    statuses = Map.copyOf(folded);
    statusProperties = Set.copyOf(statusProperties);
    phaseProperties = Set.copyOf(phaseProperties);
    demolitionPhases = Set.copyOf(demolitionPhases);
    noPhase = noPhase.stream().map(Token::fold).toList();
    rules = List.copyOf(rules);
    if (rules.isEmpty() || !rules.get(rules.size() - 1).when().isAlways()) {
      throw new IllegalArgumentException("the last rule must apply always, with 'when: {}'.");
    }
  }

  /** The pack that belongs to the program. */
  public static ScopePack bundled() {
    return PackReader.readBundled(ScopePack.class, "scope.yaml", ScopePack.class);
  }

  /** Names the pack in the results. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  /** Which status a text of the property Status stands for; null if none of the pack. */
  public @Nullable String statusOf(@Nullable String text) {
    String word = text == null ? "" : Token.fold(text.strip());
    for (Map.Entry<String, List<String>> status : statuses.entrySet()) {
      if (status.getValue().contains(word)) {
        return status.getKey();
      }
    }
    return null;
  }

  /** True if a text names a phase, and not that there is none. */
  boolean isPhase(String text) {
    String word = Token.fold(text.strip());
    return !word.isEmpty() && !noPhase.contains(word);
  }

  /**
   * One rule.
   *
   * @param then in, out or ask
   * @param reason template with {class}, {service}, {rival}, {because}, {host}, {status}
   * @param finding code of the finding that asked elements carry; null for in and out
   */
  public record Rule(
      String id, When when, String then, String reason, @Nullable String finding, String source) {

    public Rule {
      if (then.equals("ask") == (finding == null)) {
        throw new IllegalArgumentException(id + ": 'ask' needs a finding, others have none.");
      }
      if (!List.of("in", "out", "ask").contains(then)) {
        throw new IllegalArgumentException(id + ": then '" + then + "' is none of in, out, ask.");
      }
    }

    /** The decision. */
    public Scope scope() {
      return Scope.valueOf(then.toUpperCase(Locale.ROOT));
    }
  }

  /**
   * Conditions that must all hold; what is not named holds always.
   *
   * @param kinds kinds of element by label
   * @param services service ids
   * @param serviceScopes in, out, ask or unknown
   * @param settingsScopes in or out, as the settings say for the service
   * @param rivalScopes in, out or ask, of the service that contradicts
   * @param locations location classes
   * @param statuses statuses by the names that the pack gives them
   */
  public record When(
      @Nullable List<String> kinds,
      @Nullable List<String> services,
      @Nullable List<String> serviceScopes,
      @Nullable List<String> settingsScopes,
      @Nullable List<String> rivalScopes,
      @Nullable List<String> locations,
      @Nullable List<String> statuses) {

    public When {
      List<String> known = List.of(Kind.values()).stream().map(Kind::label).toList();
      if (kinds != null && !known.containsAll(kinds)) {
        throw new IllegalArgumentException("kinds " + kinds + " are not all among " + known + ".");
      }
    }

    boolean isAlways() {
      return kinds == null
          && services == null
          && serviceScopes == null
          && settingsScopes == null
          && rivalScopes == null
          && locations == null
          && statuses == null;
    }

    boolean holds(ScopeFacts facts) {
      return holds(kinds, facts.kind().label())
          && holds(services, facts.serviceId())
          && holds(serviceScopes, facts.serviceScope())
          && holds(settingsScopes, facts.settingsScope())
          && holds(rivalScopes, facts.rivalScope())
          && holds(locations, facts.location())
          && holds(statuses, facts.status());
    }

    private static boolean holds(@Nullable List<String> allowed, @Nullable String value) {
      return allowed == null || (value != null && allowed.contains(value));
    }
  }
}
