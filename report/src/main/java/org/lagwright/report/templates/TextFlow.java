package org.lagwright.report.templates;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Text that runs down pages and goes on on a new one where a page is full. */
final class TextFlow implements AutoCloseable {

  private static final double LEADING = 1.35;
  private static final double TEXT_MM = 3.2;
  private static final double LABEL_WIDTH_MM = 38;

  private final PdfFile file;
  private final PaperSize paper;
  private PdfSheet sheet;
  private double y;

  TextFlow(PdfFile file, PaperSize paper) throws IOException {
    this.file = file;
    this.paper = paper;
    this.sheet = new PdfSheet(file, paper);
    this.y = top();
  }

  private double top() {
    return paper.heightMm() - PaperSize.MARGIN_MM - 4;
  }

  private double widthMm() {
    return paper.widthMm() - 2 * PaperSize.MARGIN_MM;
  }

  PdfSheet sheet() {
    return sheet;
  }

  /** Where the next line goes, millimetres from below. */
  double y() {
    return y;
  }

  /** Leaves free what a drawing takes; on a new page where there is no room. */
  void leave(double heightMm) throws IOException {
    if (y - heightMm < PaperSize.MARGIN_MM) {
      turn();
    }
    y -= heightMm;
  }

  private void turn() throws IOException {
    sheet.close();
    sheet = new PdfSheet(file, paper);
    y = top();
  }

  private void next(double sizeMm) throws IOException {
    if (y - sizeMm < PaperSize.MARGIN_MM) {
      turn();
    }
    y -= sizeMm * LEADING;
  }

  void title(String text) throws IOException {
    for (String line : wrapped(text, 5 * 1.1, widthMm())) {
      next(5);
      sheet.bold(line, PaperSize.MARGIN_MM, y, 5);
    }
    y -= 1.5;
  }

  void heading(String text) throws IOException {
    if (y < PaperSize.MARGIN_MM + 20) {
      turn();
    }
    y -= 2;
    next(3.6);
    sheet.bold(text, PaperSize.MARGIN_MM, y, 3.6);
    y -= 0.8;
  }

  void paragraph(String text) throws IOException {
    for (String line : wrapped(text, TEXT_MM, widthMm())) {
      next(TEXT_MM);
      sheet.text(line, PaperSize.MARGIN_MM, y, TEXT_MM);
    }
  }

  /** A name and what it is, side by side. */
  void pair(String label, String text) throws IOException {
    boolean first = true;
    for (String line : wrapped(text, TEXT_MM, widthMm() - LABEL_WIDTH_MM)) {
      next(TEXT_MM);
      if (first) {
        sheet.text(label, PaperSize.MARGIN_MM, y, TEXT_MM);
        first = false;
      }
      sheet.text(line, PaperSize.MARGIN_MM + LABEL_WIDTH_MM, y, TEXT_MM);
    }
  }

  /** Cells at fixed places, millimetres from the left margin; the last one is wrapped. */
  void row(double[] placesMm, List<String> cells) throws IOException {
    int last = cells.size() - 1;
    double room = widthMm() - placesMm[last];
    List<String> lines = wrapped(cells.get(last), TEXT_MM, room);
    next(TEXT_MM);
    for (int i = 0; i < last; i++) {
      double to = placesMm[i + 1] - placesMm[i] - 1;
      String cell = cells.get(i);
      while (sheet.widthMm(cell, TEXT_MM) > to && cell.length() > 2) {
        cell = cell.substring(0, cell.length() - 2) + ".";
      }
      sheet.text(cell, PaperSize.MARGIN_MM + placesMm[i], y, TEXT_MM);
    }
    for (int i = 0; i < lines.size(); i++) {
      if (i > 0) {
        next(TEXT_MM);
      }
      sheet.text(lines.get(i), PaperSize.MARGIN_MM + placesMm[last], y, TEXT_MM);
    }
  }

  private List<String> wrapped(String text, double sizeMm, double roomMm) throws IOException {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (sheet.widthMm(longer, sizeMm) > roomMm && !line.isEmpty()) {
        lines.add(line);
        longer = word;
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }

  @Override
  public void close() throws IOException {
    sheet.close();
  }
}
