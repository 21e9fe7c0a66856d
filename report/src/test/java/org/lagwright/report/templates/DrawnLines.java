package org.lagwright.report.templates;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The stroked lines of a page as a reader of PDF sees them, millimetres of paper. */
final class DrawnLines extends PDFGraphicsStreamEngine {

  private static final double MM_PER_POINT = 25.4 / 72;

  private final List<List<Point2D.Double>> stroked = new ArrayList<>();
  private List<Point2D.Double> open = new ArrayList<>();

  private DrawnLines(PDPage page) {
    super(page);
  }

  static List<List<Point2D.Double>> of(PDPage page) throws IOException {
    DrawnLines lines = new DrawnLines(page);
    lines.processPage(page);
    return lines.stroked;
  }

  private static Point2D.Double paper(double x, double y) {
    return new Point2D.Double(x * MM_PER_POINT, y * MM_PER_POINT);
  }

  @Override
  public void moveTo(float x, float y) {
    open = new ArrayList<>();
    open.add(paper(x, y));
  }

  @Override
  public void lineTo(float x, float y) {
    open.add(paper(x, y));
  }

  @Override
  public void strokePath() {
    stroked.add(open);
    open = new ArrayList<>();
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    open = new ArrayList<>();
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    throw new IllegalStateException("no curves expected");
  }

  @Override
  public Point2D getCurrentPoint() {
    return open.isEmpty() ? new Point2D.Float() : open.get(open.size() - 1);
  }

  @Override
  public void drawImage(PDImage image) {
    throw new IllegalStateException("no pictures expected");
  }

  @Override
  public void clip(int windingRule) {
    open = new ArrayList<>();
  }

  @Override
  public void closePath() {}

  @Override
  public void endPath() {
    open = new ArrayList<>();
  }

  @Override
  public void fillPath(int windingRule) {}

  @Override
  public void fillAndStrokePath(int windingRule) {}

  @Override
  public void shadingFill(COSName shadingName) {}
}
