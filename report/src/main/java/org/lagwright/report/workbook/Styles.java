package org.lagwright.report.workbook;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.extensions.XSSFCellBorder.BorderSide;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.settings.UnitSystem;

/**
 * One cell style for each {@link Look}: dark green-blue headings, thin lines, no colour in data but
 * behind what may be changed.
 */
final class Styles {

  private static final byte[] INK_RGB = {0x24, 0x4B, 0x53};
  private static final XSSFColor INK = new XSSFColor(INK_RGB, null);
  private static final XSSFColor PAPER = colour(0xE8, 0xEE, 0xEE);
  private static final XSSFColor GREY = colour(0x5F, 0x66, 0x68);
  private static final XSSFColor MARKED = colour(0xFF, 0xF2, 0xCC);

  /** A gap as wide as a letter, so that figures do not touch the text of the next column. */
  private static final String GAP = "_W";

  private static final String WHOLE = "#,##0";
  private static final String TWO_DECIMALS = "#,##0.00";
  private static final String THREE_DECIMALS = "#,##0.000";

  /** As wide as a point and two decimals, so that whole numbers stand under those with decimals. */
  private static final String ALIGNED_WHOLE = WHOLE + "_._0_0";

  private final XSSFWorkbook book;
  private final ShownUnits units;
  private final Map<Look, CellStyle> styles = new EnumMap<>(Look.class);

  /**
   * The styles of a workbook.
   *
   * @param units units that its cells are shown in
   */
  Styles(XSSFWorkbook book, UnitSystem units) {
    this.book = book;
    this.units = new ShownUnits(units);
    addText();
    addNumbers();
    addTotals();
  }

  /** The units that cells are shown in. */
  ShownUnits units() {
    return units;
  }

  /** Red, green and blue of headings and bars. */
  static byte[] ink() {
    return INK_RGB.clone();
  }

  /** The style of a look. */
  CellStyle of(Look look) {
    CellStyle style = styles.get(look);
    if (style == null) {
      throw new IllegalStateException("no style for " + look);
    }
    return style;
  }

  private void addText() {
    add(Look.TITLE).setFont(font(16, true, INK));
    XSSFCellStyle section = add(Look.SECTION);
    section.setFont(font(12, true, INK));
    section.setBorderBottom(BorderStyle.THIN);
    section.setBottomBorderColor(INK);
    heading(add(Look.HEADING));
    heading(right(add(Look.HEADING_RIGHT)));
    add(Look.NOTE).setFont(font(9, false, GREY));
    add(Look.TEXT).setFont(font(10, false, null));
    XSSFCellStyle wrapped = add(Look.WRAPPED);
    wrapped.setFont(font(10, false, null));
    wrapped.setWrapText(true);
  }

  private void addNumbers() {
    number(Look.WHOLE, WHOLE);
    number(Look.ALIGNED_WHOLE, ALIGNED_WHOLE);
    number(Look.WHOLE_OR_DASH, orDash(WHOLE));
    number(Look.ONE_DECIMAL, orDash("0.0"));
    number(Look.TWO_DECIMALS, orDash(TWO_DECIMALS));
    number(Look.THREE_DECIMALS, orDash(THREE_DECIMALS));
    number(Look.PLAIN, "General");
    XSSFCellStyle single = number(Look.PLAIN_LEFT, "General");
    single.setAlignment(HorizontalAlignment.LEFT);
    input(number(Look.INPUT, "General"));
    input(number(Look.INPUT_MONEY, "#,##0.00##"));
    XSSFCellStyle word = add(Look.INPUT_TEXT);
    word.setFont(font(10, false, null));
    word.setAlignment(HorizontalAlignment.RIGHT);
    input(word);
  }

  private void addTotals() {
    total(add(Look.TOTAL_TEXT));
    total(right(add(Look.TOTAL_RIGHT)));
    total(number(Look.TOTAL_WHOLE, WHOLE));
    total(number(Look.TOTAL_ALIGNED_WHOLE, ALIGNED_WHOLE));
    total(number(Look.TOTAL_TWO_DECIMALS, orDash(TWO_DECIMALS)));
    total(number(Look.TOTAL_THREE_DECIMALS, orDash(THREE_DECIMALS)));
  }

  private XSSFCellStyle add(Look look) {
    XSSFCellStyle style = book.createCellStyle();
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    styles.put(look, style);
    return style;
  }

  private XSSFCellStyle number(Look look, String format) {
    XSSFCellStyle style = add(look);
    style.setFont(font(10, false, null));
    style.setAlignment(HorizontalAlignment.RIGHT);
    style.setDataFormat(book.createDataFormat().getFormat(format + GAP));
    return style;
  }

  /** What is zero shows as a dash. */
  private static String orDash(String format) {
    return format + GAP + ";-" + format + GAP + ";\"\u2013\"";
  }

  /** Set in a little, to stand over the figures. */
  private static XSSFCellStyle right(XSSFCellStyle style) {
    style.setAlignment(HorizontalAlignment.RIGHT);
    style.setIndention((short) 1);
    return style;
  }

  private void heading(XSSFCellStyle style) {
    style.setFont(font(10, true, INK));
    style.setFillForegroundColor(PAPER);
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBottomBorderColor(INK);
    style.setWrapText(true);
  }

  /** The only coloured cells: what may be changed. */
  private static void input(XSSFCellStyle style) {
    style.setFillForegroundColor(MARKED);
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    for (BorderSide side : BorderSide.values()) {
      style.setBorderColor(side, GREY);
    }
    style.setBorderTop(BorderStyle.THIN);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBorderLeft(BorderStyle.THIN);
    style.setBorderRight(BorderStyle.THIN);
  }

  private void total(XSSFCellStyle style) {
    style.setFont(font(10, true, null));
    style.setBorderTop(BorderStyle.THIN);
    style.setTopBorderColor(INK);
  }

  private XSSFFont font(int points, boolean bold, @Nullable XSSFColor ink) {
    XSSFFont font = book.createFont();
    font.setFontHeightInPoints((short) points);
    font.setBold(bold);
    if (ink != null) {
      font.setColor(ink);
    }
    return font;
  }

  private static XSSFColor colour(int red, int green, int blue) {
    return new XSSFColor(new byte[] {(byte) red, (byte) green, (byte) blue}, null);
  }
}
