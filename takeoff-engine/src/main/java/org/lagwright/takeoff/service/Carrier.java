package org.lagwright.takeoff.service;

import java.util.Locale;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;

/** What a medium flows in. A word of air on a pipe is no hint, nor is a word of water on a duct. */
enum Carrier {
  PIPE,
  DUCT,
  /** An apparatus, or an inline item that stands in either. */
  ANY;

  static Carrier of(String label) {
    return switch (label) {
      case "pipe" -> PIPE;
      case "duct" -> DUCT;
      default -> throw new IllegalArgumentException("'" + label + "' is neither pipe nor duct.");
    };
  }

  static Carrier of(MepElement element) {
    return switch (element.kind()) {
      case PIPE_SEGMENT, PIPE_FITTING, VALVE -> PIPE;
      case DUCT_SEGMENT, DUCT_FITTING -> DUCT;
      case INLINE -> ofInline(element);
      case EQUIPMENT, TERMINAL, COVERING, OTHER -> ANY;
    };
  }

  private static Carrier ofInline(MepElement element) {
    if (element.form() == Form.DAMPER || element.form() == Form.SILENCER) {
      return DUCT;
    }
    if (element.form() == Form.PUMP) {
      return PIPE;
    }
    if (element.section() != null && !(element.section().value() instanceof Section.Round)) {
      return DUCT;
    }
    String ifcClass = element.ifcClass().toUpperCase(Locale.ROOT);
    return ifcClass.contains("DUCT") || ifcClass.contains("DAMPER") ? DUCT : ANY;
  }

  /** True where what flows in this may be in an element of the other. */
  boolean fits(Carrier other) {
    return this == ANY || other == ANY || this == other;
  }
}
