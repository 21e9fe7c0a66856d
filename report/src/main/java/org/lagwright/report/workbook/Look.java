package org.lagwright.report.workbook;

/** How a cell looks; {@link Styles} knows the details. */
enum Look {
  TITLE,
  SECTION,
  HEADING,
  /** Heading of a column of numbers. */
  HEADING_RIGHT,
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
  /** A single figure beside its label. */
  PLAIN_LEFT,
  TOTAL_TEXT,
  /** The result of a check, in a column of numbers. */
  TOTAL_RIGHT,
  TOTAL_WHOLE,
  TOTAL_TWO_DECIMALS,
  TOTAL_THREE_DECIMALS
}
