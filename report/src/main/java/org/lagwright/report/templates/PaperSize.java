package org.lagwright.report.templates;

/**
 * Paper that templates are printed on, with the window that each tile shows. Millimetres.
 *
 * @param name as printers call it
 */
record PaperSize(String name, double widthMm, double heightMm) {

  static final PaperSize A4 = new PaperSize("A4", 210, 297);
  static final PaperSize A3 = new PaperSize("A3", 297, 420);

  /** Free edge that printers cannot reach. */
  static final double MARGIN_MM = 10;

  /** Left of the window stands the upright check bar. */
  private static final double LEFT_MM = 10;

  /** Below the window stand the level check bar and the words. */
  private static final double BELOW_MM = 16;

  /** How far neighbouring tiles show the same. */
  static final double OVERLAP_MM = 10;

  /** The same paper lying. */
  PaperSize turned() {
    return new PaperSize(name, heightMm, widthMm);
  }

  double windowLeftMm() {
    return MARGIN_MM + LEFT_MM;
  }

  double windowBottomMm() {
    return MARGIN_MM + BELOW_MM;
  }

  double windowWidthMm() {
    return widthMm - windowLeftMm() - MARGIN_MM;
  }

  double windowHeightMm() {
    return heightMm - windowBottomMm() - MARGIN_MM;
  }

  /** How many tiles a length takes that a window of this size shows. */
  static int tiles(double lengthMm, double windowMm) {
    double stepMm = windowMm - OVERLAP_MM;
    return Math.max(1, (int) Math.ceil((lengthMm - OVERLAP_MM) / stepMm - 1e-9));
  }
}
