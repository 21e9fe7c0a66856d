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
  /** A whole number in a column of numbers with two decimals. */
  ALIGNED_WHOLE,
  /** A whole number, a dash where it is zero. */
  WHOLE_OR_DASH,
  /** Per cent: one decimal, a dash where there is nothing. */
  ONE_DECIMAL,
  /** Lengths and areas: two decimals, a dash where there is nothing. */
  TWO_DECIMALS,
  /** Volumes: three decimals, a dash where there is nothing. */
  THREE_DECIMALS,
  /** Millimetres and degrees: decimals only where there are any. */
  PLAIN,
  /** A single figure beside its label. */
  PLAIN_LEFT,
  /** A figure that the estimator may change; what depends on it follows. */
  INPUT,
  /** A price that the estimator may change: two decimals, up to four where there are any. */
  INPUT_MONEY,
  /** A word that the estimator may change. */
  INPUT_TEXT,
  TOTAL_TEXT,
  /** The result of a check, in a column of numbers. */
  TOTAL_RIGHT,
  TOTAL_WHOLE,
  TOTAL_ALIGNED_WHOLE,
  TOTAL_TWO_DECIMALS,
  TOTAL_THREE_DECIMALS
}
