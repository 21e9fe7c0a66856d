package org.lagwright.takeoff.scope;

/**
 * The decision with its reason.
 *
 * @param reason for the user, one short sentence
 * @param rule id of the rule that decided
 */
public record ScopeDecision(Scope scope, String reason, String rule) {}
