package org.lagwright.report.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.RealRun;
import org.lagwright.testmodels.golden.Golden;

/** The site sheets of the demo building, read back out of the file. */
class SiteSheetsTest {

  private static final Path DEMO = Path.of("..", "test-models", "demo");

  /** {@code T007 2 x end piece}. */
  private static final Pattern PIECE = Pattern.compile("(?m)^(T\\d{3}) (\\d+) x (.*)$");

  @TempDir static Path folder;
  private static String sheets = "";
  private static String templates = "";

  @BeforeAll
  static void writeBoth() throws IOException {
    run("templates");
    run("sitesheets");
    sheets = text(folder.resolve("sitesheets.pdf"));
    templates = text(folder.resolve("templates-a4.pdf"));
  }

  private static void run(String command) {
    run(command, DEMO.resolve("settings.yaml"), folder);
  }

  private static void run(String command, Path settings, Path out) {
    RealRun run =
        RealRun.of(
            command,
            DEMO.resolve("alder-quay-ifc4.ifc").toString(),
            "--settings",
            settings.toString(),
            "--out",
            out.toString());
    assertThat(run.code()).as(run.err()).isZero();
  }

  private static String text(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document).replace("\r\n", "\n");
    }
  }

  @Test
  void thePiecesOfAllSheetsAreThoseOfTheTemplatesWithTheSameNumbers() {
    Map<String, Integer> onSheets = new HashMap<>();
    Matcher piece = PIECE.matcher(sheets);
    while (piece.find()) {
      onSheets.merge(piece.group(1), Integer.parseInt(piece.group(2)), Integer::sum);
    }
    Map<String, Integer> drawn = new HashMap<>();
    Matcher listed = PIECE.matcher(templates);
    while (listed.find()) {
      drawn.merge(listed.group(1), Integer.parseInt(listed.group(2)), Integer::sum);
    }

    assertThat(drawn).hasSizeGreaterThan(20);
    assertThat(onSheets).isEqualTo(drawn);
  }

  @Test
  void eachServiceOnEachStoreyHasItsSheet() throws IOException {
    assertThat(sheets)
        .contains(
            "Roof: chilled water flow", "Ground floor: heating flow", "Ground floor: supply air");
  }

  @Test
  void sheetsSayWhatToBringHowToGoAboutItAndWhatToLookOutFor() {
    assertThat(sheets.replace('\n', ' '))
        .contains(
            "What to bring",
            "adhesive",
            "joint tape",
            "Clean and dry the surface",
            "adhesive thin on both faces",
            "open time",
            "without tension",
            "Tape every joint",
            "Hot surfaces",
            "ventilate",
            "Knives",
            "Asbestos",
            "Height",
            "Local rules");
  }

  @Test
  void aSheetReadsLikeThis() throws IOException {
    String first = sheets.substring(0, sheets.indexOf("Made by"));
    String rest = sheets.substring(sheets.indexOf("\n", sheets.indexOf("Made by")) + 1);
    int next = rest.indexOf("\nProject");
    String sheet = rest.substring(0, rest.lastIndexOf("\n", next - 1) + 1);

    Golden.check(SiteSheetsTest.class, "sitesheet.txt", first + sheet);
  }

  @Test
  void equalTakeoffsGiveEqualBytes() throws IOException {
    byte[] before = Files.readAllBytes(folder.resolve("sitesheets.pdf"));
    run("sitesheets");

    assertThat(Files.readAllBytes(folder.resolve("sitesheets.pdf"))).isEqualTo(before);
  }

  @Test
  void nothingElseIsWritten() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      List<String> names = files.map(f -> f.getFileName().toString()).toList();
      assertThat(names).contains("sitesheets.pdf").noneMatch(name -> name.endsWith(".part"));
    }
  }

  @Test
  void namesInOtherLettersCanBeRead(@TempDir Path other) throws IOException {
    String name =
        "\u041f\u0440\u0438\u0441\u0442\u0430\u043d\u044c, \u0141\u00f3d\u017a, \u0391\u03b8\u03ae\u03bd\u03b1";
    Path settings = other.resolve("settings.yaml");
    Files.writeString(settings, "project: " + name + " \u6e2f\n");
    run("sitesheets", settings, other);
    byte[] once = Files.readAllBytes(other.resolve("sitesheets.pdf"));
    run("sitesheets", settings, other);

    assertThat(text(other.resolve("sitesheets.pdf")))
        .as("the last letter is in no font of the program")
        .contains("Project " + name + " ?");
    assertThat(Files.readAllBytes(other.resolve("sitesheets.pdf"))).isEqualTo(once);
  }
}
