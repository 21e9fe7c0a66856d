package org.lagwright.report.workbook;

/** How a cell looks; {@link Styles} knows the details. */
enum Look {
  TITLE,
  SECTION,
  HEADING,
  NOTE,
  TEXT,
  /** Text that may take several lines. */
  WRAPPED,
  WHOLE,
  /** Lengths and areas: two decimals. */
  TWO_DECIMALS,
  THREE_DECIMALS,
  /** Millimetres and degrees: decimals only where there are any. */
  PLAIN,
  TOTAL_TEXT,
  TOTAL_WHOLE,
  TOTAL_TWO_DECIMALS,
  TOTAL_THREE_DECIMALS
}
