package org.lagwright.report.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.report.RealRun;

/** The PDFs of the demo building, opened by OpenPDF, which shares nothing with what wrote them. */
class OtherPdfReaderTest {

  private static final Path DEMO = Path.of("..", "test-models", "demo");
  private static final String BAR = "100 mm, accept 99.5 to 100.5";

  /** 100 mm in points of 1/72 in. */
  private static final double BAR_PT = 100 / 25.4 * 72;

  private static final double PRINTED_PT = 0.03;

  /** Scale of the page: {@code 2.83465 0 0 2.83465 0 0 cm}. */
  private static final Pattern SCALE = Pattern.compile("([\\d.]+) 0 0 \\1 0 0 cm");

  private static final Pattern LINE =
      Pattern.compile("([\\d.]+) ([\\d.]+) m\\s+([\\d.]+) ([\\d.]+) l\\s+S");

  @TempDir static Path folder;

  @BeforeAll
  static void writeThem() {
    for (String command : List.of("templates", "sitesheets")) {
      RealRun run =
          RealRun.of(
              command,
              DEMO.resolve("alder-quay-ifc4.ifc").toString(),
              "--settings",
              DEMO.resolve("settings.yaml").toString(),
              "--out",
              folder.toString());
      assertThat(run.code()).as(run.err()).isZero();
    }
  }

  /** ISO 216: A4 is 210 mm x 297 mm, A3 297 mm x 420 mm. */
  @ParameterizedTest
  @CsvSource({
    "templates-a4.pdf, 595.28, 841.89",
    "templates-a3.pdf, 841.89, 1190.55",
    "sitesheets.pdf, 595.28, 841.89"
  })
  void everyPageIsThereAndHasTheSizeOfThePaper(String file, double shortPt, double longPt)
      throws IOException {
    int written;
    try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
      written = document.getNumberOfPages();
    }
    try (PdfReader reader = new PdfReader(folder.resolve(file).toString())) {
      assertThat(reader.isRebuilt()).as("damaged and repaired").isFalse();
      assertThat(reader.getNumberOfPages()).isEqualTo(written).isGreaterThan(5);
      for (int page = 1; page <= written; page++) {
        Rectangle size = reader.getPageSizeWithRotation(page);
        assertThat(Math.min(size.getWidth(), size.getHeight())).isCloseTo((float) shortPt, tiny());
        assertThat(Math.max(size.getWidth(), size.getHeight())).isCloseTo((float) longPt, tiny());
      }
    }
  }

  private static org.assertj.core.data.Offset<Float> tiny() {
    return within(0.01f);
  }

  @ParameterizedTest
  @CsvSource({"templates-a4.pdf", "templates-a3.pdf"})
  void whereABarSays100MillimetresTwoLinesOf100MillimetresAreDrawn(String file) throws IOException {
    int bars = 0;
    try (PdfReader reader = new PdfReader(folder.resolve(file).toString())) {
      PdfTextExtractor words = new PdfTextExtractor(reader);
      for (int page = 1; page <= reader.getNumberOfPages(); page++) {
        if (words.getTextFromPage(page).contains(BAR)) {
          List<double[]> lines = linesPt(reader.getPageContent(page));
          assertThat(lines).as("level, page " + page).anyMatch(line -> isBar(line[0], line[1]));
          assertThat(lines).as("upright, page " + page).anyMatch(line -> isBar(line[1], line[0]));
          bars++;
        }
      }
    }
    assertThat(bars).isGreaterThan(20);
  }

  /** Width and height of each single line, points. */
  private static List<double[]> linesPt(byte[] content) {
    String operators = new String(content, StandardCharsets.ISO_8859_1);
    List<MatchResult> scales = SCALE.matcher(operators).results().toList();
    assertThat(scales).isNotEmpty();
    double scale = Double.parseDouble(scales.get(0).group(1));
    List<double[]> lines = new ArrayList<>();
    LINE.matcher(operators)
        .results()
        .forEach(
            line ->
                lines.add(
                    new double[] {
                      scale * Math.abs(number(line, 3) - number(line, 1)),
                      scale * Math.abs(number(line, 4) - number(line, 2))
                    }));
    return lines;
  }

  private static double number(MatchResult line, int group) {
    return Double.parseDouble(line.group(group));
  }

  private static boolean isBar(double alongPt, double acrossPt) {
    return Math.abs(alongPt - BAR_PT) < PRINTED_PT && acrossPt < PRINTED_PT;
  }

  @Test
  void siteSheetsSayTheirServicesAndCautions() throws IOException {
    StringBuilder all = new StringBuilder();
    try (PdfReader reader = new PdfReader(folder.resolve("sitesheets.pdf").toString())) {
      PdfTextExtractor words = new PdfTextExtractor(reader);
      for (int page = 1; page <= reader.getNumberOfPages(); page++) {
        all.append(words.getTextFromPage(page)).append('\n');
      }
    }
    assertThat(all.toString().replaceAll("\\s+", " "))
        .contains("Roof: chilled water flow", "Ground floor: supply air", "What to bring")
        .contains("Asbestos", "Local rules");
  }
}
