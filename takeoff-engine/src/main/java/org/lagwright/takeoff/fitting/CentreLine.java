package org.lagwright.takeoff.fitting;

import java.util.Optional;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;

/**
 * Length of the centre line of a fitting or a body in the line.
 *
 * @param lengthM metres
 * @param formula where it comes from, in words
 */
public record CentreLine(double lengthM, String formula) {

  /**
   * The centre line, empty where the geometry read does not give it.
   *
   * <p>Bends: radius x angle. Others: the length read. Tees, laterals, crosses and wyes: none,
   * because one length does not describe their branches.
   */
  public static Optional<CentreLine> of(MepElement element) {
    if (isBranched(element.form())) {
      return Optional.empty();
    }
    if (element.form() == Form.BEND
        && element.angleDeg() != null
        && element.bendRadiusM() != null) {
      double arcM =
          element.bendRadiusM().value() * Math.toRadians(Math.abs(element.angleDeg().value()));
      return Optional.of(new CentreLine(arcM, "bend radius x angle"));
    }
    return Optional.ofNullable(element.lengthM())
        .map(length -> new CentreLine(length.value(), "length read"));
  }

  private static boolean isBranched(Form form) {
    return switch (form) {
      case TEE, LATERAL, CROSS, WYE -> true;
      default -> false;
    };
  }
}
