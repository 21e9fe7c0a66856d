package org.lagwright.report.templates;

import java.io.IOException;
import org.lagwright.takeoff.fitting.pattern.Curve.Role;

/** How lines of each role look on paper. */
final class Pens {

  private Pens() {}

  static void take(PdfSheet sheet, Role role) throws IOException {
    switch (role) {
      case CUT -> sheet.pen(0.4);
      case BORE -> sheet.pen(0.2, 2, 1);
      case BASELINE -> sheet.pen(0.25);
      case SEAM -> sheet.pen(0.3, 6, 1.5f, 1, 1.5f);
      case MARK -> sheet.pen(0.13);
      case FOLD -> sheet.pen(0.18, 4, 1, 0.5f, 1);
    }
  }
}
