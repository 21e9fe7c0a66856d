package org.lagwright.report;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.cli.Main;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * One run of the command line with the real reader and engine.
 *
 * @param code exit code
 * @param out what was printed
 * @param err what was complained about
 */
public record RealRun(int code, String out, String err) {

  private static final JsonMapper MAPPER = new JsonMapper();

  /** Runs the program with these arguments. */
  public static RealRun of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    PrintWriter errWriter = new PrintWriter(err);
    int code = new Main(new ModelPipeline(), new PrintWriter(out), errWriter, false).run(args);
    return new RealRun(code, unix(out), unix(err));
  }

  /** A takeoff whose exit code does not depend on findings. */
  public static RealRun takeoff(Path model, Path folder, String... more) {
    List<String> args = new ArrayList<>(List.of("takeoff", model.toString()));
    args.addAll(List.of("--out", folder.toString(), "--fail-on", "never"));
    args.addAll(List.of(more));
    return of(args.toArray(String[]::new));
  }

  private static String unix(StringWriter text) {
    return text.toString().replace(System.lineSeparator(), "\n");
  }

  static String json(Path folder) throws IOException {
    return Files.readString(folder.resolve("takeoff.json"));
  }

  static JsonNode document(Path folder) throws IOException {
    return MAPPER.readTree(json(folder));
  }

  /** The items of an array of the document. */
  static List<JsonNode> items(JsonNode document, String name) {
    return StreamSupport.stream(document.get(name).spliterator(), false).toList();
  }

  /** The value cached in a named cell of the workbook. */
  static String named(Path folder, String name) throws IOException {
    byte[] bytes = Files.readAllBytes(folder.resolve("takeoff.xlsx"));
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      CellReference at = new CellReference(book.getName(name).getRefersToFormula());
      Cell cell = book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
      return switch (cell.getCachedFormulaResultType()) {
        case NUMERIC -> String.valueOf(Math.round(cell.getNumericCellValue()));
        default -> cell.getStringCellValue();
      };
    }
  }
}
