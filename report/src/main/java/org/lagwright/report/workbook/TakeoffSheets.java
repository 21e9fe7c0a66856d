package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Finding;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;

/** The sheets of one takeoff in their order. */
final class TakeoffSheets {

  private final List<PlannedSheet> list = new ArrayList<>();
  private final Map<String, String> names = new LinkedHashMap<>();

  TakeoffSheets(CheckedTakeoff checked, String version) {
    Takeoff takeoff = checked.takeoff();
    LinesSheet lines = new LinesSheet(takeoff.lines());
    Table<TakenElement> elements = new ElementsSheet(takeoff).table();
    Table<Finding> findings = new FindingsSheet(takeoff).table();
    Storeys storeys = new Storeys(takeoff.elements());
    TraceSheet trace = new TraceSheet(takeoff, storeys, lines.table());
    SummarySheet summary =
        new SummarySheet(takeoff, lines.table(), elements, findings, storeys, trace.table());
    add(SummarySheet.NAME, 1, (sheet, styles) -> names.putAll(summary.write(sheet, styles)), null);
    quantities(takeoff, lines);
    order(takeoff);
    checks(checked);
    work(takeoff);
    open(takeoff);
    add(FindingsSheet.NAME, 1, findings::writeHeadings, findings);
    add(ElementsSheet.NAME, 4, elements::writeHeadings, elements);
    add(TraceSheet.NAME, 2, trace::write, trace.table());
    add(BasisSheet.NAME, 1, new BasisSheet(takeoff, version)::write, null);
  }

  private void add(
      String name, int pagesWide, BiConsumer<Sheet, Styles> content, @Nullable Table<?> table) {
    list.add(new PlannedSheet(name, pagesWide, content, table));
  }

  private void quantities(Takeoff takeoff, LinesSheet lines) {
    Table<TakeoffLine> table = lines.table();
    FittingsSheet fittings = new FittingsSheet(table);
    MeasurementSheet measurement = new MeasurementSheet(takeoff);
    add(LinesSheet.NAME, 1, lines::write, table);
    add(FittingsSheet.NAME, 1, fittings::write, fittings.table());
    add(MeasurementSheet.NAME, 1, measurement::write, measurement.table());
  }

  private void order(Takeoff takeoff) {
    OrderSheet order = new OrderSheet(takeoff);
    CuttingSheet cutting = new CuttingSheet(takeoff.order());
    add(OrderSheet.NAME, 2, order::write, order.table());
    add(CuttingSheet.NAME, 1, cutting::write, cutting.table());
  }

  private void checks(CheckedTakeoff checked) {
    ThicknessSheet thickness = new ThicknessSheet(checked.takeoff());
    SweepSheet sweep = new SweepSheet(checked.takeoff());
    CoverageSheet coverage = new CoverageSheet(checked.coverage());
    ClearanceSheet clearance = new ClearanceSheet(checked.clearance());
    add(ThicknessSheet.NAME, 4, thickness::write, thickness.table());
    add(SweepSheet.NAME, 1, sweep::write, sweep.table());
    add(CoverageSheet.NAME, 2, coverage::write, coverage.table());
    add(ClearanceSheet.NAME, 3, clearance::write, clearance.table());
  }

  private void work(Takeoff takeoff) {
    LabourSheet labour = new LabourSheet(takeoff.labour());
    add(
        LabourSheet.NAME,
        1,
        (sheet, styles) -> {
          labour.write(sheet, styles);
          names.putAll(labour.names());
        },
        null);
    add(HoursSheet.NAME, 2, labour.hours()::writeHeadings, labour.hours());
    add(
        PriceSheet.NAME,
        1,
        (sheet, styles) -> new PriceSheet(takeoff, labour.totalCell()).write(sheet, styles),
        null);
  }

  private void open(Takeoff takeoff) {
    ScopeSheet scope = new ScopeSheet(takeoff);
    RfiSheet rfi = new RfiSheet(takeoff);
    add(ScopeSheet.NAME, 2, scope::write, scope.table());
    add(RfiSheet.NAME, 2, rfi::write, rfi.table());
  }

  /** All of them, the first one first. */
  List<PlannedSheet> list() {
    return list;
  }

  /** Names for key cells with their references, once all sheets are written. */
  Map<String, String> names() {
    return names;
  }
}
