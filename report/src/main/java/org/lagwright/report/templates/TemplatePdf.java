package org.lagwright.report.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;
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
    try (PDDocument document = new PDDocument()) {
      describe(document, book.takeoff().settings().project() + ": templates", version);
      InfoPages info = new InfoPages(document, paper, book, version);
      TilePages tiles = new TilePages(document, paper);
      info.writeList();
      for (Template template : book.drawn()) {
        Pattern pattern = template.piece().shape().pattern();
        info.write(template, pattern, tiles.grid(pattern));
        tiles.write(template, pattern);
      }
      document.save(out, CompressParameters.DEFAULT_COMPRESSION);
    }
  }

  /** Title and program, no date, so that equal input gives equal bytes; printed without scaling. */
  static void describe(PDDocument document, String title, String version) {
    PDDocumentInformation information = document.getDocumentInformation();
    information.setTitle(title);
    information.setCreator("lagwright " + version);
    information.setCreationDate(noDate());
    document.setDocumentId(0L);
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setPrintScaling(PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(preferences);
  }

  private static Calendar noDate() {
    Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    calendar.setTimeInMillis(0);
    return calendar;
  }
}
