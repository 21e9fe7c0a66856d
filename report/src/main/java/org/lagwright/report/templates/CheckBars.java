package org.lagwright.report.templates;

import java.io.IOException;

/** Two bars of exactly 100 mm that show whether the printer kept the size in both directions. */
final class CheckBars {

  static final double LENGTH_MM = 100;

  private static final double TICK_MM = 1.5;

  private CheckBars() {}

  /** Draws both: level below the window, upright left of it. */
  static void draw(PdfSheet sheet, PaperSize paper) throws IOException {
    double x = paper.windowLeftMm();
    double y = PaperSize.MARGIN_MM + 10;
    sheet.grey(0);
    sheet.pen(0.25);
    sheet.line(x, y, x + LENGTH_MM, y);
    sheet.line(x, y - TICK_MM, x, y + TICK_MM);
    sheet.line(x + LENGTH_MM, y - TICK_MM, x + LENGTH_MM, y + TICK_MM);
    sheet.text("100 mm, accept 99.5 to 100.5", x + 2, y + 1, 2.8);
    double left = PaperSize.MARGIN_MM + 5;
    double bottom = paper.windowBottomMm();
    sheet.line(left, bottom, left, bottom + LENGTH_MM);
    sheet.line(left - TICK_MM, bottom, left + TICK_MM, bottom);
    sheet.line(left - TICK_MM, bottom + LENGTH_MM, left + TICK_MM, bottom + LENGTH_MM);
    sheet.upright("100 mm, accept 99.5 to 100.5", left - 1, bottom + 2, 2.8);
  }
}
