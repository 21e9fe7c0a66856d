package org.lagwright.report.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.report.RealRun;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.Pattern;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.settings.Settings;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The printed templates of the demo building, read back and measured. */
class TemplatesTest {

  private static final Path DEMO = Path.of("..", "test-models", "demo");
  private static final double BAR_MM = 100;
  private static final double PRINTED = 0.01;

  @TempDir static Path folder;
  private static TemplateBook book;

  @BeforeAll
  static void drawTheDemo() {
    Path model = DEMO.resolve("alder-quay-ifc4.ifc");
    Path settings = DEMO.resolve("settings.yaml");
    RealRun run =
        RealRun.of(
            "templates",
            model.toString(),
            "--settings",
            settings.toString(),
            "--out",
            folder.toString());
    assertThat(run.code()).as(run.err()).isZero();
    ModelPipeline pipeline = new ModelPipeline();
    Settings read = pipeline.readSettings(settings);
    Takeoff takeoff =
        pipeline.takeOff(List.of(pipeline.readModel(model, 0, read, (what, share) -> {})), read);
    book = new TemplateBook(takeoff);
  }

  private static boolean isBar(List<Point2D.Double> line, boolean level) {
    if (line.size() != 2) {
      return false;
    }
    double dx = Math.abs(line.get(1).x - line.get(0).x);
    double dy = Math.abs(line.get(1).y - line.get(0).y);
    return Math.abs((level ? dx : dy) - BAR_MM) < PRINTED && (level ? dy : dx) < PRINTED;
  }

