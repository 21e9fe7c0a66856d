package org.lagwright.report.templates;

import java.io.IOException;
import java.io.OutputStream;
import org.lagwright.takeoff.fitting.pattern.Pattern;

/**
 * All templates of a takeoff as one PDF at full size. Equal takeoffs give equal bytes: the document
 * carries no date of its own.
 */
final class TemplatePdf {

  private final TemplateBook book;
  private final PaperSize paper;
  private final String version;

  TemplatePdf(TemplateBook book, PaperSize paper, String version) {
    this.book = book;
    this.paper = paper;
    this.version = version;
  }

  /**
   * Writes it; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  void write(OutputStream out) throws IOException {
    try (PdfFile file = new PdfFile(book.takeoff().settings().project() + ": templates", version)) {
      InfoPages info = new InfoPages(file, paper, book, version);
      TilePages tiles = new TilePages(file, paper);
      info.writeList();
      for (Template template : book.drawn()) {
        Pattern pattern = template.piece().shape().pattern();
        info.write(template, pattern, tiles.grid(pattern));
        tiles.write(template, pattern);
      }
      file.save(out);
    }
  }
}
