package org.lagwright.report.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.lagwright.takeoff.Takeoff;

/** All files of the templates of one takeoff. */
public final class TemplateSet {

  /** Name of the PDF on A4. */
  public static final String A4 = "templates-a4.pdf";

  /** Name of the PDF on A3. */
  public static final String A3 = "templates-a3.pdf";

  /** Name of the archive with one SVG for each template. */
  public static final String SVG = "templates-svg.zip";

  /** Name of the archive with one DXF for each template. */
  public static final String DXF = "templates-dxf.zip";

  /** So that equal takeoffs give equal bytes; the earliest date an archive can hold. */
  private static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final TemplateBook book;
  private final String version;

  /** Writes one file; the stream stays open. */
  @FunctionalInterface
  public interface File {
    void write(OutputStream out) throws IOException;
  }

  /**
   * Prepares the templates of one takeoff.
   *
   * @param version version of this program
   */
  public TemplateSet(Takeoff takeoff, String version) {
    this.book = new TemplateBook(takeoff);
    this.version = version;
  }

  /** How many distinct patterns are drawn. */
  public int patterns() {
    return book.drawn().size();
  }

  /** How many pieces they make. */
  public int pieces() {
    return book.drawn().stream().mapToInt(Template::count).sum();
  }

  /** The files by name. Drawings lie in archives, so that none of an earlier run stays behind. */
  public Map<String, File> files() {
    Map<String, File> files = new LinkedHashMap<>();
    files.put(A4, new TemplatePdf(book, PaperSize.A4, version)::write);
    files.put(A3, new TemplatePdf(book, PaperSize.A3, version)::write);
    files.put(SVG, out -> archive(out, ".svg", t -> new SvgDrawing(t)::write));
    files.put(DXF, out -> archive(out, ".dxf", t -> new DxfDrawing(t)::write));
    return files;
  }

  private void archive(OutputStream out, String ending, Function<Template, File> drawing)
      throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    for (Template template : book.drawn()) {
      ZipEntry entry = new ZipEntry(template.label() + ending);
      entry.setTimeLocal(NO_DATE);
      zip.putNextEntry(entry);
      drawing.apply(template).write(zip);
      zip.closeEntry();
    }
    zip.finish();
  }
}
