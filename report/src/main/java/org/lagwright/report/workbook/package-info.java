/**
 * The workbook {@code takeoff.xlsx}: sheets, live formulas, print set-up.
 *
 * <p>Knows: spreadsheets and how estimators read them. Must not know: files, the command line, how
 * a number is decided. Each total is a formula with the computed value cached beside it, so that
 * viewers that do not recalculate show the same figures.
 *
 * <p>Start reading at {@link org.lagwright.report.workbook.TakeoffWorkbook}.
 */
@NullMarked
package org.lagwright.report.workbook;

import org.jspecify.annotations.NullMarked;
