package org.lagwright.report.templates;

import java.io.IOException;
import java.util.List;
import org.lagwright.takeoff.fitting.pattern.Curve;
import org.lagwright.takeoff.fitting.pattern.FlatPoint;
import org.lagwright.takeoff.fitting.pattern.Ordinate;
import org.lagwright.takeoff.fitting.pattern.Pattern;

/** A pattern at full size, in as many tiles as the paper needs. */
final class TilePages {

  private static final double MM_PER_M = 1000;

  /** Arcs are drawn in straight pieces within this, metres. */
  private static final double TOLERANCE_M = 1e-5;

  private final PdfFile file;
  private final PaperSize format;

  TilePages(PdfFile file, PaperSize paper) {
    this.file = file;
    this.format = paper;
  }

  /**
   * Rows and columns of tiles for a pattern.
   *
   * @param paper upright or lying, whichever takes fewer tiles
   */
  record Grid(Pattern.Bounds bounds, PaperSize paper, int columns, int rows) {
    int tiles() {
      return columns * rows;
    }
  }

  Grid grid(Pattern pattern) {
    Pattern.Bounds bounds = pattern.bounds();
    Grid upright = grid(bounds, format);
    Grid lying = grid(bounds, format.turned());
    return lying.tiles() < upright.tiles() ? lying : upright;
  }

  private static Grid grid(Pattern.Bounds bounds, PaperSize paper) {
    return new Grid(
        bounds,
        paper,
        PaperSize.tiles(bounds.widthM() * MM_PER_M, paper.windowWidthMm()),
        PaperSize.tiles(bounds.heightM() * MM_PER_M, paper.windowHeightMm()));
  }

  void write(Template template, Pattern pattern) throws IOException {
    Grid grid = grid(pattern);
    for (int row = grid.rows() - 1; row >= 0; row--) {
      for (int column = 0; column < grid.columns(); column++) {
        try (PdfSheet sheet = new PdfSheet(file, grid.paper())) {
          new Tile(sheet, grid, column, row).draw(template, pattern);
        }
      }
    }
  }

  /** One tile. */
  private final class Tile {

    private final PdfSheet sheet;
    private final Grid grid;
    private final PaperSize paper;
    private final int column;
    private final int row;
    private final double leftMm;
    private final double bottomMm;

    Tile(PdfSheet sheet, Grid grid, int column, int row) {
      this.sheet = sheet;
      this.grid = grid;
      this.paper = grid.paper();
      this.column = column;
      this.row = row;
      this.leftMm =
          paper.windowLeftMm()
              - grid.bounds().leftM() * MM_PER_M
              - column * (paper.windowWidthMm() - PaperSize.OVERLAP_MM)
              + centredMm(grid.columns(), grid.bounds().widthM(), paper.windowWidthMm());
      this.bottomMm =
          paper.windowBottomMm()
              - grid.bounds().bottomM() * MM_PER_M
              - row * (paper.windowHeightMm() - PaperSize.OVERLAP_MM)
              + centredMm(grid.rows(), grid.bounds().heightM(), paper.windowHeightMm());
    }

    /** What is left over stands half on each side. */
    private static double centredMm(int tiles, double lengthM, double windowMm) {
      double shownMm = tiles * (windowMm - PaperSize.OVERLAP_MM) + PaperSize.OVERLAP_MM;
      return (shownMm - lengthM * MM_PER_M) / 2;
    }

    void draw(Template template, Pattern pattern) throws IOException {
      CheckBars.draw(sheet, paper);
      frame();
      crosses();
      sheet.clip(
          paper.windowLeftMm(),
          paper.windowBottomMm(),
          paper.windowWidthMm(),
          paper.windowHeightMm());
      for (Curve curve : pattern.curves()) {
        Pens.take(sheet, curve.role());
        sheet.path(curve.flattened(TOLERANCE_M), MM_PER_M, leftMm, bottomMm);
        label(curve);
      }
      stations(pattern);
      sheet.unclip();
      words(template);
    }

    private void frame() throws IOException {
      sheet.pen(0.1, 1, 1);
      sheet.box(
          paper.windowLeftMm(),
          paper.windowBottomMm(),
          paper.windowWidthMm(),
          paper.windowHeightMm());
      sheet.pen(0.1);
    }

    /** Crosses that neighbouring tiles share lie in the middle of the overlap. */
    private void crosses() throws IOException {
      double half = PaperSize.OVERLAP_MM / 2;
      double right = paper.windowLeftMm() + paper.windowWidthMm();
      double top = paper.windowBottomMm() + paper.windowHeightMm();
      for (double x : new double[] {paper.windowLeftMm() + half, right - half}) {
        for (double y : new double[] {paper.windowBottomMm() + half, top - half}) {
          sheet.line(x - 4, y, x + 4, y);
          sheet.line(x, y - 4, x, y + 4);
        }
      }
    }

    private void label(Curve curve) throws IOException {
      if (curve.label().isEmpty()) {
        return;
      }
      List<Curve.Vertex> vertices = curve.vertices();
      FlatPoint a = vertices.get(0).at();
      FlatPoint b = vertices.get(vertices.size() - 1).at();
      boolean rising = Math.abs(b.yM() - a.yM()) > Math.abs(b.xM() - a.xM());
      double share = rising ? 0.35 : 0.04;
      double x = leftMm + (a.xM() + share * (b.xM() - a.xM())) * MM_PER_M;
      double y = bottomMm + (a.yM() + share * (b.yM() - a.yM())) * MM_PER_M;
      if (rising) {
        double beside = a.xM() > grid.bounds().leftM() + grid.bounds().widthM() * 0.99 ? -1 : 3;
        sheet.upright(curve.label(), x + beside, y, 2.8);
      } else {
        sheet.text(curve.label(), x, y + (curve.role() == Curve.Role.BORE ? -3.5 : 1), 2.8);
      }
    }

    /** Ticks and numbers along the base line. */
    private void stations(Pattern pattern) throws IOException {
      double y = bottomMm + baseM(pattern) * MM_PER_M;
      sheet.pen(0.13);
      for (Ordinate ordinate : pattern.ordinates()) {
        double x = leftMm + ordinate.xM() * MM_PER_M;
        sheet.line(x, y - 1.2, x, y + 1.2);
        sheet.text(Integer.toString(ordinate.number()), x + 0.4, y - 3.4, 2.2);
      }
    }

    private static double baseM(Pattern pattern) {
      return pattern.curves().stream()
          .filter(curve -> curve.role() == Curve.Role.BASELINE)
          .mapToDouble(curve -> curve.vertices().get(0).at().yM())
          .findFirst()
          .orElse(0);
    }

    private void words(Template template) throws IOException {
      String tile =
          "tile row "
              + (row + 1)
              + " of "
              + grid.rows()
              + ", column "
              + (column + 1)
              + " of "
              + grid.columns();
      String what = template.label() + "  " + template.piece().name() + ", cut " + template.count();
      sheet.bold(what, paper.windowLeftMm(), PaperSize.MARGIN_MM + 5, 3.4);
      sheet.text(
          TemplateText.cuts(template.piece()), paper.windowLeftMm(), PaperSize.MARGIN_MM, 2.8);
      double right = paper.windowLeftMm() + paper.windowWidthMm();
      sheet.text(tile, right - sheet.widthMm(tile, 2.8), PaperSize.MARGIN_MM + 10, 2.8);
      String scale = "Print at 100 %, no fit to page. Measure both bars first.";
      sheet.text(scale, right - sheet.widthMm(scale, 2.8), PaperSize.MARGIN_MM + 5.5, 2.8);
    }
  }
}
