package org.lagwright.takeoff.thickness;

import java.util.Locale;

/**
 * One layer as bought.
 *
 * @param materialId material family
 * @param form tube, sheet or rigid section
 * @param thicknessM stock thickness in metres
 */
public record Layer(String materialId, LayerForm form, double thicknessM) {

  /** How the material is bought. */
  public enum LayerForm {
    TUBE,
    SHEET,
    SECTION;

    /** The name used in files we write. */
    public String label() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
