package org.lagwright.takeoff.thickness;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.pack.PackInfo;

/** An energy rule of a pack. */
sealed interface EnergyRule permits PipeRulePack, SituationRulePack {

  String id();

  /** How the results name the pack. */
  PackInfo info();

  /** What the rule asks for; empty where it says nothing about such a case. */
  Optional<Demand> findDemand(Case one);

  /**
   * What a rule is asked about.
   *
   * @param section bare outer section
   * @param duct true for ducts
   * @param fluidC temperature of the medium, degC; null where none is known
   * @param family family of the service: {@code chilled}; empty where it has none
   * @param location location class: {@code indoor}
   */
  record Case(
      Section section,
      boolean duct,
      @Nullable Double fluidC,
      String family,
      String location,
      MaterialFamily material) {}
}
