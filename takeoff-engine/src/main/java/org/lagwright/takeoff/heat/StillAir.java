package org.lagwright.takeoff.heat;

import java.util.Locale;

/**
 * Which coefficients hold in still air.
 *
 * @param source whose formulas
 * @param upright true along risers, false for level pipes; sides of ducts are upright anyway
 */
public record StillAir(Source source, boolean upright) {

  /** Level pipes after ISO 12241. */
  public static final StillAir LEVEL = new StillAir(Source.ISO_12241, false);

  /** Height at which a riser counts as turbulent whatever the temperatures: a storey, metres. */
  private static final double RISER_HEIGHT_M = 3;

  /** Whose formulas. */
  public enum Source {
    ISO_12241,
    CHURCHILL_CHU;

    /** The name used in settings: {@code iso-12241}. */
    public String label() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** The exchange with the air. */
  public Convection convection() {
    if (source == Source.CHURCHILL_CHU) {
      return upright
          ? Convection.churchillChuAlongRiser(RISER_HEIGHT_M)
          : Convection.churchillChu();
    }
    return upright ? Convection.stillAlongRiser(RISER_HEIGHT_M) : Convection.still();
  }

  /** In words for a proof. */
  public String inWords() {
    return (source == Source.ISO_12241 ? "ISO 12241" : "Churchill and Chu")
        + (upright ? ", riser" : ", level pipe or side of a duct");
  }
}
