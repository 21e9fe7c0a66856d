package org.lagwright.report.workbook;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBarSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTDLbls;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTLayout;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTManualLayout;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutMode;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutTarget;
import org.openxmlformats.schemas.drawingml.x2006.main.CTRegularTextRun;

/**
 * Bars beside a table, fed by its cells. What the bars show is kept in the chart too, for viewers
 * that do not recalculate.
 */
record BarChart(String title, String[] names, Double[] values) {

  private static final int TITLE_HUNDREDTHS_POINT = 1100;
  private static final int GAP_PERCENT = 45;

  /**
   * Draws it.
   *
   * @param firstRow first row of the cells, from 0
   * @param nameColumn column of the names
   * @param valueColumn column of the values
   */
  void draw(
      XSSFSheet sheet, XSSFClientAnchor anchor, int firstRow, int nameColumn, int valueColumn) {
    XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
    chart.setTitleText(title);
    chart.setTitleOverlay(false);
    XDDFCategoryAxis down = chart.createCategoryAxis(AxisPosition.LEFT);
    down.setOrientation(AxisOrientation.MAX_MIN);
    XDDFValueAxis along = chart.createValueAxis(AxisPosition.BOTTOM);
    along.setVisible(false);
    along.setMinimum(0);
    down.setCrosses(AxisCrosses.AUTO_ZERO);
    XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, down, along);
    bars.setBarDirection(BarDirection.BAR);
    bars.setGapWidth(GAP_PERCENT);
    bars.setVaryColors(false);
    XDDFChartData.Series series =
        bars.addSeries(
            XDDFDataSourcesFactory.fromArray(names, cells(sheet, firstRow, nameColumn)),
            XDDFDataSourcesFactory.fromArray(values, cells(sheet, firstRow, valueColumn)));
    series.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(Styles.ink())));
    chart.plot(bars);
    place(chart.getCTChart().getPlotArea());
    chart
        .getCTChartSpace()
        .addNewSpPr()
        .addNewSolidFill()
        .addNewSrgbClr()
        .setVal(new byte[] {-1, -1, -1});
    CTBarSer drawn = chart.getCTChart().getPlotArea().getBarChartArray(0).getSerArray(0);
    label(drawn.isSetDLbls() ? drawn.getDLbls() : drawn.addNewDLbls());
    CTRegularTextRun words =
        chart.getCTChart().getTitle().getTx().getRich().getPArray(0).getRArray(0);
    (words.isSetRPr() ? words.getRPr() : words.addNewRPr()).setSz(TITLE_HUNDREDTHS_POINT);
  }

  private String cells(XSSFSheet sheet, int firstRow, int column) {
    return new CellRangeAddress(firstRow, firstRow + names.length - 1, column, column)
        .formatAsString(sheet.getSheetName(), true);
  }

  /** Leaves room for names on the left, for the title, and for figures behind the longest bar. */
  private static void place(CTPlotArea area) {
    CTLayout layout = area.isSetLayout() ? area.getLayout() : area.addNewLayout();
    CTManualLayout inner =
        layout.isSetManualLayout() ? layout.getManualLayout() : layout.addNewManualLayout();
    inner.addNewLayoutTarget().setVal(STLayoutTarget.INNER);
    inner.addNewXMode().setVal(STLayoutMode.EDGE);
    inner.addNewYMode().setVal(STLayoutMode.EDGE);
    inner.addNewX().setVal(0.42);
    inner.addNewY().setVal(0.16);
    inner.addNewW().setVal(0.44);
    inner.addNewH().setVal(0.8);
  }

  /** Each bar with its figure, nothing else. */
  private static void label(CTDLbls labels) {
    labels.addNewNumFmt().setFormatCode("#,##0.0");
    labels.getNumFmt().setSourceLinked(false);
    labels.addNewShowLegendKey().setVal(false);
    labels.addNewShowVal().setVal(true);
    labels.addNewShowCatName().setVal(false);
    labels.addNewShowSerName().setVal(false);
    labels.addNewShowPercent().setVal(false);
    labels.addNewShowBubbleSize().setVal(false);
  }
}
