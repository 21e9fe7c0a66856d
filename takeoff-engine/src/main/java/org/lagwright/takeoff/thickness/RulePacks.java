package org.lagwright.takeoff.thickness;

import java.util.ArrayList;
import java.util.List;

/** The energy rules that belong to the program. */
final class RulePacks {

  private static final List<String> PIPE_TABLES =
      List.of(
          "us-ashrae-90.1-pipe.yaml",
          "us-iecc-2021-pipe.yaml",
          "us-ca-title-24-2022-pipe.yaml",
          "ca-qc-e1.1-s109.yaml");

  private static final List<String> SITUATIONS =
      List.of(
          "de-geg-2020-annex-8.yaml",
          "de-geg-2024-annex-8.yaml",
          "de-din-1988-200.yaml",
          "en-12828-class-1.yaml",
          "en-12828-class-2.yaml",
          "en-12828-class-3.yaml",
          "en-12828-class-4.yaml",
          "en-12828-class-5.yaml",
          "en-12828-class-6.yaml",
          "fr-en-12828-rt-2012.yaml",
          "no-en-12828.yaml");

  /** Read once: they never change. */
  private static final List<EnergyRule> BUNDLED = read();

  private RulePacks() {}

  static List<EnergyRule> bundled() {
    return BUNDLED;
  }

  private static List<EnergyRule> read() {
    List<EnergyRule> rules = new ArrayList<>();
    PIPE_TABLES.forEach(file -> rules.add(PipeRulePack.bundled(file)));
    SITUATIONS.forEach(file -> rules.add(SituationRulePack.bundled(file)));
    return List.copyOf(rules);
  }
}