  @ParameterizedTest
  @CsvSource({"templates-a4.pdf, 210, 297", "templates-a3.pdf, 297, 420"})
  void everyTileHasBarsOf100MillimetresBothWays(String file, double width, double height)
      throws IOException {
    int tiles = 0;
    try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
      for (PDPage page : document.getPages()) {
        double shortMm = Math.min(page.getMediaBox().getWidth(), page.getMediaBox().getHeight());
        double longMm = Math.max(page.getMediaBox().getWidth(), page.getMediaBox().getHeight());
        assertThat(shortMm * 25.4 / 72).isCloseTo(width, within(PRINTED));
        assertThat(longMm * 25.4 / 72).isCloseTo(height, within(PRINTED));
        List<List<Point2D.Double>> lines = DrawnLines.of(page);
        if (lines.stream().anyMatch(line -> isBar(line, true))) {
          assertThat(lines).anyMatch(line -> isBar(line, false));
          tiles++;
        }
      }
    }
    assertThat(tiles).isGreaterThanOrEqualTo(book.drawn().size());
  }

  @Test
  void aMitredPieceIsDrawnAtFullSize() throws IOException {
    Template template =
        book.drawn().stream()
            .filter(t -> t.piece().name().equals("middle piece"))
            .findFirst()
            .orElseThrow();
    TubePiece tube = (TubePiece) template.piece().shape();
    double diameterMm = 2 * ((Outline.Circle) tube.outer()).radiusM() * 1000;

    List<Point2D.Double> cut = cut(template);
    double widthMm = extent(cut, true);
    double heelMm = extent(cut, false);

    assertThat(widthMm).isCloseTo(Math.PI * diameterMm, within(0.02));
    assertThat(heelMm).isCloseTo(tube.lengthAtM(0) * 1000, within(0.02));
    double seamMm = cut.get(cut.size() - 2).y - cut.get(0).y;
    assertThat(seamMm).isCloseTo(tube.lengthAtM(0.5) * 1000, within(0.05));
  }

  /** The longest line on the first tile of a template is its outline, unclipped. */
  private static List<Point2D.Double> cut(Template template) throws IOException {
    try (PDDocument document = Loader.loadPDF(folder.resolve("templates-a3.pdf").toFile())) {
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        if (text(document, i + 1)
                .contains(template.label() + "  " + template.piece().name() + ", cut")
            || text(document, i + 1)
                .contains(template.label() + " " + template.piece().name() + ", cut")) {
          return DrawnLines.of(document.getPage(i)).stream()
              .max(java.util.Comparator.comparingInt(List::size))
              .orElseThrow();
        }
      }
    }
    throw new AssertionError("no tile of " + template.label());
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document);
  }

  private static double extent(List<Point2D.Double> line, boolean level) {
    double least = line.stream().mapToDouble(p -> level ? p.x : p.y).min().orElseThrow();
    double most = line.stream().mapToDouble(p -> level ? p.x : p.y).max().orElseThrow();
    return most - least;
  }

  @Test
  void eachTemplateTellsHowOftenAndWhereItIsNeededAndTheCautions() throws IOException {
    String all;
    try (PDDocument document = Loader.loadPDF(folder.resolve("templates-a4.pdf").toFile())) {
      all = new PDFTextStripper().getText(document);
    }
    for (Template template : book.drawn()) {
      assertThat(all).contains("Cut " + template.count() + " pieces of this template");
      template.uses().forEach(use -> assertThat(all).contains(use.globalId()));
    }
    assertThat(all).contains("Print on A4 at 100 %", "licensed practice", "asbestos", "ventilate");
  }

  @Test
  void everyPieceOfEveryFittingIsDrawnOrListed() {
    int drawnAndPlain =
        book.drawn().stream().mapToInt(Template::count).sum()
            + book.plain().stream().mapToInt(Template::count).sum();
    int needed =
        book.takeoff().elements().stream()
            .filter(t -> t.making() != null && !t.element().kind().isSegment())
            .flatMap(t -> t.making().pieces().stream())
            .mapToInt(piece -> piece.count())
            .sum();

    assertThat(drawnAndPlain).isEqualTo(needed).isPositive();
    assertThat(book.drawn()).doesNotHaveDuplicates();
  }

  @Test
  void svgAndDxfHoldTheSameCurvesInMillimetres() throws IOException {
    Template template = book.drawn().get(0);
    Pattern pattern = template.piece().shape().pattern();
    String svg = entry("templates-svg.zip", template.label() + ".svg");
    String dxf = entry("templates-dxf.zip", template.label() + ".dxf");

    assertThat(svg)
        .contains(String.format("width=\"%.4fmm\"", pattern.bounds().widthM() * 1000 + 4));
    assertThat(svg.split("<path", -1)).hasSize(pattern.curves().size() + 1);
    List<String> lines = dxf.lines().map(String::strip).toList();
    assertThat(lines.stream().filter("POLYLINE"::equals)).hasSize(pattern.curves().size());
    double widest =
        IntStream.range(0, lines.size() - 1)
            .filter(i -> i % 2 == 0 && lines.get(i).equals("10"))
            .mapToDouble(i -> Double.parseDouble(lines.get(i + 1)))
            .max()
            .orElseThrow();
    assertThat(widest)
        .isCloseTo((pattern.bounds().leftM() + pattern.bounds().widthM()) * 1000, within(1e-3));
  }

  @Test
  void everySvgIsReadByAnXmlParserAndItsCutsAreAsWideAsThePattern() throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    for (Template template : book.drawn()) {
      String svg = entry("templates-svg.zip", template.label() + ".svg");
      Document read =
          factory
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
      Pattern pattern = template.piece().shape().pattern();
      NodeList paths = read.getElementsByTagNameNS("http://www.w3.org/2000/svg", "path");

      assertThat(paths.getLength()).isEqualTo(pattern.curves().size());
      double left = Double.MAX_VALUE;
      double right = -Double.MAX_VALUE;
      for (int i = 0; i < paths.getLength(); i++) {
        Element path = (Element) paths.item(i);
        assertThat(path.getAttribute("class"))
            .isEqualTo(pattern.curves().get(i).role().name().toLowerCase(Locale.ROOT));
        for (String point : path.getAttribute("d").substring(1).split(" L", -1)) {
          double x = Double.parseDouble(point.split(" ", -1)[0]);
          left = Math.min(left, x);
          right = Math.max(right, x);
        }
      }
      assertThat(right - left).isCloseTo(pattern.bounds().widthM() * 1000, within(0.02));
    }
  }

  private static String entry(String archive, String name) throws IOException {
    try (InputStream in = Files.newInputStream(folder.resolve(archive));
        ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().equals(name)) {
          return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        }
      }
    }
    throw new AssertionError(name + " is not in " + archive);
  }

  @Test
  void equalTakeoffsGiveEqualBytes() throws IOException {
    ByteArrayOutputStream again = new ByteArrayOutputStream();
    new TemplatePdf(book, PaperSize.A3, org.lagwright.report.app.Version.text()).write(again);

    assertThat(again.toByteArray())
        .isEqualTo(Files.readAllBytes(folder.resolve("templates-a3.pdf")));
  }
}
