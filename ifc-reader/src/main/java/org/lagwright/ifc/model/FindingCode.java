package org.lagwright.ifc.model;

/**
 * A stable code of something noticed. Codes are enum constants; reader and engine have one
 * catalogue each.
 */
public interface FindingCode {

  /** Stable identifier, never renamed once released. */
  String name();

  /** How much it weighs by default. */
  Severity severity();

  /**
   * What the user reads, with {@code {0}}, {@code {1}} for the finding's values; ends in advice.
   */
  String template();

  /** Weight of a finding, used by {@code --fail-on}. */
  enum Severity {
    INFO,
    WARNING,
    ERROR
  }
}
