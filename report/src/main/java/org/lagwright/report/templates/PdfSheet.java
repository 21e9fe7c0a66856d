package org.lagwright.report.templates;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.util.Matrix;
import org.lagwright.takeoff.fitting.pattern.FlatPoint;

/** One page, drawn in millimetres from its lower left corner. */
final class PdfSheet implements AutoCloseable {

  /** Points of PDF in a millimetre. */
  static final float POINTS_PER_MM = 72f / 25.4f;

  private static final PDType1Font PLAIN = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
  private static final PDType1Font BOLD = new PDType1Font(Standard14Fonts.FontName.HELVETICA_BOLD);

  private final PdfFile file;
  private final PDPageContentStream content;

  PdfSheet(PdfFile file, PaperSize paper) throws IOException {
    this.file = file;
    PDRectangle box =
        new PDRectangle(
            (float) paper.widthMm() * POINTS_PER_MM, (float) paper.heightMm() * POINTS_PER_MM);
    content = file.page(box);
    content.transform(Matrix.getScaleInstance(POINTS_PER_MM, POINTS_PER_MM));
    content.setLineCapStyle(1);
    content.setLineJoinStyle(1);
  }

  /** Width of a line and its dashes, millimetres; without dashes it is continuous. */
  void pen(double widthMm, float... dashesMm) throws IOException {
    content.setLineWidth((float) widthMm);
    content.setLineDashPattern(dashesMm, 0);
  }

  void grey(double shade) throws IOException {
    content.setStrokingColor((float) shade);
    content.setNonStrokingColor((float) shade);
  }

  void line(double x1, double y1, double x2, double y2) throws IOException {
    content.moveTo((float) x1, (float) y1);
    content.lineTo((float) x2, (float) y2);
    content.stroke();
  }

  void box(double x, double y, double width, double height) throws IOException {
    content.addRect((float) x, (float) y, (float) width, (float) height);
    content.stroke();
  }

  /** Points in metres, scaled and moved to the page in millimetres. */
  void path(List<FlatPoint> points, double perM, double leftMm, double bottomMm)
      throws IOException {
    boolean first = true;
    for (FlatPoint point : points) {
      float x = (float) (leftMm + point.xM() * perM);
      float y = (float) (bottomMm + point.yM() * perM);
      if (first) {
        content.moveTo(x, y);
        first = false;
      } else {
        content.lineTo(x, y);
      }
    }
    content.stroke();
  }

  /** From here to {@link #unclip} nothing is drawn outside this rectangle. */
  void clip(double x, double y, double width, double height) throws IOException {
    content.saveGraphicsState();
    content.addRect((float) x, (float) y, (float) width, (float) height);
    content.clip();
  }

  void unclip() throws IOException {
    content.restoreGraphicsState();
  }

  void text(String text, double x, double y, double sizeMm) throws IOException {
    write(PLAIN, text, Matrix.getTranslateInstance((float) x, (float) y), sizeMm);
  }

  void bold(String text, double x, double y, double sizeMm) throws IOException {
    write(BOLD, text, Matrix.getTranslateInstance((float) x, (float) y), sizeMm);
  }

  /** Text that reads upwards. */
  void upright(String text, double x, double y, double sizeMm) throws IOException {
    write(PLAIN, text, Matrix.getRotateInstance(Math.PI / 2, (float) x, (float) y), sizeMm);
  }

  private void write(PDFont builtIn, String text, Matrix at, double sizeMm) throws IOException {
    String line = onOneLine(text);
    PDFont font = font(line, builtIn);
    content.beginText();
    content.setFont(font, (float) sizeMm);
    content.setTextMatrix(at);
    content.showText(font == builtIn ? line : printable(line));
    content.endText();
  }

  /** Width of a text, millimetres. */
  double widthMm(String text, double sizeMm) throws IOException {
    String line = onOneLine(text);
    PDFont font = font(line, PLAIN);
    return font.getStringWidth(font == PLAIN ? line : printable(line)) / 1000 * sizeMm;
  }

  private static String onOneLine(String text) {
    return text.replace('\n', ' ').replace('\t', ' ');
  }

  /** The built-in fonts hold Western letters only. */
  private PDFont font(String line, PDFont builtIn) throws IOException {
    return line.codePoints().allMatch(PdfSheet::isWestern) ? builtIn : file.font();
  }

  /** Letters of no font that there is become question marks. */
  private String printable(String line) throws IOException {
    StringBuilder printable = new StringBuilder();
    for (int c : line.codePoints().toArray()) {
      printable.appendCodePoint(file.has(c) ? c : '?');
    }
    return printable.toString();
  }

  private static boolean isWestern(int c) {
    return (c >= 32 && c < 127) || (c > 160 && c < 256 && c != 173);
  }

  @Override
  public void close() throws IOException {
    content.close();
  }
}
