package org.lagwright.report.workbook;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;
import org.lagwright.report.PlainText;

/** Print set-up of a sheet: A4 landscape, so many pages wide, header and footer. */
final class Page {

  /** Longest project name in a header; spreadsheets allow 255 characters for the whole header. */
  private static final int LONGEST_PROJECT = 100;

  private Page() {}

  static void setUp(Sheet sheet, String project, int pagesWide) {
    PrintSetup print = sheet.getPrintSetup();
    print.setPaperSize(PrintSetup.A4_PAPERSIZE);
    print.setLandscape(true);
    sheet.setFitToPage(true);
    print.setFitWidth((short) pagesWide);
    print.setFitHeight((short) 0);
    sheet.setMargin(PageMargin.LEFT, 0.5);
    sheet.setMargin(PageMargin.RIGHT, 0.5);
    sheet.getHeader().setLeft(inHeader(project));
    sheet.getHeader().setRight("&A");
    sheet.getFooter().setLeft("&F");
    sheet.getFooter().setRight("Page &P of &N");
  }

  /** An ampersand starts a code in headers; doubled it stands for itself. */
  private static String inHeader(String project) {
    String line = PlainText.oneLine(project);
    String kept =
        line.codePointCount(0, line.length()) <= LONGEST_PROJECT
            ? line
            : line.substring(0, line.offsetByCodePoints(0, LONGEST_PROJECT)) + " ...";
    return kept.replace("&", "&&");
  }
}
