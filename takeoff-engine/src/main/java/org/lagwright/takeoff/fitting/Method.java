package org.lagwright.takeoff.fitting;

import java.util.Locale;

/** Ways to make the cover of one element. Packs name them by {@link #label}. */
public enum Method {
  TUBE_PUSHED_ON("tube pushed on before assembly"),
  TUBE_SLIT_AND_GLUED("tube slit and glued"),
  SECTION_HALVES("rigid half sections"),
  SHEET_WRAPPED("sheet wrapped and glued"),
  DUCT_PANELS("panels of sheet"),
  TUBE_SLID_OVER("tube slid over the bend"),
  TWO_PIECE_MITRE("two-piece mitre"),
  MITRED_PIECES("mitre of three or more pieces"),
  NOTCHED_TUBE("one tube, notched"),
  SMOOTH_COVER("smooth cover of strips"),
  OVERSIZE_MITRE("two-piece mitre of larger bore"),
  DUCT_RADIUS_BEND("cheeks, heel and throat strips"),
  DUCT_SQUARE_BEND("cheeks, heel and throat panels"),
  MITRED_TEE("branch cut to a point, notch in the run"),
  THREE_PIECE_TEE("three pieces cut half way"),
  PUNCHED_TEE("punched hole and saddle"),
  SWEPT_TEE("run with hole, branch in two pieces"),
  FOUR_PIECE_CROSS("four pieces cut to points"),
  PUNCHED_CROSS("two punched holes and saddles"),
  WYE_PIECES("three pieces cut half way to each other"),
  DUCT_TEE("panels with opening, branch panels"),
  CONE("cone of sheet"),
  ECCENTRIC_CONE("oblique cone of sheet"),
  STEPPED_REDUCER("tube of the large size with closing ring"),
  DUCT_TRANSITION("four panels"),
  SQUARE_TO_ROUND("triangles and quarter cones in one sheet"),
  CAP_WITH_DISC("tube with end disc"),
  DUCT_END_PANEL("end panel"),
  FLANGE_BOX("cylinder with end rings"),
  FLANGE_STRIPS("strips with ends bevelled at 45 degrees"),
  HALVED_TUBE("tube halved lengthwise, ends at 45 degrees"),
  VALVE_BOX("cylinder with neck, lid and end rings"),
  REMOVABLE_FLANGE_BOX("cylinder with end rings, in two halves that come off"),
  REMOVABLE_VALVE_BOX("cylinder with neck, lid and end rings, in two halves that come off"),
  BODY_BOX("cylinder with end rings over the body"),
  RECTANGULAR_BOX("box of six panels"),
  SLEEVE("sleeve of larger bore"),
  CUT_ON_SITE("cut on site to measure");

  private final String words;

  Method(String words) {
    this.words = words;
  }

  /** True for boxes over bodies and joints. */
  public boolean isBox() {
    return switch (this) {
      case FLANGE_BOX, VALVE_BOX, BODY_BOX, RECTANGULAR_BOX -> true;
      case REMOVABLE_FLANGE_BOX, REMOVABLE_VALVE_BOX -> true;
      default -> false;
    };
  }

  /** True for boxes over bodies in the line that have room for the flanges at both ends. */
  public boolean hasRoomForFlanges() {
    return this == VALVE_BOX || this == REMOVABLE_VALVE_BOX;
  }

  /**
   * True for covers that are taken off and put back: glued in themselves, not to what is beside.
   */
  public boolean isRemovable() {
    return this == REMOVABLE_FLANGE_BOX || this == REMOVABLE_VALVE_BOX;
  }

  /** The method in words. */
  public String words() {
    return words;
  }

  /** The name used in packs and files: {@code two-piece-mitre}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The method of a label.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Method of(String label) {
    for (Method method : values()) {
      if (method.label().equals(label)) {
        return method;
      }
    }
    throw new IllegalArgumentException("method '" + label + "' is not known.");
  }
}
