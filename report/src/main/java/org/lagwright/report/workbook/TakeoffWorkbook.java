package org.lagwright.report.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.lagwright.ifc.model.Finding;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;

/**
 * Writes {@code takeoff.xlsx}. Sheets that grow with the model (Coverage, Clearance, Hours,
 * Elements, Findings) are streamed; the others are held in memory. Equal takeoffs give equal bytes.
 */
public final class TakeoffWorkbook {

  /** Rows of a streamed sheet kept in memory. */
  private static final int WINDOW = 200;

  /** All columns of these on one page would be too small to read. */
  private static final Map<String, Integer> PAGES_WIDE =
      Map.of(
          OrderSheet.NAME,
          2,
          HoursSheet.NAME,
          3,
          ElementsSheet.NAME,
          4,
          ThicknessSheet.NAME,
          4,
          CoverageSheet.NAME,
          2,
          ClearanceSheet.NAME,
          3);

  private final Takeoff takeoff;
  private final LinesSheet lines;
  private final CoverageSheet coverage;
  private final ClearanceSheet clearance;
  private final Table<TakenElement> elements;
  private final Table<Finding> findings;
  private final LabourSheet labour;
  private final String version;

  /**
   * Prepares the workbook of one takeoff.
   *
   * @param version version of this program
   */
  public TakeoffWorkbook(CheckedTakeoff checked, String version) {
    this.takeoff = checked.takeoff();
    this.version = version;
    lines = new LinesSheet(takeoff.lines());
    coverage = new CoverageSheet(checked.coverage());
    clearance = new ClearanceSheet(checked.clearance());
    elements = new ElementsSheet(takeoff).table();
    findings = new FindingsSheet(takeoff).table();
    labour = new LabourSheet(takeoff.labour());
  }

  /**
   * Writes it; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  public void write(OutputStream out) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Styles styles = new Styles(book);
      BookFrame.describe(book, "Insulation takeoff", version);
      writeSmallSheets(book, styles);
      try (SXSSFWorkbook streaming = new SXSSFWorkbook(book, WINDOW)) {
        streaming.setCompressTempFiles(true);
        coverage.table().writeRows(streaming.getSheet(CoverageSheet.NAME), styles);
        clearance.table().writeRows(streaming.getSheet(ClearanceSheet.NAME), styles);
        labour.hours().writeRows(streaming.getSheet(HoursSheet.NAME), styles);
        elements.writeRows(streaming.getSheet(ElementsSheet.NAME), styles);
        findings.writeRows(streaming.getSheet(FindingsSheet.NAME), styles);
        streaming.write(out);
      }
    } catch (OpenXML4JRuntimeException e) {
      throw new IOException(e.getMessage(), e); // wraps what the stream threw
    }
  }

  private void writeSmallSheets(XSSFWorkbook book, Styles styles) {
    Map<String, String> names =
        new SummarySheet(takeoff, lines.table(), elements, findings)
            .write(sheet(book, SummarySheet.NAME), styles);
    lines.write(sheet(book, LinesSheet.NAME), styles);
    new FittingsSheet(lines.table()).write(sheet(book, FittingsSheet.NAME), styles);
    new MeasurementSheet(takeoff).write(sheet(book, MeasurementSheet.NAME), styles);
    new OrderSheet(takeoff).write(sheet(book, OrderSheet.NAME), styles);
    new CuttingSheet(takeoff.order()).write(sheet(book, CuttingSheet.NAME), styles);
    new ThicknessSheet(takeoff).write(sheet(book, ThicknessSheet.NAME), styles);
    new SweepSheet(takeoff).write(sheet(book, SweepSheet.NAME), styles);
    coverage.write(sheet(book, CoverageSheet.NAME), styles);
    clearance.write(sheet(book, ClearanceSheet.NAME), styles);
    labour.write(sheet(book, LabourSheet.NAME), styles);
    labour.hours().writeHeadings(sheet(book, HoursSheet.NAME), styles);
    new PriceSheet(takeoff, labour.totalCell()).write(sheet(book, PriceSheet.NAME), styles);
    elements.writeHeadings(sheet(book, ElementsSheet.NAME), styles);
    findings.writeHeadings(sheet(book, FindingsSheet.NAME), styles);
    new BasisSheet(takeoff, version).write(sheet(book, BasisSheet.NAME), styles);
    names.putAll(labour.names());
    names.forEach((name, reference) -> BookFrame.define(book, name, reference));
  }

  private Sheet sheet(XSSFWorkbook book, String name) {
    return BookFrame.sheet(
        book, takeoff.settings().project(), name, PAGES_WIDE.getOrDefault(name, 1));
  }
}
