package org.lagwright.report.templates;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Objects;
import java.util.TimeZone;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;
import org.jspecify.annotations.Nullable;

/**
 * A PDF in the making: no date, so that equal input gives equal bytes; printed without scaling.
 * Western letters are in the fonts that every reader has; names with others carry the font of the
 * PDF library with them, which has Latin, Greek and Cyrillic.
 */
final class PdfFile implements AutoCloseable {

  private static final String LETTERS =
      "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final PDDocument document = new PDDocument();
  private @Nullable Letters letters;

  /** The font of the library. */
  private record Letters(TrueTypeFont font, CmapLookup glyphs, PDFont inDocument) {}

  PdfFile(String title, String version) {
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

  /** A new last page, to be closed when it is full. */
  PDPageContentStream page(PDRectangle box) throws IOException {
    PDPage page = new PDPage(box);
    document.addPage(page);
    return new PDPageContentStream(document, page);
  }

  /** The font for names with letters that the built-in fonts lack. */
  PDFont font() throws IOException {
    return letters().inDocument;
  }

  /** True if {@link #font} has a letter. */
  boolean has(int codePoint) throws IOException {
    return letters().glyphs.getGlyphId(codePoint) > 0;
  }

  private Letters letters() throws IOException {
    Letters loaded = letters;
    if (loaded == null) {
      try (InputStream in = Objects.requireNonNull(PDFont.class.getResourceAsStream(LETTERS))) {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
        PDFont inDocument = PDType0Font.load(document, font, true);
        loaded = new Letters(font, font.getUnicodeCmapLookup(), inDocument);
      }
      letters = loaded;
    }
    return loaded;
  }

  /**
   * Writes it; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  void save(OutputStream out) throws IOException {
    document.save(out, CompressParameters.DEFAULT_COMPRESSION);
  }

  @Override
  public void close() throws IOException {
    document.close();
    if (letters != null) {
      letters.font.close();
    }
  }
}
